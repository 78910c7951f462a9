package courseworthy.fit;

/**
 * Whether parts go together.
 *
 * @param result what was found
 * @param words  by how much it does not fit, what to measure, or what to mind; empty where there is nothing to say
 */
public record FitResult(Result result, String words) {

    /** They fit, and there is nothing to say of it. */
    public static final FitResult FITS = new FitResult(Result.FITS, "");

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

    static FitResult unknown(String measure) {
        return new FitResult(Result.UNKNOWN, measure);
    }

    static FitResult not(String words) {
        return new FitResult(Result.DOES_NOT_FIT, words);
    }

    static FitResult flagged(String words) {
        return new FitResult(Result.FLAGGED, words);
    }

    static FitResult mind(String words) {
        return new FitResult(Result.FITS, words);
    }

    public boolean fits() {
        return result == Result.FITS;
    }

    /** Whether there is anything to report. */
    public boolean isReportable() {
        return result != Result.FITS || !words.isEmpty();
    }

    /** The worse of two; the first where they are equally bad, what both have to mind where both fit. */
    FitResult and(FitResult other) {
        if (result == Result.FITS && other.result == Result.FITS) {
            return words.isEmpty() ? other : other.words.isEmpty() ? this : mind(words + "; " + other.words);
        }
        return result.compareTo(other.result) >= 0 ? this : other;
    }
}
