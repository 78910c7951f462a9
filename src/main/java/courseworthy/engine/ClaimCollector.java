package courseworthy.engine;

import courseworthy.claim.Claim;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.TestedFact;
import courseworthy.claim.Verb;
import courseworthy.sheet.Row;
import courseworthy.sheet.Stage;
import courseworthy.sheet.TestedFacts;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Collects the claims of the rules of the network while they fire: those of rows, and the limits of joins. */
public final class ClaimCollector {

    private final ClaimEmitter emitter = new ClaimEmitter();
    private final Map<String, RuleOrigin> joins;
    private final Set<Row> fired = Collections.newSetFromMap(new IdentityHashMap<>());

    ClaimCollector(Map<String, RuleOrigin> joins) {
        this.joins = joins;
    }

    void row(Row row, Stage stage) {
        fired.add(row);
        emitter.emit(row, stage);
    }

    /** A limit on a topic that comes from others: a bound, kept within what is sensible. */
    public void bound(String rule, String topic, Verb verb, long value, String written, SettledTopicFact... because) {
        Topic on = Topics.of(topic);
        long within = Math.max(on.least(), Math.min(on.most(), value));
        emitter.add(Claim.of(origin(rule), on, verb, within, written, grounds(because)));
    }

    /** A limit on a topic that comes from others: an option that is not possible. */
    public void ruleOut(String rule, String topic, String option, SettledTopicFact... because) {
        Topic on = Topics.of(topic);
        emitter.add(Claim.of(origin(rule), on, Verb.RULE_OUT, on.option(option), option, grounds(because)));
    }

    /** A limit on a topic that comes from others: only these values exist. */
    public void exist(String rule, String topic, AvailableValues values, String written, SettledTopicFact... because) {
        emitter.add(new Claim(origin(rule), Topics.of(topic), Verb.ONE_OF, values.values(), values.labels(), written, grounds(because)));
    }

    private RuleOrigin origin(String rule) {
        RuleOrigin author = joins.get(rule);
        if (author == null) {
            throw new IllegalStateException("a join without its author: " + rule);
        }
        return author;
    }

    private static List<TestedFact> grounds(SettledTopicFact... because) {
        List<TestedFact> out = new ArrayList<>();
        for (SettledTopicFact chosen : because) {
            out.add(TestedFacts.of(chosen.settled().topic(), chosen.getValue(), "", true));
        }
        return out;
    }

    boolean fired(Row row) {
        return fired.contains(row);
    }

    ClaimEmitter emitter() {
        return emitter;
    }
}
