package courseworthy.decision;

import courseworthy.claim.Claim;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision.How;
import courseworthy.decision.Decision.LosingClaim;
import courseworthy.topic.Topic;
import courseworthy.topic.Topic.Safe;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Takes bounds and vetoes level by level, strongest first, each if it leaves something. Limits are taken all: that they leave
 * something is seen to before.
 */
final class BoundSettler {

    private final Topic topic;
    private final List<Claim> taken = new ArrayList<>();
    private final List<LosingClaim> lost = new ArrayList<>();
    private boolean contradicted;
    private FeasibleValues room;

    /** Claims of one level weigh the same against those of another. Shipped files, or those of the rider, are one voice. */
    private record PriorityLevel(Rank rank, Force force, int sheet) {
        static PriorityLevel of(RuleOrigin author) {
            return new PriorityLevel(author.rank(), author.force(), author.rank() == Rank.COACH ? author.sheet() : 0);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof PriorityLevel that && rank == that.rank && force == that.force && sheet == that.sheet;
        }

        @Override
        public int hashCode() {
            return (rank.ordinal() * 31 + force.ordinal()) * 31 + sheet;
        }
    }

    /**
     * @param whole  the values to start from
     * @param claims bounds, vetoes and what exists, strongest first
     */
    BoundSettler(Topic topic, FeasibleValues whole, List<Claim> claims) {
        this.topic = topic;
        this.room = whole;
        Map<PriorityLevel, List<Claim>> levels = new LinkedHashMap<>();
        for (Claim claim : claims) {
            PriorityLevel level = PriorityLevel.of(claim.origin());
            List<Claim> own = levels.get(level);
            if (own == null) {
                own = new ArrayList<>();
                levels.put(level, own);
            }
            own.add(claim);
        }
        for (Map.Entry<PriorityLevel, List<Claim>> level : levels.entrySet()) {
            take(level.getKey(), level.getValue());
        }
    }

    /** What is left. */
    FeasibleValues room() {
        return room;
    }

    List<Claim> taken() {
        return taken;
    }

    List<LosingClaim> lost() {
        return lost;
    }

    /** Whether bounds of one level were set aside because they contradict each other. */
    boolean contradicted() {
        return contradicted;
    }

    private void take(PriorityLevel level, List<Claim> claims) {
        if (level.rank() == Rank.LIMIT) {
            for (Claim claim : claims) {
                take(claim);
            }
            return;
        }
        List<Claim> bounds = new ArrayList<>();
        List<Claim> vetoes = new ArrayList<>();
        for (Claim claim : claims) {
            (claim.verb() == Verb.RULE_OUT ? vetoes : bounds).add(claim);
        }
        if (topic.safe() == Safe.NONE) {
            takeUnlessContradicted(bounds);
        } else {
            bounds.sort(topic.safe() == Safe.UP ? ClaimOrder.LOWER_BOUNDS_FIRST : ClaimOrder.UPPER_BOUNDS_FIRST);
            takeIfTheyLeaveSomething(bounds);
        }
        // Where no side is safe, the last of the topic's own order first, as in a tie.
        vetoes.sort(topic.safe() == Safe.UP ? ClaimOrder.BY_VALUE : ClaimOrder.BY_VALUE_DOWN);
        takeIfTheyLeaveSomething(vetoes);
    }

    private void takeIfTheyLeaveSomething(List<Claim> claims) {
        for (Claim claim : claims) {
            takeIfItLeavesSomething(claim);
        }
    }

    private void take(Claim claim) {
        room = room.narrowed(claim);
        taken.add(claim);
    }

    private void takeIfItLeavesSomething(Claim claim) {
        if (room.narrowed(claim).isEmpty()) {
            lost.add(new LosingClaim(claim, blockers(FeasibleValues.of(topic).narrowed(claim), taken), How.OVERRULED));
        } else {
            take(claim);
        }
    }

    private void takeUnlessContradicted(List<Claim> bounds) {
        List<Claim> possible = new ArrayList<>();
        for (Claim bound : bounds) {
            if (room.narrowed(bound).isEmpty()) {
                takeIfItLeavesSomething(bound);
            } else {
                possible.add(bound);
            }
        }
        Map<Claim, List<String>> against = new LinkedHashMap<>();
        for (Claim bound : possible) {
            against.put(bound, contradicting(bound, possible));
        }
        for (Map.Entry<Claim, List<String>> bound : against.entrySet()) {
            if (bound.getValue().isEmpty()) {
                take(bound.getKey());
            } else {
                contradicted = true;
                lost.add(new LosingClaim(bound.getKey(), bound.getValue(), How.SET_ASIDE));
            }
        }
    }

    private List<String> contradicting(Claim bound, List<Claim> others) {
        FeasibleValues alone = room.narrowed(bound);
        List<Claim> out = new ArrayList<>();
        for (Claim other : others) {
            if (alone.narrowed(other).isEmpty()) {
                out.add(other);
            }
        }
        return ids(out);
    }

    /** The strongest few of some claims that leave nothing of a room; the ids, sorted. Empty where all of them leave something. */
    static List<String> blockers(FeasibleValues wanted, List<Claim> strongestFirst) {
        return ids(conflict(wanted, strongestFirst));
    }

    /** The strongest few of some claims that leave nothing of a room, none of which can be spared. */
    static List<Claim> conflict(FeasibleValues wanted, List<Claim> strongestFirst) {
        List<Claim> needed = new ArrayList<>(strongestFirst);
        if (!wanted.narrowed(needed).isEmpty()) {
            return List.of();
        }
        for (int i = needed.size() - 1; i >= 0; i--) {
            List<Claim> fewer = new ArrayList<>(needed);
            fewer.remove(i);
            if (wanted.narrowed(fewer).isEmpty()) {
                needed = fewer;
            }
        }
        return needed;
    }

    static List<String> ids(List<Claim> claims) {
        Set<String> out = new TreeSet<>();
        for (Claim claim : claims) {
            out.add(claim.origin().rule());
        }
        return List.copyOf(out);
    }
}
