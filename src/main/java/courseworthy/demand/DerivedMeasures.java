package courseworthy.demand;

import courseworthy.ride.BikeKind;
import courseworthy.ride.Range;
import courseworthy.topic.End;
import courseworthy.topic.SettledTopic;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.units.PressureSteps;
import courseworthy.units.RuleValue;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Measures that are known only once earlier layers are settled. */
public final class DerivedMeasures {

    /** The narrowest tyres are known once the kind of bike is, before widths are (computing). */
    private static final int NARROWEST_AFTER = 1;
    /** Widths that are tried, mm: those of the topic (computing). */
    private static final int NARROWEST = (int) Topics.FRONT_TYRE_WIDTH.least();
    private static final int WIDEST = (int) Topics.FRONT_TYRE_WIDTH.most();
    /** Pressures are known once widths, casings and inserts are: the layer (computing). */
    private static final int PRESSURES_AFTER = 5;

    private static final Set<Measure> READ = Collections.unmodifiableSet(EnumSet.of(Measure.START_LINE_MASS, Measure.BIKE_AT_HAND,
            Measure.PAVED_SHARE, Measure.WORST_ROUGHNESS, Measure.PRESSURE_CEILING));
    private static final List<Topic> TOPICS_READ = List.of(Topics.BIKE, Topics.FRONT_TYRE_WIDTH, Topics.REAR_TYRE_WIDTH, Topics.FRONT_TYRE_CASING,
            Topics.REAR_TYRE_CASING, Topics.FRONT_INSERT, Topics.REAR_INSERT, Topics.FORK_TRAVEL);
    private static final Set<Measure> REAR_TRAVEL = Collections.unmodifiableSet(EnumSet.of(Measure.SHORTEST_REAR_TRAVEL, Measure.LONGEST_REAR_TRAVEL));

    private DerivedMeasures() {
    }

    /** The measures from which others derive. */
    public static Set<Measure> read() {
        return READ;
    }

    /** The topics from which measures derive. */
    public static List<Topic> topicsRead() {
        return TOPICS_READ;
    }

    /**
     * The topics on which one measure hangs: the bike, and what is settled on its own wheel; the bike alone for a figure of the bike at hand;
     * the fork's travel for what goes with it; none where it is what it is.
     */
    public static List<Topic> topicsRead(Measure measure) {
        List<Topic> out = new ArrayList<>();
        if (measure.ofTheBike()) {
            out.add(Topics.BIKE);
        } else if (REAR_TRAVEL.contains(measure)) {
            out.add(Topics.FORK_TRAVEL);
        } else if (measure.derived()) {
            String wheel = measure.written().substring(0, measure.written().indexOf(' '));
            for (Topic topic : TOPICS_READ) {
                if (topic == Topics.BIKE || topic.end() != null && topic.end().word().equals(wheel)) {
                    out.add(topic);
                }
            }
        }
        return out;
    }

    /** Whether a measure derives from other measures too, those of {@link #read()}, and not from decisions alone. */
    public static boolean readsMeasures(Measure measure) {
        return measure.derived() && !REAR_TRAVEL.contains(measure);
    }

    /**
     * What can be derived once a layer is settled.
     *
     * @param layer   the layer just settled
     * @param demands what is known so far
     * @param settled what is settled so far, by topic
     * @return the measures of that layer; a measure that cannot be told is not in it
     */
    public static Map<Measure, MeasureValue> after(int layer, Demands demands, Map<Topic, SettledTopic> settled) {
        Map<Measure, MeasureValue> out = new EnumMap<>(Measure.class);
        if (layer == NARROWEST_AFTER) {
            narrowest(true, demands, settled, out);
            narrowest(false, demands, settled, out);
        }
        if (layer == Topics.FORK_TRAVEL.layer()) {
            rearTravel(settled, out);
        }
        if (layer == PRESSURES_AFTER) {
            pressures(true, demands, settled, out);
            pressures(false, demands, settled, out);
        }
        return out;
    }

    private static void rearTravel(Map<Topic, SettledTopic> settled, Map<Measure, MeasureValue> out) {
        SettledTopic fork = known(settled, Topics.FORK_TRAVEL);
        if (fork != null) {
            double travel = fork.topic().resolution().base(fork.value());
            double apart = RuleValue.TRAVEL_DIFFERENCE.inBase();
            out.put(Measure.SHORTEST_REAR_TRAVEL, MeasureValue.exact(Measure.SHORTEST_REAR_TRAVEL.scale().resolution().ticks(travel - apart)));
            out.put(Measure.LONGEST_REAR_TRAVEL, MeasureValue.exact(Measure.LONGEST_REAR_TRAVEL.scale().resolution().ticks(travel + apart)));
        }
    }

    private static void pressures(boolean front, Demands demands, Map<Topic, SettledTopic> settled, Map<Measure, MeasureValue> out) {
        BikeKind kind = kind(demands, settled);
        MeasureValue mass = demands.get(Measure.START_LINE_MASS);
        End side = front ? End.FRONT : End.REAR;
        SettledTopic width = known(settled, Topics.FRONT_TYRE_WIDTH.at(side));
        if (kind == null || mass == null || width == null || width.value() <= 0) {
            return;
        }
        Range load = base(Measure.START_LINE_MASS, mass).times(front ? kind.frontShare() : 1 - kind.frontShare());
        double metres = width.topic().resolution().base(width.value());
        boolean offRoad = !hard(demands);
        TyrePressure tyre = new TyrePressure(metres, word(settled, Topics.FRONT_TYRE_CASING.at(side)), "fitted".equals(word(settled, Topics.FRONT_INSERT.at(side))),
                offRoad);
        put(out, front ? Measure.FRONT_REFERENCE_PRESSURE : Measure.REAR_REFERENCE_PRESSURE, told(tyre.reference(load)));
        put(out, front ? Measure.FRONT_PRESSURE_FLOOR : Measure.REAR_PRESSURE_FLOOR, tyre.floor(load, worst(demands)));
    }

    /** Casing and insert are not settled then: the casing that asks for most counts, so that no other goes over the ceiling. */
    private static void narrowest(boolean front, Demands demands, Map<Topic, SettledTopic> settled, Map<Measure, MeasureValue> out) {
        BikeKind kind = kind(demands, settled);
        MeasureValue mass = demands.get(Measure.START_LINE_MASS);
        MeasureValue ceiling = demands.get(Measure.PRESSURE_CEILING);
        if (kind == null || mass == null || ceiling == null) {
            return;
        }
        Range load = base(Measure.START_LINE_MASS, mass).times(front ? kind.frontShare() : 1 - kind.frontShare());
        double most = Measure.PRESSURE_CEILING.scale().resolution().base(ceiling.mid());
        boolean offRoad = !hard(demands);
        int low = narrowest(load.low(), most, offRoad);
        int mid = narrowest(load.mid(), most, offRoad);
        int high = narrowest(load.high(), most, offRoad);
        if (mid <= WIDEST) {
            out.put(front ? Measure.NARROWEST_FRONT_TYRE : Measure.NARROWEST_REAR_TYRE, new MeasureValue(low, mid, Math.min(high, WIDEST)));
        }
    }

    private static int narrowest(double load, double most, boolean offRoad) {
        int width = NARROWEST;
        while (width <= WIDEST && told(new TyrePressure(width / 1000.0, "light", false, offRoad).reference(load)) > most + 1) {
            width++;
        }
        return width;
    }

    /** A reference as it is told: of a tyre that is no wider than its ceiling asks, it is never above it. */
    private static double told(double pascal) {
        return PressureSteps.nearest(pascal);
    }

    private static Range told(Range pascal) {
        return new Range(told(pascal.low()), told(pascal.mid()), told(pascal.high()));
    }

    private static BikeKind kind(Demands demands, Map<Topic, SettledTopic> settled) {
        SettledTopic bike = known(settled, Topics.BIKE);
        if (bike != null) {
            return BikeKind.of(bike.text());
        }
        MeasureValue atHand = demands.get(Measure.BIKE_AT_HAND);
        return atHand == null ? null : BikeKind.of(Measure.BIKE_AT_HAND.scale().words().get((int) atHand.mid()));
    }

    /** What is settled on a topic, or null where it is not, does not apply or is not possible. */
    private static SettledTopic known(Map<Topic, SettledTopic> settled, Topic topic) {
        SettledTopic on = settled.get(topic);
        return on != null && on.known() ? on : null;
    }

    private static String word(Map<Topic, SettledTopic> settled, Topic topic) {
        SettledTopic on = known(settled, topic);
        return on == null ? "" : on.text();
    }

    /** Whether the ground is hard throughout: paved. */
    private static boolean hard(Demands demands) {
        MeasureValue paved = demands.get(Measure.PAVED_SHARE);
        return paved != null && paved.mid() == Measure.PAVED_SHARE.scale().resolution().ticks(1.0);
    }

    private static Range worst(Demands demands) {
        MeasureValue worst = demands.get(Measure.WORST_ROUGHNESS);
        return worst == null ? TyrePressure.UNKNOWN_GROUND : base(Measure.WORST_ROUGHNESS, worst);
    }

    private static Range base(Measure measure, MeasureValue value) {
        return new Range(measure.scale().resolution().base(value.low()), measure.scale().resolution().base(value.mid()),
                measure.scale().resolution().base(value.high()));
    }

    private static void put(Map<Measure, MeasureValue> out, Measure measure, Range pascal) {
        out.put(measure, new MeasureValue(measure.scale().resolution().ticks(pascal.low()), measure.scale().resolution().ticks(pascal.mid()),
                measure.scale().resolution().ticks(pascal.high())));
    }
}
