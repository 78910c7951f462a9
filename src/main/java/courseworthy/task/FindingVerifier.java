package courseworthy.task;

import courseworthy.analysis.Finding;
import courseworthy.analysis.Finding.Kind;
import courseworthy.analysis.WitnessTrial;
import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.claim.Claim;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.Task;
import courseworthy.decision.Decision;
import courseworthy.demand.DerivedMeasures;
import courseworthy.demand.Measure;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.FiringResult;
import courseworthy.engine.PlainRules;
import courseworthy.engine.RuleSet;
import courseworthy.engine.ShippedRules;
import courseworthy.engine.UndeterminedRule;
import courseworthy.sheet.Condition;
import courseworthy.sheet.Row;
import courseworthy.sheet.RuleInputs;
import courseworthy.sheet.Situation;
import courseworthy.sheet.Stage;
import courseworthy.sheet.Truth;
import courseworthy.topic.SettledTopic;
import courseworthy.topic.Topic;
import courseworthy.topic.Topic.Applies;
import courseworthy.topic.Topics;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Opens the situation of a remark and looks whether it shows what is remarked. Of all rows only those are asked on which the answer
 * hangs: those that are remarked on, all on the topics that these ask about, and so on back to the first layer. Where the situation itself
 * settles a topic, only limits can have a say on it still.
 */
public final class FindingVerifier implements WitnessTrial {

    private final Map<String, Row> byId = new HashMap<>();
    private final Map<Topic, List<Row>> byTopic = new HashMap<>();
    /** The rules that join topics, and no rows. */
    private final DroolsRules joins;
    private final Set<Topic> joined = new HashSet<>();
    /** Which topics a topic hangs on, that topic among them, where nothing is settled beforehand. */
    private final Map<Topic, Set<Topic>> before = new HashMap<>();

    public FindingVerifier(List<Row> inForce, ShippedRules shipped) {
        for (Row row : inForce) {
            byId.put(row.origin().rule(), row);
            for (String topic : row.topics()) {
                byTopic.computeIfAbsent(Topics.of(topic), name -> new ArrayList<>()).add(row);
            }
        }
        joins = new DroolsRules(List.of(), shipped);
        joins.topicsOfJoins().values().forEach(name -> joined.add(Topics.of(name)));
    }

    @Override
    public boolean shows(Finding remark) {
        Call call = call(remark);
        Set<String> spoke = spoke(call, remark.on());
        if (remark.kind() == Kind.GAP) {
            return spoke.isEmpty() && call.on(Topics.of(remark.on())).status() == Decision.Status.SETTLED;
        }
        if (remark.witness().silent() != null && (spoke.contains(remark.witness().silent().rule()) || !unmet(remark, call).equals(remark.witness().unmet()))) {
            return false;
        }
        if (remark.kind() == Kind.SET_ASIDE && call.on(Topics.of(remark.on())).status() != Decision.Status.NOT_APPLICABLE) {
            return false;
        }
        return remark.rows().isEmpty() ? !spoke.isEmpty() : speak(remark, spoke);
    }

    /** All its rows speak, but the one that is asked why it does not; one is enough where there was too much to reason about. */
    private static boolean speak(Finding remark, Set<String> spoke) {
        List<RuleOrigin> rows = remark.kind() == Kind.UNREASONED ? remark.rows().subList(0, 1) : remark.rows();
        for (RuleOrigin author : rows) {
            if (author != remark.witness().silent() && !spoke.contains(author.rule())) {
                return false;
            }
        }
        return true;
    }

    private static Set<String> spoke(Call call, String on) {
        Set<String> out = new HashSet<>();
        if (on.isEmpty()) {
            for (Task task : call.tasks()) {
                out.add(task.origin().rule());
            }
            return out;
        }
        Decision decision = call.on(Topics.of(on));
        decision.taken().forEach(claim -> out.add(claim.origin().rule()));
        decision.lost().forEach(lost -> out.add(lost.claim().origin().rule()));
        return out;
    }

    private Set<Integer> unmet(Finding remark, Call call) {
        Map<Topic, SettledTopic> settled = new HashMap<>();
        for (Decision one : call.decisions()) {
            boolean known = one.status() == Decision.Status.SETTLED;
            settled.put(one.topic(), new SettledTopic(one.topic(), known, known ? one.value() : 0));
        }
        Stage stage = new Stage(Topics.LAST_LAYER, call.demands(), settled);
        Set<Integer> out = new HashSet<>();
        List<Condition> parts = byId.get(remark.witness().silent().rule()).condition().parts();
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).on(stage) != Truth.TRUE) {
                out.add(i);
            }
        }
        return out;
    }

    // The call, as far as it matters ----------------------------------------------------------------------------------

    private Call call(Finding remark) {
        Situation situation = remark.witness().situation();
        Set<Row> asked = Collections.newSetFromMap(new IdentityHashMap<>());
        for (RuleOrigin author : remark.rows()) {
            asked.add(byId.get(author.rule()));
        }
        asked.remove(null);
        Deque<Topic> open = new ArrayDeque<>();
        asked.forEach(row -> open.addAll(hangsOn(row)));
        if (!remark.on().isEmpty()) {
            open.addAll(asksAbout(remark));
        }
        boolean joining = false;
        for (Topic topic : closed(open, situation.settled())) {
            joining |= joined.contains(topic);
            for (Row row : byTopic.getOrDefault(topic, List.of())) {
                if (!situation.settled().containsKey(topic) || row.origin().rank() == Rank.LIMIT) {
                    asked.add(row);
                }
            }
        }
        List<RuleSet> rules = new ArrayList<>(List.of(new PlainRules(new SituationFile("", "", situation).given()),
                new PlainRules(new ArrayList<>(asked))));
        if (joining) {
            rules.add(joins);
        }
        return CallMaker.call(together(rules), situation.demands());
    }

    /**
     * The topics to be settled for the one that is remarked on: that one where anybody may speak on it; else only those that tell whether it
     * applies, since its rows are heard whatever comes of them.
     */
    private static List<Topic> asksAbout(Finding remark) {
        Topic on = Topics.of(remark.on());
        if (remark.kind() == Kind.GAP || remark.rows().isEmpty()) {
            return List.of(on);
        }
        List<Topic> out = new ArrayList<>();
        on.applies().forEach(applies -> out.add(applies.topic()));
        return out;
    }

    /** With all that they hang on in turn. */
    private Set<Topic> closed(Deque<Topic> open, Map<Topic, SettledTopic> given) {
        Set<Topic> out = new LinkedHashSet<>();
        while (!open.isEmpty()) {
            Topic topic = open.pop();
            if (out.add(topic)) {
                open.addAll(hangsOn(topic, given.containsKey(topic)));
            }
        }
        return out;
    }

    private Collection<Topic> hangsOn(Topic topic, boolean given) {
        if (!given) {
            return before.computeIfAbsent(topic, one -> hangsOn(one, Rank.SHIPPED));
        }
        return hangsOn(topic, Rank.LIMIT);
    }

    /** @param weakest rows of lower ranks are left out */
    private Set<Topic> hangsOn(Topic topic, Rank weakest) {
        Set<Topic> out = new LinkedHashSet<>();
        for (Applies applies : topic.applies()) {
            out.add(applies.topic());
        }
        for (Row row : byTopic.getOrDefault(topic, List.of())) {
            if (row.origin().rank().compareTo(weakest) <= 0) {
                out.addAll(hangsOn(row));
            }
        }
        if (joined.contains(topic)) {
            // What a join reads is written in its own language: it may be any earlier topic.
            for (Topic earlier : Topics.all()) {
                if (earlier.layer() < topic.layer()) {
                    out.add(earlier);
                }
            }
        }
        return out;
    }

    private static Set<Topic> hangsOn(Row row) {
        Set<Topic> out = new LinkedHashSet<>(RuleInputs.topics(row));
        for (Measure measure : RuleInputs.measures(row)) {
            out.addAll(DerivedMeasures.topicsRead(measure));
        }
        return out;
    }

    /** Several sets of rules as one. */
    private static RuleSet together(List<RuleSet> rules) {
        return () -> new RuleSet.Firing() {

            private final List<RuleSet.Firing> all = rules.stream().map(RuleSet::open).toList();

            @Override
            public FiringResult fire(Stage stage) {
                List<Claim> claims = new ArrayList<>();
                List<Task> tasks = new ArrayList<>();
                for (RuleSet.Firing one : all) {
                    FiringResult said = one.fire(stage);
                    claims.addAll(said.claims());
                    tasks.addAll(said.tasks());
                }
                return new FiringResult(claims, tasks);
            }

            @Override
            public List<UndeterminedRule> undetermined() {
                return List.of();
            }

            @Override
            public void close() {
                all.forEach(RuleSet.Firing::close);
            }
        };
    }
}
