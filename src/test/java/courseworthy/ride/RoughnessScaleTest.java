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
 * Where each word of a map lies on the scale of roughness, 0 a new road, 1 where a road tyre begins to suffer, 2 rough, 3 rugged, 4 severe, 5 barely
 * rideable. That the words are ordered is published (wiki.openstreetmap.org, keys smoothness, tracktype, mtb:scale and surface); the places
 * are practice, no source, written here a second time by what each word means, so that none moves unnoticed.
 */
class RoughnessScaleTest {

    private static void near(Range range, double low, double mid, double high) {
        assertThat(new double[] {range.low(), range.mid(), range.high()}).containsExactly(new double[] {low, mid, high}, within(0.005));
    }

    /** By which wheels can use it: roller skates, road bikes, city bikes, trekking bikes, cars with clearance, off-road vehicles, tractors, none. */
    @ParameterizedTest
    @CsvSource({"EXCELLENT, 0, 0.1, 0.2", "GOOD, 0.1, 0.3, 0.6", "INTERMEDIATE, 0.6, 0.9, 1.3", "BAD, 1.3, 1.7, 2.2", "VERY_BAD, 2.1, 2.6, 3.0",
        "HORRIBLE, 2.9, 3.4, 3.9", "VERY_HORRIBLE, 3.8, 4.3, 4.7", "IMPASSABLE, 4.6, 5, 5"})
    void bySmoothness(Smoothness smoothness, double low, double mid, double high) {
        near(Roughness.of(ground(null, smoothness, null, null)), low, mid, high);
    }

    /** Solid, mostly solid, mixed, mostly soft, soft. */
    @ParameterizedTest
    @CsvSource({"1, 0.2, 0.7, 1.2", "2, 0.7, 1.3, 2.0", "3, 1.2, 1.9, 2.7", "4, 1.6, 2.4, 3.3", "5, 1.8, 2.7, 3.8"})
    void byTracktype(int grade, double low, double mid, double high) {
        near(Roughness.of(ground(null, null, grade, null)), low, mid, high);
    }

    /** No obstacles; small roots and stones; steps; high steps; steep with sharp turns; blocks; not rideable. A half grade lies half-way. */
    @ParameterizedTest
    @CsvSource({"0, 0.7, 1.3, 2.0", "1, 1.8, 2.4, 3.0", "2, 2.8, 3.3, 3.8", "3, 3.6, 4.1, 4.6", "4, 4.2, 4.6, 4.9", "5, 4.6, 4.9, 5.0", "6, 5, 5, 5",
        "0.5, 1.25, 1.85, 2.5", "5.5, 4.8, 4.95, 5"})
    void byTechnicalGrade(double grade, double low, double mid, double high) {
        near(Roughness.of(ground(null, null, null, grade)), low, mid, high);
    }

    /** A surface may be well or badly kept, so that its range is wide; paving first, then what is laid, then what grows or lies about. */
    @ParameterizedTest
    @CsvSource({"ASPHALT, 0, 0.3, 1.0", "CHIPSEAL, 0.2, 0.5, 1.1", "CONCRETE, 0.1, 0.4, 1.2", "PAVED, 0, 0.5, 1.5", "METAL, 0.2, 0.8, 1.8", "WOOD, 0.2, 0.8, 1.8",
        "CONCRETE_PLATES, 0.4, 0.9, 1.7", "CONCRETE_LANES, 0.5, 1.1, 2.0", "PAVING_STONES, 0.4, 0.8, 1.5", "BRICKS, 0.4, 0.8, 1.5", "SETT, 1.0, 1.6, 2.4",
        "COBBLESTONE, 1.3, 2.0, 2.8", "UNHEWN_COBBLESTONE, 1.9, 2.6, 3.4", "COMPACTED, 0.5, 1.0, 1.8", "FINE_GRAVEL, 0.6, 1.1, 1.8", "UNPAVED, 0.7, 1.6, 3.0",
        "GRAVEL, 1.0, 2.0, 3.0", "PEBBLESTONE, 1.3, 2.2, 3.1", "GROUND, 1.0, 2.2, 3.5", "DIRT, 0.9, 2.0, 3.3", "EARTH, 0.9, 2.0, 3.3", "CLAY, 0.9, 2.0, 3.3",
        "GRASS, 1.2, 2.0, 3.0", "WOODCHIPS, 1.2, 2.0, 3.0", "ROCK, 2.2, 3.4, 4.6", "STONE, 2.2, 3.4, 4.6", "MUD, 1.2, 2.4, 3.6", "SAND, 0.8, 1.8, 3.0",
        "SNOW, 0.8, 1.8, 3.0", "ICE, 0.1, 1.0, 2.5"})
    void bySurface(Surface surface, double low, double mid, double high) {
        near(Roughness.of(ground(surface)), low, mid, high);
    }

    /** Roots and ruts a fifth each; a grade of 1 counts on pavement, less does not; tracktype and surface are averaged. */
    @Test
    void severalWords() {
        Ground rooty = Ground.builder().surface(Surface.GROUND).smoothness(Smoothness.BAD).ruts(false).roots(true).build();
        near(Roughness.of(rooty), 1.5, 1.9, 2.4);
        Ground rutted = Ground.builder().surface(Surface.GROUND).smoothness(Smoothness.BAD).ruts(true).roots(false).build();
        near(Roughness.of(rutted), 1.5, 1.9, 2.4);
        near(Roughness.of(ground(Surface.ASPHALT, null, null, 1.0)), 1.8, 2.4, 3.0);
        near(Roughness.of(ground(Surface.ASPHALT, null, null, 0.9)), 0, 0.3, 1.0);
        near(Roughness.of(ground(Surface.GRAVEL, null, 2, null)), 0.85, 1.65, 2.5);
        near(Roughness.of(ground(Surface.GRAVEL, null, 2, null), 1.0), 1.85, 2.65, 3.5);
        near(Roughness.of(ground(Surface.GRAVEL, null, 2, null), -2.0), 0, 0, 0.5);
        near(Roughness.of(ground(Surface.ROCK), 2.0), 4.2, 5, 5);
    }
}
