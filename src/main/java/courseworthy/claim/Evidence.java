package courseworthy.claim;

/** How something is known. */
public enum Evidence {
    /** Published, with its source. */
    PUBLISHED("published"),
    /** A habit of the trade. */
    PRACTICE("practice"),
    /** One person's view. */
    OPINION("opinion");

    private final String word;

    Evidence(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
