package courseworthy.call;

import courseworthy.call.Firmness.EvidenceGrade;
import courseworthy.claim.Claim;
import courseworthy.claim.Rank;
import courseworthy.claim.TestedFact;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The best evidence among claims that lead to a value. Habits of the trade are several where they rest on different facts, or come from sheets
 * of different people: two rules on one figure are one habit in two steps. Which bike a rule is for, what was decided before, and whether it
 * is a race are not facts it rests on.
 */
final class EvidenceGrader {

    private static final Set<String> FRAME = Set.of("bike at hand", "role");
    private static final String DECIDED = "decided:";

    private EvidenceGrader() {
    }

    static EvidenceGrade best(List<Claim> claims) {
        if (claims.isEmpty()) {
            return EvidenceGrade.NONE;
        }
        if (claims.stream().anyMatch(claim -> claim.origin().rank().compareTo(Rank.RIDER) <= 0)) {
            return EvidenceGrade.LIMIT;
        }
        if (with(claims, courseworthy.claim.Evidence.PUBLISHED).findAny().isPresent()) {
            return EvidenceGrade.SOURCE;
        }
        List<Claim> practice = with(claims, courseworthy.claim.Evidence.PRACTICE).toList();
        return practice.isEmpty() ? EvidenceGrade.OPINION : independent(practice) > 1 ? EvidenceGrade.PRACTICES : EvidenceGrade.PRACTICE;
    }

    private static Stream<Claim> with(List<Claim> claims, courseworthy.claim.Evidence evidence) {
        return claims.stream().filter(claim -> claim.origin().evidence() == evidence);
    }

    /** How many groups the claims fall into, of which no two share a fact. */
    static int independent(List<Claim> claims) {
        List<Set<String>> groups = new ArrayList<>();
        for (Claim claim : claims) {
            Set<String> facts = facts(claim);
            List<Set<String>> shared = groups.stream().filter(group -> !Collections.disjoint(group, facts)).toList();
            groups.removeAll(shared);
            shared.forEach(facts::addAll);
            groups.add(facts);
        }
        return groups.size();
    }

    /** What a claim rests on, by the sheet it is from; of a claim that always holds, that alone. */
    private static Set<String> facts(Claim claim) {
        String rule = claim.origin().rule();
        String sheet = rule.substring(0, rule.lastIndexOf('/') + 1);
        Set<String> out = new HashSet<>();
        for (TestedFact fact : claim.grounds()) {
            if (!FRAME.contains(fact.measure()) && !fact.measure().startsWith(DECIDED)) {
                out.add(sheet + fact.measure());
            }
        }
        if (out.isEmpty()) {
            out.add(sheet);
        }
        return out;
    }
}
