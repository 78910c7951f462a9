package courseworthy.build;

import courseworthy.topic.End;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;

/**
 * Where a topic is realised: in one part, in a bike, in rings and cassette together, or in whatever measures power.
 *
 * @param topic the topic
 * @param of    by what
 * @param place the place of the part; null for other than parts
 * @param value what a part has, in the topic's ticks or positions; null where it does not say
 */
record TopicPlacement(Topic topic, Of of, MountingPlace place, BiFunction<Topic, Part, Long> value) {

    enum Of { PART, BIKE, GEARS, POWER }

    /** Rim depths from which a rim is mid and deep, m: as the topic is defined (common practice, no source). */
    private static final double MID = 0.035;
    private static final double DEEP = 0.050;

    /** Drop bars are no wider, flat bars no narrower, m (common practice, no source). */
    static final double WIDEST_DROP_BAR = 0.56;

    private static final Map<Topic, TopicPlacement> ALL = new LinkedHashMap<>();

    static {
        add(Topics.BIKE, Of.BIKE, null, (topic, bike) -> BuildObjective.option(topic, bike.word(PartDetail.KIND)));
        add(Topics.REAR_TRAVEL, Of.BIKE, null, (topic, bike) -> BuildObjective.ticks(topic, bike, PartDetail.REAR_TRAVEL));
        number(Topics.FORK_TRAVEL, MountingPlace.FORK, PartDetail.TRAVEL);
        word(Topics.FORK_CHASSIS, MountingPlace.FORK, PartDetail.CHASSIS);
        word(Topics.LOCKOUT, MountingPlace.FORK, PartDetail.LOCKOUT);
        add(Topics.SEATPOST, Of.PART, MountingPlace.SEATPOST, (topic, part) -> part == null ? null
                : BuildObjective.option(topic, part.yes(PartDetail.DROPPER), "dropper", "rigid"));
        add(Topics.DROPPER_TRAVEL, Of.PART, MountingPlace.SEATPOST, (topic, part) -> part == null || !Boolean.TRUE.equals(part.yes(PartDetail.DROPPER)) ? null
                : BuildObjective.ticks(topic, part, PartDetail.DROPPER_TRAVEL));
        for (End end : End.values()) {
            boolean front = end == End.FRONT;
            MountingPlace tyre = front ? MountingPlace.FRONT_TYRE : MountingPlace.REAR_TYRE;
            MountingPlace wheel = front ? MountingPlace.FRONT_WHEEL : MountingPlace.REAR_WHEEL;
            add(Topics.FRONT_TYRE_WIDTH.at(end), Of.PART, tyre, (topic, part) -> part == null ? null
                    : BuildObjective.ticks(topic, part, part.has(PartDetail.MEASURED_WIDTH) ? PartDetail.MEASURED_WIDTH : PartDetail.WIDTH));
            word(Topics.FRONT_TYRE_CASING.at(end), tyre, PartDetail.CASING);
            word(Topics.FRONT_TYRE_TREAD.at(end), tyre, PartDetail.TREAD);
            add(Topics.FRONT_INSERT.at(end), Of.PART, front ? MountingPlace.FRONT_INSERT : MountingPlace.REAR_INSERT, (topic, part) -> BuildObjective.option(topic, part != null, "fitted", "none"));
            word(Topics.FRONT_RIM_MATERIAL.at(end), wheel, PartDetail.RIM_MATERIAL);
            add(Topics.FRONT_RIM_DEPTH.at(end), Of.PART, wheel, TopicPlacement::depth);
            number(Topics.FRONT_RIM_INNER_WIDTH.at(end), wheel, PartDetail.RIM_INNER_WIDTH);
            number(Topics.FRONT_ROTOR.at(end), front ? MountingPlace.FRONT_ROTOR : MountingPlace.REAR_ROTOR, PartDetail.DIAMETER);
        }
        add(Topics.CHAINRINGS, Of.PART, MountingPlace.CHAINRING, (topic, part) -> part == null || !part.has(PartDetail.TEETH) ? null
                : BuildObjective.option(topic, part.teeth(PartDetail.TEETH).length == 2, "two", "one"));
        add(Topics.EASIEST_GEAR, Of.GEARS, null, null);
        add(Topics.HARDEST_GEAR, Of.GEARS, null, null);
        add(Topics.LARGEST_STEP, Of.PART, MountingPlace.CASSETTE, TopicPlacement::largestStep);
        number(Topics.BAR_WIDTH, MountingPlace.BAR, PartDetail.WIDTH);
        add(Topics.AERO_EXTENSIONS, Of.PART, MountingPlace.EXTENSIONS, (topic, part) -> BuildObjective.option(topic, part != null, "fitted", "none"));
        word(Topics.PEDALS, MountingPlace.PEDALS, PartDetail.PEDAL_KIND);
        add(Topics.POWER_METER, Of.POWER, null, null);
        word(Topics.PAD_COMPOUND, MountingPlace.FRONT_PADS, PartDetail.COMPOUND);
    }

    /** Topics that are decided for both ends at once, with their other end. */
    private static final Map<Topic, MountingPlace> OTHER_END = Map.of(Topics.PAD_COMPOUND, MountingPlace.REAR_PADS);

    /** Where a topic is realised, or null where no part realises it. */
    static TopicPlacement of(Topic topic) {
        return ALL.get(topic);
    }

    /** All the places where a topic is realised; none where no part realises it. */
    static List<TopicPlacement> all(Topic topic) {
        TopicPlacement first = ALL.get(topic);
        MountingPlace other = OTHER_END.get(topic);
        return first == null ? List.of() : other == null ? List.of(first) : List.of(first, new TopicPlacement(first.topic, first.of, other, first.value));
    }

    Long got(Part part) {
        return value.apply(topic, part);
    }

    /** Whether a bar is a drop bar: as it is labelled, else by its width; null where neither is known. */
    static Boolean isDropBar(Part bar) {
        String shape = bar.word(PartDetail.BAR_SHAPE);
        if ("drop".equals(shape) || "flat".equals(shape)) {
            return shape.equals("drop");
        }
        Double width = bar.number(PartDetail.WIDTH);
        return width == null ? null : Boolean.valueOf(width <= WIDEST_DROP_BAR);
    }

    /** The easiest or the hardest gear of rings and cassette, in the topic's ticks; null where teeth are not known. */
    static Long gear(Topic topic, Part rings, Part cassette) {
        int[] teeth = rings == null ? null : rings.teeth(PartDetail.TEETH);
        int[] sprockets = cassette == null ? null : cassette.teeth(PartDetail.SPROCKETS);
        if (teeth == null || sprockets == null) {
            return null;
        }
        double ratio = topic == Topics.EASIEST_GEAR ? (double) teeth[teeth.length - 1] / sprockets[sprockets.length - 1]
                : (double) teeth[0] / sprockets[0];
        return topic.resolution().ticks(ratio);
    }

    static Long power(Topic topic, Part crank, Part pedals, Part meter) {
        boolean on = meter != null || measures(crank) || measures(pedals);
        return BuildObjective.option(topic, on ? "fitted" : "none");
    }

    /** What a build has on every topic that parts realise, in the topics' ticks or positions; null where that is not known. */
    static Map<Topic, Long> got(Part bike, Map<MountingPlace, Part> parts) {
        Map<Topic, Long> out = new LinkedHashMap<>();
        for (TopicPlacement each : ALL.values()) {
            out.put(each.topic, switch (each.of) {
                case BIKE -> each.got(bike);
                case PART -> each.got(parts.get(each.place));
                case GEARS -> gear(each.topic, parts.get(MountingPlace.CHAINRING), parts.get(MountingPlace.CASSETTE));
                case POWER -> power(each.topic, parts.get(MountingPlace.CRANK), parts.get(MountingPlace.PEDALS), parts.get(MountingPlace.METER));
            });
        }
        return out;
    }

    private static boolean measures(Part part) {
        return part != null && Boolean.TRUE.equals(part.yes(PartDetail.POWER_METER));
    }

    private static Long depth(Topic topic, Part wheel) {
        Double depth = wheel == null ? null : wheel.number(PartDetail.RIM_DEPTH);
        return depth == null ? null : BuildObjective.option(topic, depth < MID ? "shallow" : depth <= DEEP ? "mid" : "deep");
    }

    private static Long largestStep(Topic topic, Part cassette) {
        int[] sprockets = cassette == null ? null : cassette.teeth(PartDetail.SPROCKETS);
        if (sprockets == null) {
            return null;
        }
        double most = 0;
        for (int i = 1; i < sprockets.length; i++) {
            most = Math.max(most, (double) sprockets[i] / sprockets[i - 1] - 1);
        }
        return topic.resolution().ticks(most);
    }

    private static void number(Topic topic, MountingPlace place, PartDetail detail) {
        add(topic, Of.PART, place, (on, part) -> part == null ? null : BuildObjective.ticks(on, part, detail));
    }

    private static void word(Topic topic, MountingPlace place, PartDetail detail) {
        add(topic, Of.PART, place, (on, part) -> part == null ? null : BuildObjective.option(on, part.word(detail)));
    }

    private static void add(Topic topic, Of of, MountingPlace place, BiFunction<Topic, Part, Long> value) {
        ALL.put(topic, new TopicPlacement(topic, of, place, value));
    }
}
