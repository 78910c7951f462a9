package courseworthy.claim;

import courseworthy.topic.Topic;
import java.util.List;

/**
 * What one rule says on one topic.
 *
 * @param origin  the rule
 * @param topic   on what
 * @param verb    a bound, a preference, a dislike, a veto, or what exists
 * @param values  the value, in the topic's ticks or positions; several only for {@link Verb#ONE_OF}, ascending
 * @param labels  for {@link Verb#ONE_OF}, a text for each value ({@code 34x50}); otherwise empty
 * @param written the value as the rule writes it, {@code 0.95 x ratio needed on the last climb}; the plain text for a literal
 * @param grounds the facts it rested on
 */
public record Claim(RuleOrigin origin, Topic topic, Verb verb, List<Long> values, List<String> labels, String written,
        List<TestedFact> grounds) {

    public Claim {
        values = List.copyOf(values);
        labels = List.copyOf(labels);
        grounds = List.copyOf(grounds);
        if (values.isEmpty()) {
            throw new IllegalArgumentException("a claim without a value: " + origin.rule());
        }
    }

    public static Claim of(RuleOrigin author, Topic topic, Verb verb, long value, String written, List<TestedFact> grounds) {
        return new Claim(author, topic, verb, List.of(value), List.of(), written, grounds);
    }

    public long value() {
        return values.get(0);
    }

    @Override
    public boolean equals(Object other) {
        return this == other || other instanceof Claim that && origin.equals(that.origin) && topic.equals(that.topic) && verb == that.verb
                && values.equals(that.values) && labels.equals(that.labels) && written.equals(that.written)
                && grounds.equals(that.grounds);
    }

    @Override
    public int hashCode() {
        return (origin.hashCode() * 31 + topic.hashCode()) * 31 + values.hashCode();
    }

    /** Whether its condition would turn out otherwise at the low or high end of a measure's range. */
    public boolean restsOnRange() {
        for (TestedFact ground : grounds) {
            if (ground.near()) {
                return true;
            }
        }
        return false;
    }
}
