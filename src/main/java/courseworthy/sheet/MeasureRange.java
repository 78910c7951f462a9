package courseworthy.sheet;

import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.units.Dimension;

/** The least and the largest value a measure can have, in ticks or positions. */
public final class MeasureRange {

    /** Nobody rides where it is colder, C. */
    private static final double COLDEST = -50;

    private MeasureRange() {
    }

    public static long least(Measure measure) {
        long least = TestSubject.of(measure).least();
        return least == Long.MIN_VALUE ? measure.scale().resolution().ticks(COLDEST) : least;
    }

    /** {@link Long#MAX_VALUE} where the scale has no end. */
    public static long most(Measure measure) {
        MeasureScale scale = measure.scale();
        boolean ends = !scale.words().isEmpty() || measure == Measure.MTB_SCALE || measure == Measure.HARDEST_MTB_SCALE
                || scale.resolution().unit().dimension() == Dimension.SHARE;
        return ends ? scale.most() : Long.MAX_VALUE;
    }
}
