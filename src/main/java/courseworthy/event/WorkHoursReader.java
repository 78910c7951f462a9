package courseworthy.event;

import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Reads the time for work on bikes: one time for every evening, or a block with other times for days of the week and dates. */
public final class WorkHoursReader {

    /** The key under which it is written. */
    public static final String KEY = "time for work";
    /** The keys of the block besides the days of the week. */
    public static final List<String> KEYS = List.of("from", "each evening", "days");
    /** The keys of one date. */
    public static final List<String> DAY_KEYS = List.of("date", "time");

    private static final double MINUTE = 60;
    private static final int DAY = 86_400;
    private static final String TIME = "time for work on an evening, from 0 min to 24 h";

    private WorkHoursReader() {
    }

    /** The days of the week as they are written. */
    public static List<String> weekdays() {
        return Arrays.stream(DayOfWeek.values()).map(WorkHoursReader::word).toList();
    }

    private static String word(DayOfWeek day) {
        return day.name().toLowerCase(Locale.ROOT);
    }

    /** Null where it is not written, or cannot be used. */
    static WorkHours read(FieldReader fields) {
        Node node = fields.node(KEY);
        if (node instanceof Node.Mapping) {
            return block(fields.fields(KEY, node));
        }
        Integer every = minutes(fields, KEY);
        return every == null ? null : WorkHours.every(every);
    }

    private static WorkHours block(FieldReader from) {
        LocalDate first = from.day("from");
        Integer usual = minutes(from, "each evening");
        Map<DayOfWeek, Integer> weekdays = new EnumMap<>(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values()) {
            Integer minutes = minutes(from, word(day));
            if (minutes != null) {
                weekdays.put(day, minutes);
            }
        }
        Map<LocalDate, Integer> days = new LinkedHashMap<>();
        for (FieldReader each : from.blocks("days")) {
            each.required("date", "the day of which it is said, YYYY-MM-DD");
            each.required("time", TIME);
            LocalDate date = each.day("date");
            Integer minutes = minutes(each, "time");
            each.done();
            if (date != null && minutes != null && days.put(date, minutes) != null) {
                each.fault("date", date + " a second time", "each day once", "");
            }
        }
        from.done();
        if (usual == null && weekdays.size() < DayOfWeek.values().length && !from.has("each evening")) {
            from.fault("each evening", "nothing", "the time for work on evenings that are not named", "Add a line \"each evening: 1:00 h\", or of 0 min for none.");
        }
        return new WorkHours(first, usual == null ? 0 : usual, weekdays, days);
    }

    private static Integer minutes(FieldReader from, String key) {
        Amount amount = from.amount(key, Dimension.TIME, 0, DAY, TIME);
        return amount == null ? null : Integer.valueOf((int) Math.round(amount.inBase() / MINUTE));
    }
}
