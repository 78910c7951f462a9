package courseworthy.call;

import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.sheet.MeasureRange;
import courseworthy.units.Dimension;

/**
 * How large a change in a measure is, so that changes in different measures can be put in order: as a part of the whole scale where
 * there is one, else as a part of the larger value. The order is a convenience; the changes themselves are exact.
 */
final class ChangeSize {

    /** Between a frosty and a hot day, K. */
    private static final double TEMPERATURES = 40;

    private ChangeSize() {
    }

    /** From 0 for none to 1 for all there is. */
    static double of(Measure measure, long from, long to) {
        MeasureScale scale = measure.scale();
        double apart = Math.abs((double) to - from);
        return switch (scale.kind()) {
            case YES_NO, OPTIONS -> 1;
            case WORDS -> apart / (scale.words().size() - 1);
            case QUANTITY -> quantity(measure, apart, Math.max(Math.abs(from), Math.abs(to)));
        };
    }

    private static double quantity(Measure measure, double apart, double larger) {
        if (measure.scale().resolution().unit().dimension() == Dimension.TEMPERATURE) {
            return measure.scale().resolution().base(1) * apart / TEMPERATURES;
        }
        long most = MeasureRange.most(measure);
        return apart / (most == Long.MAX_VALUE ? larger : most);
    }
}
