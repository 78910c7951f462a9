package courseworthy.worth;

import courseworthy.ride.Range;

/**
 * What aero extensions return.
 *
 * @param share of the distance on which they are used
 * @param drag  drag area on them over that in the usual position
 * @param mass  added, kg
 * @param saved time returned over the ride against the usual position, s
 */
public record Extensions(Range share, Range drag, Range mass, Range saved) {
}
