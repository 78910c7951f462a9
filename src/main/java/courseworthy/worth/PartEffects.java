package courseworthy.worth;

import java.util.HashMap;
import java.util.Map;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;

/**
 * What parts weigh and what they do to drag and rolling, from one value of a topic to another. Masses are those of ordinary parts (common
 * practice, no source); what is published is cited. Grip, comfort and what travel returns on rough ground are not in it: nothing is published
 * that they could be computed from.
 */
final class PartEffects {

    /** A tyre on a 622 mm bead, kg for each mm of its width (practice). */
    private static final double[] TYRE_PER_MM = {0.007, 0.011, 0.016};
    /**
     * A wider tyre of one type rolls about 10 % better (Rothhämel 2023, Int. J. Vehicle Systems Modelling and Testing 17:67-80); taken to lie
     * between two sizes as from 28 to 36 mm, so that rolling goes with width to this power, and none at the least.
     */
    private static final double[] ROLLING_BY_WIDTH = {0, -0.25, -0.42};
    /** Drag of 1 mm of width of a pair of tyres, as a share of the rider's: frontal area 0.7 m high, the rear in the lee (practice). */
    private static final double[] DRAG_PER_MM = {0.0005, 0.0020, 0.0035};
    /** A step of casing: kg a tyre, share of rolling (practice). */
    private static final double[] REINFORCED_MASS = {0.04, 0.08, 0.15};
    private static final double[] REINFORCED_ROLLING = {0.01, 0.04, 0.08};
    private static final double[] HEAVY_MASS = {0.10, 0.20, 0.35};
    private static final double[] HEAVY_ROLLING = {0.03, 0.08, 0.15};
    /**
     * A step of tread, share of rolling: a smooth tyre against a knobby one, four steps, 21 ± 15 % (Bertucci, Rogier, Reiser 2013, J. Sports
     * Sci. 31:1606-1613, from memory); cross-country tyres among themselves 0.0205 to 0.0237 (Maier et al. 2018, J. Sports Sci.).
     */
    private static final double[] TREAD_ROLLING = {0.015, 0.05, 0.09};
    private static final double[] TREAD_MASS = {0, 0.03, 0.06};
    private static final double[] INSERT_MASS = {0.06, 0.12, 0.25};
    private static final double[] INSERT_ROLLING = {0, 0.01, 0.03};
    /**
     * Better wheels take 2 to 3 % off the whole drag (Greenwell et al. 1995, Aeronaut. J. 99:109-120, second-hand), two steps of depth; of it
     * the rear has 0.6 of the front's part (the same: the rear wheel has 40 % less drag).
     */
    private static final double[] DEPTH_DRAG = {-0.0175, -0.0125, -0.005};
    private static final double[] DEPTH_MASS = {0, 0.06, 0.15};
    private static final double[] CARBON_MASS = {-0.30, -0.15, -0.05};
    private static final double[] FORK_TRAVEL_MASS = {0, 0.015, 0.06};
    private static final double[] REAR_TRAVEL_MASS = {0, 0.03, 0.10};
    private static final double[] FORK_CHASSIS_MASS = {0.10, 0.22, 0.40};
    private static final double[] DROPPER_MASS = {0.25, 0.40, 0.60};
    private static final double[] REMOTE_MASS = {0.03, 0.07, 0.15};
    private static final double[] ROTOR_MASS = {0.015, 0.025, 0.045};
    private static final double[] TUBE_MASS = {0.08, 0.14, 0.24};
    private static final double[] PLUG_MASS = {0.002, 0.004, 0.01};
    private static final double[] SECOND_RING_MASS = {0.15, 0.25, 0.40};
    /** A litre of water weighs 1 kg; drunk evenly until it is filled again, half of it is carried on average. */
    private static final double WATER_CARRIED = 0.5;

    /** What a change on a topic does, from one value to another in its ticks or positions. */
    private interface SetUpChange {
        Effect effect(Topic topic, long from, long to);
    }

    private static final Map<Topic, SetUpChange> CHANGES = new HashMap<>();

    static {
        atBothEnds(Topics.FRONT_TYRE_WIDTH, PartEffects::width);
        atBothEnds(Topics.FRONT_TYRE_CASING, (topic, from, to) -> from < to ? casing(from, to) : casing(to, from).times(-1));
        atBothEnds(Topics.FRONT_TYRE_TREAD, each(1, rolling(TREAD_ROLLING, 0.5).and(mass(TREAD_MASS))));
        atBothEnds(Topics.FRONT_INSERT, each(1, rolling(INSERT_ROLLING, 0.5).and(mass(INSERT_MASS))));
        CHANGES.put(Topics.FRONT_RIM_DEPTH, each(1, drag(DEPTH_DRAG, 1 / 1.6).and(mass(DEPTH_MASS))));
        CHANGES.put(Topics.REAR_RIM_DEPTH, each(1, drag(DEPTH_DRAG, 0.6 / 1.6).and(mass(DEPTH_MASS))));
        atBothEnds(Topics.FRONT_RIM_MATERIAL, each(1, mass(CARBON_MASS)));
        CHANGES.put(Topics.FORK_TRAVEL, each(10, mass(FORK_TRAVEL_MASS)));
        CHANGES.put(Topics.REAR_TRAVEL, each(10, mass(REAR_TRAVEL_MASS)));
        CHANGES.put(Topics.FORK_CHASSIS, each(1, mass(FORK_CHASSIS_MASS)));
        CHANGES.put(Topics.SEATPOST, each(1, mass(DROPPER_MASS)));
        CHANGES.put(Topics.LOCKOUT, (topic, from, to) -> mass(REMOTE_MASS).times((to == 2 ? 1 : 0) - (from == 2 ? 1 : 0)));
        atBothEnds(Topics.FRONT_ROTOR, each(20, mass(ROTOR_MASS)));
        CHANGES.put(Topics.TUBES, each(1, mass(TUBE_MASS)));
        CHANGES.put(Topics.PLUGS, each(1, mass(PLUG_MASS)));
        CHANGES.put(Topics.CHAINRINGS, each(1, mass(SECOND_RING_MASS)));
        CHANGES.put(Topics.WATER, (topic, from, to) -> mass(new double[] {0.3, WATER_CARRIED, 0.7})
                .times(topic.resolution().base(to) - topic.resolution().base(from)));
    }

    private PartEffects() {
    }

    private static void atBothEnds(Topic front, SetUpChange change) {
        CHANGES.put(front, change);
        CHANGES.put(front.otherEnd(), change);
    }

    /** The same effect for every so many ticks or positions. */
    private static SetUpChange each(double ticks, Effect effect) {
        return (topic, from, to) -> effect.times((to - from) / ticks);
    }

    /**
     * From one value of a topic to another, in its ticks or positions; a topic of front or rear counts one wheel. Null where nothing can be
     * computed.
     */
    static Effect between(Topic topic, long from, long to) {
        SetUpChange change = CHANGES.get(topic);
        return change == null ? null : change.effect(topic, from, to);
    }

    /** Of one tyre, which has half of the rolling and of the drag. */
    private static Effect width(Topic topic, long from, long to) {
        double before = topic.resolution().base(from);
        double after = topic.resolution().base(to);
        double millimetres = (after - before) * 1000;
        Effect rolling = Effect.rolling(rolled(before, after, ROLLING_BY_WIDTH[0]), rolled(before, after, ROLLING_BY_WIDTH[1]),
                rolled(before, after, ROLLING_BY_WIDTH[2]));
        return rolling.and(mass(TYRE_PER_MM).times(millimetres)).and(drag(DRAG_PER_MM, 0.5).times(millimetres));
    }

    private static double rolled(double before, double after, double power) {
        return 0.5 * (Math.pow(after / before, power) - 1);
    }

    /** From a lighter to a heavier one. */
    private static Effect casing(long from, long to) {
        Effect reinforced = from < 1 && to >= 1 ? rolling(REINFORCED_ROLLING, 0.5).and(mass(REINFORCED_MASS)) : Effect.NONE;
        return to > 1 && from < 2 ? reinforced.and(rolling(HEAVY_ROLLING, 0.5)).and(mass(HEAVY_MASS)) : reinforced;
    }

    private static Effect mass(double[] range) {
        return Effect.mass(range[0], range[1], range[2]);
    }

    private static Effect drag(double[] range, double factor) {
        return Effect.drag(range[0], range[1], range[2]).times(factor);
    }

    private static Effect rolling(double[] range, double factor) {
        return Effect.rolling(range[0], range[1], range[2]).times(factor);
    }
}
