package courseworthy.worth;

import courseworthy.demand.Demands;
import courseworthy.demand.EstimatedRide;
import courseworthy.demand.ExtensionUse;
import courseworthy.ride.DiscretisedCourse;
import courseworthy.ride.Range;
import courseworthy.ride.RideChange;
import courseworthy.ride.RideEstimate;

/**
 * Time on this course for a little less of each resistance. Speed goes linearly with each over the range of parts (Martin 1998: R² above
 * 0.99), so that one run for each gives every small change. Worked out when first asked for.
 */
public final class Sensitivity {

    /** The change that is ridden: large against rounding, small against the curve. */
    private static final double KILOGRAM = -1;
    private static final double SHARE = 0.05;

    /**
     * Drag area on extensions over that of the usual position. That one counts as upright, its drag area being above those published for
     * upright riders (0.299 and 0.270 m²). Aero and tucked-arm over upright: 0.262 and 0.216 over 0.299 m² (Grappe, Candau, Belli, Rouillon
     * 1997, Ergonomics 40:1299-1311); time-trial over upright: 0.211 over 0.270 m² (Defraeye, Blocken et al. 2010, J. Biomech. 43:1262, from
     * memory). The lowest, their mean, and at the high end aero over dropped, 0.262 over 0.276 m², for a rider who sits low already.
     */
    static final Range AERO_DRAG = new Range(0.216 / 0.299, (0.262 / 0.299 + 0.216 / 0.299 + 0.211 / 0.270) / 3, 0.262 / 0.276);
    private final RideEstimate estimate;
    private final ExtensionUse aero;
    private Range perKilogram;
    private Range perDrag;
    private Range perRolling;
    private Range perAeroShare;

    private Sensitivity(EstimatedRide on) {
        estimate = on.estimate();
        aero = on.aero();
    }

    /** Of the ride that demands were surveyed with; null where they were not. */
    public static Sensitivity of(Demands demands) {
        return demands.estimated() == null ? null : new Sensitivity(demands.estimated());
    }

    /** Works out on a thread of its own what a plain brief shows, while the call is made; whoever asks earlier waits. */
    public void ahead(boolean extensions, boolean company) {
        Thread thread = new Thread("worth") {
            @Override
            public void run() {
                perKilogram();
                perRolling();
                if (company) {
                    perDrag();
                }
                if (extensions && aeroShare().high() > 0) {
                    perAeroShare();
                }
            }
        };
        thread.setDaemon(true);
        thread.start();
    }

    /** Returned by 1 kg less, s. */
    public synchronized Range perKilogram() {
        if (perKilogram == null) {
            perKilogram = estimate.saved(RideChange.NONE.withMass(KILOGRAM));
        }
        return perKilogram;
    }

    /** Returned by less drag, s for all of it (a hundred times that of 1 %). */
    public synchronized Range perDrag() {
        if (perDrag == null) {
            perDrag = estimate.saved(RideChange.NONE.withDragFactor(1 - SHARE)).times(1 / SHARE);
        }
        return perDrag;
    }

    /** Returned by less rolling resistance, s for all of it (a hundred times that of 1 %). */
    public synchronized Range perRolling() {
        if (perRolling == null) {
            perRolling = estimate.saved(RideChange.NONE.withRolling(1 - SHARE)).times(1 / SHARE);
        }
        return perRolling;
    }

    /** Share of the distance on which aero extensions are used. */
    Range aeroShare() {
        Range kept = aero.kept();
        double surely = length(false);
        return new Range(surely * kept.low(), surely * kept.mid(), Math.max(surely * kept.mid(), length(true) * kept.high()));
    }

    private double length(boolean looseEnd) {
        DiscretisedCourse way = estimate.way();
        double sum = 0;
        for (int i = 0; i < way.size(); i++) {
            sum += aero.fits(i, looseEnd) || aero.fits(i, false) ? way.length(i) : 0;
        }
        return sum / way.length();
    }

    /** Returned by aero extensions at their likely drag where they fit, s for all of the distance. */
    synchronized Range perAeroShare() {
        if (perAeroShare == null) {
            boolean looseEnd = length(false) <= 0;
            double kept = aero.kept().mid();
            double[] shares = new double[estimate.way().size()];
            for (int i = 0; i < shares.length; i++) {
                shares[i] = aero.fits(i, looseEnd) ? kept : 0;
            }
            perAeroShare = estimate.saved(RideChange.NONE.withDragFactor(AERO_DRAG.mid()).withDragOn(shares)).times(1 / (length(looseEnd) * kept));
        }
        return perAeroShare;
    }

    /** Time an effect returns, s: above 0 where it makes the ride faster. */
    public Range saved(Effect effect) {
        Range sum = Range.exact(0);
        sum = effect.mass().equals(Effect.NONE.mass()) ? sum : sum.plus(less(effect.mass(), perKilogram()));
        sum = effect.drag().equals(Effect.NONE.drag()) ? sum : sum.plus(less(effect.drag(), perDrag()));
        return effect.rolling().equals(Effect.NONE.rolling()) ? sum : sum.plus(less(effect.rolling(), perRolling()));
    }

    private static Range less(Range added, Range perUnit) {
        return Range.of(x -> -x[0] * x[1], added, perUnit);
    }
}
