package courseworthy.worth;

import courseworthy.ride.Change;
import courseworthy.ride.Estimate;
import courseworthy.ride.Range;

/**
 * Time on this course for a little less of each resistance. Speed goes linearly with each over the range of parts (Martin 1998: R² above
 * 0.99), so that one run for each gives every small change. Worked out when first asked for.
 */
public final class Sensitivity {

    /** The change that is ridden: large against rounding, small against the curve. */
    private static final double KILOGRAM = -1;
    private static final double SHARE = 0.05;

    private final Estimate estimate;
    private Range perKilogram;
    private Range perDrag;
    private Range perRolling;

    public Sensitivity(Estimate estimate) {
        this.estimate = estimate;
    }

    /** Returned by 1 kg less, s. */
    public Range perKilogram() {
        if (perKilogram == null) {
            perKilogram = estimate.saved(Change.NONE.withMass(KILOGRAM));
        }
        return perKilogram;
    }

    /** Returned by less drag, s for all of it (a hundred times that of 1 %). */
    public Range perDrag() {
        if (perDrag == null) {
            perDrag = estimate.saved(Change.NONE.withDragFactor(1 - SHARE)).times(1 / SHARE);
        }
        return perDrag;
    }

    /** Returned by less rolling resistance, s for all of it (a hundred times that of 1 %). */
    public Range perRolling() {
        if (perRolling == null) {
            perRolling = estimate.saved(Change.NONE.withRolling(1 - SHARE)).times(1 / SHARE);
        }
        return perRolling;
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
