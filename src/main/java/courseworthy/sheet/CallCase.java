package courseworthy.sheet;

import courseworthy.claim.SourceLocation;
import courseworthy.text.Node;
import courseworthy.topic.Topic;
import java.util.List;
import java.util.Map;

/**
 * One case of a whole day: what is ridden by whom, and what must come of it.
 *
 * @param sentence what is the case, in plain words
 * @param where    where it is written
 * @param ride     null where measures stand for course, rider and day
 * @param situation what is known where there is no course
 * @param expect   what must be settled, by topic
 * @param firmness how firm it must be, by topic
 * @param fires    rules that must apply
 * @param silent   rules that must stay silent
 */
public record CallCase(String sentence, SourceLocation where, RideSources ride, Situation situation, Map<Topic, ExpectedValue> expect,
        Map<Topic, String> firmness, List<RuleReference> fires, List<RuleReference> silent) {

    /** What stands for a topic that does not apply. */
    public static final String NOT_APPLICABLE = "not applicable";

    /**
     * Who rides what.
     *
     * @param course a shipped course or a file beside the cases
     * @param ground ground to take where the course says none; null for none
     * @param rider  a file beside the cases, or what would stand in it; null for none
     * @param event  a file beside the cases, or what would stand in it; null for none
     */
    public record RideSources(Node.Scalar course, Node.Scalar ground, Node rider, Node event) {
    }

    /**
     * A test of what is settled.
     *
     * @param test    null where the topic must not apply
     * @param written as written
     */
    public record ExpectedValue(ValueTest test, String written) {

        /** @param value what is settled; null where nothing is */
        public boolean met(Long value) {
            return test == null ? value == null : value != null && test.holds(value);
        }
    }

    /**
     * A rule named by a case.
     *
     * @param rule its id as written, with or without its sheet
     * @param line where
     */
    public record RuleReference(String rule, int line) {
    }
}
