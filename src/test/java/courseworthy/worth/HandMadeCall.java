package courseworthy.worth;

import courseworthy.call.Call;
import courseworthy.claim.Claim;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.SourceLocation;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Consensus;
import courseworthy.decision.Decision.Status;
import courseworthy.demand.Demands;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A call whose decisions are written in a test, so that what follows from them is checked without rules; what is not written is the default. */
final class HandMadeCall {

    private final Demands demands;
    private final Map<Topic, Decision> decisions = new LinkedHashMap<>();

    HandMadeCall(Demands demands) {
        this.demands = demands;
        for (Topic topic : Topics.all()) {
            decisions.put(topic, settled(topic, topic.standard(), List.of()));
        }
    }

    /** @param value in ticks or as a position */
    HandMadeCall on(String topic, long value) {
        Topic of = Topics.of(topic);
        decisions.put(of, settled(of, value, decisions.get(of).taken()));
        return this;
    }

    HandMadeCall front(String part, long value) {
        return on("front " + part, value);
    }

    HandMadeCall bothEnds(String part, long value) {
        return on("front " + part, value).on("rear " + part, value);
    }

    /** A claim that the decision meets. */
    HandMadeCall taken(String topic, Rank rank, String rule, Verb verb, long value) {
        Topic of = Topics.of(topic);
        RuleOrigin author = new RuleOrigin(rule, rank, 0, Force.MUST, Evidence.OPINION, "", "Why.", new SourceLocation("s.yaml", 1));
        List<Claim> claims = new ArrayList<>(decisions.get(of).taken());
        claims.add(Claim.of(author, of, verb, value, of.text(value), List.of()));
        decisions.put(of, settled(of, decisions.get(of).value(), claims));
        return this;
    }

    HandMadeCall without(String topic) {
        Topic of = Topics.of(topic);
        decisions.put(of, new Decision(of, Status.NOT_APPLICABLE, null, "", null, List.of(), List.of(), "not on this bike"));
        return this;
    }

    Call call() {
        return new Call(demands, List.copyOf(decisions.values()), List.of(), List.of());
    }

    private static Decision settled(Topic topic, long value, List<Claim> taken) {
        return new Decision(topic, Status.SETTLED, value, "", Consensus.UNANIMOUS, taken, List.of(), "");
    }
}
