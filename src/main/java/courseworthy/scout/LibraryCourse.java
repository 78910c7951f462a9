package courseworthy.scout;

import courseworthy.course.Course;

/**
 * A course that others are compared with.
 *
 * @param file   its path as shown to the user
 * @param course as read
 */
public record LibraryCourse(String file, Course course) {
}
