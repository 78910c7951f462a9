package courseworthy.sheet;

import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.demand.Occasion;
import courseworthy.demand.StretchFacts;
import courseworthy.topic.SettledTopic;
import courseworthy.topic.Topic;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A situation written down: what is known in it. Whatever it does not mention is unknown.
 *
 * @param measures  what is known of course, rider and day
 * @param settled   what is settled on topics
 * @param stretches the stretches of the course, in order
 * @param occasion  whose day it is, and which
 */
public record Situation(Map<Measure, MeasureValue> measures, Map<Topic, SettledTopic> settled, List<StretchFacts> stretches, Occasion occasion) {

    /** Nothing is known. */
    public static final Situation NONE = new Situation(Map.of(), Map.of(), List.of(), Occasion.UNKNOWN);

    /** A copy whose maps may be changed. */
    Situation copy() {
        return new Situation(new LinkedHashMap<>(measures), new LinkedHashMap<>(settled), stretches, occasion);
    }

    /** What it asks for. */
    public Demands demands() {
        return new Demands(measures, stretches, List.of(), null, occasion);
    }

    /** What a rule may test in it once a layer is settled. */
    public Stage after(int layer) {
        return new Stage(layer, demands(), settled);
    }
}
