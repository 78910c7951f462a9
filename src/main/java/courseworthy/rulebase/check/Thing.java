package courseworthy.rulebase.check;

import courseworthy.demand.Measure;
import courseworthy.rulebase.Condition;
import courseworthy.rulebase.Ends;
import courseworthy.rulebase.StretchSet;
import courseworthy.rulebase.Subject;
import courseworthy.topic.Topic;
import java.util.List;

/**
 * Something that conditions ask about, taken as free to be anything: a measure, a settled topic, a share of the course, or whether some
 * stretch is such and such. Stretches that are asked about in other words are other things; what follows from one for another is left out.
 *
 * @param key   one for each thing, however it is written
 * @param name  as sheets write it, with what it is asked of
 * @param scale how its values are written; null for yes and no
 * @param all   every value it can have, and unknown
 */
record Thing(String key, String name, Subject scale, Values all) {

    private static final Values YES_NO = new Values(List.of(new Values.Span(0, 1)), true);

    static Thing of(Measure measure) {
        return new Thing(measure.written(), measure.written(), Subject.of(measure), open(Ends.least(measure), Ends.most(measure)));
    }

    /** What is settled on a topic may lie outside what is sensible for it, where a bound asks for that. */
    static Thing of(Topic topic) {
        boolean quantity = topic.kind() == Topic.Kind.QUANTITY;
        return new Thing("decided: " + topic.name(), "decided: " + topic.name(), Subject.of(topic),
                quantity ? open(Long.MIN_VALUE, Long.MAX_VALUE) : open(topic.least(), topic.most()));
    }

    static Thing of(Condition.Stretches stretches) {
        return new Thing("any stretch: " + key(stretches.set()), "any stretch: " + written(stretches.set()), null, YES_NO);
    }

    static Thing of(Condition.Share share) {
        return new Thing("share of course: " + key(share.where()), "share of course: " + written(share.where()), Subject.SHARE, open(0, 100));
    }

    /** Neither the order nor the wording of conditions matters. */
    private static String key(StretchSet set) {
        return String.join(", ", set.tests().stream().map(one -> one.measure().written() + one.test().canonical()).sorted().toList());
    }

    private static String written(StretchSet set) {
        return String.join(", ", set.tests().stream().map(one -> one.measure().written() + " " + one.written()).toList());
    }

    private static Values open(long least, long most) {
        return new Values(List.of(new Values.Span(least, most)), true);
    }

    /** Every value it can have once it is known. */
    Values known() {
        return new Values(all.spans(), false);
    }

    String text(long value) {
        return scale == null ? value == 1 ? "yes" : "no" : scale.text(value);
    }

    /** A set in words, {@code between 2 km and 3 km}. */
    String text(Values.Span span) {
        boolean open = span.least() <= all.spans().get(0).least();
        boolean end = span.most() >= all.spans().get(0).most();
        if (span.least() == span.most()) {
            return text(span.least());
        }
        if (open || end) {
            return open && end ? "anything" : open ? "at most " + text(span.most()) : "at least " + text(span.least());
        }
        return "between " + text(span.least()) + " and " + text(span.most());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Thing thing && thing.key.equals(key);
    }

    @Override
    public int hashCode() {
        return key.hashCode();
    }
}
