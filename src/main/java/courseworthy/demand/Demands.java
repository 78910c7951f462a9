package courseworthy.demand;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What one course, rider and day ask for. A measure that is not in it is unknown. Immutable. */
public final class Demands {

    private static final int MEASURES = Measure.values().length;

    private final Map<Measure, Value> values;
    /** The same by the measures' positions: every row of every sheet looks here. */
    private final Value[] byPosition = new Value[MEASURES];
    private final List<StretchFacts> stretches;
    private final List<Assumed> assumed;
    private final Estimated estimated;
    private final Occasion occasion;

    /**
     * Something that was not written and was therefore assumed.
     *
     * @param what  in words
     * @param value with its unit, in words
     */
    public record Assumed(String what, String value) {
    }

    public Demands(Map<Measure, Value> values, List<StretchFacts> stretches, List<Assumed> assumed) {
        this(values, stretches, assumed, null);
    }

    /** @param estimated what lies behind the measures, null where they were not surveyed */
    public Demands(Map<Measure, Value> values, List<StretchFacts> stretches, List<Assumed> assumed, Estimated estimated) {
        this(values, stretches, assumed, estimated, Occasion.UNKNOWN);
    }

    /** @param occasion whose day it is, and which */
    public Demands(Map<Measure, Value> values, List<StretchFacts> stretches, List<Assumed> assumed, Estimated estimated, Occasion occasion) {
        this.values = values.isEmpty() ? new EnumMap<>(Measure.class) : new EnumMap<>(values);
        for (Map.Entry<Measure, Value> each : this.values.entrySet()) {
            byPosition[each.getKey().ordinal()] = each.getValue();
        }
        this.stretches = List.copyOf(stretches);
        this.assumed = List.copyOf(assumed);
        this.estimated = estimated;
        this.occasion = occasion;
    }

    /** The value with its range, or null where unknown. */
    public Value get(Measure measure) {
        return byPosition[measure.ordinal()];
    }

    public boolean known(Measure measure) {
        return values.containsKey(measure);
    }

    /** All that is known, in the order of the catalogue. */
    public Map<Measure, Value> values() {
        return Collections.unmodifiableMap(values);
    }

    /** The stretches of one lap, in order. */
    public List<StretchFacts> stretches() {
        return stretches;
    }

    public List<Assumed> assumed() {
        return assumed;
    }

    /** The estimate of the ride behind the measures, null where they were not surveyed. */
    public Estimated estimated() {
        return estimated;
    }

    /** Whose day it is, and which. */
    public Occasion occasion() {
        return occasion;
    }

    /** These demands with some measures changed or added. */
    public Demands with(Map<Measure, Value> changes) {
        Map<Measure, Value> all = new EnumMap<>(Measure.class);
        all.putAll(values);
        all.putAll(changes);
        return new Demands(all, stretches, assumed, estimated, occasion);
    }
}
