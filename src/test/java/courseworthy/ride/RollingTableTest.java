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

/**
 * Rolling resistance in kg a tonne, as textbooks print it: asphalt 3 to 6, rough asphalt 6 to 10, firm gravel 8 to 15, grass and soft ground 15
 * to 40 (order of magnitude, from memory, cf. Wilson and Papadopoulos 2004, ch. 6), a cross-country course 20.5 to 23.7 (Maier et al. 2018). How
 * the sum is split between tyre, shaking and sinking is practice, no source: these are the parts that the bands are met with.
 */
class RollingTableTest {

    private static double kilogramsATonne(Ground ground, double harder, BikeKind kind, int wetness) {
        return 1000 * RollingResistance.of(ground, harder, kind, wetness).mid();
    }

    /**
     * A gravel tyre rolls at 6 on a new road; shaken, at 7.8 and 11.5 on roads and gravel (firm gravel's band), at 16.5 and 22.5 on rugged and severe
     * ground (about the cross-country course), at 31 on what is barely rideable. Paving has nothing to sink into.
     */
    @ParameterizedTest
    @CsvSource({"0, 6.0", "1, 7.8", "2, 11.5", "3, 16.5", "4, 22.5", "5, 31", "2.5, 14.0"})
    void shakenByRoughness(double roughness, double kilograms) {
        // Cobbles have roughness 2.
        assertThat(kilogramsATonne(ground(Surface.COBBLESTONE), roughness - 2, BikeKind.GRAVEL, 0)).isCloseTo(kilograms, within(0.05));
    }

    /** What sinking in adds to that of asphalt as smooth, by surface. */
    @ParameterizedTest
    @CsvSource({"SAND, 45", "SNOW, 35", "MUD, 30", "GRASS, 10", "WOODCHIPS, 10", "PEBBLESTONE, 6", "GROUND, 4", "EARTH, 4", "GRAVEL, 3", "DIRT, 3", "CLAY, 3",
        "FINE_GRAVEL, 1.5", "UNPAVED, 1.5", "COMPACTED, 1", "ROCK, 0", "CONCRETE, 0"})
    void sinkingBySurface(Surface surface, double kilograms) {
        double firm = kilogramsATonne(ground(Surface.ASPHALT, Smoothness.BAD, null, null), 0, BikeKind.GRAVEL, 0);
        assertThat(kilogramsATonne(ground(surface, Smoothness.BAD, null, null), 0, BikeKind.GRAVEL, 0) - firm).isCloseTo(kilograms, within(0.02 * kilograms + 0.01));
    }

    /** The same by tracktype, solid to soft; the softer of track and surface counts, and loose sand counts as sand. */
    @Test
    void sinkingByTrack() {
        double firm = kilogramsATonne(ground(null, Smoothness.BAD, null, null), 0, BikeKind.GRAVEL, 0);
        double[] soft = {0, 0.8, 2, 5, 10};
        for (int grade = 1; grade <= 5; grade++) {
            assertThat(kilogramsATonne(ground(null, Smoothness.BAD, grade, null), 0, BikeKind.GRAVEL, 0) - firm).isCloseTo(soft[grade - 1], within(0.02));
        }
        assertThat(kilogramsATonne(ground(Surface.GRAVEL, Smoothness.BAD, 4, null), 0, BikeKind.GRAVEL, 0) - firm).isCloseTo(5, within(0.02));
        assertThat(kilogramsATonne(ground(Surface.GRASS, Smoothness.BAD, 4, null), 0, BikeKind.GRAVEL, 0) - firm).isCloseTo(10, within(0.02));
        Ground sandy = Ground.builder().surface(Surface.GRAVEL).smoothness(Smoothness.BAD).sand(true).build();
        assertThat(kilogramsATonne(sandy, 0, BikeKind.GRAVEL, 0) - firm).isCloseTo(45, within(0.1));
    }

    /** Unpaved ground rolls a twentieth worse damp and 15 % wet; one that turns to mud 30 kg a tonne more once wet, and only then. */
    @Test
    void wetGroundRollsWorse() {
        Ground dirt = ground(Surface.DIRT, Smoothness.BAD, null, null);
        double dry = kilogramsATonne(dirt, 0, BikeKind.GRAVEL, 0);
        assertThat(kilogramsATonne(dirt, 0, BikeKind.GRAVEL, 1) / dry).isCloseTo(1.05, within(0.002));
        assertThat(kilogramsATonne(dirt, 0, BikeKind.GRAVEL, 2) / dry).isCloseTo(1.15, within(0.002));
        Ground muddy = Ground.builder().surface(Surface.DIRT).smoothness(Smoothness.BAD).mudWhenWet(true).build();
        assertThat(kilogramsATonne(muddy, 0, BikeKind.GRAVEL, 2) - kilogramsATonne(dirt, 0, BikeKind.GRAVEL, 2)).isCloseTo(30, within(0.3));
        assertThat(kilogramsATonne(muddy, 0, BikeKind.GRAVEL, 1)).isEqualTo(kilogramsATonne(dirt, 0, BikeKind.GRAVEL, 1));
    }

    /** Tyre, pressure and temperature leave a fifth less to a quarter more where the ground is known exactly. */
    @Test
    void theTyreLeavesAFifthToAQuarter() {
        Range worst = RollingResistance.of(ground(Surface.ROCK, null, null, 6.0), BikeKind.GRAVEL, 0);
        assertThat(worst.low() / worst.mid()).isCloseTo(0.80, within(0.002));
        assertThat(worst.high() / worst.mid()).isCloseTo(1.25, within(0.002));
    }

    /** Of unknown ground: rough asphalt's 6 to soft ground's 26, 13 as is likely (the bands above). */
    @Test
    void unknownGroundIsFromARoadToSoftGround() {
        Range unknown = RollingResistance.of(Ground.UNKNOWN, BikeKind.ROAD, 0);
        assertThat(new double[] {1000 * unknown.low(), 1000 * unknown.mid(), 1000 * unknown.high()}).containsExactly(new double[] {6, 13, 26}, within(0.05));
    }
}
