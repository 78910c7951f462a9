package courseworthy.rulebase;

import courseworthy.demand.Demands;
import courseworthy.topic.Settled;
import courseworthy.topic.Topic;
import java.util.Map;
import org.kie.api.definition.type.ClassReactive;

/**
 * What rules may test once a layer of topics is settled.
 *
 * @param layer   the last settled layer, 0 before the first
 * @param demands the measures, with those derived up to this layer
 * @param settled every topic of the layers up to this one, those that do not apply included
 */
@ClassReactive
public record Stage(int layer, Demands demands, Map<Topic, Settled> settled) {
}
