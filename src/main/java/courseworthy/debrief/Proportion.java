package courseworthy.debrief;

/**
 * How often something held, with what can be said of it from so few times.
 *
 * <p>The interval is Wilson's (1927, Journal of the American Statistical Association 22:209-212), which keeps to its word for small
 * numbers and shares near none or all (Newcombe 1998, Statistics in Medicine 17:857-872): the true shares p from which k of n is no
 * farther than z standard errors, that is {@code (2k + z2 +- z sqrt(z2 + 4k(1 - k/n))) / (2(n + z2))} with z2 = z squared.
 *
 * @param held  times it held
 * @param of    times it could be told
 */
public record Proportion(int held, int of) {

    /** The share of intervals that hold the true share, over many of them. */
    public static final double CONFIDENCE = 0.95;

    /** {@link #CONFIDENCE} of the normal distribution lies within so many standard deviations. */
    private static final double Z = 1.959963984540054;
    private static final double HALF = 0.5;

    public Proportion {
        if (held < 0 || held > of) {
            throw new IllegalArgumentException(held + " of " + of);
        }
    }

    /** The low end of the interval of 95 %; 0 where nothing could be told. */
    public double low() {
        return of == 0 ? 0 : Math.max(0, end(-1));
    }

    /** The high end of the interval of 95 %; 1 where nothing could be told. */
    public double high() {
        return of == 0 ? 1 : Math.min(1, end(1));
    }

    private double end(int sign) {
        double z2 = Z * Z;
        double root = Z * Math.sqrt(z2 + 4.0 * held * (1 - (double) held / of));
        return (2.0 * held + z2 + sign * root) / (2 * (of + z2));
    }

    /** In words: {@code 2 of 2, too few to tell (34 to 100 %)}. */
    public String words() {
        if (of == 0) {
            return "never put to the test";
        }
        String verdict = low() > HALF ? "mostly borne out" : high() < HALF ? "mostly not" : "too few to tell";
        return held + " of " + of + ", " + verdict + " (" + Math.round(low() * 100) + " to " + Math.round(high() * 100) + " %)";
    }
}
