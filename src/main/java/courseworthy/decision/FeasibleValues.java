package courseworthy.decision;

import courseworthy.claim.Claim;
import courseworthy.topic.Topic;
import courseworthy.topic.Topic.Kind;
import java.util.List;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;

/**
 * The values of a topic that are still possible.
 *
 * @param least   least value, {@link #LOWEST} where nothing bounds it
 * @param most    greatest value, {@link #HIGHEST} where nothing bounds it
 * @param out     options ruled out
 * @param members the only values that exist, or null where any does
 */
record FeasibleValues(long least, long most, Set<Long> out, NavigableSet<Long> members) {

    /** Beyond any value, with room to double it. */
    static final long HIGHEST = 1L << 60;
    static final long LOWEST = -HIGHEST;

    /** All values of a topic. A quantity is not held to its sensible range here: a bound may have reason to lie outside it. */
    static FeasibleValues of(Topic topic) {
        return topic.kind() == Kind.QUANTITY
                ? new FeasibleValues(LOWEST, HIGHEST, Set.of(), null)
                : new FeasibleValues(topic.least(), topic.most(), Set.of(), null);
    }

    /** What is left once a bound, a veto or what exists is taken. */
    FeasibleValues narrowed(Claim claim) {
        return switch (claim.verb()) {
            case AT_LEAST -> atLeast(claim.value());
            case AT_MOST -> atMost(claim.value());
            case RULE_OUT -> without(claim.value());
            case ONE_OF -> oneOf(claim.values());
            default -> this;
        };
    }

    FeasibleValues narrowed(List<Claim> claims) {
        FeasibleValues room = this;
        for (Claim claim : claims) {
            room = room.narrowed(claim);
        }
        return room;
    }

    FeasibleValues atLeast(long value) {
        return new FeasibleValues(Math.max(least, value), most, out, members);
    }

    FeasibleValues atMost(long value) {
        return new FeasibleValues(least, Math.min(most, value), out, members);
    }

    FeasibleValues only(long value) {
        return atLeast(value).atMost(value);
    }

    FeasibleValues without(long option) {
        Set<Long> all = new TreeSet<>(out);
        all.add(option);
        return new FeasibleValues(least, most, all, members);
    }

    private FeasibleValues oneOf(List<Long> values) {
        NavigableSet<Long> both = new TreeSet<>(values);
        if (members != null) {
            both.retainAll(members);
        }
        return new FeasibleValues(least, most, out, both);
    }

    boolean contains(long value) {
        return value >= least && value <= most && !out.contains(value) && (members == null || members.contains(value));
    }

    boolean isEmpty() {
        if (members != null) {
            for (long member : members) {
                if (contains(member)) {
                    return false;
                }
            }
            return true;
        }
        long value = least;
        while (value <= most && out.contains(value)) {
            value++;
        }
        return value > most;
    }
}
