package courseworthy.decision;

import courseworthy.claim.Claim;
import courseworthy.claim.Rank;
import courseworthy.claim.Verb;
import courseworthy.topic.Topic;
import courseworthy.topic.Topic.Kind;
import courseworthy.topic.Topic.Safe;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToLongFunction;

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
    private final List<Claim> prefers;
    private final List<Claim> avoids;
    private final List<Claim> strikes;
    private final List<Claim> unheard;
    private final Rank rank;

    Ballot(Topic topic, List<Claim> claims) {
        this.topic = topic;
        Rank voting = claims.stream().filter(claim -> claim.verb() == Verb.PREFER).map(claim -> claim.author().rank())
                .min(Comparator.naturalOrder()).orElse(null);
        this.rank = voting;
        this.prefers = claims.stream().filter(claim -> claim.verb() == Verb.PREFER && claim.author().rank() == voting).toList();
        this.avoids = claims.stream().filter(claim -> claim.verb() == Verb.AVOID && claim.author().rank() == voting).toList();
        this.strikes = claims.stream().filter(claim -> claim.verb() == Verb.AVOID)
                .filter(claim -> voting == null || claim.author().rank().compareTo(voting) < 0).toList();
        this.unheard = claims.stream().filter(claim -> claim.verb() == Verb.PREFER || claim.verb() == Verb.AVOID)
                .filter(claim -> voting != null && claim.author().rank().compareTo(voting) > 0).toList();
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
        ordered.sort(Comparator.comparingLong(Claim::value));
        long all = ordered.stream().mapToLong(Ballot::weight).sum();
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
    long option(Room room) {
        List<Long> candidates = struck(room);
        if (prefers.isEmpty()) {
            return nearest(candidates, topic.standard());
        }
        return topic.kind() == Kind.ORDERED ? leastDisagreement(candidates) : mostWeight(candidates);
    }

    private List<Long> struck(Room room) {
        List<Long> candidates = new ArrayList<>();
        for (long option = topic.least(); option <= topic.most(); option++) {
            if (room.contains(option)) {
                candidates.add(option);
            }
        }
        for (Rank striking : strikes.isEmpty() ? new Rank[0] : Rank.values()) {
            candidates = least(candidates, option -> weightOn(option,
                    strikes.stream().filter(claim -> claim.author().rank() == striking).toList()));
        }
        return candidates;
    }

    /** The ordered option on which all would agree best, then the one of the candidates that comes nearest to it. */
    private long leastDisagreement(List<Long> candidates) {
        List<Long> all = new ArrayList<>();
        for (long option = topic.least(); option <= topic.most(); option++) {
            all.add(option);
        }
        long wanted = safest(least(all, this::disagreement));
        return nearest(least(candidates, this::disagreement), wanted);
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
        List<Long> best = least(candidates, option -> weightOn(option, avoids) - weightOn(option, prefers));
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
        return safest(least(candidates, option -> Math.abs(option - wanted)));
    }

    /** Of equally good options the safest; where no side is safe the middle one, the earlier of two. */
    private long safest(List<Long> equals) {
        if (topic.safe() == Safe.UP) {
            return equals.get(equals.size() - 1);
        }
        return topic.safe() == Safe.DOWN ? equals.get(0) : equals.get((equals.size() - 1) / 2);
    }

    private static List<Long> least(List<Long> options, ToLongFunction<Long> cost) {
        long least = options.stream().mapToLong(cost).min().orElseThrow();
        return options.stream().filter(option -> cost.applyAsLong(option) == least).toList();
    }

    static long weightOn(long option, List<Claim> claims) {
        return claims.stream().filter(claim -> claim.value() == option).mapToLong(Ballot::weight).sum();
    }

    static long weight(Claim claim) {
        return claim.author().force().weight();
    }
}
