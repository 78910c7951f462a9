package courseworthy.task;

import courseworthy.decision.Decision;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A decision that is not what the rider usually rides.
 *
 * @param decision the decision
 * @param usual    what the rider's files give instead, as text
 */
public record UsualDifference(Decision decision, String usual) {

    private static final Map<Topic, Measure> USUAL = Map.of(Topics.BIKE, Measure.BIKE_AT_HAND, Topics.BAR_WIDTH, Measure.USED_BAR_WIDTH,
            Topics.FRONT_RIM_INNER_WIDTH, Measure.RIM_INNER_WIDTH, Topics.REAR_RIM_INNER_WIDTH, Measure.RIM_INNER_WIDTH);

    static List<UsualDifference> of(List<Decision> decisions, Demands demands) {
        List<UsualDifference> out = new ArrayList<>();
        for (Decision decision : decisions) {
            Measure measure = USUAL.get(decision.topic());
            MeasureValue usual = measure == null ? null : demands.get(measure);
            if (usual != null && decision.value() != null && !measure.scale().text(usual.mid()).equals(decision.text())) {
                out.add(new UsualDifference(decision, measure.scale().text(usual.mid())));
            }
        }
        return out;
    }
}
