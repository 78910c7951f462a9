package courseworthy.task;

import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.worth.RoadBook.SimplifiedHeights;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a course asks for by itself.
 *
 * @param summary the course
 * @param heights with as few points as show them; null where none are known
 * @param demands what it asks of a rider of whom nothing is known
 */
public record CourseResult(CourseSummary summary, SimplifiedHeights heights, Demands demands) {

    /** The measures that a course has by itself, without rider and day. */
    private static final Set<Measure> OF_A_COURSE = EnumSet.range(Measure.DISTANCE, Measure.TURNS_PER_KM);

    /** The values of those that are known. */
    public Map<Measure, MeasureValue> measures() {
        Map<Measure, MeasureValue> out = new EnumMap<>(demands.values());
        out.keySet().retainAll(OF_A_COURSE);
        return out;
    }

    /** Those that are not known. */
    public List<Measure> unknown() {
        return OF_A_COURSE.stream().filter(measure -> !demands.known(measure)).toList();
    }
}
