package courseworthy.rulebase.check;

import courseworthy.demand.Demands;
import courseworthy.demand.Derived;
import courseworthy.demand.Measure;
import courseworthy.demand.Value;
import courseworthy.topic.Settled;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Finds masses, bikes, widths and ceilings from which measures derive that are asked for: pressures and narrowest tyres, which nobody states. */
final class Pressures {

    /** Start-line masses that are tried, half kilograms: 40 to 200 kg. */
    private static final long LIGHTEST = 80;
    private static final long HEAVIEST = 400;
    /** Tyre widths that are tried, mm. */
    private static final int STEP = 4;
    /** Ceilings of pressure that are tried, steps of 0.05 bar: 2 to 6 bar. */
    private static final List<Long> CEILINGS = List.of(100L, 80L, 60L, 40L, 120L);
    private static final List<String> WHEELS = List.of("front", "rear");

    private final Box box;
    private final Map<Measure, Values> wanted;
    private final Map<Measure, Value> measures;
    private final Map<Topic, Settled> settled;

    private Pressures(Box box, Map<Measure, Values> wanted, Map<Measure, Value> measures, Map<Topic, Settled> settled) {
        this.box = box;
        this.wanted = wanted;
        this.measures = measures;
        this.settled = settled;
    }

    /** Adds what brings the pressures that are wanted. @return whether anything does */
    static boolean bring(Box box, Map<Measure, Values> wanted, Map<Measure, Value> measures, Map<Topic, Settled> settled) {
        return new Pressures(box, wanted, measures, settled).found();
    }

    private boolean found() {
        Values masses = allowed(Measure.START_LINE_MASS);
        for (String wheel : WHEELS) {
            for (String plain : List.of("tyre casing", "insert")) {
                Topic topic = Topics.of(wheel + " " + plain);
                settled.putIfAbsent(topic, new Settled(topic, true, topic.standard()));
            }
        }
        Topic bike = Topics.of("bike");
        Values bikes = allowed(bike);
        for (long kind = bike.least(); kind <= bike.most(); kind++) {
            if (bikes.meets(Values.of(kind, kind)) && widths(new Settled(bike, true, kind), masses)) {
                return true;
            }
        }
        return false;
    }

    /** The front tyre is never the narrower: both as wide, unless something else is asked. */
    private boolean widths(Settled bike, Values masses) {
        Topic front = Topics.of("front tyre width");
        Topic rear = Topics.of("rear tyre width");
        boolean given = settled.containsKey(front) && settled.containsKey(rear);
        for (long width = front.least(); width <= front.most(); width += given ? front.most() : STEP) {
            Map<Topic, Settled> tried = new HashMap<>(settled);
            tried.put(bike.topic(), bike);
            tried.putIfAbsent(front, new Settled(front, true, width));
            tried.putIfAbsent(rear, new Settled(rear, true, width));
            if (mass(tried, masses)) {
                return true;
            }
        }
        return false;
    }

    private boolean mass(Map<Topic, Settled> tried, Values masses) {
        for (long ceiling : ceilings()) {
            for (long mass = LIGHTEST; mass <= HEAVIEST; mass++) {
                Map<Measure, Value> with = new EnumMap<>(Measure.class);
                with.putAll(measures);
                with.put(Measure.START_LINE_MASS, Value.exact(mass));
                if (asksForACeiling()) {
                    with.put(Measure.PRESSURE_CEILING, Value.exact(ceiling));
                }
                if (masses.meets(Values.of(mass, mass)) && brings(with, tried)) {
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
        Value given = measures.get(Measure.PRESSURE_CEILING);
        return given != null ? List.of(given.mid()) : asksForACeiling() ? CEILINGS : CEILINGS.subList(0, 1);
    }

    private boolean brings(Map<Measure, Value> with, Map<Topic, Settled> tried) {
        Demands demands = new Demands(with, List.of(), List.of());
        for (Map.Entry<Measure, Values> one : wanted.entrySet()) {
            Value value = Derived.after(one.getKey().layer(), demands, tried).get(one.getKey());
            if (value == null || !one.getValue().meets(Values.of(value.mid(), value.mid()))) {
                return false;
            }
        }
        return true;
    }

    private Values allowed(Object asked) {
        for (int i = 0; i < box.size(); i++) {
            if (box.thing(i).asked() == asked && box.values(i).spans() > 0) {
                return box.values(i);
            }
        }
        return Values.of(Long.MIN_VALUE, Long.MAX_VALUE);
    }
}
