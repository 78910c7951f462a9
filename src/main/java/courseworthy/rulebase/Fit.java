package courseworthy.rulebase;

/**
 * Whether parts go together.
 *
 * @param result what was found
 * @param words  by how much it does not fit, what to measure, or what to mind; empty where there is nothing to say
 */
public record Fit(Result result, String words) {

    /** They fit, and there is nothing to say of it. */
    public static final Fit FITS = new Fit(Result.FITS, "");

    /** What was found, best first. */
    public enum Result {
        FITS("fits"),
        /** Something is not known; this never counts as fitting. */
        UNKNOWN("unknown"),
        /** A mix that no maker publishes; never approved. */
        FLAGGED("flagged"), DOES_NOT_FIT("does not fit");

        private final String words;

        Result(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    static Fit unknown(String measure) {
        return new Fit(Result.UNKNOWN, measure);
    }

    static Fit not(String words) {
        return new Fit(Result.DOES_NOT_FIT, words);
    }

    static Fit flagged(String words) {
        return new Fit(Result.FLAGGED, words);
    }

    static Fit mind(String words) {
        return new Fit(Result.FITS, words);
    }

    public boolean fits() {
        return result == Result.FITS;
    }

    /** Whether there is anything to tell. */
    public boolean isTold() {
        return result != Result.FITS || !words.isEmpty();
    }

    /** The worse of two; the first where they are equally bad, what both have to mind where both fit. */
    Fit and(Fit other) {
        if (result == Result.FITS && other.result == Result.FITS) {
            return words.isEmpty() ? other : other.words.isEmpty() ? this : mind(words + "; " + other.words);
        }
        return result.compareTo(other.result) >= 0 ? this : other;
    }
}
