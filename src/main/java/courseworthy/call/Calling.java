package courseworthy.call;

import courseworthy.claim.Claim;
import courseworthy.claim.Task;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Status;
import courseworthy.decision.Settling;
import courseworthy.demand.Demands;
import courseworthy.demand.Derived;
import courseworthy.demand.Measure;
import courseworthy.demand.Value;
import courseworthy.rulebase.Rules;
import courseworthy.rulebase.Said;
import courseworthy.rulebase.Stage;
import courseworthy.rulebase.Untold;
import courseworthy.topic.Settled;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Makes the call: asks the rules, settles the topics of a layer, derives what follows from them, asks again, through all layers.
 * To see what another measure would change, call anew with {@link Demands#with(Map)}.
 */
public final class Calling {

    private enum TaskOrder implements Comparator<Task> {
        BY_TIME_AND_ID;

        @Override
        public int compare(Task one, Task other) {
            int by = one.due().compareTo(other.due());
            by = by != 0 ? by : one.author().rule().compareTo(other.author().rule());
            return by != 0 || one == other ? by : one.toString().compareTo(other.toString());
        }
    }

    private enum UntoldOrder implements Comparator<Untold> {
        BY_ID;

        @Override
        public int compare(Untold one, Untold other) {
            int by = one.author().rule().compareTo(other.author().rule());
            return by != 0 || one == other ? by : one.toString().compareTo(other.toString());
        }
    }

    private final Map<Topic, List<Claim>> claims = new HashMap<>();
    private final Map<Topic, Decision> decisions = new HashMap<>();
    private final Map<Topic, Settled> settled = new LinkedHashMap<>();
    private final List<Task> tasks = new ArrayList<>();
    private Demands demands;

    private Calling(Demands demands) {
        this.demands = stated(demands);
    }

    /**
     * Settles every topic for what is asked for. Measures that derive from decisions are worked out anew, whatever is given.
     *
     * @throws IllegalStateException where a rule speaks on a topic that is settled already; loading refuses such rules
     */
    public static Call call(Rules rules, Demands demands) {
        Calling calling = new Calling(demands);
        try (Rules.Firing firing = rules.open()) {
            calling.hear(firing, 0);
            for (int layer = 1; layer <= Topics.LAST_LAYER; layer++) {
                calling.settle(layer);
                calling.hear(firing, layer);
            }
            return calling.outcome(firing.couldNotTell());
        }
    }

    private static Demands stated(Demands given) {
        Map<Measure, Value> values = new EnumMap<>(Measure.class);
        for (Map.Entry<Measure, Value> one : given.values().entrySet()) {
            if (one.getKey().layer() == 0) {
                values.put(one.getKey(), one.getValue());
            }
        }
        return new Demands(values, given.stretches(), given.assumed(), given.estimated(), given.occasion());
    }

    private void hear(Rules.Firing firing, int layer) {
        Said said = firing.fire(new Stage(layer, demands, Collections.unmodifiableMap(new LinkedHashMap<>(settled))));
        for (Claim claim : said.claims()) {
            if (claim.topic().layer() <= layer) {
                throw new IllegalStateException(claim.author().rule() + " speaks on " + claim.topic() + " once it is settled");
            }
            List<Claim> onTopic = claims.get(claim.topic());
            if (onTopic == null) {
                onTopic = new ArrayList<>();
                claims.put(claim.topic(), onTopic);
            }
            onTopic.add(claim);
        }
        tasks.addAll(said.tasks());
    }

    private void settle(int layer) {
        for (Topic topic : Topics.ofLayer(layer)) {
            List<Claim> said = claims.getOrDefault(topic, List.of());
            String why = Applying.whyNot(topic, decisions);
            Decision decision = why.isEmpty() ? Settling.settle(topic, said) : Settling.notApplicable(topic, said, why);
            boolean known = decision.status() == Status.SETTLED;
            decisions.put(topic, decision);
            settled.put(topic, new Settled(topic, known, known ? decision.value() : 0));
        }
        demands = demands.with(Derived.after(layer, demands, Collections.unmodifiableMap(settled)));
    }

    private Call outcome(List<Untold> couldNotTell) {
        List<Decision> inOrder = new ArrayList<>();
        for (Topic topic : Topics.all()) {
            inOrder.add(decisions.get(topic));
        }
        tasks.sort(TaskOrder.BY_TIME_AND_ID);
        List<Untold> untold = new ArrayList<>(couldNotTell);
        untold.sort(UntoldOrder.BY_ID);
        return new Call(demands, inOrder, tasks, untold);
    }
}
