package courseworthy.brief;

import courseworthy.claim.Claim;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.topic.Topic;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The claim that leads some decisions.
 *
 * @param decisions that it leads, in the order of the catalogue
 * @param claim     the leading claim; of several by one rule, the first
 */
public record Reason(List<Decision> decisions, Claim claim) {

    public Reason {
        decisions = List.copyOf(decisions);
    }

    /** The leading reasons of all decisions that have one, decisions led by one rule together. */
    static List<Reason> of(List<Decision> decisions) {
        Map<String, List<Decision>> led = new LinkedHashMap<>();
        Map<String, Claim> claims = new LinkedHashMap<>();
        for (Decision decision : decisions) {
            Claim leading = leading(decision);
            if (leading != null) {
                String rule = leading.author().rule();
                led.computeIfAbsent(rule, key -> new ArrayList<>()).add(decision);
                claims.putIfAbsent(rule, leading);
            }
        }
        List<Reason> out = new ArrayList<>();
        led.forEach((rule, list) -> out.add(new Reason(list, claims.get(rule))));
        return out;
    }

    /**
     * The claim that best explains the value: a preference that lies within a step of it, else a bound that it lies on, else
     * whatever asked for a value near by where only some exist, else the first taken; null where nothing spoke for it.
     */
    static Claim leading(Decision decision) {
        if (decision.taken().isEmpty()) {
            return null;
        }
        if (decision.value() != null) {
            for (Claim claim : decision.taken()) {
                if (claim.verb() == Verb.PREFER && near(decision, claim)) {
                    return claim;
                }
            }
            for (Claim claim : decision.taken()) {
                if (claim.verb() != Verb.ONE_OF && near(decision, claim)) {
                    return claim;
                }
            }
        }
        for (Claim claim : decision.taken()) {
            if (claim.verb() == Verb.PREFER) {
                return claim;
            }
        }
        return decision.taken().get(0);
    }

    private static boolean near(Decision decision, Claim claim) {
        Topic topic = decision.topic();
        long within = topic.kind() == Topic.Kind.QUANTITY ? topic.step() : 0;
        return Math.abs(claim.value() - decision.value()) <= within;
    }
}
