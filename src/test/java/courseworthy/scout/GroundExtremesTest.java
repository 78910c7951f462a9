package courseworthy.scout;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.course.Course;
import courseworthy.course.Ground;
import courseworthy.course.GroundPairs;
import courseworthy.course.Stretch;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class GroundExtremesTest {

    private static final Ground ROAD = GroundPairs.ground(Map.of("surface", "asphalt"));
    private static final Ground TRAIL = GroundPairs.ground(Map.of("surface", "ground", "smoothness", "horrible"));
    private static final Ground GRAVEL = GroundPairs.ground(Map.of("surface", "gravel"));

    private static Stretch stretch(Ground likely, Ground... others) {
        return new Stretch(1000, null, null, null, likely, List.of(others), null, 0);
    }

    @Test
    void eachOpenStretchGoesToItsEndsAndTheOthersStay() {
        Course course = Course.builder("a", List.of(stretch(GRAVEL), stretch(GRAVEL, TRAIL, ROAD), stretch(Ground.UNKNOWN, ROAD, GRAVEL))).build();
        assertThat(GroundExtremes.isOpen(course)).isTrue();
        assertThat(GroundExtremes.smoothest(course).stretches()).extracting(Stretch::ground).containsExactly(GRAVEL, ROAD, ROAD);
        assertThat(GroundExtremes.roughest(course).stretches()).extracting(Stretch::ground).containsExactly(GRAVEL, TRAIL, GRAVEL);
        assertThat(GroundExtremes.isOpen(GroundExtremes.roughest(course))).isFalse();
    }

    @Test
    void unknownGroundRunsFromARoadToATrail() {
        Course course = Course.builder("a", List.of(stretch(Ground.UNKNOWN))).build();
        assertThat(GroundPairs.of(GroundExtremes.smoothest(course).stretches().get(0).ground())).containsEntry("surface", "asphalt");
        assertThat(GroundPairs.of(GroundExtremes.roughest(course).stretches().get(0).ground())).containsEntry("mtb:scale", "2");
    }
}
