package courseworthy.build;

import courseworthy.build.Build.Swap;
import courseworthy.workshop.Part;
import courseworthy.workshop.WorkRules;
import courseworthy.workshop.WorkRules.SharePolicy;
import java.util.Collections;
import java.util.Set;

/**
 * One job on the stand.
 *
 * @param kind    a kind of part, a wheel that goes out or in, or work that follows from other work
 * @param bike    the bike, or a wheel or crank that lies loose
 * @param end     {@code front} or {@code rear}; null where there is only one
 * @param wheels  names of the wheels that it is done on or takes something from
 * @param what    what to do
 * @param minutes of work
 * @param swap    the swap that it makes; null where it makes none
 */
record WorkJob(String kind, Part bike, String end, Set<String> wheels, String what, int minutes, Swap swap) {

    WorkJob {
        wheels = Set.copyOf(wheels);
    }

    /** What it is in a word or two: the part that goes on, or the work that follows; empty for a wheel that goes out or back in. */
    String label() {
        if (swap != null) {
            return swap.on() == null ? "remove " + swap.off() : swap.on().name();
        }
        return kind.equals(WorkRules.WHEEL_OUT) || kind.equals(WorkRules.WHEEL_IN) ? "" : kind;
    }

    /** The most that two jobs have in common. */
    SharePolicy shared(WorkJob other) {
        if (!Collections.disjoint(wheels, other.wheels)) {
            return SharePolicy.WHEEL;
        }
        boolean sameBike = bike == other.bike;
        return sameBike && end != null && end.equals(other.end) ? SharePolicy.END : sameBike ? SharePolicy.BIKE : SharePolicy.NOTHING;
    }
}
