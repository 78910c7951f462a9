package courseworthy.task;

import courseworthy.claim.Claim;
import courseworthy.claim.TestedFact;
import courseworthy.decision.Decision;
import courseworthy.demand.Measure;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Which decisions rest on ground that a map does not tell for sure. */
public final class GroundReliance {

    private static final Set<String> OF_THE_GROUND = new HashSet<>();

    static {
        EnumSet.range(Measure.PAVED_SHARE, Measure.AERO_SHARE).forEach(each -> OF_THE_GROUND.add(each.written()));
    }

    private GroundReliance() {
    }

    /** Whether a rule that counted tested the ground, of which some is inferred or unknown. */
    public static boolean rests(Decision decision, GroundBasis basis) {
        return isOpen(basis) && anyFact(decision, false);
    }

    /** Whether such a rule could turn out otherwise within what its measure of the ground may be. */
    public static boolean mayChange(Decision decision, GroundBasis basis) {
        return isOpen(basis) && anyFact(decision, true);
    }

    /** The decisions that could change so, in order. */
    public static List<Decision> open(List<Decision> decisions, GroundBasis basis) {
        return decisions.stream().filter(each -> mayChange(each, basis)).toList();
    }

    private static boolean isOpen(GroundBasis basis) {
        return basis != null && basis.inferred() + basis.unknown() > 0;
    }

    private static boolean anyFact(Decision decision, boolean near) {
        for (Claim claim : decision.taken()) {
            for (TestedFact fact : claim.grounds()) {
                boolean ground = OF_THE_GROUND.contains(fact.measure()) || fact.measure().contains("stretch") || fact.measure().startsWith("share of course");
                if (ground && (!near || fact.near())) {
                    return true;
                }
            }
        }
        return false;
    }
}
