package courseworthy.event;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Zones of local time by their IANA names, with the rules that come with the Java runtime. */
public final class TimeZones {

    /** Where the day is not known, a zone's offsets are those of this day and of the change after it. */
    private static final LocalDateTime ANY_DAY = LocalDateTime.of(2026, 1, 15, 12, 0);

    private TimeZones() {
    }

    /** The zone of a name with an area and a place; null where there is none. */
    static ZoneId of(String name) {
        return name.indexOf('/') > 0 && ZoneId.getAvailableZoneIds().contains(name) ? ZoneId.of(name) : null;
    }

    static List<String> names() {
        List<String> out = new ArrayList<>(ZoneId.getAvailableZoneIds());
        out.removeIf(name -> name.indexOf('/') <= 0);
        Collections.sort(out);
        return out;
    }

    /** The offset on a day, at noon where the time is not known; in January where the day is not. */
    public static ZoneOffset on(ZoneId zone, LocalDate date, LocalTime time) {
        return zone.getRules().getOffset(date == null ? ANY_DAY : date.atTime(time == null ? LocalTime.NOON : time));
    }

    /** Whether a zone has an offset on a day; where that is not known, whether in some part of the year. */
    static boolean has(ZoneId zone, ZoneOffset offset, LocalDate date, LocalTime time) {
        if (on(zone, date, time).equals(offset)) {
            return true;
        }
        ZoneOffsetTransition next = date != null ? null : zone.getRules().nextTransition(ANY_DAY.toInstant(ZoneOffset.UTC));
        return next != null && next.getOffsetAfter().equals(offset);
    }

    /** As an event's file writes it: {@code +02:00}. */
    public static String written(ZoneOffset offset) {
        return offset.getTotalSeconds() == 0 ? "+00:00" : offset.getId();
    }
}
