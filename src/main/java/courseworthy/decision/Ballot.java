package courseworthy.decision;

import courseworthy.claim.Claim;
import courseworthy.claim.Rank;
import courseworthy.claim.Verb;
import courseworthy.topic.Topic;
import courseworthy.topic.Topic.Kind;
import courseworthy.topic.Topic.Safe;
import java.util.ArrayList;
import java.util.List;

/**
 * The vote on a topic. Only the highest rank that prefers anything votes. A rank above it that merely avoids does not vote, but
 * what it avoids most is struck from the ballot where anything else is left.
 *
 * <p>Quantities and ordered options take the weighted median: the value with the least disagreement, which is the sum of each
 * vote's weight times its distance. Among ordered options one that is avoided counts as much further disagreement as if the
 * avoiding vote stood one option away.
 */
final class Ballot {

    private final Topic topic;
    private final List<Claim> prefers = new ArrayList<>();
    private final List<Claim> avoids = new ArrayList<>();
    private final List<Claim> strikes = new ArrayList<>();
    private final List<Claim> unheard = new ArrayList<>();
    private final Rank rank;

    Ballot(Topic topic, List<Claim> claims) {
        this.topic = topic;
        this.rank = voting(claims);
        for (Claim claim : claims) {
            List<Claim> side = side(claim);
            if (side != null) {
                side.add(claim);
            }
        }
    }

    /** The highest rank that prefers anything; null where none does. */
    private static Rank voting(List<Claim> claims) {
        Rank highest = null;
        for (Claim claim : claims) {
            Rank own = claim.origin().rank();
            if (claim.verb() == Verb.PREFER && (highest == null || own.compareTo(highest) < 0)) {
                highest = own;
            }
        }
        return highest;
    }

    /** The list a claim belongs to; null for a bound or a veto. */
    private List<Claim> side(Claim claim) {
        boolean prefers = claim.verb() == Verb.PREFER;
        if (!prefers && claim.verb() != Verb.AVOID) {
            return null;
        }
        int below = rank == null ? -1 : claim.origin().rank().compareTo(rank);
        if (below == 0) {
            return prefers ? this.prefers : avoids;
        }
        return below > 0 ? unheard : strikes;
    }

    /** The rank that votes, or null where nothing is preferred. */
    Rank rank() {
        return rank;
    }

    /** The preferences that vote. */
    List<Claim> prefers() {
        return prefers;
    }

    /** Dislikes of the voting rank. */
    List<Claim> avoids() {
        return avoids;
    }

    /** Dislikes of ranks above the voting one; all dislikes where nothing is preferred. */
    List<Claim> strikes() {
        return strikes;
    }

    /** Preferences and dislikes of ranks below the voting one. */
    List<Claim> unheard() {
        return unheard;
    }

    /**
     * The median of the preferences for a quantity, in half ticks; between the two middle votes of a tie the safe one, or half way
     * where no side is safe.
     */
    long medianInHalfTicks() {
        List<Claim> ordered = new ArrayList<>(prefers);
        ordered.sort(ClaimOrder.BY_VALUE);
        long all = weight(ordered);
        long low = firstReaching(ordered, all);
        long high = firstReaching(ordered, all + 1);
        return switch (topic.safe()) {
            case UP -> 2 * high;
            case DOWN -> 2 * low;
            case NONE -> low + high;
        };
    }

    private static long firstReaching(List<Claim> ordered, long twiceTheWeight) {
        long counted = 0;
        for (Claim claim : ordered) {
            counted += 2 * weight(claim);
            if (counted >= twiceTheWeight) {
                return claim.value();
            }
        }
        throw new IllegalStateException("nobody votes");
    }

    /** The option that wins among those in a room that is not empty. */
    long option(FeasibleValues room) {
        List<Long> candidates = struck(room);
        if (prefers.isEmpty()) {
            return nearest(candidates, topic.standard());
        }
        return topic.kind() == Kind.ORDERED ? leastDisagreement(candidates) : mostWeight(candidates);
    }

    private List<Long> struck(FeasibleValues room) {
        List<Long> candidates = new ArrayList<>();
        for (long option = topic.least(); option <= topic.most(); option++) {
            if (room.contains(option)) {
                candidates.add(option);
            }
        }
        for (Rank striking : strikes.isEmpty() ? new Rank[0] : Rank.values()) {
            List<Claim> own = of(striking, strikes);
            long[] costs = new long[candidates.size()];
            for (int i = 0; i < costs.length; i++) {
                costs[i] = weightOn(candidates.get(i), own);
            }
            candidates = least(candidates, costs);
        }
        return candidates;
    }

    private static List<Claim> of(Rank rank, List<Claim> claims) {
        List<Claim> out = new ArrayList<>();
        for (Claim claim : claims) {
            if (claim.origin().rank() == rank) {
                out.add(claim);
            }
        }
        return out;
    }

    /** The ordered option on which all would agree best, then the one of the candidates that comes nearest to it. */
    private long leastDisagreement(List<Long> candidates) {
        List<Long> all = new ArrayList<>();
        for (long option = topic.least(); option <= topic.most(); option++) {
            all.add(option);
        }
        long wanted = safest(least(all, disagreements(all)));
        return nearest(least(candidates, disagreements(candidates)), wanted);
    }

    private long[] disagreements(List<Long> options) {
        long[] out = new long[options.size()];
        for (int i = 0; i < out.length; i++) {
            out[i] = disagreement(options.get(i));
        }
        return out;
    }

    private long disagreement(long option) {
        long apart = 0;
        for (Claim claim : prefers) {
            apart += weight(claim) * Math.abs(option - claim.value());
        }
        return apart + weightOn(option, avoids);
    }

    /** Among equals, one that is preferred by anybody before one that is not, and among the latter the default first. */
    private long mostWeight(List<Long> candidates) {
        long[] costs = new long[candidates.size()];
        for (int i = 0; i < costs.length; i++) {
            costs[i] = weightOn(candidates.get(i), avoids) - weightOn(candidates.get(i), prefers);
        }
        List<Long> best = least(candidates, costs);
        for (long option : best) {
            if (weightOn(option, prefers) > 0) {
                return option;
            }
        }
        return nearest(best, topic.standard());
    }

    /** The option itself where it is among the candidates; else the nearest of ordered options, the first of others. */
    private long nearest(List<Long> candidates, long wanted) {
        if (candidates.contains(wanted)) {
            return wanted;
        }
        if (topic.kind() == Kind.OPTIONS) {
            return candidates.get(0);
        }
        long[] apart = new long[candidates.size()];
        for (int i = 0; i < apart.length; i++) {
            apart[i] = Math.abs(candidates.get(i) - wanted);
        }
        return safest(least(candidates, apart));
    }

    /** Of equally good options the safest; where no side is safe the middle one, the earlier of two. */
    private long safest(List<Long> equals) {
        if (topic.safe() == Safe.UP) {
            return equals.get(equals.size() - 1);
        }
        return topic.safe() == Safe.DOWN ? equals.get(0) : equals.get((equals.size() - 1) / 2);
    }

    /** Those of some options that cost least. */
    private static List<Long> least(List<Long> options, long[] costs) {
        long least = Long.MAX_VALUE;
        for (long cost : costs) {
            least = Math.min(least, cost);
        }
        List<Long> out = new ArrayList<>();
        for (int i = 0; i < costs.length; i++) {
            if (costs[i] == least) {
                out.add(options.get(i));
            }
        }
        return out;
    }

    static long weightOn(long option, List<Claim> claims) {
        long sum = 0;
        for (Claim claim : claims) {
            sum += claim.value() == option ? weight(claim) : 0;
        }
        return sum;
    }

    static long weight(List<Claim> claims) {
        long sum = 0;
        for (Claim claim : claims) {
            sum += weight(claim);
        }
        return sum;
    }

    static long weight(Claim claim) {
        return claim.origin().force().weight();
    }
}
