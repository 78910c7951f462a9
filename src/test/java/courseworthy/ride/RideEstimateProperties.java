package courseworthy.ride;

import static courseworthy.ride.InventedCourse.estimate;
import static courseworthy.ride.InventedCourse.ground;
import static courseworthy.ride.InventedCourse.stretch;
import static courseworthy.ride.InventedCourse.strongAmateur;
import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.course.Ground;
import courseworthy.course.Smoothness;
import courseworthy.course.Surface;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Directions of the whole estimate. Power and time agree to 0.05 %, so a direction may be missed by twice that where hardly anything changes. */
class RideEstimateProperties {

    private static final double SLACK = 1e-3;

    private static double seconds(Ground ground, double rise, double drop, RideAssumptions basis) {
        return estimate(InventedCourse.course(stretch(40, rise, drop, ground)), basis).riding().mid();
    }

    private static Ground unpaved(int smoothness) {
        return ground(Surface.GRAVEL, Smoothness.values()[smoothness], null, null);
    }

    @Property(tries = 200, seed = "20261129")
    void moreClimbingNeverTakesLess(@ForAll @IntRange(max = 6) int smoothness, @ForAll @DoubleRange(min = 0, max = 1500) double climbing,
            @ForAll @DoubleRange(min = 10, max = 800) double more, @ForAll BikeKind kind) {
        RideAssumptions basis = strongAmateur(kind, 1);
        double less = seconds(unpaved(smoothness), climbing, climbing, basis);
        assertThat(seconds(unpaved(smoothness), climbing + more, climbing + more, basis)).isGreaterThanOrEqualTo(less * (1 - SLACK));
        assertThat(seconds(unpaved(smoothness), climbing + more, climbing, basis)).isGreaterThanOrEqualTo(less * (1 - SLACK));
    }

    @Property(tries = 200, seed = "20261129")
    void heavierIsNeverFasterUphill(@ForAll @DoubleRange(min = 200, max = 3000) double rise,
            @ForAll @DoubleRange(min = 55, max = 120) double mass, @ForAll @DoubleRange(min = 0.5, max = 20) double more) {
        RideAssumptions basis = strongAmateur(BikeKind.GRAVEL, 1);
        double light = seconds(unpaved(2), rise, 0, InventedCourse.with(basis, basis.pacing().hourPower(), Range.exact(mass)));
        double heavy = seconds(unpaved(2), rise, 0, InventedCourse.with(basis, basis.pacing().hourPower(), Range.exact(mass + more)));
        assertThat(heavy).isGreaterThanOrEqualTo(light * (1 - SLACK));
    }

    @Property(tries = 200, seed = "20261129")
    void strongerIsNeverSlower(@ForAll @IntRange(max = 6) int smoothness, @ForAll @DoubleRange(min = 0, max = 1500) double climbing,
            @ForAll @DoubleRange(min = 120, max = 350) double power, @ForAll @DoubleRange(min = 1, max = 100) double more) {
        RideAssumptions basis = strongAmateur(BikeKind.GRAVEL, 1);
        double weak = seconds(unpaved(smoothness), climbing, climbing, InventedCourse.with(basis, Range.exact(power), basis.mass()));
        double strong = seconds(unpaved(smoothness), climbing, climbing, InventedCourse.with(basis, Range.exact(power + more), basis.mass()));
        assertThat(strong).isLessThanOrEqualTo(weak * (1 + SLACK));
    }

    /** On all ground, up, down and flat: whoever eases where rough ground holds them back could have eased on the smooth too. */
    @Property(tries = 400, seed = "20261129")
    void rougherIsNeverFaster(@ForAll @IntRange(min = 1, max = 6) int smoothness, @ForAll @DoubleRange(min = 0, max = 1500) double rise,
            @ForAll @DoubleRange(min = 0, max = 1500) double drop, @ForAll BikeKind kind) {
        RideAssumptions basis = strongAmateur(kind, 1);
        assertThat(seconds(unpaved(smoothness), rise, drop, basis))
                .isGreaterThanOrEqualTo(seconds(unpaved(smoothness - 1), rise, drop, basis) * (1 - SLACK));
    }

    @Property(tries = 100, seed = "20261129")
    void theRangeHoldsTheMiddleAndPowerAgrees(@ForAll @IntRange(max = 6) int smoothness,
            @ForAll @DoubleRange(min = 0, max = 2500) double rise, @ForAll @DoubleRange(min = 0, max = 2500) double drop,
            @ForAll @IntRange(min = 1, max = 6) int laps, @ForAll BikeKind kind) {
        RideEstimate estimate = estimate(InventedCourse.course(stretch(20, rise, drop, unpaved(smoothness))), strongAmateur(kind, laps));
        assertThat(estimate.total().low()).isLessThanOrEqualTo(estimate.total().mid());
        assertThat(estimate.total().high()).isGreaterThanOrEqualTo(estimate.total().mid());
        assertThat(estimate.riding().low()).isGreaterThan(0.4 * estimate.riding().mid());
        assertThat(estimate.load()).isLessThanOrEqualTo(estimate.canHold() * 1.001);
        boolean heldBack = estimate.uphill() >= 1.299 * estimate.basis().pacing().hourPower().mid() || capped(estimate);
        assertThat(heldBack || estimate.load() >= estimate.canHold() * 0.999).isTrue();
    }

    /** Whether the ground holds the rider back somewhere: then less may be ridden than could be held. */
    private static boolean capped(RideEstimate estimate) {
        for (int i = 0; i < estimate.way().size(); i++) {
            if (estimate.speed(0, i) >= estimate.cap(estimate.way().stretch(i)).mid() * (1 - 1e-9)) {
                return true;
            }
        }
        return false;
    }
}
