package courseworthy.sheet;

import courseworthy.demand.Demands;
import courseworthy.topic.SettledTopic;
import courseworthy.topic.Topic;
import java.util.Map;

/**
 * What rules may test once a layer of topics is settled.
 *
 * @param layer   the last settled layer, 0 before the first
 * @param demands the measures, with those derived up to this layer
 * @param settled every topic of the layers up to this one, those that do not apply included
 */
public record Stage(int layer, Demands demands, Map<Topic, SettledTopic> settled) {
}
