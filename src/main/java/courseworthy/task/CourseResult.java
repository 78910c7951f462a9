package courseworthy.task;

import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;

/**
 * What a course asks for by itself.
 *
 * @param summary the course
 * @param demands what it asks of a rider of whom nothing is known
 */
public record CourseResult(CourseSummary summary, Demands demands) {

    /** The measures that a course has by itself, without rider and day. */
    public Map<Measure, MeasureValue> measures() {
        Map<Measure, MeasureValue> out = new EnumMap<>(demands.values());
        out.keySet().retainAll(EnumSet.range(Measure.DISTANCE, Measure.TURNS_PER_KM));
        return out;
    }
}
