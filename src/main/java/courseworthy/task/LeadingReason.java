package courseworthy.task;

import courseworthy.claim.Claim;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.LosingClaim;
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
public record LeadingReason(List<Decision> decisions, Claim claim) {

    public LeadingReason {
        decisions = List.copyOf(decisions);
    }

    /** The leading reasons of all decisions that have one, decisions led by one rule together. */
    public static List<LeadingReason> of(List<Decision> decisions) {
        Map<String, List<Decision>> led = new LinkedHashMap<>();
        Map<String, Claim> claims = new LinkedHashMap<>();
        for (Decision decision : decisions) {
            Claim leading = leading(decision);
            if (leading != null) {
                String rule = leading.origin().rule();
                led.computeIfAbsent(rule, key -> new ArrayList<>()).add(decision);
                claims.putIfAbsent(rule, leading);
            }
        }
        List<LeadingReason> out = new ArrayList<>();
        led.forEach((rule, list) -> out.add(new LeadingReason(list, claims.get(rule))));
        return out;
    }

    /**
     * The claim that best explains the value: of the preferences that it meets the nearest one of the highest rank, else a bound that it
     * lies on, before others one that keeps it from a preference it does not meet, else the first that it meets; null where nothing spoke for it.
     */
    public static Claim leading(Decision decision) {
        if (decision.taken().isEmpty()) {
            return null;
        }
        Claim nearest = nearest(decision);
        if (nearest != null) {
            return nearest;
        }
        Claim out = null;
        for (Claim claim : decision.taken()) {
            boolean bound = decision.value() != null && claim.verb() != Verb.ONE_OF && on(decision, claim);
            if (bound && (out == null || !moves(decision, out) && moves(decision, claim))) {
                out = claim;
            }
        }
        return out == null ? decision.taken().get(0) : out;
    }

    private static Claim nearest(Decision decision) {
        Claim out = null;
        for (Claim claim : decision.value() == null ? List.<Claim>of() : decision.taken()) {
            boolean votes = claim.verb() == Verb.PREFER && (out == null || claim.origin().rank() == out.origin().rank());
            out = votes && (out == null || apart(decision, claim) < apart(decision, out)) ? claim : out;
        }
        return out;
    }

    private static long apart(Decision decision, Claim claim) {
        return Math.abs(claim.value() - decision.value());
    }

    /** Whether a preference that lost lies where the bound does not let the value go. */
    private static boolean moves(Decision decision, Claim bound) {
        return decision.lost().stream().map(LosingClaim::claim).anyMatch(lost -> lost.verb() == Verb.PREFER
                && (bound.verb() == Verb.AT_LEAST ? lost.value() < bound.value() : bound.verb() == Verb.AT_MOST && lost.value() > bound.value()));
    }

    /** Whether the value is the bound's own, or the step next to it. */
    private static boolean on(Decision decision, Claim claim) {
        return apart(decision, claim) < decision.topic().step(decision.value());
    }
}
