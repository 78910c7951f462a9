package courseworthy.build;

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

    private static final Map<String, TopicPlacement> ALL = new LinkedHashMap<>();

    static {
        add("bike", Of.BIKE, null, (topic, bike) -> BuildObjective.option(topic, bike.word(PartDetail.KIND)));
        add("rear travel", Of.BIKE, null, (topic, bike) -> BuildObjective.ticks(topic, bike, PartDetail.REAR_TRAVEL));
        number("fork travel", MountingPlace.FORK, PartDetail.TRAVEL);
        word("fork legs", MountingPlace.FORK, PartDetail.LEGS);
        word("lockout", MountingPlace.FORK, PartDetail.LOCKOUT);
        add("seatpost", Of.PART, MountingPlace.SEATPOST, (topic, part) -> part == null ? null
                : BuildObjective.option(topic, part.yes(PartDetail.DROPPER), "dropper", "rigid"));
        add("dropper stroke", Of.PART, MountingPlace.SEATPOST, (topic, part) -> part == null || !Boolean.TRUE.equals(part.yes(PartDetail.DROPPER)) ? null
                : BuildObjective.ticks(topic, part, PartDetail.STROKE));
        for (String end : new String[] {"front", "rear"}) {
            boolean front = end.equals("front");
            MountingPlace tyre = front ? MountingPlace.FRONT_TYRE : MountingPlace.REAR_TYRE;
            MountingPlace wheel = front ? MountingPlace.FRONT_WHEEL : MountingPlace.REAR_WHEEL;
            add(end + " tyre width", Of.PART, tyre, (topic, part) -> part == null ? null
                    : BuildObjective.ticks(topic, part, part.has(PartDetail.MEASURED_WIDTH) ? PartDetail.MEASURED_WIDTH : PartDetail.WIDTH));
            word(end + " tyre casing", tyre, PartDetail.CASING);
            word(end + " tyre tread", tyre, PartDetail.TREAD);
            add(end + " insert", Of.PART, front ? MountingPlace.FRONT_INSERT : MountingPlace.REAR_INSERT, (topic, part) -> BuildObjective.option(topic, part != null, "fitted", "none"));
            word(end + " rim material", wheel, PartDetail.RIM_MATERIAL);
            add(end + " rim depth", Of.PART, wheel, TopicPlacement::depth);
            number(end + " rim inner width", wheel, PartDetail.RIM_INNER_WIDTH);
            number(end + " rotor", front ? MountingPlace.FRONT_ROTOR : MountingPlace.REAR_ROTOR, PartDetail.DIAMETER);
        }
        add("chainrings", Of.PART, MountingPlace.CHAINRING, (topic, part) -> part == null || !part.has(PartDetail.TEETH) ? null
                : BuildObjective.option(topic, part.teeth(PartDetail.TEETH).length == 2, "two", "one"));
        add("easiest gear", Of.GEARS, null, null);
        add("hardest gear", Of.GEARS, null, null);
        add("largest step", Of.PART, MountingPlace.CASSETTE, TopicPlacement::largestStep);
        number("bar width", MountingPlace.BAR, PartDetail.WIDTH);
        add("aero extensions", Of.PART, MountingPlace.EXTENSIONS, (topic, part) -> BuildObjective.option(topic, part != null, "fitted", "none"));
        word("pedals", MountingPlace.PEDALS, PartDetail.PEDAL_KIND);
        add("power meter", Of.POWER, null, null);
        word("pad compound", MountingPlace.FRONT_PADS, PartDetail.COMPOUND);
    }

    /** Topics that are decided for both ends at once, with their other end. */
    private static final Map<String, MountingPlace> OTHER_END = Map.of("pad compound", MountingPlace.REAR_PADS);

    /** Where a topic is realised, or null where no part realises it. */
    static TopicPlacement of(String topic) {
        return ALL.get(topic);
    }

    /** All the places where a topic is realised; none where no part realises it. */
    static List<TopicPlacement> all(String topic) {
        TopicPlacement first = ALL.get(topic);
        MountingPlace other = OTHER_END.get(topic);
        return first == null ? List.of() : other == null ? List.of(first) : List.of(first, new TopicPlacement(first.topic, first.of, other, first.value));
    }

    Long got(Part part) {
        return value.apply(topic, part);
    }

    /** The easiest or the hardest gear of rings and cassette, in the topic's ticks; null where teeth are not known. */
    static Long gear(String topic, Part rings, Part cassette) {
        int[] teeth = rings == null ? null : rings.teeth(PartDetail.TEETH);
        int[] sprockets = cassette == null ? null : cassette.teeth(PartDetail.SPROCKETS);
        if (teeth == null || sprockets == null) {
            return null;
        }
        double ratio = topic.equals("easiest gear") ? (double) teeth[teeth.length - 1] / sprockets[sprockets.length - 1]
                : (double) teeth[0] / sprockets[0];
        return Topics.of(topic).resolution().ticks(ratio);
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
                case GEARS -> gear(each.topic.name(), parts.get(MountingPlace.CHAINRING), parts.get(MountingPlace.CASSETTE));
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

    private static void number(String topic, MountingPlace place, PartDetail detail) {
        add(topic, Of.PART, place, (on, part) -> part == null ? null : BuildObjective.ticks(on, part, detail));
    }

    private static void word(String topic, MountingPlace place, PartDetail detail) {
        add(topic, Of.PART, place, (on, part) -> part == null ? null : BuildObjective.option(on, part.word(detail)));
    }

    private static void add(String topic, Of of, MountingPlace place, BiFunction<Topic, Part, Long> value) {
        ALL.put(topic, new TopicPlacement(Topics.of(topic), of, place, value));
    }
}
