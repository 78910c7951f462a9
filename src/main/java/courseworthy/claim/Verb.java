package courseworthy.claim;

/** What a claim does to a topic. */
public enum Verb {
    AT_LEAST("at least"), AT_MOST("at most"), PREFER("prefer"), AVOID("avoid"), RULE_OUT("rule out"),
    /** Only these values exist; said by joins alone (real pairs of rings and cassettes), never by a sheet. */
    ONE_OF("one of");

    private final String word;

    Verb(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
