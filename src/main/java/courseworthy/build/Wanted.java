package courseworthy.build;

import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.workshop.Detail;
import courseworthy.workshop.Part;
import courseworthy.workshop.Place;
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
record Wanted(Topic topic, Of of, Place place, BiFunction<Topic, Part, Long> value) {

    enum Of { PART, BIKE, GEARS, POWER }

    /** Rim depths from which a rim is mid and deep, m: as the topic is defined (common practice, no source). */
    private static final double MID = 0.035;
    private static final double DEEP = 0.050;

    private static final Map<String, Wanted> ALL = new LinkedHashMap<>();

    static {
        add("bike", Of.BIKE, null, (topic, bike) -> Aims.option(topic, bike.word(Detail.KIND)));
        add("rear travel", Of.BIKE, null, (topic, bike) -> Aims.ticks(topic, bike, Detail.REAR_TRAVEL));
        number("fork travel", Place.FORK, Detail.TRAVEL);
        word("fork legs", Place.FORK, Detail.LEGS);
        word("lockout", Place.FORK, Detail.LOCKOUT);
        add("seatpost", Of.PART, Place.SEATPOST, (topic, part) -> part == null ? null
                : Aims.option(topic, part.yes(Detail.DROPPER), "dropper", "rigid"));
        add("dropper stroke", Of.PART, Place.SEATPOST, (topic, part) -> part == null || !Boolean.TRUE.equals(part.yes(Detail.DROPPER)) ? null
                : Aims.ticks(topic, part, Detail.STROKE));
        for (String end : new String[] {"front", "rear"}) {
            boolean front = end.equals("front");
            Place tyre = front ? Place.FRONT_TYRE : Place.REAR_TYRE;
            Place wheel = front ? Place.FRONT_WHEEL : Place.REAR_WHEEL;
            add(end + " tyre width", Of.PART, tyre, (topic, part) -> part == null ? null
                    : Aims.ticks(topic, part, part.has(Detail.MEASURED_WIDTH) ? Detail.MEASURED_WIDTH : Detail.WIDTH));
            word(end + " tyre casing", tyre, Detail.CASING);
            word(end + " tyre tread", tyre, Detail.TREAD);
            add(end + " insert", Of.PART, front ? Place.FRONT_INSERT : Place.REAR_INSERT, (topic, part) -> Aims.option(topic, part != null, "yes", "no"));
            word(end + " rim material", wheel, Detail.RIM_MATERIAL);
            add(end + " rim depth", Of.PART, wheel, Wanted::depth);
            number(end + " rim inner width", wheel, Detail.RIM_INNER_WIDTH);
            number(end + " rotor", front ? Place.FRONT_ROTOR : Place.REAR_ROTOR, Detail.DIAMETER);
        }
        add("chainrings", Of.PART, Place.CHAINRING, (topic, part) -> part == null || !part.has(Detail.TEETH) ? null
                : Aims.option(topic, part.teeth(Detail.TEETH).length == 2, "two", "one"));
        add("easiest gear", Of.GEARS, null, null);
        add("hardest gear", Of.GEARS, null, null);
        add("largest step", Of.PART, Place.CASSETTE, Wanted::largestStep);
        number("bar width", Place.BAR, Detail.WIDTH);
        add("aero extensions", Of.PART, Place.EXTENSIONS, (topic, part) -> Aims.option(topic, part != null, "on", "off"));
        word("pedals", Place.PEDALS, Detail.PEDAL_KIND);
        add("power meter", Of.POWER, null, null);
        word("pad compound", Place.FRONT_PADS, Detail.COMPOUND);
    }

    /** Topics that are decided for both ends at once, with their other end. */
    private static final Map<String, Place> OTHER_END = Map.of("pad compound", Place.REAR_PADS);

    /** Where a topic is realised, or null where no part realises it. */
    static Wanted of(String topic) {
        return ALL.get(topic);
    }

    /** All the places where a topic is realised; none where no part realises it. */
    static List<Wanted> all(String topic) {
        Wanted first = ALL.get(topic);
        Place other = OTHER_END.get(topic);
        return first == null ? List.of() : other == null ? List.of(first) : List.of(first, new Wanted(first.topic, first.of, other, first.value));
    }

    Long got(Part part) {
        return value.apply(topic, part);
    }

    /** The easiest or the hardest gear of rings and cassette, in the topic's ticks; null where teeth are not known. */
    static Long gear(String topic, Part rings, Part cassette) {
        int[] teeth = rings == null ? null : rings.teeth(Detail.TEETH);
        int[] sprockets = cassette == null ? null : cassette.teeth(Detail.SPROCKETS);
        if (teeth == null || sprockets == null) {
            return null;
        }
        double ratio = topic.equals("easiest gear") ? (double) teeth[teeth.length - 1] / sprockets[sprockets.length - 1]
                : (double) teeth[0] / sprockets[0];
        return Topics.of(topic).resolution().ticks(ratio);
    }

    static Long power(Topic topic, Part crank, Part pedals, Part meter) {
        boolean on = meter != null || measures(crank) || measures(pedals);
        return Aims.option(topic, on ? "on" : "off");
    }

    /** What a build has on every topic that parts realise, in the topics' ticks or positions; null where that is not known. */
    static Map<Topic, Long> got(Part bike, Map<Place, Part> parts) {
        Map<Topic, Long> out = new LinkedHashMap<>();
        for (Wanted each : ALL.values()) {
            out.put(each.topic, switch (each.of) {
                case BIKE -> each.got(bike);
                case PART -> each.got(parts.get(each.place));
                case GEARS -> gear(each.topic.name(), parts.get(Place.CHAINRING), parts.get(Place.CASSETTE));
                case POWER -> power(each.topic, parts.get(Place.CRANK), parts.get(Place.PEDALS), parts.get(Place.METER));
            });
        }
        return out;
    }

    private static boolean measures(Part part) {
        return part != null && Boolean.TRUE.equals(part.yes(Detail.POWER_METER));
    }

    private static Long depth(Topic topic, Part wheel) {
        Double depth = wheel == null ? null : wheel.number(Detail.RIM_DEPTH);
        return depth == null ? null : Aims.option(topic, depth < MID ? "shallow" : depth <= DEEP ? "mid" : "deep");
    }

    private static Long largestStep(Topic topic, Part cassette) {
        int[] sprockets = cassette == null ? null : cassette.teeth(Detail.SPROCKETS);
        if (sprockets == null) {
            return null;
        }
        double most = 0;
        for (int i = 1; i < sprockets.length; i++) {
            most = Math.max(most, (double) sprockets[i] / sprockets[i - 1] - 1);
        }
        return topic.resolution().ticks(most);
    }

    private static void number(String topic, Place place, Detail detail) {
        add(topic, Of.PART, place, (on, part) -> part == null ? null : Aims.ticks(on, part, detail));
    }

    private static void word(String topic, Place place, Detail detail) {
        add(topic, Of.PART, place, (on, part) -> part == null ? null : Aims.option(on, part.word(detail)));
    }

    private static void add(String topic, Of of, Place place, BiFunction<Topic, Part, Long> value) {
        ALL.put(topic, new Wanted(Topics.of(topic), of, place, value));
    }
}
