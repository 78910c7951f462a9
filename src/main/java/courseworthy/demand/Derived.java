package courseworthy.demand;

import courseworthy.topic.Settled;
import courseworthy.topic.Topic;
import java.util.Map;

/** Measures that are known only once earlier layers are settled. */
public final class Derived {

    private Derived() {
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
        return Map.of();
    }
}
