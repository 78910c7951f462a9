package courseworthy.task;

import courseworthy.call.Flip;
import courseworthy.topic.Topic;
import java.util.List;

/**
 * One topic of a brief in full.
 *
 * @param brief the whole answer it belongs to
 * @param topic the topic
 * @param flips what would change the decision on it, smallest first
 */
public record TopicResult(Brief brief, Topic topic, List<Flip> flips) {

    public TopicResult {
        flips = List.copyOf(flips);
    }
}
