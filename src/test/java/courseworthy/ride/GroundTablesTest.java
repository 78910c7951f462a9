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
import org.junit.jupiter.params.provider.EnumSource;

/** Roughness, rolling resistance and pace by ground: published bands, and orders that must hold. */
class GroundTablesTest {

    /** OpenStreetMap's smoothness values are ordered by which wheels can use the way (wiki.openstreetmap.org, Key:smoothness). */
    @Test
    void roughnessRisesWithEachSmoothness() {
        Range before = null;
        for (Smoothness smoothness : Smoothness.values()) {
            Range now = Roughness.of(ground(null, smoothness, null, null));
            if (before != null) {
                assertThat(now.mid()).isGreaterThan(before.mid());
                assertThat(now.low()).isGreaterThanOrEqualTo(before.low());
                assertThat(now.high()).isGreaterThanOrEqualTo(before.high());
            }
            before = now;
        }
        assertThat(before.high()).isEqualTo(Roughness.MOST);
    }

    /** tracktype runs from solid to soft, mtb:scale from no obstacles to not rideable (same wiki, Key:tracktype and Key:mtb:scale). */
    @Test
    void roughnessRisesWithTracktypeAndTechnicalGrade() {
        for (int grade = 2; grade <= 5; grade++) {
            assertThat(Roughness.of(ground(null, null, grade, null)).mid())
                    .isGreaterThan(Roughness.of(ground(null, null, grade - 1, null)).mid());
        }
        for (double scale = 1.0 / 3; scale <= 6; scale += 1.0 / 3) {
            assertThat(Roughness.of(ground(null, null, null, scale)).mid())
                    .isGreaterThan(Roughness.of(ground(null, null, null, scale - 1.0 / 3)).mid());
        }
    }

    /** Gravel is anything from ballast to compacted (same wiki, Tag:surface=gravel), so its surface alone tells little. */
    @Test
    void gravelAloneIsWide() {
        assertThat(Roughness.of(ground(Surface.GRAVEL))).isEqualTo(new Range(1.0, 2.0, 3.0));
    }

    @Test
    void tagsOfRoughnessItselfOutweighTheSurface() {
        Range smooth = Roughness.of(ground(Surface.GRAVEL, Smoothness.GOOD, null, null));
        assertThat(smooth).isEqualTo(Roughness.of(Smoothness.GOOD));
        Range both = Roughness.of(ground(Surface.GRAVEL, Smoothness.BAD, null, 1.0));
        assertThat(both.mid()).isCloseTo((1.7 + 2.4) / 2, within(1e-9));
        Range road = Roughness.of(ground(Surface.ASPHALT, null, null, 0.0));
        assertThat(road).isEqualTo(Roughness.of(Surface.ASPHALT));
    }

    @Test
    void rootsAndRutsMakeRougherUpToTheEnd() {
        Ground plain = ground(Surface.GROUND, Smoothness.BAD, null, null);
        Ground rooty = Ground.builder().surface(Surface.GROUND).smoothness(Smoothness.BAD).ruts(true).roots(true).build();
        assertThat(Roughness.of(rooty).mid()).isCloseTo(Roughness.of(plain).mid() + 0.4, within(1e-9));
        Ground worst = Ground.builder().smoothness(Smoothness.IMPASSABLE).ruts(true).roots(true).build();
        assertThat(Roughness.of(worst).high()).isEqualTo(Roughness.MOST);
    }

    @Test
    void unknownGroundHasNoRoughness() {
        assertThat(Roughness.of(Ground.UNKNOWN)).isNull();
    }

    /** The order that all published figures agree on: asphalt, compacted, gravel, grass, sand. */
    @ParameterizedTest
    @EnumSource(BikeKind.class)
    void rollingResistanceRisesFromAsphaltToSand(BikeKind kind) {
        double asphalt = RollingResistance.of(ground(Surface.ASPHALT), kind, 0).mid();
        double compacted = RollingResistance.of(ground(Surface.COMPACTED), kind, 0).mid();
        double gravel = RollingResistance.of(ground(Surface.GRAVEL), kind, 0).mid();
        double grass = RollingResistance.of(ground(Surface.GRASS), kind, 0).mid();
        double sand = RollingResistance.of(ground(Surface.SAND), kind, 0).mid();
        assertThat(new double[] {asphalt, compacted, gravel, grass, sand}).isSorted();
        assertThat(asphalt).isLessThan(compacted);
        assertThat(grass).isLessThan(sand);
    }

    /** Textbook bands, order of magnitude (from memory, cf. Wilson and Papadopoulos 2004, ch. 6); the middle must lie inside. */
    @ParameterizedTest
    @CsvSource({"ROAD, ASPHALT, GOOD, 0.003, 0.006", "ROAD, CHIPSEAL, INTERMEDIATE, 0.006, 0.010", "GRAVEL, COMPACTED, INTERMEDIATE, 0.008, 0.015",
        "GRAVEL, FINE_GRAVEL, INTERMEDIATE, 0.008, 0.015", "GRAVEL, GRAVEL, BAD, 0.008, 0.015", "GRAVEL, GRASS, BAD, 0.015, 0.040",
        "HARDTAIL, GRASS, BAD, 0.015, 0.040"})
    void rollingResistanceLiesInThePublishedBands(BikeKind kind, Surface surface, Smoothness smoothness, double least, double most) {
        assertThat(RollingResistance.of(ground(surface, smoothness, null, null), kind, 0).mid()).isBetween(least, most);
    }

    /** A representative cross-country course with 29-inch tyres: Crr 0.0205 to 0.0237 (Maier and others 2018); a tool within 0.018 to 0.026. */
    @ParameterizedTest
    @EnumSource(value = BikeKind.class, names = {"HARDTAIL", "FULL"})
    void aCrossCountryCourseRollsAsMeasured(BikeKind kind) {
        assertThat(RollingResistance.of(ground(Surface.GROUND, Smoothness.VERY_BAD, null, 1.0), kind, 0).mid()).isBetween(0.018, 0.026);
        assertThat(RollingResistance.of(ground(Surface.GROUND, Smoothness.HORRIBLE, null, 1.0), kind, 0).mid()).isBetween(0.018, 0.026);
    }

    /** Deep sand 0.1 and more: within reach of the high end, above soft grass at the low end (same bands). */
    @Test
    void sandReachesDeepSand() {
        Range sand = RollingResistance.of(ground(Surface.SAND), BikeKind.GRAVEL, 0);
        assertThat(sand.high()).isBetween(0.06, 0.12);
        assertThat(sand.low()).isGreaterThan(0.03);
    }

    @Test
    void wetGroundRollsWorseAndRoadsTheSame() {
        Ground earth = ground(Surface.DIRT);
        assertThat(RollingResistance.of(earth, BikeKind.GRAVEL, 2).mid()).isGreaterThan(RollingResistance.of(earth, BikeKind.GRAVEL, 1).mid());
        assertThat(RollingResistance.of(earth, BikeKind.GRAVEL, 1).mid()).isGreaterThan(RollingResistance.of(earth, BikeKind.GRAVEL, 0).mid());
        assertThat(RollingResistance.of(ground(Surface.ASPHALT), BikeKind.GRAVEL, 2)).isEqualTo(RollingResistance.of(ground(Surface.ASPHALT), BikeKind.GRAVEL, 0));
    }

    @Test
    void unknownGroundSpansRoadToSoftGround() {
        Range unknown = RollingResistance.of(Ground.UNKNOWN, BikeKind.GRAVEL, 0);
        assertThat(unknown.low()).isLessThanOrEqualTo(RollingResistance.of(ground(Surface.ASPHALT), BikeKind.GRAVEL, 0).mid());
        assertThat(unknown.high()).isGreaterThanOrEqualTo(RollingResistance.of(ground(Surface.GRASS), BikeKind.GRAVEL, 0).mid());
    }

    /** Rougher, harder, wetter and less skilled is never faster (common practice, no source). */
    @ParameterizedTest
    @EnumSource(BikeKind.class)
    void paceFallsWithRoughnessGradeWetAndSkill(BikeKind kind) {
        double before = Double.MAX_VALUE;
        for (Smoothness smoothness : Smoothness.values()) {
            double now = SpeedLimits.cap(ground(Surface.GROUND, smoothness, null, null), kind, 2, 0).mid();
            assertThat(now).isLessThan(before);
            before = now;
        }
        for (double scale = 1; scale <= 6; scale++) {
            assertThat(SpeedLimits.cap(ground(Surface.GROUND, null, null, scale), kind, 2, 0).mid())
                    .isLessThan(SpeedLimits.cap(ground(Surface.GROUND, null, null, scale - 1), kind, 2, 0).mid());
        }
        Ground trail = ground(Surface.GROUND, Smoothness.VERY_BAD, null, 1.0);
        for (int skill = 1; skill < 4; skill++) {
            assertThat(SpeedLimits.cap(trail, kind, skill, 0).mid()).isGreaterThan(SpeedLimits.cap(trail, kind, skill - 1, 0).mid());
        }
        assertThat(SpeedLimits.cap(trail, kind, 2, 2).mid()).isLessThan(SpeedLimits.cap(trail, kind, 2, 0).mid());
    }

    /** Suspension and wide tyres are faster on rugged ground, and nearly the same on a road (common practice, no source). */
    @Test
    void moreBikeIsFasterOnRuggedGround() {
        Ground rugged = ground(Surface.GROUND, Smoothness.HORRIBLE, null, 2.0);
        Ground road = ground(Surface.ASPHALT, Smoothness.EXCELLENT, null, null);
        for (int i = 1; i < BikeKind.values().length; i++) {
            assertThat(SpeedLimits.cap(rugged, BikeKind.values()[i], 2, 0).mid()).isGreaterThan(SpeedLimits.cap(rugged, BikeKind.values()[i - 1], 2, 0).mid());
        }
        assertThat(SpeedLimits.cap(road, BikeKind.TRAIL, 2, 0).mid()).isCloseTo(SpeedLimits.cap(road, BikeKind.ROAD, 2, 0).mid(), within(0.5));
    }

    /**
     * Braking from 10 to 5 m/s at 3 m/s² and gathering speed at 0.5 m/s² takes 11.67 s over 87.5 m; at 10 m/s the same way takes less by
     * 5² / (2 x 10) x (1/3 + 1/0.5) = 2.917 s. Worked by hand.
     */
    @Test
    void aTurnCostsWhatBrakingAndGatheringCost() {
        double braking = 5 / 3.0;
        double gathering = 5 / 0.5;
        double way = 7.5 * (braking + gathering);
        assertThat(SpeedLimits.turn(10)).isCloseTo(braking + gathering - way / 10, within(1e-9));
        assertThat(SpeedLimits.turn(5)).isZero();
        assertThat(SpeedLimits.turn(3)).isZero();
    }
}
