package courseworthy.task;

import courseworthy.call.Call;
import courseworthy.demand.RideInput;
import courseworthy.engine.DroolsRules;

/**
 * A brief, and what it was made of.
 *
 * @param rules   the rules in force
 * @param call    the recommendation
 * @param mounted the same for the parts of a build where there is one, else {@code call} itself
 * @param brief   the whole answer
 * @param ride    what is ridden, as read
 */
public record BriefResult(DroolsRules rules, Call call, Call mounted, Brief brief, RideInput ride) {
}
