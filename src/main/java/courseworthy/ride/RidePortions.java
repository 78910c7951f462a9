package courseworthy.ride;

/** How long parts of an estimated ride take, with their ranges. */
final class RidePortions {

    /**
     * How far a short part of a ride may be off at the power of the whole, as a share: on single climbs such models were off by -10 to +9 % against
     * power meters in 95 of 100 cases (Millet, Tronche, Grappe 2014, IJSPP 9:777-782). Over longer parts it evens out.
     */
    private static final double UNEVEN = 0.10;
    /** How much faster or slower than the whole a ride may be begun, as a share of its pace (common practice, no source). */
    private static final double START = 0.05;
    /** Of {@link #START} what is still not made good at the very end (practice). */
    private static final double LEFT = 0.2;
    /** The 95th hundredth of a normal distribution, in standard deviations (exact to its digits). */
    private static final double OF_NORMAL = 1.645;

    private final RideEstimate estimate;
    private final DiscretisedCourse way;
    /** By ground: by what share it rolls worse where it is a technical grade harder; 0 off trails. */
    private final double[] harder;
    private Sums sums;

    /**
     * Parts of a ride.
     *
     * @param estimate of the whole, its range worked out
     * @param harder   by ground, by what share it rolls worse where it is a technical grade harder; 0 off trails
     */
    RidePortions(RideEstimate estimate, double[] harder) {
        this.estimate = estimate;
        this.way = estimate.way();
        this.harder = harder;
    }

    /** Riding time between two distances from the start over all laps, s; with the time of the whole known or not. */
    Range between(double from, double to, boolean known) {
        double mid = estimate.trace().arrivalAt(to) - estimate.trace().arrivalAt(from);
        if (mid <= 0) {
            return Range.exact(0);
        }
        double rest = Math.sqrt(Math.max(0, 1 - mid / estimate.trace().total()));
        double uneven = rest * mid * Math.hypot(Math.hypot(UNEVEN, alongTheWind(from, to, (to - from) / mid)), patchy(from, to));
        return estimate.spread(mid, run -> between(run, from, to) * (known ? 1 / run.seconds() : 1), known).plus(Range.within(0, uneven));
    }

    /** Riding time to a distance from the start over all laps, s: that of the part, and what is not known of the pace of the start. */
    Range arrival(double to) {
        Range part = between(0, to, false);
        double rest = Math.sqrt(Math.max(0, 1 - part.mid() / estimate.trace().total()));
        return part.plus(Range.within(0, START * Math.max(LEFT, rest) * part.mid()));
    }

    /**
     * By what share a part may be faster or slower because its trail is harder or easier there than is told of it: 5th to 95th hundredth, by how
     * the part's time goes with rolling resistance.
     */
    private double patchy(double from, double to) {
        double trail = sums().trail.between(from, to);
        double grade = sums().grade.between(from, to) / (to - from);
        double off = sums().off.between(from, to) / (to - from);
        if (trail == 0 || off == 0) {
            return 0;
        }
        double slower = between(estimate.rollingWorse(), from, to) / between(estimate.about, from, to) - 1;
        return OF_NORMAL * Sinuosity.untoldOver(trail) * grade * Math.max(0, slower / off);
    }

    /**
     * By what share a part may be faster or slower where the wind may blow along it: two thirds of the wind over the speed where air holds back
     * alone (the slope of v (v + w)² = constant), times air's share, times how far the part gets in one direction.
     */
    private double alongTheWind(double from, double to, double speed) {
        RideAssumptions basis = estimate.basis();
        if (!way.hasHeadings() || basis.weather().directed()) {
            return 0;
        }
        Range wind = basis.weather().windAtRider();
        double likely = (wind.low() + wind.high()) / 2;
        double air = 0.5 * estimate.density() * basis.dragArea().mid() * speed * speed;
        double rolls = basis.mass().mid() * PowerBalance.GRAVITY * estimate.rolling(way.ground(estimate.stepAt(from % way.length()))).mid();
        return 2.0 / 3 * likely / speed * air / (air + rolls) * oneWay(from, to);
    }

    /** Share of its length that a part gets in one direction, 0 to 1. */
    private double oneWay(double from, double to) {
        return Math.min(1, Math.hypot(sums().east.between(from, to), sums().north.between(from, to)) / (to - from));
    }

    /** Sums along a lap, added up when they are first asked for. */
    private synchronized Sums sums() {
        if (sums == null) {
            sums = new Sums();
        }
        return sums;
    }

    /** What the parts of a ride need of its steps. */
    private final class Sums {
        /** Length of trail, m. */
        private final LapSums trail = new LapSums(way, i -> harder[way.ground(i)] > 0 ? way.length(i) : 0);
        /** By what share it rolls worse on harder ground, times length. */
        private final LapSums grade = new LapSums(way, i -> harder[way.ground(i)] * way.length(i));
        /** How far rolling resistance may be off, as a share, times length. */
        private final LapSums off = new LapSums(way, i -> (estimate.rolling(way.ground(i)).high() / estimate.rolling(way.ground(i)).mid() - 1) * way.length(i));
        /** How far the way gets to the east and to the north, m. */
        private final LapSums east = new LapSums(way, i -> way.length(i) * Math.sin(way.bearing(i)));
        private final LapSums north = new LapSums(way, i -> way.length(i) * Math.cos(way.bearing(i)));
    }

    private static double between(RideRun run, double from, double to) {
        return (run.steps().arrivalAt(to) - run.steps().arrivalAt(from)) * run.seconds() / run.steps().total();
    }
}
