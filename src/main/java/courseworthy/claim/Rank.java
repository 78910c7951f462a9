package courseworthy.claim;

/** Who speaks, strongest first. */
public enum Rank {
    /** A safety or fit rule that no advice can overrule. */
    LIMIT("limit"),
    /** The rider's own stated constraint. */
    RIDER("rider"),
    /** A coach's sheet. */
    COACH("coach"),
    /** The advice shipped with the tool. */
    SHIPPED("shipped");

    private final String word;

    Rank(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
