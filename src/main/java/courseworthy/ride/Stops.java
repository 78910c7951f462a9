package courseworthy.ride;

/**
 * Time not riding: filling bottles, eating, opening gates, mending. Common practice, no source. Short races are ridden through.
 */
public final class Stops {

    /** Stop at a support point, s. */
    private static final Range AT_A_POINT_RACING = new Range(15, 75, 240);
    private static final Range AT_A_POINT_TRAINING = new Range(60, 240, 600);
    /** Share of the riding time where no support points are written; where they are, of what is ridden beyond {@link #IN_FULL}, beside them. */
    private static final Range SHARE_RACING = new Range(0, 0.02, 0.06);
    private static final Range SHARE_TRAINING = new Range(0, 0.04, 0.10);
    /** No stop before this much riding; from the second on, stops as above; s. */
    private static final double RIDDEN_THROUGH = 2 * Endurance.HOUR;
    private static final double IN_FULL = 4 * Endurance.HOUR;

    private Stops() {
    }

    /**
     * Stopping time at support points, s.
     *
     * @param riding   riding time, s
     * @param points   support points on the way, or -1 where none are written
     * @param training whether the ride is training
     */
    static Range atPoints(double riding, int points, boolean training) {
        return (training ? AT_A_POINT_TRAINING : AT_A_POINT_RACING).times(Math.max(0, points) * inFull(riding));
    }

    /** Stopping time away from support points, s: long days bring clothing, eating, gates and mending besides. */
    static Range between(double riding, int points, boolean training) {
        Range share = training ? SHARE_TRAINING : SHARE_RACING;
        return points >= 0 ? share.times(Math.max(0, riding - IN_FULL)) : share.times(riding * inFull(riding));
    }

    private static double inFull(double riding) {
        return Math.max(0, Math.min(1, (riding - RIDDEN_THROUGH) / (IN_FULL - RIDDEN_THROUGH)));
    }

    /** Stopping time in all, s. */
    public static Range of(double riding, int points, boolean training) {
        Range at = atPoints(riding, points, training);
        Range between = between(riding, points, training);
        return new Range(at.low() + between.low(), at.mid() + between.mid(), at.high() + between.high());
    }
}
