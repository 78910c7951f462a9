package courseworthy.task;

import courseworthy.worth.GearChoice;
import courseworthy.worth.GearShortfall;

/**
 * What a course asks of the gears.
 *
 * @param brief     the whole answer it belongs to
 * @param choice    what is asked, and what chainrings and cassettes give
 * @param shortfall an easiest gear that is harder than the legs need; null where there is none
 */
public record GearsResult(Brief brief, GearChoice choice, GearShortfall shortfall) {
}
