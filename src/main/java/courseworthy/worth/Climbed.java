package courseworthy.worth;

import courseworthy.demand.Estimated.Kind;
import courseworthy.ride.Range;

/**
 * How a steep piece is ridden in one gear.
 *
 * @param kind     which piece
 * @param gradient rise over length
 * @param power    what is pedalled there, W
 * @param speed    what that power gives, m/s
 * @param cadence  turns of the crank a minute
 * @param torque   mean at the crank, N m
 */
public record Climbed(Kind kind, Range gradient, Range power, Range speed, Range cadence, Range torque) {

    /** Slower than this walking wins, m/s (4.5 km/h; common practice, no source). */
    static final double WALKED_BELOW = 1.25;

    /** Whether walking is as fast. */
    public boolean walked() {
        return speed.mid() < WALKED_BELOW;
    }
}
