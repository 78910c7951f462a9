package courseworthy.demand;

import static courseworthy.ride.InventedCourse.ground;
import static courseworthy.ride.InventedCourse.stretch;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.course.Climbing;
import courseworthy.course.Course;
import courseworthy.course.GeoPoint;
import courseworthy.course.Smoothness;
import courseworthy.course.Surface;
import courseworthy.event.Event;
import courseworthy.ride.InventedCourse;
import courseworthy.ride.PowerBalance;
import courseworthy.ride.RideEstimate;
import courseworthy.rider.Bike;
import courseworthy.rider.Rider;
import courseworthy.rider.Rider.MaximalEffort;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the brakes hold back on invented descents. */
class BrakeHeatTest {

    /**
     * Power to shed at a steady speed, m g (sin - Crr cos) v - 1/2 rho CdA v³ at 1.2 kg/m³, 0.45 m² and Crr 0.02, worked by hand; wheels and
     * bearings take up to 2 % of it.
     */
    @ParameterizedTest
    @CsvSource({"80, 10, 20, 301", "100, 10, 20, 387", "120, 10, 20, 474", "100, 15, 20, 654", "100, 20, 15, 702"})
    void thePowerBalanceTurnedRound(double mass, double percent, double kilometresAnHour, double watts) {
        double speed = kilometresAnHour / 3.6;
        double force = PowerBalance.of(mass, 0.45, 0.02).force(speed, 0, -percent / 100, 1.2);
        assertThat(-force * speed).isCloseTo(watts, within(0.02 * watts));
    }

    private static Demands down(double riderMass, double kilometres) {
        double metres = kilometres * 1000;
        Course course = Course.builder("down", List.of(stretch(kilometres, 0, 0.1 * metres, ground(Surface.GRAVEL, Smoothness.BAD, null, null)),
                stretch(20, 0, 0, ground(Surface.GRAVEL, Smoothness.BAD, null, null))))
                .line(InventedCourse.line(metres + 20_000, 10, d -> 2000 - 0.1 * Math.min(d, metres))).climbing(Climbing.written(0.0, 0.1 * metres)).start(new GeoPoint(47.0, 8.0)).build();
        Rider rider = Rider.builder().mass(riderMass).kit(3.0).efforts(List.of(new MaximalEffort(3600, 230))).skill("good").climbingCadence(65.0)
                .highestCadence(100.0).racesAYear(12).barWidth(0.42).stops(new Rider.StopCosts(120.0, 400.0, 300.0)).build();
        return Survey.of(course, rider, Event.UNKNOWN, Bike.of("gravel"));
    }

    private static double watts(Demands demands) {
        return Measure.BRAKING_POWER.scale().resolution().shown(demands.get(Measure.BRAKING_POWER).mid());
    }

    /** Far enough down, every moment of the quarter of an hour is braked alike. */
    @Test
    void onALongSteadyDescentItIsWhatTheSpeedAsks() {
        Demands demands = down(80, 20);
        RideEstimate estimate = demands.estimated().estimate();
        double speed = estimate.cap(0).mid();
        double mass = Measure.START_LINE_MASS.scale().resolution().base(demands.get(Measure.START_LINE_MASS).mid());
        double dragArea = estimate.basis().dragArea().mid();
        double force = PowerBalance.of(mass, dragArea, estimate.rolling(0).mid()).force(speed, 0, -0.1, estimate.density());
        assertThat(20_000 / speed).isGreaterThan(900);
        assertThat(watts(demands)).isCloseTo(-force * speed, within(0.02 * -force * speed + 2.5));
        assertThat(watts(demands)).isGreaterThan(300);
    }

    /** A descent of a third of the time is a third of the heat in a quarter of an hour. */
    @Test
    void aShortDescentHeatsLess() {
        double speed = down(80, 20).estimated().estimate().cap(0).mid();
        assertThat(watts(down(80, speed * 300 / 1000))).isCloseTo(watts(down(80, 20)) / 3, within(5.0));
    }

    @Test
    void heavierHeatsMoreAndTheFlatNothing() {
        assertThat(watts(down(110, 20))).isGreaterThan(watts(down(60, 20)) * 1.4);
        assertThat(watts(down(80, 0.1))).isLessThan(15);
    }

    @Test
    void withoutDescentsItIsNotKnown() {
        Course course = Course.builder("flat", List.of(stretch(20, 0, 0, ground(Surface.GRAVEL)))).start(new GeoPoint(47.0, 8.0))
                .build();
        assertThat(Survey.of(course, Rider.UNKNOWN, Event.UNKNOWN, Bike.UNKNOWN).known(Measure.BRAKING_POWER)).isFalse();
    }
}
