package courseworthy.task;

import courseworthy.scout.ScoutPlan;

/**
 * What to look at before a ride.
 *
 * @param brief the answer on the ground as it is assumed now
 * @param plan  what unknown ground could change
 */
public record ScoutResult(Brief brief, ScoutPlan plan) {
}
