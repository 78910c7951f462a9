package courseworthy.ride;

import static courseworthy.ride.InventedCourse.estimate;
import static courseworthy.ride.InventedCourse.ground;
import static courseworthy.ride.InventedCourse.stretch;
import static courseworthy.ride.InventedCourse.strongAmateur;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.course.Course;
import courseworthy.course.Ground;
import courseworthy.course.Smoothness;
import courseworthy.course.Surface;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a change returns. */
class TimeSavedTest {

    private static final Ground ROAD = ground(Surface.ASPHALT, Smoothness.GOOD, null, null);
    private static final Ground FINE = ground(Surface.FINE_GRAVEL, Smoothness.INTERMEDIATE, null, null);

    private static RideEstimate rolling() {
        return estimate(InventedCourse.course(stretch(40, 500, 500, FINE), stretch(20, 100, 300, ROAD)), strongAmateur(BikeKind.GRAVEL, 1));
    }

    @Test
    void noChangeReturnsNothing() {
        assertThat(rolling().saved(RideChange.NONE)).isEqualTo(Range.exact(0));
    }

    /**
     * On a steep climb time goes with total mass: at 8 % a kilogram on 85 costs 1.08 % at one power (worked out apart). Here what can be held
     * falls with the longer time too, so 1.08 % to 1.08 x 1.2 (from one hour to two the share held falls as time to the power of -0.16).
     */
    @Test
    void aKilogramOnASteepClimb() {
        RideAssumptions basis = InventedCourse.with(strongAmateur(BikeKind.ROAD, 1), Range.within(250, 8), Range.exact(85));
        RideEstimate climb = estimate(InventedCourse.course(stretch(12, 960, 0, ROAD)), basis);
        Range cost = climb.saved(RideChange.NONE.withMass(1)).times(1);
        assertThat(-cost.mid() / climb.riding().mid()).isBetween(0.0105, 0.0130);
        assertThat(climb.saved(RideChange.NONE.withMass(-0.1)).mid()).isCloseTo(-cost.mid() / 10, within(0.02 * -cost.mid() / 10));
    }

    /** Of the difference: far narrower than the times' own ranges, and on one side of nothing. */
    @Test
    void theRangeIsThatOfTheDifference() {
        RideEstimate estimate = rolling();
        Range saved = estimate.saved(RideChange.NONE.withDragFactor(0.95));
        assertThat(saved.low()).isGreaterThan(0);
        assertThat(saved.high() - saved.low()).isLessThan(0.05 * (estimate.riding().high() - estimate.riding().low()));
        assertThat(estimate.saved(RideChange.NONE.withRolling(0.9)).low()).isGreaterThan(0);
        assertThat(estimate.saved(RideChange.NONE.withDragArea(0.02)).high()).isLessThan(0);
    }

    /** What the wet costs is rolling and pace: dry pace gives back its part of that and no more, and nothing on dry ground. */
    @Test
    void dryPaceGivesBackWhatTheWetTakesFromIt() {
        Ground trail = ground(Surface.GROUND, Smoothness.VERY_BAD, null, 1.0);
        RideAssumptions basis = strongAmateur(BikeKind.HARDTAIL, 1);
        RideAssumptions wet = new RideAssumptions(basis.kind(), basis.mass(), basis.dragArea(), basis.pacing(), basis.skill(), 2, basis.laps(), basis.points(), basis.climbing(), basis.weather());
        RideEstimate inTheDry = estimate(InventedCourse.course(stretch(10, 400, 400, trail)), basis);
        RideEstimate inTheWet = estimate(InventedCourse.course(stretch(10, 400, 400, trail)), wet);
        assertThat(inTheDry.saved(RideChange.NONE.withDryPace()).mid()).isCloseTo(0, within(1e-6));
        double pace = inTheWet.saved(RideChange.NONE.withDryPace()).mid();
        double rolling = RollingResistance.of(trail, basis.kind(), 0).mid() / RollingResistance.of(trail, basis.kind(), 2).mid();
        double both = inTheWet.saved(RideChange.NONE.withDryPace().withRolling(rolling)).mid();
        double apart = inTheWet.riding().mid() - inTheDry.riding().mid();
        assertThat(pace).isPositive().isLessThan(apart);
        assertThat(both).as("the two rides hold slightly other powers").isCloseTo(apart, within(0.05 * apart));
    }

    /** A change on one stretch or on part of the steps returns part of what it returns everywhere; the parts add up to within a tenth. */
    @Test
    void partsAddUp() {
        RideEstimate estimate = rolling();
        double whole = estimate.saved(RideChange.NONE.withRolling(0.9)).mid();
        double first = estimate.saved(RideChange.NONE.withRolling(List.of(0.9, 1.0))).mid();
        double second = estimate.saved(RideChange.NONE.withRolling(List.of(1.0, 0.9))).mid();
        assertThat(first + second).isCloseTo(whole, within(0.1 * whole));
        double[] half = new double[estimate.way().size()];
        double[] rest = new double[half.length];
        for (int i = 0; i < half.length; i++) {
            half[i] = i % 3 == 0 ? 0.8 : 0.1;
            rest[i] = 1 - half[i];
        }
        double drag = estimate.saved(RideChange.NONE.withDragFactor(0.9)).mid();
        double some = estimate.saved(RideChange.NONE.withDragFactor(0.9).withDragOn(half)).mid();
        double others = estimate.saved(RideChange.NONE.withDragFactor(0.9).withDragOn(rest)).mid();
        assertThat(some + others).isCloseTo(drag, within(0.1 * drag));
    }

    /** Too few gears never help: neither spun out downhill nor ground to a stop uphill. */
    @Test
    void tooFewGearsCost() {
        Course course = InventedCourse.course(stretch(5, 500, 0, ROAD), stretch(10, 0, 300, ROAD));
        RideEstimate estimate = estimate(course, strongAmateur(BikeKind.ROAD, 1));
        Gearing wide = new Gearing(List.of(0.8, 1.2, 1.8, 2.7, 4.5), 2.1, 60, 110);
        Gearing noTop = new Gearing(List.of(0.8, 1.2, 1.8, 2.2), 2.1, 60, 100);
        Gearing hard = new Gearing(List.of(2.2, 2.7, 4.5), 2.1, 60, 110);
        Gearing noBottom = new Gearing(List.of(4.5), 2.1, 60, 110);
        assertThat(estimate.saved(RideChange.NONE.withGearing(wide)).mid()).isCloseTo(0, within(3.0));
        assertThat(estimate.saved(RideChange.NONE.withGearing(noTop)).high()).isLessThan(-5);
        assertThat(estimate.saved(RideChange.NONE.withGearing(hard)).mid()).isLessThan(-5);
        assertThat(estimate.saved(RideChange.NONE.withGearing(noBottom)).high()).isLessThan(-60);
        assertThat(estimate.trace(RideChange.NONE.withGearing(noBottom)).speed(0)).isCloseTo(Walking.SPEED.mid(), within(0.01));
    }

    /** Step by step the trace adds up to the whole, and a change shows in it. */
    @Test
    void theTraceAddsUp() {
        RideEstimate estimate = rolling();
        RideTrace trace = estimate.trace();
        double sum = 0;
        for (int at = 0; at < trace.size(); at++) {
            sum += trace.seconds(at);
            assertThat(trace.power(at)).isBetween(0.0, 600.0);
        }
        assertThat(sum).isCloseTo(estimate.riding().mid(), within(1e-6 * sum));
        assertThat(trace.along(trace.size() - 1)).isCloseTo(60_000, within(1e-6));
        assertThat(trace.arrivalAt(30_000)).isCloseTo(estimate.arrivalAt(30_000), within(1e-6));
        RideChange change = RideChange.NONE.withMass(-2);
        double saved = estimate.saved(change).mid();
        assertThat(estimate.trace(change).total()).isCloseTo(trace.total() - saved, within(0.25 * saved));
        assertThat(estimate.trace().total()).isEqualTo(trace.total());
    }

    @Test
    void changesOfTheSamePartsAreOne() {
        RideChange one = RideChange.NONE.withMass(1).withDragOn(new double[] {0, 1}).withRolling(List.of(0.9, 1.0));
        RideChange same = RideChange.NONE.withRolling(List.of(0.9, 1.0)).withDragOn(new double[] {0, 1}).withMass(1);
        assertThat(one).isEqualTo(same).hasSameHashCodeAs(same);
        assertThat(List.of(RideChange.NONE.withMass(1), RideChange.NONE.withDragArea(1), RideChange.NONE.withDragFactor(2), RideChange.NONE.withDragOn(new double[] {1}),
                RideChange.NONE.withRolling(2), RideChange.NONE.withDryPace(), RideChange.NONE)).doesNotHaveDuplicates().extracting(RideChange::hashCode)
                .as("hash codes tell most apart").satisfies(codes -> assertThat(codes.stream().distinct().count()).isGreaterThan(5));
    }
}
