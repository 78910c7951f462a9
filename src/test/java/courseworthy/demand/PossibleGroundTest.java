package courseworthy.demand;

import static courseworthy.ride.InventedCourse.course;
import static courseworthy.ride.InventedCourse.ground;
import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.course.Ground;
import courseworthy.course.GroundOrigin;
import courseworthy.course.Smoothness;
import courseworthy.course.Stretch;
import courseworthy.course.Surface;
import courseworthy.event.Event;
import courseworthy.ride.Roughness;
import courseworthy.rider.Bike;
import courseworthy.rider.Rider;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Ground that may be one of several: measures have the likely value, and ends as wide as what it may be. */
class PossibleGroundTest {

    private static final Ground GRAVEL = ground(Surface.GRAVEL);
    private static final Ground ASPHALT = ground(Surface.ASPHALT);

    private static Stretch stretch(double kilometres, Ground likely, Ground... others) {
        return new Stretch(kilometres * 1000, 0.0, 0.0, null, likely, List.of(others), GroundOrigin.UNMATCHED, 0);
    }

    private static Demands demands(Stretch... stretches) {
        return Survey.of(course(stretches), Rider.UNKNOWN, Event.UNKNOWN, Bike.UNKNOWN);
    }

    private static String of(Demands demands, Measure measure) {
        MeasureValue value = demands.get(measure);
        return value == null ? "unknown" : measure.scale().text(value.low()) + " / " + measure.scale().text(value.mid()) + " / "
                + measure.scale().text(value.high());
    }

    /** By hand: a quarter of the course is likely gravel and may be asphalt, half is likely asphalt and may be gravel. */
    @Test
    void aShareEndsWhereWhatMayBeEnds() {
        Demands demands = demands(stretch(1, ASPHALT), stretch(1, GRAVEL, ASPHALT), stretch(2, ASPHALT, GRAVEL));
        assertThat(of(demands, Measure.PAVED_SHARE)).isEqualTo("25 % / 75 % / 100 %");
        assertThat(of(demands, Measure.GRAVEL_SHARE)).isEqualTo("0 % / 25 % / 75 %");
    }

    @Test
    void whatIsOnlyLikelyCountsAsKnownSaveAtTheLowEnd() {
        assertThat(of(demands(stretch(1, ASPHALT), stretch(3, GRAVEL, ASPHALT)), Measure.KNOWN_GROUND)).isEqualTo("25 % / 100 % / 100 %");
        assertThat(of(demands(stretch(1, ASPHALT), stretch(3, Ground.UNKNOWN, ASPHALT)), Measure.KNOWN_GROUND)).isEqualTo("25 % / 25 % / 25 %");
    }

    @Test
    void roughnessReachesFromTheSmoothestToTheRoughest() {
        Ground rough = ground(Surface.GRAVEL, Smoothness.VERY_BAD, null, null);
        assertThat(Roughness.of(List.of(GRAVEL, rough, ASPHALT)).low()).isEqualTo(Roughness.of(ASPHALT).low());
        assertThat(Roughness.of(List.of(GRAVEL, rough, ASPHALT)).mid()).isEqualTo(Roughness.of(GRAVEL).mid());
        assertThat(Roughness.of(List.of(GRAVEL, rough)).high()).isEqualTo(Math.max(Roughness.of(GRAVEL).high(), Roughness.of(rough).high()));
        assertThat(Roughness.of(List.of(Ground.UNKNOWN, ASPHALT)).mid()).isEqualTo(Roughness.of(ASPHALT).mid());
        assertThat(Roughness.of(List.of(Ground.UNKNOWN))).isNull();
    }

    /** By hand: half of the unpaved length is grade 1, the other half grade 1 and 3 at its ends. */
    @Test
    void theTechnicalGradeIsARange() {
        Ground one = ground(Surface.GROUND, null, null, 1.0);
        Ground three = ground(Surface.GROUND, null, null, 3.0);
        Demands demands = demands(stretch(1, one), stretch(1, one, three));
        assertThat(of(demands, Measure.MTB_SCALE)).isEqualTo("1.0 / 1.0 / 2.0");
        assertThat(of(demands, Measure.HARDEST_MTB_SCALE)).isEqualTo("1.0 / 1.0 / 3.0");
    }

    /** Where nothing is known but what it may be, the grade stays unknown. */
    @Test
    void whatNobodyKnowsStaysUnknown() {
        assertThat(of(demands(stretch(1, Ground.UNKNOWN, ground(Surface.GROUND, null, null, 3.0))), Measure.MTB_SCALE)).isEqualTo("unknown");
    }

    /** The time of a ride takes in what the ground may be. */
    @Test
    void theTimeIsWiderThanOnGroundThatIsCertain() {
        MeasureValue certain = demands(stretch(20, GRAVEL)).get(Measure.HOURS);
        MeasureValue open = demands(stretch(20, GRAVEL, ASPHALT, ground(Surface.ROCK))).get(Measure.HOURS);
        assertThat(open.mid()).isBetween(certain.mid() - 1, certain.mid() + 1);
        assertThat(open.high()).isGreaterThan(certain.high());
        assertThat(open.low()).isLessThanOrEqualTo(certain.low());
    }
}
