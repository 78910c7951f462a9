package courseworthy.event;

import courseworthy.text.FieldReader;
import java.time.LocalDate;
import java.util.List;

/**
 * The days of the journey to an event and back.
 *
 * @param out  the day of departure; null where not written
 * @param home the day of return; null where not written
 */
public record Travel(LocalDate out, LocalDate home) {

    /** The key under which it is written. */
    public static final String KEY = "travel";
    /** The keys of the block. */
    public static final List<String> KEYS = List.of("out", "home");

    /** No journey is written. */
    public static final Travel NONE = new Travel(null, null);

    /** No bike is on the way for longer: more is a slip (judgement, no source). */
    private static final int LONGEST = 60;

    /** Null where it is not written. */
    static Travel read(FieldReader fields) {
        FieldReader from = fields.fields(KEY);
        if (from == null) {
            return null;
        }
        LocalDate out = from.day("out");
        LocalDate home = from.day("home");
        from.done();
        return new Travel(out, home);
    }

    /**
     * Says where the days do not go with the day of the event.
     *
     * @param fields of the file in which the journey is written
     * @param date   the day of the event; null where it is not known there
     */
    void check(FieldReader fields, LocalDate date) {
        FieldReader at = fields.fields(KEY);
        if (date == null) {
            return;
        }
        if (out != null && (out.isAfter(date) || out.isBefore(date.minusDays(LONGEST)))) {
            at.fault("out", out.toString(), "a day at most " + LONGEST + " days before the event, which is on " + date, "");
        }
        if (home != null && (home.isBefore(date) || home.isAfter(date.plusDays(LONGEST)))) {
            at.fault("home", home.toString(), "a day at most " + LONGEST + " days after the event, which is on " + date, "");
        }
    }

    /** The day on which the bike leaves: that of the event where no other is written. */
    public LocalDate departure(LocalDate date) {
        return out == null ? date : out;
    }

    /** The day on which the bike is home again: that of the event where no other is written. */
    public LocalDate returns(LocalDate date) {
        return home == null ? date : home;
    }
}
