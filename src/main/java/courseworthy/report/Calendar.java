package courseworthy.report;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;

/**
 * What goes into a calendar: entries with their words and times.
 *
 * @param name    of all of it
 * @param day     the day it is made for
 * @param zone    of all times; null where they are those of wherever the calendar is looked at
 * @param changed when what it is made of was last changed; null where that is not known
 * @param entries earliest first
 */
public record Calendar(RichText name, LocalDate day, ZoneId zone, Instant changed, List<Entry> entries) {

    public Calendar {
        entries = List.copyOf(entries);
    }

    /**
     * One entry.
     *
     * @param identity what makes it the same entry when it is made again, part by part
     * @param title    what it is
     * @param lines    what there is to know, a paragraph each
     * @param from     when it begins
     * @param to       when it ends
     * @param warning  minutes before it begins at which to be reminded
     * @param wholeDay whether it takes whole days: from midnight to midnight, and nobody is reminded
     */
    public record Entry(List<String> identity, RichText title, List<RichText> lines, LocalDateTime from, LocalDateTime to, int warning, boolean wholeDay) {

        public Entry {
            identity = List.copyOf(identity);
            lines = List.copyOf(lines);
        }

        /** When to be reminded; null for whole days. */
        public LocalDateTime reminded() {
            return wholeDay ? null : from.minusMinutes(warning);
        }

        /** An entry between two times of day. */
        public Entry(List<String> identity, RichText title, List<RichText> lines, LocalDateTime from, LocalDateTime to, int warning) {
            this(identity, title, lines, from, to, warning, false);
        }

        /** An entry of whole days. @param until the day after the last */
        public static Entry ofDays(List<String> identity, RichText title, List<RichText> lines, LocalDate from, LocalDate until) {
            return new Entry(identity, title, lines, from.atStartOfDay(), until.atStartOfDay(), 0, true);
        }
    }
}
