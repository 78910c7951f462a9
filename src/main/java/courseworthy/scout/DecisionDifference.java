package courseworthy.scout;

import courseworthy.decision.Decision;
import courseworthy.topic.Topic;

/**
 * A topic that is decided differently on two courses.
 *
 * @param mine on the course asked about
 * @param its  on the other
 */
public record DecisionDifference(Decision mine, Decision its) {

    public Topic topic() {
        return mine.topic();
    }

    /** What is recommended on the course asked about. */
    public String here() {
        return mine.text();
    }

    /** What is recommended on the other. */
    public String there() {
        return its.text();
    }
}
