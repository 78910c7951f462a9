package courseworthy.render.calendar;

import courseworthy.report.Calendar;
import courseworthy.report.Calendar.Entry;
import courseworthy.report.RichText;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * Writes a calendar as an iCalendar object (RFC 5545).
 *
 * <p>There is no METHOD: the file is a snapshot to take in, and nothing is scheduled with anybody (section 3.7.2). METHOD:PUBLISH would
 * have to name an ORGANIZER (RFC 5546, section 3.2.1), whom calendars show, answer, and let nobody else change the entry for.
 *
 * <p>Times are UTC where the zone is known, which needs no VTIMEZONE and is right wherever the calendar is looked at. Where it is not
 * known they float (form 1 of section 3.3.5): nine in the morning is nine in the morning of whoever looks, and no zone is made up.
 *
 * <p>An entry's UID is a digest of what makes it that entry, so that importing a calendar again replaces what it brought before. Calendars
 * take an entry for a newer one by its SEQUENCE and, where that is the same, by its DTSTAMP (RFC 5546, section 2.1.5), and some leave alone
 * what is not newer. There is no clock here: without a METHOD, DTSTAMP says when the information was last revised (section 3.8.7.2), which
 * is when the last of the files that it is made of was changed. LAST-MODIFIED says the same, and SEQUENCE counts the seconds to that moment,
 * so that whoever mends a forecast and imports again has the newer entry, and the same files give the same bytes. Where no file was
 * read, it is midnight of the day the calendar is made for, and SEQUENCE is 0.
 */
public final class CalendarRenderer {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss", Locale.ROOT);

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuuMMdd", Locale.ROOT);

    /** SEQUENCE counts from here, so that it is an INTEGER of RFC 5545 (section 3.3.8) until 2088. */
    private static final Instant FIRST = Instant.parse("2020-01-01T00:00:00Z");

    private final ContentLines lines = new ContentLines();
    private final ZoneId zone;
    private final String stamp;
    private final long sequence;

    private CalendarRenderer(Calendar calendar) {
        zone = calendar.zone();
        Instant changed = calendar.changed();
        stamp = TIME.format(changed == null ? calendar.day().atStartOfDay() : changed.atOffset(ZoneOffset.UTC)) + "Z";
        sequence = changed == null ? 0 : Math.min(Integer.MAX_VALUE, Math.max(0, changed.getEpochSecond() - FIRST.getEpochSecond()));
    }

    /** The whole file: lines end in CR LF. */
    public static String render(Calendar calendar) {
        return new CalendarRenderer(calendar).written(calendar);
    }

    private String written(Calendar calendar) {
        lines.value("BEGIN", "VCALENDAR");
        lines.value("VERSION", "2.0");
        lines.value("PRODID", "-//courseworthy//plan//EN");
        lines.value("CALSCALE", "GREGORIAN");
        lines.text("NAME", line(calendar.name()));
        for (Entry entry : calendar.entries()) {
            entry(entry);
        }
        lines.value("END", "VCALENDAR");
        return lines.toString();
    }

    private void entry(Entry entry) {
        lines.value("BEGIN", "VEVENT");
        lines.value("UID", uid(entry));
        lines.value("DTSTAMP", stamp);
        lines.value("LAST-MODIFIED", stamp);
        lines.value("SEQUENCE", Long.toString(sequence));
        if (entry.wholeDay()) {
            lines.value("DTSTART;VALUE=DATE", DAY.format(entry.from()));
            lines.value("DTEND;VALUE=DATE", DAY.format(entry.to()));
        } else {
            lines.value("DTSTART", time(entry.from()));
            lines.value("DTEND", time(entry.to()));
        }
        lines.text("SUMMARY", line(entry.title()));
        lines.text("DESCRIPTION", entry.lines().stream().map(CalendarRenderer::line).collect(Collectors.joining("\n")));
        if (!entry.wholeDay()) {
            lines.value("BEGIN", "VALARM");
            lines.value("ACTION", "DISPLAY");
            lines.value("TRIGGER", entry.warning() == 0 ? "PT0S" : "-PT" + entry.warning() + "M");
            lines.text("DESCRIPTION", line(entry.title()));
            lines.value("END", "VALARM");
        }
        lines.value("END", "VEVENT");
    }

    private static String line(RichText text) {
        return ContentLines.onOneLine(text.plain());
    }

    /** A UUID, as RFC 7986 (section 5.3) wants it, made of a digest of the parts; each with its length, so that no two sets read alike. */
    private static String uid(Entry entry) {
        StringBuilder whole = new StringBuilder();
        for (String part : entry.identity()) {
            whole.append(part.length()).append(':').append(part).append(',');
        }
        return UUID.nameUUIDFromBytes(whole.toString().getBytes(StandardCharsets.UTF_8)).toString();
    }

    private String time(LocalDateTime local) {
        return zone == null ? TIME.format(local) : TIME.format(local.atZone(zone).withZoneSameInstant(ZoneOffset.UTC)) + "Z";
    }
}
