package courseworthy.rulebase.check;

import courseworthy.demand.Measure;
import courseworthy.rulebase.Condition;
import courseworthy.rulebase.Ends;
import courseworthy.rulebase.StretchSet;
import courseworthy.rulebase.Subject;
import courseworthy.topic.Topic;
import java.util.LinkedHashMap;
import java.util.Map;

/** What the rows of one check ask about, each thing once, numbered in the order in which it is met. */
final class Things {

    private static final Values YES_NO = open(0, 1);

    private final Map<String, Thing> met = new LinkedHashMap<>();

    Thing of(Measure measure) {
        Thing known = met.get(measure.written());
        return known != null ? known
                : add(measure.written(), measure.written(), Subject.of(measure), open(Ends.least(measure), Ends.most(measure)), measure);
    }

    /** What is settled on a topic may lie outside what is sensible for it, where a bound asks for that. */
    Thing of(Topic topic) {
        String name = "decided: " + topic.name();
        Thing known = met.get(name);
        boolean quantity = topic.kind() == Topic.Kind.QUANTITY;
        return known != null ? known : add(name, name, Subject.of(topic),
                quantity ? open(Long.MIN_VALUE, Long.MAX_VALUE) : open(topic.least(), topic.most()), topic);
    }

    Thing of(Condition.Stretches stretches) {
        String key = "any stretch: " + key(stretches.set());
        Thing known = met.get(key);
        return known != null ? known : add(key, "any stretch: " + written(stretches.set()), null, YES_NO, stretches.set());
    }

    Thing of(Condition.Share share) {
        String key = "share of course: " + key(share.where());
        Thing known = met.get(key);
        return known != null ? known
                : add(key, "share of course: " + written(share.where()), Subject.SHARE, open(0, 100), share.where());
    }

    /** Names, tags and dates that are asked for in other words are other things. */
    Thing of(Condition.OnOccasion one) {
        String key = "occasion: " + one.test().canonical();
        Thing known = met.get(key);
        return known != null ? known : add(key, one.test().key() + " " + one.written(), null, YES_NO, one.test());
    }

    private Thing add(String key, String name, Subject scale, Values all, Object asked) {
        Thing thing = new Thing(met.size(), name, scale, all, asked);
        met.put(key, thing);
        return thing;
    }

    /** Neither the order nor the wording of conditions matters. */
    private static String key(StretchSet set) {
        return String.join(", ", set.tests().stream().map(one -> one.measure().written() + one.test().canonical()).sorted().toList());
    }

    private static String written(StretchSet set) {
        return String.join(", ", set.tests().stream().map(one -> one.measure().written() + " " + one.written()).toList());
    }

    private static Values open(long least, long most) {
        return Values.of(least, most).orUnknown(true);
    }
}
