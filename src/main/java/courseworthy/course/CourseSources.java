package courseworthy.course;

import courseworthy.course.terrain.ElevationFolder;

/**
 * What a course is read with besides its own file.
 *
 * @param assumed   ground to take where none is known; null for none
 * @param ground    where the ground under the track comes from; null for nowhere but the file
 * @param elevation where heights of the ground lie; null for none
 */
public record CourseSources(AssumedGround assumed, TrackGround ground, ElevationFolder elevation) {

    public static final CourseSources NONE = new CourseSources(null, null, null);

    public static CourseSources of(AssumedGround assumed) {
        return new CourseSources(assumed, null, null);
    }
}
