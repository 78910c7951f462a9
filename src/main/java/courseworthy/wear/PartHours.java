package courseworthy.wear;

import java.time.LocalDate;

/**
 * How long a part has been ridden by the last day of the log.
 *
 * @param part     its name
 * @param bike     the bike it is on; empty where it lies loose
 * @param hours    s since it was fitted
 * @param complete whether the hours before the log are known
 * @param service  s since it was last serviced or renewed; null where the log has no service of it
 * @param serviced the day of that; null where the log has none
 */
public record PartHours(String part, String bike, double hours, boolean complete, Double service, LocalDate serviced) {
}
