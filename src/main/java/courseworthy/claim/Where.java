package courseworthy.claim;

/** The place a rule is written: a path as typed or {@code rules/...}, and a 1-based line. */
public record Where(String file, int line) {

    @Override
    public String toString() {
        return file + ":" + line;
    }
}
