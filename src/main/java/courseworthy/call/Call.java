package courseworthy.call;

import courseworthy.claim.Task;
import courseworthy.decision.Decision;
import courseworthy.demand.Demands;
import courseworthy.engine.UndeterminedRule;
import courseworthy.topic.Topic;
import java.util.List;

/**
 * The whole call for one rider and one day.
 *
 * @param demands      what was asked for, with the measures derived between layers
 * @param decisions    one for each topic, in the order of the catalogue
 * @param tasks        what rules say is to be done, sorted by due time and id
 * @param undetermined rules that could not tell, sorted by id
 */
public record Call(Demands demands, List<Decision> decisions, List<Task> tasks, List<UndeterminedRule> undetermined) {

    public Call {
        decisions = List.copyOf(decisions);
        tasks = List.copyOf(tasks);
        undetermined = List.copyOf(undetermined);
    }

    /** How firm the decision on a topic is; null where it has no value. */
    public Firmness firmness(Topic topic) {
        return FirmnessGrader.on(this, topic);
    }

    /** The decision on a topic. */
    public Decision on(Topic topic) {
        for (Decision decision : decisions) {
            if (decision.topic().equals(topic)) {
                return decision;
            }
        }
        throw new IllegalArgumentException("no decision on " + topic);
    }
}
