package courseworthy.call;

import courseworthy.call.Firmness.AgreementGrade;
import courseworthy.call.Firmness.EvidenceGrade;
import courseworthy.call.Firmness.Knowledge;
import courseworthy.claim.Claim;
import courseworthy.claim.Rank;
import courseworthy.claim.TestedFact;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.decision.Settler;
import courseworthy.demand.Assumptions;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.engine.UndeterminedRule;
import courseworthy.sheet.Saying;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * Grades the decisions of a call by {@link FirmnessTable}. What leads to a value is found by taking claims away: a limit decides where without
 * limits the value would be another one; so does a bound among the other claims; a preference leads to a value that it is met by. Where none
 * of these does, a bound on which the value lies leads to it. What an event does not write it is taken not to ask for. A decision is no firmer than the
 * earlier ones that it rests on ({@link DecisionDependencies}), unless advice that does not rest on them leads to the same value.
 */
public final class FirmnessGrader {

    private final Demands demands;
    private final List<UndeterminedRule> undetermined;

    private final Map<Topic, Decision> decisions = new HashMap<>();
    private final Map<Topic, Firmness> graded = new HashMap<>();

    private FirmnessGrader(Call call) {
        call.decisions().forEach(decision -> decisions.put(decision.topic(), decision));
        demands = call.demands();
        undetermined = call.undetermined();
    }

    /** How firm each decision is that has a value, in the order of the catalogue. */
    public static List<Firmness> of(Call call) {
        FirmnessGrader grader = new FirmnessGrader(call);
        return call.decisions().stream().filter(each -> each.value() != null).map(grader::grade).toList();
    }

    /** How firm the decision on a topic is; null where it has no value. */
    public static Firmness on(Call call, Topic topic) {
        Decision decision = call.on(topic);
        return decision.value() == null ? null : new FirmnessGrader(call).grade(decision);
    }

    private Firmness grade(Decision decision) {
        Firmness known = graded.get(decision.topic());
        if (known == null) {
            known = lowered(byItself(decision, claims(decision)));
            graded.put(decision.topic(), known);
        }
        return known;
    }

    private static List<Claim> claims(Decision decision) {
        List<Claim> out = new ArrayList<>(decision.taken());
        decision.lost().forEach(lost -> out.add(lost.claim()));
        return out;
    }

    /** How firm some claims make a decision, whatever it rests on. */
    private Firmness byItself(Decision decision, List<Claim> claims) {
        List<Claim> carriers = carriers(decision, claims);
        List<String> assumed = new ArrayList<>(assumed(carriers));
        List<UndeterminedRule> unknown = new ArrayList<>(undetermined.stream().filter(rule -> mayChange(rule, decision, claims)).toList());
        if (unknown.removeIf(rule -> Assumptions.areEventRules(rule.wanting()))) {
            assumed.add(Assumptions.EVENT_RULES);
        }
        EvidenceGrade evidence = EvidenceGrader.best(carriers);
        AgreementGrade agreement = AgreementGrade.of(decision);
        FirmnessTable.Grade grade = FirmnessTable.shipped().grade(evidence, agreement, Knowledge.of(assumed, unknown));
        return new Firmness(decision, grade, evidence, agreement, carriers, assumed, unknown, null);
    }

    // What it rests on

    /** The same with the least firm decision that makes it less firm; by the advice that rests on none of these, where that is firmer. */
    private Firmness lowered(Firmness itself) {
        Firmness beneath = leastFirm(itself.carriers());
        if (beneath == null) {
            return itself;
        }
        Firmness out = new Firmness(itself.decision(), itself.grade(), itself.evidence(), itself.agreement(), itself.carriers(), itself.assumed(),
                itself.unknown(), beneath);
        if (out.level() == itself.level()) {
            return itself;
        }
        Firmness apart = apart(itself);
        return apart != null && apart.level().compareTo(out.level()) < 0 ? apart : out;
    }

    /** How firm a decision is by the advice that rests on nothing less firm than it is; null where that leads elsewhere. */
    private Firmness apart(Firmness itself) {
        Decision decision = itself.decision();
        List<Claim> kept = new ArrayList<>();
        for (Claim claim : claims(decision)) {
            Firmness beneath = leastFirm(List.of(claim));
            boolean firmEnough = beneath == null || beneath.level().compareTo(itself.level()) <= 0;
            if (firmEnough || claim.verb() == Verb.ONE_OF || !decision.taken().contains(claim)) {
                kept.add(claim);
            }
        }
        Decision without = Settler.settle(decision.topic(), kept);
        if (!decision.value().equals(without.value())) {
            return null;
        }
        Firmness apart = byItself(without, kept);
        return new Firmness(decision, apart.grade(), apart.evidence(), apart.agreement(), apart.carriers(), apart.assumed(), apart.unknown(), null);
    }

    /** The least firm of the decisions that some claims rest on; null where they rest on none. */
    private Firmness leastFirm(List<Claim> claims) {
        Firmness out = null;
        for (Claim claim : claims) {
            for (Topic topic : DecisionDependencies.topics(claim)) {
                Decision earlier = decisions.get(topic);
                Firmness beneath = earlier == null || earlier.value() == null ? null : grade(earlier);
                if (beneath != null && isOpen(beneath) && (out == null || beneath.level().compareTo(out.level()) > 0)
                        && DecisionDependencies.restsOn(claim, topic, others(beneath))) {
                    out = beneath;
                }
            }
        }
        return out;
    }

    /**
     * Whether another value is thought of at all: a common value on which nobody advises anything, or could, is in no doubt, and the bike at hand,
     * where it is to be ridden, is a fact: all else is said of that bike.
     */
    private boolean isOpen(Firmness beneath) {
        MeasureValue atHand = demands.get(Measure.BIKE_AT_HAND);
        if (beneath.decision().topic().equals(Topics.BIKE) && atHand != null && beneath.decision().value() == atHand.mid()) {
            return false;
        }
        return beneath.evidence() != EvidenceGrade.NONE || !beneath.decision().lost().isEmpty() || !beneath.unknown().isEmpty();
    }

    /** The other values that it might have; empty where they are unknown. */
    private static Set<Long> others(Firmness beneath) {
        return beneath.unknown().isEmpty() && beneath.restsOn() == null ? DecisionDependencies.advisedInstead(beneath.decision()) : Set.of();
    }

    // What leads to the value

    private static List<Claim> carriers(Decision decision, List<Claim> claims) {
        List<Claim> limits = decision.taken().stream().filter(FirmnessGrader::isLimit).toList();
        List<Claim> binding = binding(decision, claims, limits);
        if (!binding.isEmpty()) {
            return binding;
        }
        List<Claim> out = new ArrayList<>(decision.taken().stream().filter(claim -> claim.verb() == Verb.PREFER).toList());
        out.addAll(binding(decision, claims, decision.taken().stream().filter(claim -> isBound(claim) && !isLimit(claim)).toList()));
        if (out.isEmpty()) {
            out.addAll(ofWhatExists(decision, claims));
        }
        return out.isEmpty() ? decision.taken().stream().filter(claim -> liesOn(decision, claim)).toList() : out;
    }

    /** Where only some values exist, and none of them is what is advised: the advice to which the value comes nearest. */
    private static List<Claim> ofWhatExists(Decision decision, List<Claim> claims) {
        List<Claim> others = claims.stream().filter(claim -> claim.verb() != Verb.ONE_OF).toList();
        return others.size() == claims.size() || decision.taken().stream().noneMatch(claim -> claim.verb() == Verb.ONE_OF) ? List.of()
                : carriers(Settler.settle(decision.topic(), others), others);
    }

    /** Those of some bounds on which the value lies, where it would be another one without them all; of vetoes all. */
    private static List<Claim> binding(Decision decision, List<Claim> claims, List<Claim> bounds) {
        if (bounds.isEmpty()) {
            return List.of();
        }
        List<Claim> others = new ArrayList<>(claims);
        others.removeAll(bounds);
        Decision without = Settler.settle(decision.topic(), others);
        if (Objects.equals(without.value(), decision.value())) {
            return List.of();
        }
        return bounds.stream().filter(claim -> keepsFrom(claim, without.value())).toList();
    }

    /** Whether the value is a bound's own, as a common value may be. */
    private static boolean liesOn(Decision decision, Claim claim) {
        return (claim.verb() == Verb.AT_LEAST || claim.verb() == Verb.AT_MOST) && claim.value() == decision.value();
    }

    /** Whether a claim does not allow a value. */
    private static boolean keepsFrom(Claim claim, Long value) {
        return value == null || switch (claim.verb()) {
            case AT_LEAST -> value < claim.value();
            case AT_MOST -> value > claim.value();
            case RULE_OUT, AVOID -> value == claim.value();
            default -> false;
        };
    }

    /** A bound that nothing may overrule; that only some values exist decides nothing between them. */
    private static boolean isLimit(Claim claim) {
        return isBound(claim) && claim.origin().rank().compareTo(Rank.RIDER) <= 0;
    }

    static boolean isBound(Claim claim) {
        return claim.verb() != Verb.PREFER && claim.verb() != Verb.ONE_OF;
    }

    // What was assumed or is unknown

    private List<String> assumed(List<Claim> carriers) {
        Set<String> out = new LinkedHashSet<>();
        for (Claim claim : carriers) {
            for (TestedFact fact : claim.grounds()) {
                out.addAll(Assumptions.under(fact.measure(), demands));
            }
        }
        return List.copyOf(out);
    }

    /** Whether a rule that could not be checked would change the value by a notch or more if it applied. */
    private boolean mayChange(UndeterminedRule rule, Decision decision, List<Claim> claims) {
        if (!rule.topics().contains(decision.topic().name())) {
            return false;
        }
        List<Claim> all = new ArrayList<>(claims);
        for (Saying saying : rule.sayings()) {
            if (saying.topic().equals(decision.topic())) {
                Long value = value(saying);
                if (value == null) {
                    return true;
                }
                all.add(Claim.of(rule.origin(), saying.topic(), saying.verb(), value, saying.written(), List.of()));
            }
        }
        return rule.sayings().isEmpty() || CloseThresholdFinder.turned(Settler.settle(decision.topic(), all), decision);
    }

    /** What is said; null where it comes from a measure that is unknown. */
    private Long value(Saying saying) {
        if (saying.source() instanceof Saying.Times times) {
            MeasureValue value = demands.get(times.measure());
            return value == null ? null : Long.valueOf(times.on(saying.topic(), value.mid()));
        }
        return ((Saying.Literal) saying.source()).value();
    }
}
