package courseworthy.call;

import courseworthy.claim.Claim;
import courseworthy.claim.TestedFact;
import courseworthy.decision.Decision;
import courseworthy.decision.Settler;
import courseworthy.demand.DerivedMeasures;
import courseworthy.demand.Measure;
import courseworthy.sheet.TestSubject;
import courseworthy.sheet.ValueTest;
import courseworthy.sheet.ValueTestReader;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The earlier decisions that a claim rests on: those that it tests, and those from which a measure is worked out that it uses. What is written of
 * the bike at hand is a fact, and rests on none. A test that comes out the same for each value that is advised in place of the one decided does not
 * count.
 */
final class DecisionDependencies {

    private static final String DECIDED = "decided: ";

    private DecisionDependencies() {
    }

    /** The topics that a claim reads, whatever was decided on them. */
    static Set<Topic> topics(Claim claim) {
        Set<Topic> out = new LinkedHashSet<>();
        for (TestedFact fact : claim.grounds()) {
            if (fact.measure().startsWith(DECIDED)) {
                out.add(Topics.of(fact.measure().substring(DECIDED.length())));
            } else {
                out.addAll(workedOutFrom(fact));
            }
        }
        out.removeIf(topic -> topic.layer() >= claim.topic().layer());
        return out;
    }

    private static List<Topic> workedOutFrom(TestedFact fact) {
        Measure measure = Measure.find(fact.measure());
        return measure == null || !measure.derived() ? List.of() : DerivedMeasures.topicsRead(measure);
    }

    /** Whether a claim could be another one if one of some other values were decided on an earlier topic; with no other values named, any value counts. */
    static boolean restsOn(Claim claim, Topic earlier, Set<Long> others) {
        for (TestedFact fact : claim.grounds()) {
            if (workedOutFrom(fact).contains(earlier) || fact.measure().equals(DECIDED + earlier.name()) && turns(fact, earlier, others)) {
                return true;
            }
        }
        return false;
    }

    private static boolean turns(TestedFact fact, Topic earlier, Set<Long> others) {
        ValueTest test = fact.test().isEmpty() || others.isEmpty() ? null : ValueTestReader.of(fact.test(), TestSubject.of(earlier));
        return test == null || others.stream().anyMatch(value -> test.holds(value) != fact.met());
    }

    /** The values that a decision would have if one claim that lost were the only advice within the bounds that hold; empty where none lost or one leads to none. */
    static Set<Long> advisedInstead(Decision decision) {
        List<Claim> bounds = decision.taken().stream().filter(FirmnessGrader::isBound).toList();
        Set<Long> out = new LinkedHashSet<>();
        for (Decision.LosingClaim lost : decision.lost()) {
            List<Claim> claims = new ArrayList<>(bounds);
            claims.add(lost.claim());
            Long value = Settler.settle(decision.topic(), claims).value();
            if (value == null) {
                return Set.of();
            }
            out.add(value);
        }
        return out;
    }
}
