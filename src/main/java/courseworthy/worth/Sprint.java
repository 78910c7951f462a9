package courseworthy.worth;

import courseworthy.ride.Range;

/**
 * The finishing sprint on the last stretch, at the speed its power would hold.
 *
 * @param power W
 * @param speed that the power gives, m/s
 * @param limit what the hardest gear gives at the rider's highest cadence, m/s
 * @param cost  lost over the last 200 m, s; 0 where the gear is hard enough
 */
public record Sprint(Range power, Range speed, Range limit, Range cost) {

    /** Length of a sprint, m (common practice, no source). */
    static final double LENGTH = 200;
}
