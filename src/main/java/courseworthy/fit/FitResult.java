package courseworthy.fit;

/**
 * Whether parts go together.
 *
 * @param result what was found
 * @param words  by how much it does not fit, what to measure, or what to mind; empty where there is nothing to say
 */
public record FitResult(FitVerdict result, String words) {

    /** They fit, and there is nothing to say of it. */
    public static final FitResult FITS = new FitResult(FitVerdict.FITS, "");

    /** What was found, best first. */
    public enum FitVerdict {
        FITS("fits"),
        /** Something is not known; this never counts as fitting. */
        UNKNOWN("unknown"),
        /** A mix that no maker publishes; never approved. */
        FLAGGED("flagged"), DOES_NOT_FIT("does not fit");

        private final String words;

        FitVerdict(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    static FitResult unknown(String measure) {
        return new FitResult(FitVerdict.UNKNOWN, measure);
    }

    static FitResult not(String words) {
        return new FitResult(FitVerdict.DOES_NOT_FIT, words);
    }

    static FitResult flagged(String words) {
        return new FitResult(FitVerdict.FLAGGED, words);
    }

    static FitResult mind(String words) {
        return new FitResult(FitVerdict.FITS, words);
    }

    public boolean fits() {
        return result == FitVerdict.FITS;
    }

    /** Whether there is anything to report. */
    public boolean isReportable() {
        return result != FitVerdict.FITS || !words.isEmpty();
    }

    /** The worse of two; the first where they are equally bad, what both have to mind where both fit. */
    FitResult and(FitResult other) {
        if (result == FitVerdict.FITS && other.result == FitVerdict.FITS) {
            return words.isEmpty() ? other : other.words.isEmpty() ? this : mind(words + "; " + other.words);
        }
        return result.compareTo(other.result) >= 0 ? this : other;
    }
}
