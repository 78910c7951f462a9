package courseworthy.demand;

import static courseworthy.ride.InventedCourse.ground;
import static courseworthy.ride.InventedCourse.stretch;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.course.Course;
import courseworthy.course.Ground;
import courseworthy.course.Smoothness;
import courseworthy.course.Surface;
import courseworthy.event.Event;
import courseworthy.ride.BikeKind;
import courseworthy.ride.InventedCourse;
import courseworthy.ride.PowerBalance;
import courseworthy.rider.Bike;
import courseworthy.rider.Rider;
import courseworthy.rider.Rider.MaximalEffort;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Gears against handbook figures of development and cadence, and directions. */
class GearDemandsTest {

    private static final double KM_H = 3.6;

    /**
     * Development and speed of common gears (worked out apart from ratio, nominal circumference and cadence): teeth, tyre, cadence, km/h;
     * half a percent for the nominal circumference.
     */
    @ParameterizedTest
    @CsvSource({"50, 11, 28, 90, 52.3", "34, 34, 28, 60, 7.67", "34, 34, 28, 90, 11.5", "32, 52, 57, 60, 5.12", "32, 10, 57, 90, 39.96",
        "30, 50, 57, 60, 4.99"})
    void givesTheGearOfASpeed(int ring, int sprocket, double tyre, double cadence, double kilometresPerHour) {
        double ratio = GearDemands.gear(kilometresPerHour / KM_H, cadence, BikeKind.circumference(0.622, tyre / 1000));
        assertThat(ratio).isCloseTo((double) ring / sprocket, within(0.005 * ring / sprocket));
    }

    /** 16 CFR 1512.5: 24 km/h at 60 turns a minute is a development of 6.667 m (wording from memory); ratio 1 on that circumference. */
    @Test
    void developmentIsRatioTimesCircumference() {
        assertThat(GearDemands.gear(24 / KM_H, 60, 24 / KM_H)).isCloseTo(1, within(1e-12));
        assertThat(GearDemands.gear(6 / KM_H, 60, 1)).isCloseTo(1.667, within(0.0005));
        assertThat(GearDemands.gear(8 / KM_H, 70, 1)).isCloseTo(1.905, within(0.0005));
    }

    private static Rider rider(double watts, double cadence) {
        return Rider.builder().mass(75.0).kit(3.0).efforts(List.of(new MaximalEffort(3600, watts))).skill("good").climbingCadence(cadence)
                .highestCadence(100.0).build();
    }

    private static Bike bike(String kind) {
        return Bike.builder(kind).mass(9.5).build();
    }

    private static Event race(double group) {
        return Event.builder().role("race").laps(1).aim("time").groupShare(group)
                .forecast(Event.Forecast.builder().low(15.0).high(15.0).going("dry").wind(0.0).build()).startHeight(0.0).build();
    }

    private static Course climb() {
        Ground gravel = ground(Surface.COMPACTED, Smoothness.INTERMEDIATE, null, null);
        return InventedCourse.measured(InventedCourse.line(10_000, 10, d -> d < 4000 ? 0 : Math.min(400, 0.08 * (d - 4000))), gravel);
    }

    private static double ratio(Measure measure, Rider rider, Event event, String kind) {
        Demands demands = Survey.of(climb(), rider, event, bike(kind));
        return measure.scale().resolution().shown(demands.get(measure).mid());
    }

    /**
     * By hand: 8 % for 5 km. The ride takes 0.35 to 0.6 h, for which 1.04 to 1.08 of hour power can be held and 0.98 of that is ridden, 0.3 %
     * less at its end. The climb is ridden harder than the flat: it lasts about three quarters of the time, so if the flat were free, by the
     * fourth root of 4/3, 1.075, at most. So the speed lies between those of 1.02 and 1.08 x 1.075 hour power at about 89 kg, and the ratio is
     * that speed at 60 turns over 2.237 m.
     */
    @Test
    void theLastClimbIsRiddenOnWhatIsLeft() {
        double ratio = ratio(Measure.RATIO_NEEDED_ON_THE_LAST_CLIMB, rider(260, 60), race(0), "gravel");
        PowerBalance balance = PowerBalance.of(88.7, 0.35, 0.0092);
        double most = GearDemands.gear(balance.speed(1.08 * 1.075 * 260, 0, 0.08, 1.2), 60, BikeKind.GRAVEL.circumference());
        double least = GearDemands.gear(balance.speed(1.02 * 260, 0, 0.08, 1.2), 60, BikeKind.GRAVEL.circumference());
        assertThat(ratio).isBetween(least, most);
    }

    @Test
    void strongerRidersAndLowerCadencesNeedHarderGears() {
        for (Measure measure : List.of(Measure.RATIO_NEEDED_ON_THE_LAST_CLIMB, Measure.RATIO_NEEDED_WHERE_IT_IS_STEEPEST)) {
            double usual = ratio(measure, rider(260, 65), race(0), "gravel");
            assertThat(ratio(measure, rider(300, 65), race(0), "gravel")).isGreaterThan(usual);
            assertThat(ratio(measure, rider(260, 55), race(0), "gravel")).isGreaterThan(usual);
        }
        assertThat(ratio(Measure.RATIO_USEFUL_AT_SPEED, rider(300, 65), race(0), "gravel"))
                .isGreaterThan(ratio(Measure.RATIO_USEFUL_AT_SPEED, rider(260, 65), race(0), "gravel"));
    }

    /** A group is faster than a rider alone, and a race ends in a sprint that training does not have. */
    @Test
    void companyAndTheFinishRaiseTheTopGear() {
        Event training = Event.builder().role("training").laps(1).groupShare(0.0).forecast(race(0).forecast()).startHeight(0.0).build();
        double alone = ratio(Measure.RATIO_USEFUL_AT_SPEED, rider(260, 65), race(0), "gravel");
        assertThat(ratio(Measure.RATIO_USEFUL_AT_SPEED, rider(260, 65), race(0.4), "gravel")).isGreaterThan(alone);
        assertThat(ratio(Measure.RATIO_USEFUL_AT_SPEED, rider(260, 65), training, "gravel")).isLessThan(alone);
    }

    /** Strong riders on gravel want a top gear between 44x11 and 53x11, cross-country racers about 34x10 (common practice, no source). */
    @Test
    void topGearsAreThoseOfPractice() {
        assertThat(ratio(Measure.RATIO_USEFUL_AT_SPEED, rider(290, 65), race(0.3), "gravel")).isBetween(44 / 11.0, 53 / 11.0);
        assertThat(ratio(Measure.RATIO_USEFUL_AT_SPEED, rider(270, 65), race(0), "cross-country full suspension")).isBetween(3.2, 3.9);
    }

    /** Nobody needs a gear for less than 4.5 km/h: walking is as fast. 1.25 m/s at 60 turns on 2.237 m is 0.559, by hand. */
    @Test
    void noGearIsAskedForBelowWalkingPace() {
        Ground gravel = ground(Surface.COMPACTED, Smoothness.INTERMEDIATE, null, null);
        Course wall = InventedCourse.measured(InventedCourse.line(2000, 10, d -> 0.35 * d), gravel);
        Demands demands = Survey.of(wall, rider(150, 60), race(0), bike("gravel"));
        double ratio = Measure.RATIO_NEEDED_WHERE_IT_IS_STEEPEST.scale().resolution()
                .shown(demands.get(Measure.RATIO_NEEDED_WHERE_IT_IS_STEEPEST).mid());
        assertThat(ratio).isCloseTo(1.25 / (60 / 60.0) / 2.237, within(0.001));
    }

    /** Of two places as steep, the rougher asks for the easier gear whichever comes first. */
    @Test
    void ofEquallySteepPlacesTheSlowestCounts() {
        Ground smooth = ground(Surface.ASPHALT, Smoothness.GOOD, null, null);
        Ground rough = ground(Surface.GRASS, Smoothness.VERY_BAD, null, null);
        double smoothFirst = Survey.of(InventedCourse.course(twice(), null, List.of(stretch(2, 160, 0, smooth), stretch(2, 160, 0, rough))),
                rider(250, 60), race(0), bike("gravel")).get(Measure.RATIO_NEEDED_WHERE_IT_IS_STEEPEST).mid();
        double roughFirst = Survey.of(InventedCourse.course(twice(), null, List.of(stretch(2, 160, 0, rough), stretch(2, 160, 0, smooth))),
                rider(250, 60), race(0), bike("gravel")).get(Measure.RATIO_NEEDED_WHERE_IT_IS_STEEPEST).mid();
        double allSmooth = Survey.of(InventedCourse.course(twice(), null, List.of(stretch(2, 160, 0, smooth), stretch(2, 160, 0, smooth))),
                rider(250, 60), race(0), bike("gravel")).get(Measure.RATIO_NEEDED_WHERE_IT_IS_STEEPEST).mid();
        assertThat(smoothFirst).isLessThan(allSmooth);
        assertThat(roughFirst).isCloseTo(smoothFirst, within(0.02 * smoothFirst));
    }

    private static courseworthy.course.ElevationLine twice() {
        return InventedCourse.line(4000, 10, d -> 0.08 * d);
    }
}
