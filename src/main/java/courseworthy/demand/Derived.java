package courseworthy.demand;

import courseworthy.ride.BikeKind;
import courseworthy.ride.Range;
import courseworthy.topic.Settled;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Measures that are known only once earlier layers are settled. */
public final class Derived {

    /** Pressures are known once widths, casings and inserts are. */
    private static final int PRESSURES_AFTER = 5;

    private static final Set<Measure> READ = Collections.unmodifiableSet(EnumSet.of(Measure.START_LINE_MASS, Measure.BIKE_AT_HAND,
            Measure.PAVED_SHARE, Measure.WORST_ROUGHNESS));
    private static final List<String> TOPICS_READ = List.of("bike", "front tyre width", "rear tyre width", "front tyre casing",
            "rear tyre casing", "front insert", "rear insert");

    private Derived() {
    }

    /** The measures from which others derive. */
    public static Set<Measure> read() {
        return READ;
    }

    /** The topics from which measures derive. */
    public static List<String> topicsRead() {
        return TOPICS_READ;
    }

    /**
     * The topics on which one measure hangs: the bike, and what is settled on its own wheel; the bike alone for a figure of the bike at hand;
     * none where it is what it is.
     */
    public static List<String> topicsRead(Measure measure) {
        List<String> out = new ArrayList<>();
        if (measure.ofTheBike()) {
            out.add(TOPICS_READ.get(0));
        } else if (measure.derived()) {
            String wheel = measure.written().substring(0, measure.written().indexOf(' '));
            for (String topic : TOPICS_READ) {
                if (topic.equals("bike") || topic.startsWith(wheel)) {
                    out.add(topic);
                }
            }
        }
        return out;
    }

    /**
     * What can be derived once a layer is settled.
     *
     * @param layer   the layer just settled
     * @param demands what is known so far
     * @param settled what is settled so far, by topic
     * @return the measures of that layer; a measure that cannot be told is not in it
     */
    public static Map<Measure, Value> after(int layer, Demands demands, Map<Topic, Settled> settled) {
        Map<Measure, Value> out = new EnumMap<>(Measure.class);
        if (layer == PRESSURES_AFTER) {
            pressures(true, demands, settled, out);
            pressures(false, demands, settled, out);
        }
        return out;
    }

    private static void pressures(boolean front, Demands demands, Map<Topic, Settled> settled, Map<Measure, Value> out) {
        BikeKind kind = kind(demands, settled);
        Value mass = demands.get(Measure.START_LINE_MASS);
        String side = front ? "front" : "rear";
        Settled width = known(settled, side + " tyre width");
        if (kind == null || mass == null || width == null || width.value() <= 0) {
            return;
        }
        Range load = base(Measure.START_LINE_MASS, mass).times(front ? kind.frontShare() : 1 - kind.frontShare());
        double metres = width.topic().resolution().base(width.value());
        boolean offRoad = !hard(demands);
        TyrePressure tyre = new TyrePressure(metres, word(settled, side + " tyre casing"), "yes".equals(word(settled, side + " insert")),
                offRoad);
        put(out, front ? Measure.FRONT_REFERENCE_PRESSURE : Measure.REAR_REFERENCE_PRESSURE, tyre.reference(load));
        put(out, front ? Measure.FRONT_PRESSURE_FLOOR : Measure.REAR_PRESSURE_FLOOR, tyre.floor(load, worst(demands)));
    }

    private static BikeKind kind(Demands demands, Map<Topic, Settled> settled) {
        Settled bike = known(settled, "bike");
        if (bike != null) {
            return BikeKind.of(bike.text());
        }
        Value atHand = demands.get(Measure.BIKE_AT_HAND);
        return atHand == null ? null : BikeKind.of(Measure.BIKE_AT_HAND.scale().words().get((int) atHand.mid()));
    }

    /** What is settled on a topic, or null where it is not, does not apply or is not possible. */
    private static Settled known(Map<Topic, Settled> settled, String topic) {
        Settled on = settled.get(Topics.of(topic));
        return on != null && on.known() ? on : null;
    }

    private static String word(Map<Topic, Settled> settled, String topic) {
        Settled on = known(settled, topic);
        return on == null ? "" : on.text();
    }

    /** Whether the ground is hard throughout: paved. */
    private static boolean hard(Demands demands) {
        Value paved = demands.get(Measure.PAVED_SHARE);
        return paved != null && paved.mid() == Measure.PAVED_SHARE.scale().resolution().ticks(1.0);
    }

    private static Range worst(Demands demands) {
        Value worst = demands.get(Measure.WORST_ROUGHNESS);
        return worst == null ? TyrePressure.UNKNOWN_GROUND : base(Measure.WORST_ROUGHNESS, worst);
    }

    private static Range base(Measure measure, Value value) {
        return new Range(measure.scale().resolution().base(value.low()), measure.scale().resolution().base(value.mid()),
                measure.scale().resolution().base(value.high()));
    }

    private static void put(Map<Measure, Value> out, Measure measure, Range pascal) {
        out.put(measure, new Value(measure.scale().resolution().ticks(pascal.low()), measure.scale().resolution().ticks(pascal.mid()),
                measure.scale().resolution().ticks(pascal.high())));
    }
}
