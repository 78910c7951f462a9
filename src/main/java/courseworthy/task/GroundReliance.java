package courseworthy.task;

import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.claim.Claim;
import courseworthy.claim.TestedFact;
import courseworthy.course.Course;
import courseworthy.decision.Decision;
import courseworthy.demand.Measure;
import courseworthy.demand.RideInput;
import courseworthy.engine.RuleSet;
import courseworthy.scout.GroundExtremes;
import courseworthy.topic.Topic;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Which decisions rest on ground that a map does not tell for sure. The recommendation is made once more on the smoothest ground that the course may
 * have, and once on the roughest, when that is asked for; decisions that come out otherwise there could change.
 */
public final class GroundReliance {

    private static final Set<String> OF_THE_GROUND = new HashSet<>();

    static {
        EnumSet.range(Measure.PAVED_SHARE, Measure.AERO_SHARE).forEach(each -> OF_THE_GROUND.add(each.written()));
    }

    private final RideInput ride;
    private final RuleSet rules;
    private final Call call;
    private Set<Topic> open;

    /** @param call on the ground as it is assumed */
    GroundReliance(RideInput ride, RuleSet rules, Call call) {
        this.ride = ride;
        this.rules = rules;
        this.call = call;
    }

    /** Whether a rule that counted tested the ground, of which some is inferred or unknown. */
    public static boolean rests(Decision decision, GroundBasis basis) {
        if (basis == null || basis.inferred() + basis.unknown() == 0) {
            return false;
        }
        for (Claim claim : decision.taken()) {
            for (TestedFact fact : claim.grounds()) {
                if (OF_THE_GROUND.contains(fact.measure()) || fact.measure().contains("stretch") || fact.measure().startsWith("share of course")) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether a decision is another on the smoothest or on the roughest ground that the course may have. */
    public boolean mayChange(Decision decision) {
        return open().contains(decision.topic());
    }

    /** The decisions that could change so, in order. */
    public List<Decision> open(List<Decision> decisions) {
        return decisions.stream().filter(this::mayChange).toList();
    }

    private synchronized Set<Topic> open() {
        if (open == null) {
            open = new HashSet<>();
            if (CourseSummary.of(ride.course()).basis() != null && GroundExtremes.isOpen(ride.course())) {
                compare(GroundExtremes.smoothest(ride.course()));
                compare(GroundExtremes.roughest(ride.course()));
            }
        }
        return open;
    }

    private void compare(Course course) {
        Call other = CallMaker.call(rules, ride.with(course));
        for (Decision decision : other.decisions()) {
            if (!decision.text().equals(call.on(decision.topic()).text())) {
                open.add(decision.topic());
            }
        }
    }
}
