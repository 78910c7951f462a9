package courseworthy.task;

/**
 * Something to watch.
 *
 * @param text     in sentences
 * @param ofTheDay true where it comes from what this course, rider or day is like; false where it holds for any ride, or where something is not known
 */
public record Caution(String text, boolean ofTheDay) {
}
