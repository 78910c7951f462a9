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
record Room(long least, long most, Set<Long> out, NavigableSet<Long> members) {

    /** Beyond any value, with room to double it. */
    static final long HIGHEST = 1L << 60;
    static final long LOWEST = -HIGHEST;

    /** All values of a topic. A quantity is not held to its sensible range here: a bound may have reason to lie outside it. */
    static Room of(Topic topic) {
        return topic.kind() == Kind.QUANTITY
                ? new Room(LOWEST, HIGHEST, Set.of(), null)
                : new Room(topic.least(), topic.most(), Set.of(), null);
    }

    /** What is left once a bound, a veto or what exists is taken. */
    Room narrowed(Claim claim) {
        return switch (claim.verb()) {
            case AT_LEAST -> atLeast(claim.value());
            case AT_MOST -> atMost(claim.value());
            case RULE_OUT -> without(claim.value());
            case ONE_OF -> oneOf(claim.values());
            default -> this;
        };
    }

    Room narrowed(List<Claim> claims) {
        Room room = this;
        for (Claim claim : claims) {
            room = room.narrowed(claim);
        }
        return room;
    }

    Room atLeast(long value) {
        return new Room(Math.max(least, value), most, out, members);
    }

    Room atMost(long value) {
        return new Room(least, Math.min(most, value), out, members);
    }

    Room only(long value) {
        return atLeast(value).atMost(value);
    }

    Room without(long option) {
        Set<Long> all = new TreeSet<>(out);
        all.add(option);
        return new Room(least, most, all, members);
    }

    private Room oneOf(List<Long> values) {
        NavigableSet<Long> both = new TreeSet<>(values);
        if (members != null) {
            both.retainAll(members);
        }
        return new Room(least, most, out, both);
    }

    /** The same without regard to what exists. */
    Room inTheory() {
        return new Room(least, most, out, null);
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
