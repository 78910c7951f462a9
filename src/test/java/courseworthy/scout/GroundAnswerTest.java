package courseworthy.scout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.course.Course;
import courseworthy.course.Ground;
import courseworthy.course.GroundPairs;
import courseworthy.course.Stretch;
import courseworthy.problem.Faults;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GroundAnswerTest {

    private static final Ground ROAD = GroundPairs.ground(Map.of("surface", "asphalt"));
    private static final Ground TRAIL = GroundPairs.ground(Map.of("surface", "ground", "mtb:scale", "2"));

    private final Faults faults = new Faults();

    private static Course course() {
        return Course.builder("a", List.of(new Stretch(4000, 80.0, 20.0, null, ROAD, 0), new Stretch(2000, null, null, null, Ground.UNKNOWN, 0),
                new Stretch(3000, 30.0, 0.0, null, TRAIL, 0))).build();
    }

    private Course answered(String typed) {
        GroundAnswer answer = GroundAnswer.read(typed, 9000, faults);
        assertThat(faults.faults()).isEmpty();
        return answer.on(course());
    }

    @Test
    void stretchesArePartedWhereThePieceBeginsAndEnds() {
        Course found = answered("3-5: surface=gravel, smoothness=bad");

        assertThat(found.stretches()).extracting(Stretch::length).containsExactly(3000.0, 1000.0, 1000.0, 1000.0, 3000.0);
        assertThat(found.stretches()).extracting(each -> GroundPairs.text(GroundPairs.of(each.ground())))
                .containsExactly("surface=asphalt", "surface=gravel, smoothness=bad", "surface=gravel, smoothness=bad", "", "surface=ground, mtb:scale=2");
        assertThat(found.stretches().get(0).ascent()).isEqualTo(60, within(1e-9));
        assertThat(found.stretches().get(1).ascent()).isEqualTo(20, within(1e-9));
        assertThat(found.stretches().get(1).descent()).isEqualTo(5, within(1e-9));
        assertThat(found.length()).isEqualTo(9000, within(1e-9));
    }

    @Test
    void whatIsKnownBesidesIsKept() {
        assertThat(answered("6-9: smoothness=horrible").stretches().get(2).ground())
                .isEqualTo(GroundPairs.ground(Map.of("surface", "ground", "mtb:scale", "2", "smoothness", "horrible")));
    }

    /** Asphalt has no technical grade 2. */
    @Test
    void whatCannotBeTrueAtOnceGoes() {
        assertThat(answered("6-9: surface=asphalt").stretches().get(2).ground()).isEqualTo(ROAD);
    }

    /** Kilometres as they are shown leave no slivers: 3.996 km is shown as 4.00. */
    @Test
    void anEndNearThatOfAStretchIsThatOne() {
        assertThat(answered("4.004-5.996: surface=sand").stretches()).extracting(Stretch::length).containsExactly(4000.0, 2000.0, 3000.0);
        assertThat(answered("4.01-6: surface=sand").stretches()).extracting(Stretch::length).containsExactly(4000.0, 10.0, 1990.0, 3000.0);
    }

    @Test
    void theEndMayBeRoundedUp() {
        assertThat(answered("8-9.05: surface=sand").stretches()).hasSize(4);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "surface=gravel | kilometres and what is there",
        "1 to 2: surface=gravel | kilometres and what is there",
        "5-4: surface=gravel | a piece between the start and the end of the course, which is 9.0 km long",
        "8-12: surface=gravel | a piece between the start and the end of the course, which is 9.0 km long",
        "1-2: surface=gravle | gravel",
        "1-2: gravel | key=value pairs",
        "1-2: surface=asphalt, mtb:scale=4 | mtb:scale",
    })
    void whatCannotBeIsRefused(String typed, String said) {
        assertThat(GroundAnswer.read(typed, 9000, faults)).isNull();
        assertThat(faults.faults()).hasSize(1);
        assertThat(faults.faults().get(0).toString()).contains("--answer").contains(said);
    }
}
