package courseworthy.demand;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.course.Stretch;
import courseworthy.problem.Faults;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the catalogue declares of measures; that each is computed on some shipped day is held by {@code EveryMeasureTest}. */
class MeasureTest {

    /** Nonsense is met wherever a measure is written. */
    @ParameterizedTest
    @EnumSource(Measure.class)
    void everyMeasureHasLimits(Measure measure) {
        limited(measure.scale());
    }

    @ParameterizedTest
    @EnumSource(StretchMeasure.class)
    void everyMeasureOfAStretchHasLimits(StretchMeasure measure) {
        limited(measure.scale());
    }

    private static void limited(MeasureScale scale) {
        assertThat(scale.least()).isLessThan(scale.most()).isGreaterThan(-1_000_000);
        assertThat(scale.most()).isLessThan(1_000_000);
    }

    /** Heaviest rider that a rider's file takes, 200 kg; widest tyre that an event may allow, 130 mm; roughness to 5. */
    @Test
    void limitsAreThoseOfTheReaders() {
        assertThat(Measure.RIDER_MASS.scale().text(Measure.RIDER_MASS.scale().most())).isEqualTo("200.0 kg");
        assertThat(Measure.TYRE_WIDTH_ALLOWED.scale().most()).isEqualTo(130);
        assertThat(Measure.ROUGHNESS.scale().most()).isEqualTo(50);
        assertThat(StretchMeasure.GRADIENT.scale().least()).isEqualTo(-200);
    }

    /** A figure of one bike is set aside where another is called; lights and the kind itself are not. */
    @Test
    void groupsSayWhenAMeasureIsKnown() {
        for (Measure measure : Measure.values()) {
            assertThat(measure.ofTheBike()).as(measure.written()).isEqualTo(measure.group() == MeasureGroup.BIKE);
            assertThat(measure.derived()).as(measure.written()).isEqualTo(measure.group() == MeasureGroup.DECISIONS);
            assertThat(measure.layer() > 0).as(measure.written()).isEqualTo(measure.ofTheBike() || measure.derived());
        }
        assertThat(Measure.TYRE_CLEARANCE.ofTheBike()).isTrue();
        assertThat(Measure.LIGHTS_AT_HAND.ofTheBike()).isFalse();
        assertThat(Measure.BIKE_AT_HAND.ofTheBike()).isFalse();
    }

    @Test
    void everyMeasureOfAStretchIsComputedOnSomeShippedCourse() throws IOException {
        Set<StretchMeasure> computed = EnumSet.noneOf(StretchMeasure.class);
        try (var list = Files.list(Path.of("course-profiles"))) {
            for (Path file : list.filter(each -> each.toString().endsWith(".yaml")).sorted().toList()) {
                Faults faults = new Faults();
                Course course = CourseReader.read(file, file.toString(), null, faults);
                faults.throwIfAny();
                for (Stretch stretch : course.stretches()) {
                    for (StretchMeasure measure : StretchMeasure.values()) {
                        if (measure.calculate(stretch) != null) {
                            computed.add(measure);
                        }
                    }
                }
            }
        }
        assertThat(computed).containsExactly(StretchMeasure.values());
    }
}
