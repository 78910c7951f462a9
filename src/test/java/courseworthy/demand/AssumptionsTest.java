package courseworthy.demand;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.event.Event;
import courseworthy.problem.Faults;
import courseworthy.rider.Bike;
import courseworthy.rider.Rider;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What was assumed under a measure, against the measures that move when it is given at either end of the assumed range. */
class AssumptionsTest {

    /** A twentieth is what counts; what is smaller than two steps of a measure is lost in rounding. */
    private static final double COUNTS = 0.05;

    @ParameterizedTest
    @ValueSource(strings = {"heather-ridge", "market-roads", "fernbrake", "quern-hills"})
    void whatMovesWithAnAssumptionNamesIt(String course) {
        Demands middle = survey(course, Rider.UNKNOWN);
        Map<String, List<Rider>> ends = Map.of(
                "rider mass", List.of(Rider.builder().mass(65.0).build(), Rider.builder().mass(85.0).build()),
                "hour power", List.of(power(2.5 * 75), power(3.7 * 75)),
                "climbing cadence", List.of(Rider.builder().climbingCadence(52.0).build(), Rider.builder().climbingCadence(68.0).build()),
                "highest cadence", List.of(Rider.builder().highestCadence(90.0).build(), Rider.builder().highestCadence(110.0).build()));
        ends.forEach((what, riders) -> {
            Set<String> unnamed = new TreeSet<>();
            for (Rider rider : riders) {
                unnamed.addAll(moved(middle, survey(course, rider), what));
            }
            assertThat(unnamed).as(what).isEmpty();
        });
    }

    private static Rider power(double watt) {
        return Rider.builder().efforts(List.of(new Rider.MaximalEffort(3600, watt))).build();
    }

    /** The measures that moved and do not name what was assumed. */
    private static Set<String> moved(Demands middle, Demands end, String what) {
        Set<String> out = new TreeSet<>();
        for (Map.Entry<Measure, MeasureValue> each : middle.values().entrySet()) {
            MeasureValue there = end.get(each.getKey());
            long apart = there == null ? 0 : Math.abs(there.mid() - each.getValue().mid());
            boolean counts = each.getKey().scale().kind() == MeasureScale.Kind.WORDS ? apart > 0 : apart > 1 && apart > COUNTS * Math.abs(each.getValue().mid());
            if (counts && !Assumptions.names(each.getKey()).contains(what)) {
                out.add(each.getKey().written() + " " + each.getValue().mid() + " " + there.mid());
            }
        }
        return out;
    }

    private static Demands survey(String name, Rider rider) {
        Path file = Path.of("course-profiles", name + ".yaml");
        Faults faults = new Faults();
        Course course = CourseReader.read(file, file.toString(), null, faults);
        faults.throwIfAny();
        return Survey.of(course, rider, Event.UNKNOWN, Bike.UNKNOWN);
    }
}
