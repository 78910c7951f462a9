package courseworthy;

/**
 * How many generated cases a test draws: a share of its whole number in the ordinary run, all of them with {@code -Dcourseworthy.draws=100}. Cases are
 * numbered, so that the ordinary run has always the same first ones.
 */
public final class Draws {

    /** Share of the whole number that the ordinary run has, %. */
    private static final int SHARE = Integer.getInteger("courseworthy.draws", 30);

    private Draws() {
    }

    /** @param whole the number of cases where time does not matter */
    public static int of(int whole) {
        return Math.max(1, (int) Math.ceil(whole * (SHARE / 100.0)));
    }

    /** @param whole of how many cases at least something is expected where all are drawn */
    public static int leastOf(int whole) {
        return (int) (whole * (SHARE / 100.0));
    }
}
