package courseworthy.sheet;

import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.units.Dimension;

/** The least and the largest value a measure can have, in ticks or positions. */
public final class MeasureRange {

    /** Ends of scales that go no further, in base units: roughness to 5, mtb:scale to 6, a share to all. */
    private static final double ROUGHEST = 5;
    private static final double HARDEST_GRADE = 6;
    private static final double ALL = 1;
    /** Nobody rides where it is colder, C. */
    private static final double COLDEST = -50;

    private MeasureRange() {
    }

    public static long least(Measure measure) {
        long least = TestSubject.of(measure).least();
        return least == Long.MIN_VALUE ? measure.scale().resolution().ticks(COLDEST) : least;
    }

    /** {@link Long#MAX_VALUE} where there is no end. */
    public static long most(Measure measure) {
        MeasureScale scale = measure.scale();
        if (scale.kind() != MeasureScale.Kind.QUANTITY) {
            return scale.words().size() - 1;
        }
        if (!scale.bands().isEmpty()) {
            return scale.resolution().ticks(ROUGHEST);
        }
        if (measure == Measure.MTB_SCALE || measure == Measure.HARDEST_MTB_SCALE) {
            return scale.resolution().ticks(HARDEST_GRADE);
        }
        boolean share = scale.resolution().unit().dimension() == Dimension.SHARE;
        return share ? scale.resolution().ticks(ALL) : Long.MAX_VALUE;
    }
}
