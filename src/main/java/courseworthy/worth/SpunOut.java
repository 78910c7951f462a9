package courseworthy.worth;

import courseworthy.ride.Range;

/**
 * Where the hardest gear is turned as fast as the rider will, and more would be pedalled.
 *
 * @param metres  over the whole event
 * @param seconds how long
 * @param cost    time lost against a gear hard enough, s
 */
public record SpunOut(Range metres, Range seconds, Range cost) {

    public boolean none() {
        return metres.high() < 1;
    }
}
