package courseworthy.call;

import courseworthy.claim.Claim;
import courseworthy.claim.Task;
import courseworthy.claim.TestedFact;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Status;
import courseworthy.decision.Settler;
import courseworthy.demand.Demands;
import courseworthy.demand.DerivedMeasures;
import courseworthy.demand.Measure;
import courseworthy.demand.RideInput;
import courseworthy.engine.FiringResult;
import courseworthy.engine.RuleSet;
import courseworthy.engine.UndeterminedRule;
import courseworthy.sheet.Stage;
import courseworthy.topic.SettledTopic;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;

/**
 * Makes the call: asks the rules, settles the topics of a layer, derives what follows from them, asks again, through all layers.
 * To see what another measure would change, call anew with {@link Demands#with(Map)}.
 */
public final class CallMaker {

    private enum TaskOrder implements Comparator<Task> {
        BY_TIME_AND_ID;

        @Override
        public int compare(Task one, Task other) {
            int by = one.due().compareTo(other.due());
            by = by != 0 ? by : one.origin().rule().compareTo(other.origin().rule());
            return by != 0 || one == other ? by : one.toString().compareTo(other.toString());
        }
    }

    private enum UndeterminedOrder implements Comparator<UndeterminedRule> {
        BY_ID;

        @Override
        public int compare(UndeterminedRule one, UndeterminedRule other) {
            int by = one.origin().rule().compareTo(other.origin().rule());
            return by != 0 || one == other ? by : one.toString().compareTo(other.toString());
        }
    }

    private static final Topic BIKE = Topics.BIKE;

    private final Map<Topic, List<Claim>> claims = new HashMap<>();
    private final Map<Topic, Decision> decisions = new HashMap<>();
    private final Map<Topic, SettledTopic> settled = new LinkedHashMap<>();
    private final List<Task> tasks = new ArrayList<>();
    private final Map<Topic, Long> given;
    private Demands demands;

    private CallMaker(Demands demands, Map<Topic, Long> given) {
        this.demands = demands.stated();
        this.given = given;
    }

    /**
     * Makes the call of a ride. The kind of bike is settled on the bike at hand; where it is another, everything else, hours, loads and
     * gears included, is of the bike that is called. The kind is not asked about again: it stays as the bike at hand made it.
     */
    public static Call call(RuleSet rules, RideInput ride) {
        return call(rules, ride.atHand(), ride::on);
    }

    /**
     * As {@link #call(RuleSet, Ride)}, where it is known already what the ride asks for.
     *
     * @param atHand on the bike at hand
     * @param on     on another kind of bike
     */
    public static Call call(RuleSet rules, Demands atHand, Function<String, Demands> on) {
        CallMaker calling = new CallMaker(atHand, Map.of());
        try (RuleSet.Firing firing = rules.open()) {
            calling.hear(firing, 0);
            calling.settle(BIKE.layer());
            SettledTopic bike = calling.settled.get(BIKE);
            if (!bike.known() || bike.text().equals(atHand.ridden())) {
                return calling.from(firing, BIKE.layer());
            }
            return call(rules, on.apply(bike.text()).chosenBy(atHand));
        }
    }

    /**
     * Settles every topic for what is asked for. Measures that derive from decisions are worked out anew, whatever is given.
     *
     * @throws IllegalStateException where a rule speaks on a topic that is settled already; loading refuses such rules
     */
    public static Call call(RuleSet rules, Demands demands) {
        return call(rules, demands, Map.of());
    }

    /**
     * The same with some topics as they are, whatever is claimed on them; all that hangs on them is settled for what they are.
     *
     * @param given in the topics' ticks or positions; null where it is not known
     */
    public static Call call(RuleSet rules, Demands demands, Map<Topic, Long> given) {
        CallMaker calling = new CallMaker(demands, given);
        try (RuleSet.Firing firing = rules.open()) {
            calling.hear(firing, 0);
            calling.hearOfTheBike(rules);
            calling.settle(BIKE.layer());
            return calling.from(firing, BIKE.layer());
        }
    }

    /** The rest, once a layer is settled. */
    private Call from(RuleSet.Firing firing, int settledLayer) {
        hear(firing, settledLayer);
        for (int layer = settledLayer + 1; layer <= Topics.LAST_LAYER; layer++) {
            settle(layer);
            hear(firing, layer);
        }
        return outcome(firing.undetermined());
    }

    /** What rules say of the kind of bike goes by the bike at hand, where another is ridden. */
    private void hearOfTheBike(RuleSet rules) {
        Demands choosing = demands.choosing();
        if (choosing == null) {
            return;
        }
        List<Claim> said = new ArrayList<>();
        try (RuleSet.Firing firing = rules.open()) {
            for (Claim claim : firing.fire(new Stage(0, choosing, Map.of())).claims()) {
                if (claim.topic().equals(BIKE)) {
                    said.add(named(claim, choosing));
                }
            }
        }
        claims.put(BIKE, said);
    }

    /** A claim on the kind of bike; what it found on the bike at hand that is otherwise on the bike called is said to be of that bike. */
    private Claim named(Claim claim, Demands choosing) {
        List<TestedFact> grounds = new ArrayList<>();
        for (TestedFact ground : claim.grounds()) {
            Measure measure = Measure.find(ground.measure());
            boolean differs = measure != null && !Objects.equals(choosing.get(measure), demands.get(measure));
            grounds.add(differs ? new TestedFact(ground.measure(), ground.value() + " on a " + choosing.ridden() + " bike", ground.number(),
                    ground.unit(), ground.test(), ground.met(), ground.near()) : ground);
        }
        return new Claim(claim.origin(), claim.topic(), claim.verb(), claim.values(), claim.labels(), claim.written(), grounds);
    }

    private void hear(RuleSet.Firing firing, int layer) {
        FiringResult said = firing.fire(new Stage(layer, demands, Collections.unmodifiableMap(new LinkedHashMap<>(settled))));
        for (Claim claim : said.claims()) {
            if (claim.topic().layer() <= layer) {
                throw new IllegalStateException(claim.origin().rule() + " says something on " + claim.topic() + " once it is settled");
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
            Decision decision = decision(topic, claims.getOrDefault(topic, List.of()));
            boolean known = decision.status() == Status.SETTLED;
            decisions.put(topic, decision);
            settled.put(topic, new SettledTopic(topic, known, known ? decision.value() : 0));
        }
        if (layer == BIKE.layer()) {
            demands = demands.calling(settled.get(BIKE));
        }
        demands = demands.with(DerivedMeasures.after(layer, demands, Collections.unmodifiableMap(settled)));
    }

    private Decision decision(Topic topic, List<Claim> said) {
        String why = Applicability.whyNot(topic, decisions);
        if (!why.isEmpty()) {
            return Settler.notApplicable(topic, said, why);
        }
        if (given.containsKey(topic)) {
            Long value = given.get(topic);
            return value == null ? Settler.notApplicable(topic, said, "What it is, is not known.") : Settler.given(topic, said, value);
        }
        return Settler.settle(topic, said);
    }

    private Call outcome(List<UndeterminedRule> couldNotTell) {
        List<Decision> inOrder = new ArrayList<>();
        for (Topic topic : Topics.all()) {
            inOrder.add(decisions.get(topic));
        }
        tasks.sort(TaskOrder.BY_TIME_AND_ID);
        List<UndeterminedRule> sorted = new ArrayList<>(couldNotTell);
        sorted.sort(UndeterminedOrder.BY_ID);
        return new Call(demands, inOrder, tasks, sorted);
    }
}
