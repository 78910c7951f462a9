package courseworthy.claim;

/** The place a rule is written: a path as typed or {@code rules/...}, and a 1-based line. */
public record SourceLocation(String file, int line) {

    @Override
    public boolean equals(Object other) {
        return other instanceof SourceLocation that && file.equals(that.file) && line == that.line;
    }

    @Override
    public int hashCode() {
        return file.hashCode() * 31 + line;
    }

    @Override
    public String toString() {
        return file + ":" + line;
    }
}
