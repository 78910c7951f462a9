package courseworthy.debrief;

/** What a day says of a piece of advice. */
public enum AdviceOutcome {
    NOT("not borne out"), BORNE_OUT("borne out"), UNKNOWN("inconclusive");

    private final String words;

    AdviceOutcome(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
