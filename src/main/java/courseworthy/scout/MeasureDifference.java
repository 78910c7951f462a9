package courseworthy.scout;

import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;

/**
 * What one measure is on two courses.
 *
 * @param measure which
 * @param weight  decisions that change with it
 * @param here    on the course asked about; null where unknown
 * @param there   on the other; null where unknown
 * @param apart   how far apart they are, as a share of the spread over all courses compared, 0 to 1
 */
public record MeasureDifference(Measure measure, double weight, MeasureValue here, MeasureValue there, double apart) {

    /** What it adds to the difference between the courses, before it is divided by all weights. */
    public double part() {
        return weight * apart;
    }
}
