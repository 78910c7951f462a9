package courseworthy.worth;

import courseworthy.ride.Range;
import java.util.List;

/**
 * What another value would return.
 *
 * @param value      the other value, in words
 * @param effect     what it does to the ride against the decided one
 * @param saved      time it returns over the ride, s; below 0 where it is slower
 * @param breakEvens for each kind of stop that the faster of the two may bring; empty where it brings none, or neither is faster
 */
public record Alternative(String value, Effect effect, Range saved, List<BreakEven> breakEvens) {

    public Alternative {
        breakEvens = List.copyOf(breakEvens);
    }

    /** The one to show where one is shown: of the stops for a puncture that for a tube; null where there is none. */
    public BreakEven leading() {
        return breakEvens.isEmpty() ? null : breakEvens.get(Math.min(1, breakEvens.size() - 1));
    }
}
