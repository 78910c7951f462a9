package courseworthy.ride;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.course.Ground;
import courseworthy.course.Smoothness;
import courseworthy.course.Surface;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Figures of ground that may be one of several, by hand. */
class PossibleGroundTest {

    private static final Ground ROAD = InventedCourse.ground(Surface.ASPHALT, Smoothness.GOOD, null, null);
    private static final Ground GRAVEL = InventedCourse.ground(Surface.GRAVEL, Smoothness.BAD, null, null);
    private static final Ground GRASS = InventedCourse.ground(Surface.GRASS, null, null, null);
    private static final Map<Ground, Range> KNOWN = Map.of(ROAD, new Range(1, 2, 3), GRAVEL, new Range(4, 6, 9));

    private static Range range(Ground... possible) {
        return PossibleGround.range(List.of(possible), KNOWN::get);
    }

    @Test
    void theLikelyGroundHasTheMiddleAndAllTheEnds() {
        assertThat(range(ROAD)).isEqualTo(new Range(1, 2, 3));
        assertThat(range(ROAD, GRAVEL)).isEqualTo(new Range(1, 2, 9));
        assertThat(range(GRAVEL, ROAD)).isEqualTo(new Range(1, 6, 9));
        assertThat(range(ROAD, GRASS)).isEqualTo(new Range(1, 2, 3));
    }

    @Test
    void whereTheLikelyIsNotKnownTheMiddleIsTheMeanOfTheOthers() {
        assertThat(range(GRASS)).isNull();
        assertThat(range(GRASS, ROAD)).isEqualTo(new Range(1, 2, 3));
        assertThat(range(GRASS, ROAD, GRAVEL)).isEqualTo(new Range(1, 4, 9));
        assertThat(range(GRASS, GRASS)).isNull();
    }
}
