package courseworthy.analysis;

import courseworthy.demand.Demands;
import courseworthy.demand.DerivedMeasures;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.topic.End;
import courseworthy.topic.SettledTopic;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Finds masses, bikes, widths and ceilings from which measures derive that are asked for: pressures and narrowest tyres, which nobody states. */
final class PressureRanges {

    /** Start-line masses that are tried, half kilograms: 40 to 200 kg. */
    private static final long LIGHTEST = 80;
    private static final long HEAVIEST = 400;
    /** Tyre widths that are tried, mm. */
    private static final int STEP = 4;
    /** Ceilings of pressure that are tried, steps of 0.05 bar: 2 to 6 bar. */
    private static final List<Long> CEILINGS = List.of(100L, 80L, 60L, 40L, 120L);

    private final Box box;
    private final Map<Measure, ValueSet> wanted;
    private final Map<Measure, MeasureValue> measures;
    private final Map<Topic, SettledTopic> settled;

    private PressureRanges(Box box, Map<Measure, ValueSet> wanted, Map<Measure, MeasureValue> measures, Map<Topic, SettledTopic> settled) {
        this.box = box;
        this.wanted = wanted;
        this.measures = measures;
        this.settled = settled;
    }

    /** Adds what brings the pressures that are wanted. @return whether anything does */
    static boolean bring(Box box, Map<Measure, ValueSet> wanted, Map<Measure, MeasureValue> measures, Map<Topic, SettledTopic> settled) {
        return new PressureRanges(box, wanted, measures, settled).found();
    }

    private boolean found() {
        ValueSet masses = allowed(Measure.START_LINE_MASS);
        for (End end : End.values()) {
            for (Topic topic : List.of(Topics.FRONT_TYRE_CASING.at(end), Topics.FRONT_INSERT.at(end))) {
                settled.putIfAbsent(topic, new SettledTopic(topic, true, topic.standard()));
            }
        }
        Topic bike = Topics.BIKE;
        ValueSet bikes = allowed(bike);
        for (long kind = bike.least(); kind <= bike.most(); kind++) {
            if (bikes.meets(ValueSet.of(kind, kind)) && widths(new SettledTopic(bike, true, kind), masses)) {
                return true;
            }
        }
        return false;
    }

    /** The front tyre is never the narrower: both as wide, unless something else is asked. */
    private boolean widths(SettledTopic bike, ValueSet masses) {
        Topic front = Topics.FRONT_TYRE_WIDTH;
        Topic rear = Topics.REAR_TYRE_WIDTH;
        boolean given = settled.containsKey(front) && settled.containsKey(rear);
        for (long width = front.least(); width <= front.most(); width += given ? front.most() : STEP) {
            Map<Topic, SettledTopic> tried = new HashMap<>(settled);
            tried.put(bike.topic(), bike);
            tried.putIfAbsent(front, new SettledTopic(front, true, width));
            tried.putIfAbsent(rear, new SettledTopic(rear, true, width));
            if (mass(tried, masses)) {
                return true;
            }
        }
        return false;
    }

    private boolean mass(Map<Topic, SettledTopic> tried, ValueSet masses) {
        for (long ceiling : ceilings()) {
            for (long mass = LIGHTEST; mass <= HEAVIEST; mass++) {
                Map<Measure, MeasureValue> with = new EnumMap<>(Measure.class);
                with.putAll(measures);
                with.put(Measure.START_LINE_MASS, MeasureValue.exact(mass));
                if (asksForACeiling()) {
                    with.put(Measure.PRESSURE_CEILING, MeasureValue.exact(ceiling));
                }
                if (masses.meets(ValueSet.of(mass, mass)) && brings(with, tried)) {
                    measures.putAll(with);
                    settled.putAll(tried);
                    return true;
                }
            }
        }
        return false;
    }

    /** The narrowest tyres follow from the ceiling; nothing else does. */
    private boolean asksForACeiling() {
        return wanted.containsKey(Measure.NARROWEST_FRONT_TYRE) || wanted.containsKey(Measure.NARROWEST_REAR_TYRE);
    }

    private List<Long> ceilings() {
        MeasureValue given = measures.get(Measure.PRESSURE_CEILING);
        return given != null ? List.of(given.mid()) : asksForACeiling() ? CEILINGS : CEILINGS.subList(0, 1);
    }

    private boolean brings(Map<Measure, MeasureValue> with, Map<Topic, SettledTopic> tried) {
        Demands demands = new Demands(with, List.of(), List.of());
        for (Map.Entry<Measure, ValueSet> one : wanted.entrySet()) {
            MeasureValue value = DerivedMeasures.after(one.getKey().layer(), demands, tried).get(one.getKey());
            if (value == null || !one.getValue().meets(ValueSet.of(value.mid(), value.mid()))) {
                return false;
            }
        }
        return true;
    }

    private ValueSet allowed(Object asked) {
        for (int i = 0; i < box.size(); i++) {
            if (box.thing(i).asked() == asked && box.values(i).spans() > 0) {
                return box.values(i);
            }
        }
        return ValueSet.of(Long.MIN_VALUE, Long.MAX_VALUE);
    }
}
