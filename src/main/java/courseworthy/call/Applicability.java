package courseworthy.call;

import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Status;
import courseworthy.topic.Topic;
import courseworthy.topic.Topic.Applies;
import java.util.Map;

/** Whether a topic applies to what is decided so far. */
final class Applicability {

    private Applicability() {
    }

    /** Why a topic does not apply, in words; empty where it does. */
    static String whyNot(Topic topic, Map<Topic, Decision> decided) {
        for (Applies condition : topic.applies()) {
            Decision on = decided.get(condition.topic());
            if (on.status() != Status.SETTLED) {
                return "Hangs on " + on.topic() + ", which is " + on.status().words() + ".";
            }
            if (!condition.options().contains(on.topic().text(on.value()))) {
                return "Applies where " + on.topic() + " is " + String.join(" or ", condition.options()) + "; here it is "
                        + on.topic().text(on.value()) + ".";
            }
        }
        return "";
    }
}
