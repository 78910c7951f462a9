package courseworthy.worth;

import courseworthy.demand.EstimatedRide.Kind;
import courseworthy.ride.Range;
import courseworthy.ride.Walking;

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
public record ClimbInGear(Kind kind, Range gradient, Range power, Range speed, Range cadence, Range torque) {

    /** Whether a rider gets off there. */
    public boolean walked() {
        return speed.mid() < Walking.below(gradient.mid());
    }
}
