package courseworthy.ride;

import courseworthy.course.Ground;
import courseworthy.course.Smoothness;
import courseworthy.course.Surface;
import java.util.List;

/**
 * How rough ground is, as one number: 0 like new asphalt, 1 where a road tyre begins to suffer, 2 rough, 3 rugged, 4 severe, 5 barely
 * rideable. OpenStreetMap's tags are ordered words (smoothness by which vehicle can use the way, mtb:scale by obstacles, tracktype by
 * firmness); laying them on one scale is practice, no source. Rougher words never give a lower number.
 *
 * <p>Rule for several tags: smoothness and mtb:scale speak of roughness itself, so where either is given the mean of those given
 * counts; only where neither is, the mean of what tracktype and surface suggest does, over their wide ranges. On paved ground an
 * mtb:scale below 1 says nothing. Roots and ruts add a fifth each.
 */
public final class Roughness {

    /** The roughest there is. */
    public static final double MOST = 5;
    private static final double ROOTS_OR_RUTS = 0.2;

    /** By tracktype, grade 1 to 5 (practice, no source). */
    private static final Range[] BY_TRACK_GRADE = {
        new Range(0.2, 0.7, 1.2), new Range(0.7, 1.3, 2.0), new Range(1.2, 1.9, 2.7), new Range(1.6, 2.4, 3.3), new Range(1.8, 2.7, 3.8)};
    /** The same by mtb:scale, 0 to 6 (practice, no source). */
    private static final Range[] BY_MTB_SCALE = {
        new Range(0.7, 1.3, 2.0), new Range(1.8, 2.4, 3.0), new Range(2.8, 3.3, 3.8), new Range(3.6, 4.1, 4.6), new Range(4.2, 4.6, 4.9),
        new Range(4.6, 4.9, 5.0), Range.exact(MOST)};

    private Roughness() {
    }

    /** The roughness of a ground, or null where no tag tells. */
    public static Range of(Ground ground) {
        Range range = direct(ground);
        if (range == null) {
            range = indirect(ground);
        }
        return range == null ? null : shaken(range, ground);
    }

    /** The roughness of ground that may be one of several, the likely one first; null where no tag tells. */
    public static Range of(List<Ground> possible) {
        return PossibleGround.range(possible, Roughness::of);
    }

    /** The roughness where it is so many technical grades harder than is written; null where no tag tells. */
    static Range of(Ground ground, double harder) {
        Range range = of(ground);
        return range == null || harder == 0 ? range
                : new Range(held(range.low() + harder), held(range.mid() + harder), held(range.high() + harder));
    }

    private static double held(double roughness) {
        return Math.max(0, Math.min(MOST, roughness));
    }

    private static Range direct(Ground ground) {
        Range bySmoothness = ground.smoothness() == null ? null : of(ground.smoothness());
        Range byScale = scaleSpeaks(ground) ? ofMtbScale(ground.mtbScale()) : null;
        return mean(bySmoothness, byScale);
    }

    private static boolean scaleSpeaks(Ground ground) {
        boolean paved = ground.surface() != null && ground.surface().family() == Surface.Family.PAVED;
        return ground.mtbScale() != null && (!paved || ground.mtbScale() >= 1);
    }

    private static Range indirect(Ground ground) {
        Range byTrack = ground.trackGrade() == null ? null : BY_TRACK_GRADE[ground.trackGrade() - 1];
        Range bySurface = ground.surface() == null ? null : of(ground.surface());
        return mean(byTrack, bySurface);
    }

    private static Range mean(Range a, Range b) {
        if (a == null || b == null) {
            return a == null ? b : a;
        }
        return new Range((a.low() + b.low()) / 2, (a.mid() + b.mid()) / 2, (a.high() + b.high()) / 2);
    }

    private static Range shaken(Range range, Ground ground) {
        double more = (Boolean.TRUE.equals(ground.roots()) ? ROOTS_OR_RUTS : 0) + (Boolean.TRUE.equals(ground.ruts()) ? ROOTS_OR_RUTS : 0);
        return new Range(Math.min(MOST, range.low() + more), Math.min(MOST, range.mid() + more), Math.min(MOST, range.high() + more));
    }

    /** By smoothness alone. */
    public static Range of(Smoothness smoothness) {
        return switch (smoothness) {
            case EXCELLENT -> new Range(0, 0.1, 0.2);
            case GOOD -> new Range(0.1, 0.3, 0.6);
            case INTERMEDIATE -> new Range(0.6, 0.9, 1.3);
            case BAD -> new Range(1.3, 1.7, 2.2);
            case VERY_BAD -> new Range(2.1, 2.6, 3.0);
            case HORRIBLE -> new Range(2.9, 3.4, 3.9);
            case VERY_HORRIBLE -> new Range(3.8, 4.3, 4.7);
            case IMPASSABLE -> new Range(4.6, 5, 5);
        };
    }

    /** By surface alone: wide, since one surface may be well or badly kept. */
    public static Range of(Surface surface) {
        return switch (surface) {
            case ASPHALT -> new Range(0, 0.3, 1.0);
            case CHIPSEAL -> new Range(0.2, 0.5, 1.1);
            case CONCRETE -> new Range(0.1, 0.4, 1.2);
            case PAVED -> new Range(0, 0.5, 1.5);
            case METAL, WOOD -> new Range(0.2, 0.8, 1.8);
            case CONCRETE_PLATES -> new Range(0.4, 0.9, 1.7);
            case CONCRETE_LANES -> new Range(0.5, 1.1, 2.0);
            case PAVING_STONES, BRICKS -> new Range(0.4, 0.8, 1.5);
            case SETT -> new Range(1.0, 1.6, 2.4);
            case COBBLESTONE -> new Range(1.3, 2.0, 2.8);
            case UNHEWN_COBBLESTONE -> new Range(1.9, 2.6, 3.4);
            case COMPACTED -> new Range(0.5, 1.0, 1.8);
            case FINE_GRAVEL -> new Range(0.6, 1.1, 1.8);
            case UNPAVED -> new Range(0.7, 1.6, 3.0);
            case GRAVEL -> new Range(1.0, 2.0, 3.0);
            case PEBBLESTONE -> new Range(1.3, 2.2, 3.1);
            case GROUND -> new Range(1.0, 2.2, 3.5);
            case DIRT, EARTH, CLAY -> new Range(0.9, 2.0, 3.3);
            case GRASS, WOODCHIPS -> new Range(1.2, 2.0, 3.0);
            case ROCK, STONE -> new Range(2.2, 3.4, 4.6);
            case MUD -> new Range(1.2, 2.4, 3.6);
            case SAND, SNOW -> new Range(0.8, 1.8, 3.0);
            case ICE -> new Range(0.1, 1.0, 2.5);
        };
    }

    /** By mtb:scale, whose + and - are thirds of a grade. */
    private static Range ofMtbScale(double grade) {
        double held = Math.max(0, Math.min(BY_MTB_SCALE.length - 1.0, grade));
        int below = (int) Math.min(BY_MTB_SCALE.length - 2.0, Math.floor(held));
        double part = held - below;
        Range a = BY_MTB_SCALE[below];
        Range b = BY_MTB_SCALE[below + 1];
        return new Range(between(a.low(), b.low(), part), between(a.mid(), b.mid(), part), between(a.high(), b.high(), part));
    }

    private static double between(double a, double b, double part) {
        return a + (b - a) * part;
    }
}
