package courseworthy.ride;

import static courseworthy.ride.InventedCourse.estimate;
import static courseworthy.ride.InventedCourse.ground;
import static courseworthy.ride.InventedCourse.stretch;
import static courseworthy.ride.InventedCourse.strongAmateur;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.course.Ground;
import courseworthy.course.Passage;
import courseworthy.course.Smoothness;
import courseworthy.course.Stretch;
import courseworthy.course.Surface;
import org.junit.jupiter.api.Test;

/** Stretches that are passed on foot or by ferry, in the riding time. */
class PassageTest {

    private static final Ground ROAD = ground(Surface.ASPHALT, Smoothness.GOOD, null, null);

    private static RideEstimate with(double kilometres, Passage passage) {
        Stretch between = stretch(kilometres, 0, 0, ROAD).passed(passage);
        return estimate(InventedCourse.course(stretch(10, 50, 50, ROAD), between, stretch(10, 50, 50, ROAD)), strongAmateur(BikeKind.ROAD, 1));
    }

    /** Tobler's hiking function, 1993: 3 km/h at 15 %, 4.2 at 5 %; 300 m take 4.3 to 6 minutes, and a racer would ride them in 30 s. */
    @Test
    void whatIsPushedTakesAsLongAsWalking() {
        double ridden = with(0.3, null).riding().mid();
        RideEstimate pushed = with(0.3, Passage.ON_FOOT);
        assertThat(pushed.riding().mid() - ridden).isBetween(300 / (4.2 / 3.6) - 40, 300 / (3.0 / 3.6) + 20);
        assertThat(pushed.walked()).isCloseTo(300 / 0.95, within(2.0));
        assertThat(with(0.3, Passage.RIDDEN).riding().mid()).isEqualTo(ridden);
    }

    /** A walk of which one does not know how fast it goes leaves the time open. */
    @Test
    void theRangeHasTheEndsOfWalking() {
        double width = width(with(2, Passage.ON_FOOT)) - width(with(2, null));
        assertThat(width).isGreaterThan(100);
    }

    private static double width(RideEstimate estimate) {
        return estimate.riding().high() - estimate.riding().low();
    }

    /** A slow crossing and a fast one take what they take, and the rider does not pedal. */
    @Test
    void aFerryTakesItsTime() {
        for (double minutes : new double[] {3, 12}) {
            RideEstimate crossed = with(0.5, Passage.ferry(60 * minutes));
            double took = crossed.arrivalAt(10_500) - crossed.arrivalAt(10_000);
            assertThat(took).as(minutes + " min").isCloseTo(60 * minutes, within(6.0));
            assertThat(crossed.walked()).isZero();
        }
    }

    /** A part of a ferry takes its part of the time. */
    @Test
    void partsOfAFerryShareItsTime() {
        Stretch whole = stretch(0.6, 0, 0, ROAD).passed(Passage.ferry(600));
        assertThat(whole.over(200, null, null).passage()).isEqualTo(Passage.ferry(200));
        assertThat(whole.passed(Passage.ON_FOOT).over(200, null, null).onFoot()).isTrue();
    }
}
