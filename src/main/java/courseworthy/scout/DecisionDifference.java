package courseworthy.scout;

import courseworthy.topic.Topic;

/**
 * A topic that is decided differently on two courses.
 *
 * @param topic which
 * @param here  what is recommended on the course asked about
 * @param there what is recommended on the other
 */
public record DecisionDifference(Topic topic, String here, String there) {
}
