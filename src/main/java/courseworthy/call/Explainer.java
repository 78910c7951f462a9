package courseworthy.call;

import courseworthy.claim.Claim;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.TestedFact;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.LosingClaim;
import courseworthy.decision.Decision.Status;
import courseworthy.demand.Demands;
import courseworthy.demand.DerivedMeasures;
import courseworthy.demand.Measure;
import courseworthy.engine.DroolsRules;
import courseworthy.sheet.ConditionTrace;
import courseworthy.sheet.Row;
import courseworthy.sheet.Saying;
import courseworthy.sheet.Stage;
import courseworthy.sheet.Truth;
import courseworthy.topic.SettledTopic;
import courseworthy.topic.Topic;
import courseworthy.topic.Topic.Applies;
import courseworthy.topic.Topics;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Answers why a decision is as it is, why a rule kept silent, and why another value was not chosen. */
public final class Explainer {

    private static final Comparator<RuleTrace> NEAREST_FIRST = Comparator.comparingInt(RuleTrace::unmet)
            .thenComparing(hearing -> hearing.origin().rule());

    private final DroolsRules rules;
    private final Call call;
    private final Topic topic;
    private final Decision decision;
    private final Demands demands;
    private final Map<Topic, SettledTopic> settled = new HashMap<>();

    /**
     * @param rules the rules that made the call
     * @param call  the call
     * @param topic the topic asked about
     */
    public Explainer(DroolsRules rules, Call call, Topic topic) {
        this.rules = rules;
        this.call = call;
        this.topic = topic;
        this.decision = call.on(topic);
        this.demands = call.demands().settling(topic);
        this.settled.putAll(settled(call));
    }

    /** A rule that has something to do held against the day; null where it has nothing to do. */
    public static RuleTrace task(DroolsRules rules, Call call, String id) {
        for (Row row : rules.rows()) {
            if (row.task() != null && row.origin().rule().equals(id)) {
                boolean listed = call.tasks().stream().anyMatch(task -> task.origin().rule().equals(id));
                Stage stage = new Stage(Topics.LAST_LAYER, call.demands(), settled(call));
                return new RuleTrace(row.origin(), List.of(row.task().what()), listed, ConditionTrace.truth(row, stage), ConditionTrace.of(row, stage), "");
            }
        }
        return null;
    }

    private static Map<Topic, SettledTopic> settled(Call call) {
        Map<Topic, SettledTopic> out = new HashMap<>();
        for (Decision one : call.decisions()) {
            boolean known = one.status() == Status.SETTLED;
            out.put(one.topic(), new SettledTopic(one.topic(), known, known ? one.value() : 0));
        }
        return out;
    }

    /** The earlier decisions that it rests on, directly or through others, in the order in which they were settled. */
    public List<Decision> chain() {
        Set<Topic> found = new HashSet<>();
        Deque<Topic> open = new ArrayDeque<>(List.of(topic));
        while (!open.isEmpty()) {
            for (Topic before : before(call.on(open.pop()))) {
                if (found.add(before)) {
                    open.add(before);
                }
            }
        }
        List<Decision> out = new ArrayList<>();
        for (Decision one : call.decisions()) {
            if (found.contains(one.topic())) {
                out.add(one);
            }
        }
        out.sort(Comparator.comparingInt(one -> one.topic().layer()));
        return out;
    }

    private static Set<Topic> before(Decision decision) {
        Set<Topic> out = new LinkedHashSet<>();
        for (Applies applies : decision.topic().applies()) {
            out.add(applies.topic());
        }
        for (Claim claim : decision.taken()) {
            for (TestedFact ground : claim.grounds()) {
                before(ground.measure(), out);
            }
        }
        return out;
    }

    private static void before(String measure, Set<Topic> out) {
        if (measure.startsWith("decided: ")) {
            out.add(Topics.of(measure.substring("decided: ".length())));
        } else if (Measure.find(measure) != null) {
            out.addAll(DerivedMeasures.topicsRead(Measure.find(measure)));
        }
    }

    /** The ids of all rules that may speak on the topic, sorted. */
    public List<String> rulesOnTopic() {
        return everyRule().stream().map(hearing -> hearing.origin().rule()).sorted().toList();
    }

    /** The rules on the topic that kept silent, those with the fewest conditions unmet first. */
    public List<RuleTrace> silent() {
        List<RuleTrace> out = new ArrayList<>(everyRule());
        out.removeIf(RuleTrace::spoke);
        out.sort(NEAREST_FIRST);
        return out;
    }

    /** One rule held against the day. @throws IllegalArgumentException where it is no rule on the topic */
    public RuleTrace rule(String id) {
        for (RuleTrace hearing : everyRule()) {
            if (hearing.origin().rule().equals(id)) {
                return hearing;
            }
        }
        throw new IllegalArgumentException(id + " is no rule on " + topic);
    }

    private List<RuleTrace> everyRule() {
        Set<String> spoke = new HashSet<>();
        decision.taken().forEach(claim -> spoke.add(claim.origin().rule()));
        decision.lost().forEach(lost -> spoke.add(lost.claim().origin().rule()));
        List<RuleTrace> out = new ArrayList<>();
        for (Row row : rules.rows()) {
            if (row.topics().contains(topic.name())) {
                out.add(trace(row, spoke.contains(row.origin().rule())));
            }
        }
        Map<String, String> joined = rules.topicsOfJoins();
        for (RuleOrigin join : rules.joins()) {
            if (joined.get(join.rule()).equals(topic.name())) {
                boolean said = spoke.contains(join.rule());
                out.add(new RuleTrace(join, List.of(), said, Truth.of(said), List.of(), ""));
            }
        }
        return out;
    }

    private RuleTrace trace(Row row, boolean spoke) {
        Stage stage = new Stage(Topics.LAST_LAYER, demands, settled);
        List<String> says = new ArrayList<>();
        String wanting = "";
        for (Saying saying : row.sayings()) {
            if (saying.topic().equals(topic)) {
                says.add(saying.verb().word() + " " + saying.written());
                boolean unknown = saying.source() instanceof Saying.Times times && !demands.known(times.measure());
                wanting = unknown ? ((Saying.Times) saying.source()).measure().written() : wanting;
            }
        }
        return new RuleTrace(row.origin(), says, spoke, ConditionTrace.truth(row, stage), ConditionTrace.of(row, stage), wanting);
    }

    /** Why a value was not chosen. */
    public Instead instead(long value, FlipFinder flips) {
        List<Flip> bring = flips.to(value);
        return new Instead(topic, value, excluding(value), against(value), favouring(value), wouldSay(value), onStep(value), bring,
                bring.isEmpty() ? flips.toward(value) : null);
    }

    /** The bounds, vetoes and existing values that leave it out. */
    private List<Claim> excluding(long value) {
        List<Claim> out = new ArrayList<>();
        for (Claim claim : decision.taken()) {
            boolean excludes = switch (claim.verb()) {
                case AT_LEAST -> value < claim.value();
                case AT_MOST -> value > claim.value();
                case RULE_OUT -> value == claim.value();
                case ONE_OF -> !claim.values().contains(value);
                case PREFER, AVOID -> false;
            };
            if (excludes) {
                out.add(claim);
            }
        }
        return out;
    }

    /** The preferences that prevailed, of the rank that voted, and dislikes of it; where the value meets none of them, all others of it. */
    private List<Claim> against(long value) {
        List<Claim> all = new ArrayList<>(decision.taken());
        decision.lost().forEach(lost -> all.add(lost.claim()));
        Rank voting = null;
        for (Claim claim : all) {
            boolean votes = claim.verb() == Verb.PREFER && (voting == null || claim.origin().rank().compareTo(voting) < 0);
            voting = votes ? claim.origin().rank() : voting;
        }
        Rank rank = voting;
        boolean between = decision.taken().stream().noneMatch(claim -> claim.verb() == Verb.PREFER && claim.origin().rank() == rank);
        List<Claim> out = new ArrayList<>();
        for (Claim claim : between ? all : decision.taken()) {
            boolean preferred = claim.verb() == Verb.PREFER && claim.origin().rank() == voting && claim.value() != value;
            if (preferred || claim.verb() == Verb.AVOID && claim.value() == value) {
                out.add(claim);
            }
        }
        return out;
    }

    /** What was said for it and lost. */
    private List<LosingClaim> favouring(long value) {
        List<LosingClaim> out = new ArrayList<>();
        for (LosingClaim lost : decision.lost()) {
            if (lost.claim().verb() == Verb.PREFER && lost.claim().value() == value) {
                out.add(lost);
            }
        }
        return out;
    }

    /** Silent rules that would prefer it. */
    private List<RuleTrace> wouldSay(long value) {
        Set<String> ids = new HashSet<>();
        for (Row row : rules.rows()) {
            for (Saying saying : row.sayings()) {
                if (saying.topic().equals(topic) && saying.verb() == Verb.PREFER && saying.source() instanceof Saying.Literal literal
                        && literal.value() == value) {
                    ids.add(row.origin().rule());
                }
            }
        }
        List<RuleTrace> out = new ArrayList<>(silent());
        out.removeIf(hearing -> !ids.contains(hearing.origin().rule()));
        return out;
    }

    private boolean onStep(long value) {
        return topic.kind() != Topic.Kind.QUANTITY || value % topic.step(value) == 0;
    }

    /**
     * A value that was not chosen.
     *
     * @param topic     the topic
     * @param value     the value
     * @param excluding bounds, vetoes and existing values that leave it out
     * @param against   preferences that prevailed, and dislikes of it
     * @param favouring what was said for it and lost
     * @param wouldSay  silent rules that would prefer it
     * @param onStep    whether it lies on a step to which the topic is settled
     * @param bring     the single changes that would bring it, smallest first
     * @param toward    where none does, the single change that comes nearest to it; null where none does
     */
    public record Instead(Topic topic, long value, List<Claim> excluding, List<Claim> against, List<LosingClaim> favouring,
            List<RuleTrace> wouldSay, boolean onStep, List<Flip> bring, Flip toward) {
    }
}
