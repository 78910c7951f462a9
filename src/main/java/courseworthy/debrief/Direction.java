package courseworthy.debrief;

/** Which way an outcome points on one topic, seen from what was ridden. */
public enum Direction {
    /** What was ridden was right. */
    RIGHT("was right"),
    /** A higher value, or a later option of those in order, was wanted. */
    MORE("more was wanted"),
    /** A lower value, or an earlier option of those in order, was wanted. */
    LESS("less was wanted"),
    /** Of options without order: another was wanted. */
    ANOTHER("another was wanted");

    private final String words;

    Direction(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
