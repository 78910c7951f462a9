package courseworthy.scout;

import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.demand.MeasureValue;

/**
 * How much a measure decides on a course.
 *
 * @param measure what is moved
 * @param lowest  the least of it on any course compared
 * @param highest the most of it on any course compared
 * @param weight  decisions that change with it: the mean of those changed by its lowest and by its highest value
 */
public record MeasureWeight(Measure measure, MeasureValue lowest, MeasureValue highest, double weight) {

    /** What a measure counts that is known on one side only, as a share of the spread (judgement, no source). */
    private static final double ONE_UNKNOWN = 0.5;

    /**
     * How far two values lie apart, as a share of the spread, 0 to 1.
     *
     * @param here  null where unknown
     * @param there null where unknown
     */
    double apart(MeasureValue here, MeasureValue there) {
        if (here == null || there == null) {
            return here == there ? 0 : ONE_UNKNOWN;
        }
        long spread = highest.mid() - lowest.mid();
        if (measure.scale().kind() == MeasureScale.Kind.OPTIONS || spread == 0) {
            return here.mid() == there.mid() ? 0 : 1;
        }
        return Math.min(1, Math.abs((double) (here.mid() - there.mid())) / spread);
    }
}
