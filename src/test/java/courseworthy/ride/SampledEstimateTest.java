package courseworthy.ride;

import static courseworthy.ride.InventedCourse.estimate;
import static courseworthy.ride.InventedCourse.ground;
import static courseworthy.ride.InventedCourse.stretch;
import static courseworthy.ride.InventedCourse.strongAmateur;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.RealData;
import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.course.Ground;
import courseworthy.course.Smoothness;
import courseworthy.course.Surface;
import courseworthy.problem.Faults;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The whole sample, and the thinned rule that stands for it. */
class SampledEstimateTest {

    private static RideEstimate real(String track, RideAssumptions basis) {
        Course course = CourseReader.read(RealData.at("tracks/" + track + ".gpx"), track, "surface=gravel", new Faults());
        return estimate(course, basis);
    }

    /** A sample of evenly spread draws has a mean of nothing and a variance of a third in each input, and each is drawn by itself. */
    @Test
    void drawsFillTheirRange() {
        double[][] draws = RangeSampler.draws(300, 9);
        for (int input = 0; input < 9; input++) {
            double sum = 0;
            double squares = 0;
            boolean[] filled = new boolean[300];
            for (double[] draw : draws) {
                sum += draw[input];
                squares += draw[input] * draw[input];
                filled[(int) ((draw[input] + 1) / 2 * 300)] = true;
            }
            assertThat(sum / 300).isCloseTo(0, within(0.005));
            assertThat(squares / 300).isCloseTo(1.0 / 3, within(0.005));
            assertThat(filled).doesNotContain(false);
            for (int other = 0; other < input; other++) {
                double together = 0;
                for (double[] draw : draws) {
                    together += draw[input] * draw[other];
                }
                // Independent draws correlate by less than 3 / sqrt(300) = 0.17.
                assertThat(3 * together / 300).isCloseTo(0, within(0.17));
            }
        }
        assertThat(Arrays.deepEquals(draws, RangeSampler.draws(300, 9))).isTrue();
    }

    /** Of an even spread between 0 and 100 the 5th and the 95th hundredth are 5 and 95. */
    @Test
    void rangesAreHundredths() {
        double[][] draws = RangeSampler.draws(2000, 2);
        Range one = RangeSampler.range(50, new double[][] {{0, 25, 50, 75, 100}, {50, Double.NaN, 50, Double.NaN, 50}}, null, draws);
        assertThat(one.low()).isCloseTo(5, within(0.1));
        assertThat(one.high()).isCloseTo(95, within(0.1));
        // A sum of two even spreads over ±1 is triangular over ±2: its 95th hundredth is 2 - 2 sqrt(2 x 0.05) = 1.368.
        Range both = RangeSampler.range(0, new double[][] {{-1, Double.NaN, 0, Double.NaN, 1}, {-1, -0.5, 0, 0.5, 1}}, null, draws);
        assertThat(both.high()).isCloseTo(1.368, within(0.05));
        assertThat(both.low()).isCloseTo(-1.368, within(0.05));
    }

    /** The thinned rule's ends lie within 2.5 % of the time of the whole sample's, on tracks with and without wind and known ground. */
    @ParameterizedTest
    @ValueSource(strings = {"ride_road_hilly_57km", "ride_mtb_34km", "course_flat_265km", "course_swiss_valley_surface"})
    void theThinnedRuleAgreesOnRealTracks(String track) {
        RideAssumptions windy = InventedCourse.with(strongAmateur(BikeKind.GRAVEL, 1), new RideAssumptions.WeatherAssumptions(18, 300, true, 4, 1));
        RideAssumptions unknown = InventedCourse.with(strongAmateur(BikeKind.GRAVEL, 1), new RideAssumptions.WeatherAssumptions(18, 300, false, 0, Double.NaN));
        for (RideAssumptions basis : new RideAssumptions[] {windy, unknown}) {
            agrees(real(track, basis));
        }
    }

    @Test
    void theThinnedRuleAgreesOnDrawnCourses() {
        Ground chunky = ground(Surface.GRAVEL, Smoothness.BAD, null, null);
        Ground trail = InventedCourse.turning(ground(Surface.GROUND, Smoothness.HORRIBLE, null, 2.0), 6);
        agrees(estimate(InventedCourse.course(stretch(60, 500, 300, chunky), stretch(80, 1500, 1400, Ground.UNKNOWN), stretch(3, 0, 200, trail)),
                strongAmateur(BikeKind.GRAVEL, 1)));
        agrees(estimate(InventedCourse.course(stretch(3, 200, 20, trail), stretch(2, 0, 180, trail)), strongAmateur(BikeKind.FULL, 5)));
    }

    private static void agrees(RideEstimate estimate) {
        Range thinned = estimate.riding();
        Range whole = SampledEstimate.of(estimate).riding();
        double tolerance = 0.025 * thinned.mid();
        assertThat(thinned.low()).isCloseTo(whole.low(), within(tolerance));
        assertThat(thinned.high()).isCloseTo(whole.high(), within(tolerance));
    }

    /** What a change returns: the thinned rule's ends within 15 % of the figure of the whole sample's. */
    @Test
    void theThinnedRuleAgreesOnChanges() {
        RideEstimate estimate = real("ride_road_hilly_57km", strongAmateur(BikeKind.GRAVEL, 1));
        SampledEstimate sampled = SampledEstimate.of(estimate);
        for (RideChange change : new RideChange[] {RideChange.NONE.withMass(-1), RideChange.NONE.withDragFactor(0.95), RideChange.NONE.withRolling(0.9)}) {
            Range thinned = estimate.saved(change);
            Range whole = sampled.saved(change);
            assertThat(thinned.low()).isCloseTo(whole.low(), within(0.15 * thinned.mid()));
            assertThat(thinned.high()).isCloseTo(whole.high(), within(0.15 * thinned.mid()));
        }
    }

    /** The same bytes every time, whatever the threads do. */
    @Test
    void samplesAreTheSameEveryTime() {
        RideEstimate estimate = real("ride_cadence_18km", strongAmateur(BikeKind.GRAVEL, 1));
        assertThat(SampledEstimate.of(estimate, 40).riding()).isEqualTo(SampledEstimate.of(estimate, 40).riding());
    }
}
