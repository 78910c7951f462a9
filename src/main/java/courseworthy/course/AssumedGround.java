package courseworthy.course;

/**
 * Ground to take where a course says none, as {@code key=value} pairs, and where that is written, so that what is wrong with it is said
 * there.
 *
 * @param key  what it stands under: {@code --ground} on the command line, {@code ground} in a file
 * @param text the pairs, such as {@code surface=gravel, smoothness=bad}
 * @param file the file it stands in as the user typed it; {@code --ground} on the command line
 * @param line 1-based; 0 on the command line
 */
public record AssumedGround(String key, String text, String file, int line) {

    private static final String OPTION = "--ground";

    /** What was typed behind {@code --ground}; null where it was not. */
    public static AssumedGround option(String text) {
        return text == null ? null : new AssumedGround(OPTION, text, OPTION, 0);
    }

    /** The text alone is what is assumed. */
    @Override
    public String toString() {
        return text;
    }
}
