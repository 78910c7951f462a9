package courseworthy.claim;

/** How strongly something is advised, strongest first, with the weight of its vote. */
public enum Force {
    MUST("must", 4), SHOULD("should", 2), MAY("may", 1);

    private final String word;
    private final int weight;

    Force(String word, int weight) {
        this.word = word;
        this.weight = weight;
    }

    public String word() {
        return word;
    }

    public int weight() {
        return weight;
    }
}
