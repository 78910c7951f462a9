package courseworthy.decision;

import courseworthy.topic.Topic;
import courseworthy.topic.Topic.Safe;
import java.util.Collection;

/** Brings a quantity that is wished for to one that can be had: inside the bounds, on a step or on a value that exists. */
final class Rounding {

    private final Topic topic;

    Rounding(Topic topic) {
        this.topic = topic;
    }

    /** The wish in half ticks, brought inside a room; the room held to the topic's sensible range as far as it has part in it. */
    long clamped(long halfTicks, FeasibleValues room) {
        FeasibleValues sensible = sensible(room);
        return Math.min(2 * sensible.most(), Math.max(2 * sensible.least(), halfTicks));
    }

    /** The sensible range is the weakest bound of all: each end gives way to what was claimed. */
    private FeasibleValues sensible(FeasibleValues room) {
        FeasibleValues inside = orKeep(room.atMost(topic.most()), room);
        return orKeep(inside.atLeast(topic.least()), inside);
    }

    private static FeasibleValues orKeep(FeasibleValues narrower, FeasibleValues room) {
        return narrower.isEmpty() ? room : narrower;
    }

    /**
     * The step next to a clamped wish, toward the safe side, or the nearest one where no side is safe (the lower of two); the other
     * way where the bounds ask for it. Where no step fits, the bound: the one the wish lies on, else the safe one, else the nearest.
     */
    long toStep(long halfTicks, FeasibleValues room) {
        FeasibleValues sensible = sensible(room);
        long step = topic.step(Math.floorDiv(halfTicks, 2));
        long down = Math.floorDiv(halfTicks, 2 * step) * step;
        long up = -Math.floorDiv(-halfTicks, 2 * step) * step;
        boolean upward = topic.safe() == Safe.UP || topic.safe() == Safe.NONE && 2 * up - halfTicks < halfTicks - 2 * down;
        long first = upward ? up : down;
        long second = upward ? down : up;
        if (sensible.contains(first)) {
            return first;
        }
        return sensible.contains(second) ? second : bound(halfTicks, sensible);
    }

    private long bound(long halfTicks, FeasibleValues room) {
        long least = room.least();
        long most = room.most();
        if (halfTicks == 2 * least || halfTicks == 2 * most) {
            return halfTicks / 2;
        }
        return switch (topic.safe()) {
            case UP -> most;
            case DOWN -> least;
            case NONE -> 2 * most - halfTicks < halfTicks - 2 * least ? most : least;
        };
    }

    /** The nearest of the values that exist, in half ticks from a wish; of two the safe one, or the lower where no side is safe. */
    long toMember(long halfTicks, Collection<Long> ascending) {
        long best = 0;
        long apart = Long.MAX_VALUE;
        for (long member : ascending) {
            long distance = Math.abs(2 * member - halfTicks);
            if (distance < apart || distance == apart && topic.safe() == Safe.UP) {
                best = member;
                apart = distance;
            }
        }
        return best;
    }
}
