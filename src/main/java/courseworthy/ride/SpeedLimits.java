package courseworthy.ride;

import courseworthy.course.Ground;
import courseworthy.course.Stretch;
import courseworthy.course.Surface;
import java.util.List;

/**
 * How fast ground lets a rider go whatever the power: on descents and on technical ground, by roughness, technical grade, skill, bike
 * and wet. No published figures were found: the tables are practice, no source, with ends a fifth off. They hold speeds, not a promise of
 * safety.
 */
public final class SpeedLimits {

    /** Speed that a good rider lets a gravel bike run at on ground of roughness 0, 1, .. 5, m/s. */
    private static final double[] BY_ROUGHNESS = {19.4, 15.3, 11.7, 8.6, 5.6, 2.2};
    /** The same by technical grade 0, 1, .. 6, m/s. */
    private static final double[] BY_TECHNICAL_GRADE = {12.5, 8.9, 5.8, 3.6, 2.2, 1.4, 1.1};
    /** Factors for novice, fair, good and expert riders. */
    private static final double[] BY_SKILL = {0.75, 0.88, 1.0, 1.12};
    /** From this roughness on the kind of bike counts in full. */
    private static final double BIKE_COUNTS_FROM = 2;
    private static final double DAMP = 0.95;
    private static final double WET = 0.88;
    /** How far it may be off. */
    private static final double OFF = 0.2;
    /** Where nothing is known of the ground. */
    private static final Range UNKNOWN = new Range(8, 13, 19);

    /**
     * How a bend is leant into on dry pavement: 20 degrees is what cycle paths are laid out for (AASHTO Guide for the Development of Bicycle
     * Facilities, 2012, from memory), those who race lean more; m/s².
     */
    private static final Range SIDEWAYS = new Range(3.0, 4.0, 5.2);
    /** The same on ground that is not paved, and what wet leaves of it (practice: a tyre's grip there is about half as much). */
    private static final double LOOSE = 0.65;
    private static final double WET_PAVED = 0.75;
    private static final double WET_LOOSE = 0.85;

    /** Speed in a turn that must be braked for, m/s, and the way back to speed, m/s² (common practice, no source). */
    public static final double TURN_SPEED = 5;
    /** Braking before what must be taken slower, m/s² (common practice, no source). */
    public static final double BRAKING = 3;
    public static final double GATHERING = 0.5;

    private SpeedLimits() {
    }

    /**
     * The cap, m/s.
     *
     * @param ground  what is known
     * @param kind    the bike
     * @param skill   0 novice to 3 expert
     * @param wetness 0 dry, 1 damp, 2 wet
     */
    public static Range cap(Ground ground, BikeKind kind, int skill, int wetness) {
        return cap(ground, 0, kind, skill, wetness);
    }

    /** The cap where it is so many technical grades harder than is written, m/s. */
    static Range cap(Ground ground, double harder, BikeKind kind, int skill, int wetness) {
        Range roughness = Roughness.of(ground, harder);
        double can = BY_SKILL[skill] * (wetness == 0 ? 1 : wetness == 1 ? DAMP : WET);
        if (roughness == null) {
            return UNKNOWN.times(can);
        }
        return Range.of(of -> of[0] * cap(ground, harder, kind, of[1]), Range.within(1, OFF), roughness).times(can);
    }

    /** How fast a rider of a skill takes ground and bends, as a share of one of good skill. */
    public static double pace(int skill) {
        return BY_SKILL[skill];
    }

    /**
     * The speed with which a stretch is passed that is not ridden, m/s; null where it is. A cap at the speed of walking is walked
     * ({@link RideSimulator}).
     */
    static Range passing(Stretch stretch) {
        return stretch.onFoot() ? Walking.SPEED : stretch.isFerried() ? Range.exact(stretch.length() / stretch.passage().ferry()) : null;
    }

    /** The cap on ground that may be one of several, the likely one first, where it is so many technical grades harder than is written, m/s. */
    static Range cap(List<Ground> possible, double harder, BikeKind kind, int skill, int wetness) {
        Range out = PossibleGround.range(possible, each -> Roughness.of(each) == null ? null : cap(each, harder, kind, skill, wetness));
        return out == null ? cap(possible.get(0), harder, kind, skill, wetness) : out;
    }

    /** Sideways acceleration a rider takes bends with on ground that may be one of several, the likely one first, m/s². */
    static Range sideways(List<Ground> possible, int skill, int wetness) {
        return PossibleGround.range(possible, each -> sideways(each, skill, wetness));
    }

    private static double cap(Ground ground, double harder, BikeKind kind, double roughness) {
        double smooth = interpolated(BY_ROUGHNESS, roughness);
        boolean graded = ground.mtbScale() != null && !paved(ground);
        double technical = graded ? interpolated(BY_TECHNICAL_GRADE, ground.mtbScale() + harder) : Double.MAX_VALUE;
        double bike = 1 + (kind.paceOnRough() - 1) * Math.min(1, roughness / BIKE_COUNTS_FROM);
        return Math.min(smooth, technical) * bike;
    }

    /**
     * Sideways acceleration a rider takes bends with, m/s².
     *
     * @param ground  what is known; unknown ground is taken for loose at the low end and paved at the high
     * @param skill   0 novice to 3 expert
     * @param wetness 0 dry, 1 damp, 2 wet
     */
    public static Range sideways(Ground ground, int skill, int wetness) {
        double can = BY_SKILL[skill] * BY_SKILL[skill];
        boolean unknown = ground.surface() == null;
        double low = paved(ground) ? wet(WET_PAVED, wetness) : LOOSE * wet(WET_LOOSE, wetness);
        double high = paved(ground) || unknown ? wet(WET_PAVED, wetness) : LOOSE * wet(WET_LOOSE, wetness);
        return new Range(low * SIDEWAYS.low(), (low + high) / 2 * SIDEWAYS.mid(), high * SIDEWAYS.high()).times(can);
    }

    private static double wet(double inTheWet, int wetness) {
        return wetness == 0 ? 1 : wetness == 1 ? (1 + inTheWet) / 2 : inTheWet;
    }

    private static boolean paved(Ground ground) {
        return ground.surface() != null && ground.surface().family() == Surface.Family.PAVED;
    }

    private static double interpolated(double[] table, double at) {
        double held = Math.max(0, Math.min(table.length - 1.0, at));
        int below = (int) Math.min(table.length - 2.0, Math.floor(held));
        return table[below] + (table[below + 1] - table[below]) * (held - below);
    }

    /**
     * Time one turn costs: braking to {@value #TURN_SPEED} m/s and gathering speed again.
     *
     * @param speed before it, m/s
     * @return s
     */
    static double turn(double speed) {
        double lost = speed - TURN_SPEED;
        return lost <= 0 ? 0 : lost * lost / (2 * speed) * (1 / BRAKING + 1 / GATHERING);
    }
}
