package courseworthy.build;

import courseworthy.event.Travel;
import java.time.LocalDate;
import java.time.LocalTime;

/**
 * The day of an event in a season.
 *
 * @param name   of the event, or of its course where it has none
 * @param course its name
 * @param date   the day of the start
 * @param start  local time of the start; null where it is not written
 * @param longest how long the ride takes at most, s; null where that is not known
 * @param travel the journey there and back
 * @param role   {@code race} or {@code training}
 */
public record EventDay(String name, String course, LocalDate date, LocalTime start, Double longest, Travel travel, String role) {

    /** The day on which the bike leaves. */
    public LocalDate departure() {
        return travel.departure(date);
    }

    /** The day on which the bike is home again. */
    public LocalDate home() {
        return travel.returns(date);
    }
}
