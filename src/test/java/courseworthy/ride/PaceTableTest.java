package courseworthy.ride;

import static courseworthy.ride.InventedCourse.ground;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.course.Ground;
import courseworthy.course.Smoothness;
import courseworthy.course.Surface;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How fast ground is ridden, in km/h as a rider reads it from a screen, and bends by how far a rider leans (common practice, no source, but where it is said). */
class PaceTableTest {

    private static final Ground ROAD = ground(Surface.ASPHALT, Smoothness.GOOD, null, null);
    private static final Ground GRAVEL = ground(Surface.GRAVEL, Smoothness.BAD, null, null);

    /** Compacted ground has roughness 1, here made rougher or smoother by so much. */
    private static Range byRoughness(double roughness, BikeKind kind) {
        return SpeedLimits.cap(ground(Surface.COMPACTED), roughness - 1, kind, 2, 0);
    }

    /**
     * A good rider on a full-suspension bike: 70 km/h down a good road, 42 on gravel, 20 on severe ground, a walker's run on what is barely
     * rideable. The bike is 4 % faster than a rider's usual pace from roughness 2 on, half of that at 1.
     */
    @ParameterizedTest
    @CsvSource({"0, 70, 1", "1, 55, 1.02", "2, 42, 1.04", "3, 31, 1.04", "4, 20, 1.04", "5, 8, 1.04"})
    void paceByRoughness(double roughness, double kmh, double bike) {
        assertThat(3.6 * byRoughness(roughness, BikeKind.FULL).mid()).isCloseTo(kmh * bike, within(0.015 * kmh));
    }

    /** The same by technical grade: 45 km/h where there are no obstacles, 21 over roots and steps of grade 2, down to a walk. */
    @ParameterizedTest
    @CsvSource({"0, 45, 1.026", "1, 32, 1.04", "2, 21, 1.04", "3, 13, 1.04", "4, 8, 1.04", "5, 5, 1.04", "6, 4, 1.04", "1.5, 26.5, 1.04"})
    void paceByTechnicalGrade(double grade, double kmh, double bike) {
        double mid = SpeedLimits.cap(ground(Surface.GROUND, null, null, grade), BikeKind.FULL, 2, 0).mid();
        assertThat(3.6 * mid).isCloseTo(kmh * bike, within(0.015 * kmh));
    }

    /** A novice rides three quarters of a good rider's pace, a fair rider seven eighths, an expert one eighth more. */
    @ParameterizedTest
    @CsvSource({"0, 0.75", "1, 0.88", "2, 1", "3, 1.12"})
    void paceBySkill(int skill, double share) {
        assertThat(SpeedLimits.cap(GRAVEL, BikeKind.GRAVEL, skill, 0).mid() / SpeedLimits.cap(GRAVEL, BikeKind.GRAVEL, 2, 0).mid()).isCloseTo(share, within(0.005));
    }

    /** A twentieth less on damp ground, an eighth on wet. */
    @ParameterizedTest
    @CsvSource({"1, 0.95", "2, 0.88"})
    void paceInTheWet(int wetness, double share) {
        assertThat(SpeedLimits.cap(GRAVEL, BikeKind.GRAVEL, 2, wetness).mid() / SpeedLimits.cap(GRAVEL, BikeKind.GRAVEL, 2, 0).mid()).isCloseTo(share, within(0.005));
    }

    /** The kind of bike counts in full from roughness 2 on, in proportion below, and not at all on a new road: road against trail bike, 0.75 to 1.12. */
    @ParameterizedTest
    @CsvSource({"0, 1", "1, 0.8255", "1.5, 0.7454", "2, 0.6696", "4, 0.6696"})
    void paceByBike(double roughness, double ratio) {
        assertThat(byRoughness(roughness, BikeKind.ROAD).mid() / byRoughness(roughness, BikeKind.TRAIL).mid()).isCloseTo(ratio, within(0.002));
    }

    /** A fifth either way where roughness itself is known exactly, as at the end of the scale. */
    @Test
    void paceIsKnownToAFifth() {
        Range cap = SpeedLimits.cap(ground(Surface.ROCK, null, null, 6.0), BikeKind.FULL, 2, 0);
        assertThat(cap.low() / cap.mid()).isCloseTo(0.8, within(0.005));
        assertThat(cap.high() / cap.mid()).isCloseTo(1.2, within(0.005));
    }

    /** Ground nobody knows: from a rough track's 29 km/h to a road's 68, 47 as is likely, less by skill and wet. */
    @Test
    void unknownGroundIsAnything() {
        Range cap = SpeedLimits.cap(Ground.UNKNOWN, BikeKind.GRAVEL, 2, 0);
        assertThat(3.6 * cap.low()).isCloseTo(29, within(0.3));
        assertThat(3.6 * cap.mid()).isCloseTo(47, within(0.3));
        assertThat(3.6 * cap.high()).isCloseTo(68, within(0.5));
        assertThat(SpeedLimits.cap(Ground.UNKNOWN, BikeKind.GRAVEL, 0, 2).mid() / cap.mid()).isCloseTo(0.75 * 0.88, within(0.001));
    }

    /**
     * Lean on dry pavement: cycle paths are laid out for 20 degrees (AASHTO Guide 2012, from memory), which must lie inside; 17, 22 and 28 here,
     * by the tangent.
     */
    @Test
    void ridersLeanAsPathsAreLaidOut() {
        Range sideways = SpeedLimits.sideways(ROAD, 2, 0);
        assertThat(lean(sideways.low())).isCloseTo(17, within(0.3));
        assertThat(lean(sideways.mid())).isCloseTo(22.2, within(0.3));
        assertThat(lean(sideways.high())).isCloseTo(28, within(0.3));
        assertThat(20.0).isBetween(lean(sideways.low()), lean(sideways.mid()));
    }

    private static double lean(double sideways) {
        return Math.toDegrees(Math.atan(sideways / 9.80665));
    }

    /**
     * Loose ground leaves two thirds of what pavement gives, wet pavement three quarters, wet loose ground 85 % of dry; damp is half-way. Speed in
     * a bend goes with the root, so skill counts by its square.
     */
    @Test
    void gripByGroundAndWet() {
        double dry = SpeedLimits.sideways(ROAD, 2, 0).mid();
        double loose = SpeedLimits.sideways(GRAVEL, 2, 0).mid();
        assertThat(loose / dry).isCloseTo(0.65, within(0.005));
        assertThat(SpeedLimits.sideways(ROAD, 2, 2).mid() / dry).isCloseTo(0.75, within(0.005));
        assertThat(SpeedLimits.sideways(ROAD, 2, 1).mid() / dry).isCloseTo(0.875, within(0.005));
        assertThat(SpeedLimits.sideways(GRAVEL, 2, 2).mid() / loose).isCloseTo(0.85, within(0.005));
        assertThat(SpeedLimits.sideways(GRAVEL, 2, 1).mid() / loose).isCloseTo(0.925, within(0.005));
        assertThat(SpeedLimits.sideways(ROAD, 3, 0).mid() / dry).isCloseTo(1.12 * 1.12, within(0.01));
        // Unknown ground is as likely the one as the other.
        assertThat(SpeedLimits.sideways(Ground.UNKNOWN, 2, 0).mid() / dry).isCloseTo(0.825, within(0.005));
    }
}
