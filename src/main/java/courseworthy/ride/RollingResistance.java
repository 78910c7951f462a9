package courseworthy.ride;

import courseworthy.course.Ground;
import courseworthy.course.Surface;
import java.util.List;

/**
 * Rolling resistance coefficient by ground, for the usual tyre of a kind of bike: what the tyre loses on new asphalt, what is lost
 * by being shaken, and what sinking in costs. Bands: asphalt 0.003 to 0.006, rough asphalt 0.006 to 0.010, firm gravel 0.008 to 0.015,
 * grass and soft ground 0.015 to 0.04, deep sand 0.1 and more (order of magnitude, from memory, cf. Wilson DG and Papadopoulos J,
 * Bicycling Science, 3rd ed. 2004, ch. 6); off-road cross-country course with 29-inch tyres 0.0205 to 0.0237, mean 0.0219 (Maier T,
 * Müller B, Allemann R, Steiner T, Wehrlin JP, J. Sports Sci. 2018). That roughness costs energy apart from the tyre's own loss, and
 * grows past it on rough roads: Turner MM (2024) arXiv:2405.00019. How the sum is split is practice, no source.
 */
public final class RollingResistance {

    /** What being shaken adds at roughness 0, 1, .. 5, for a gravel bike. */
    private static final double[] SHAKEN = {0, 0.0018, 0.0055, 0.0105, 0.0165, 0.025};
    /** How far the whole may be off besides the roughness itself, and apart from it: tyre, pressure and temperature. */
    private static final Range TYRE = new Range(0.80, 1, 1.25);
    /** Unpaved ground that is damp or wet rolls worse by these shares (common practice, no source). */
    private static final double DAMP = 1.05;
    private static final double WET = 1.15;
    /** What mud adds where a stretch turns to mud in rain and the ground is wet. */
    private static final double MUD = 0.03;
    /** Where nothing is known of the ground: from a good road to soft ground. */
    private static final Range UNKNOWN = new Range(0.006, 0.013, 0.026);

    private RollingResistance() {
    }

    /**
     * The coefficient.
     *
     * @param ground  what is known
     * @param kind    the bike
     * @param wetness 0 dry, 1 damp, 2 wet
     */
    public static Range of(Ground ground, BikeKind kind, int wetness) {
        return of(ground, 0, kind, wetness);
    }

    /** The coefficient where it is so many technical grades harder than is written. */
    static Range of(Ground ground, double harder, BikeKind kind, int wetness) {
        Range roughness = Roughness.of(ground, harder);
        if (roughness == null) {
            return UNKNOWN;
        }
        return Range.of(of -> of[0] * coefficient(ground, kind, wetness, of[1]), TYRE, roughness);
    }

    /** The coefficient on ground that may be one of several, the likely one first, where it is so many technical grades harder than is written. */
    static Range of(List<Ground> possible, double harder, BikeKind kind, int wetness) {
        Range out = PossibleGround.range(possible, each -> Roughness.of(each) == null ? null : of(each, harder, kind, wetness));
        return out == null ? UNKNOWN : out;
    }

    private static double coefficient(Ground ground, BikeKind kind, int wetness, double roughness) {
        double shaken = kind.roughnessLoss() * interpolated(roughness);
        double sum = kind.rollingOnSmooth() + shaken + sinking(ground);
        boolean paved = ground.surface() != null && ground.surface().family() == Surface.Family.PAVED;
        double wet = paved || wetness == 0 ? 1 : wetness == 1 ? DAMP : WET;
        boolean mud = wetness == 2 && Boolean.TRUE.equals(ground.mudWhenWet());
        return sum * wet + (mud ? MUD : 0);
    }

    private static double interpolated(double roughness) {
        int below = (int) Math.min(SHAKEN.length - 2.0, Math.floor(roughness));
        return SHAKEN[below] + (SHAKEN[below + 1] - SHAKEN[below]) * (roughness - below);
    }

    /** What sinking into the ground costs: the softest of what surface, tracktype and a word of sand say. */
    private static double sinking(Ground ground) {
        double soft = ground.surface() == null ? 0 : bySurface(ground.surface());
        soft = Math.max(soft, ground.trackGrade() == null ? 0 : byTrackGrade(ground.trackGrade()));
        return Math.max(soft, Boolean.TRUE.equals(ground.sand()) ? bySurface(Surface.SAND) : 0);
    }

    private static double bySurface(Surface surface) {
        return switch (surface) {
            case SAND -> 0.045;
            case SNOW -> 0.035;
            case MUD -> 0.030;
            case GRASS, WOODCHIPS -> 0.010;
            case PEBBLESTONE -> 0.006;
            case GROUND, EARTH -> 0.004;
            case GRAVEL, DIRT, CLAY -> 0.003;
            case FINE_GRAVEL, UNPAVED -> 0.0015;
            case COMPACTED -> 0.001;
            default -> 0;
        };
    }

    private static double byTrackGrade(int grade) {
        return switch (grade) {
            case 1 -> 0;
            case 2 -> 0.0008;
            case 3 -> 0.002;
            case 4 -> 0.005;
            default -> 0.010;
        };
    }
}
