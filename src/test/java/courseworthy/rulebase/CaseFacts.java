package courseworthy.rulebase;

import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.StretchFacts;
import courseworthy.demand.Value;
import courseworthy.topic.Settled;
import courseworthy.topic.Topic;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a case says is known; what it does not mention is unknown. */
record CaseFacts(Map<Measure, Value> measures, Map<Topic, Settled> settled, List<StretchFacts> stretches) {

    static final CaseFacts NONE = new CaseFacts(Map.of(), Map.of(), List.of());

    /** A copy that may be changed. */
    CaseFacts copy() {
        return new CaseFacts(new LinkedHashMap<>(measures), new LinkedHashMap<>(settled), stretches);
    }

    Stage after(int layer) {
        return new Stage(layer, new Demands(measures, stretches, List.of()), settled);
    }
}
