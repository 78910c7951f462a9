package courseworthy.event;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The time for work on bikes on each evening.
 *
 * @param from     the first evening with time; null where not written
 * @param usual    minutes on an evening of which nothing else is said
 * @param weekdays minutes by day of the week; those that are written
 * @param days     minutes by date; those that are written
 */
public record WorkHours(LocalDate from, int usual, Map<DayOfWeek, Integer> weekdays, Map<LocalDate, Integer> days) {

    /** Where nothing is written: two hours on every evening (judgement, no source). */
    public static final WorkHours ASSUMED = every(120);

    public WorkHours {
        weekdays = Collections.unmodifiableMap(new LinkedHashMap<>(weekdays));
        days = Collections.unmodifiableMap(new LinkedHashMap<>(days));
    }

    /** The same minutes on every evening. */
    public static WorkHours every(int minutes) {
        return new WorkHours(null, minutes, Map.of(), Map.of());
    }

    /** Minutes on the evening of a day. */
    public int minutes(LocalDate day) {
        if (from != null && day.isBefore(from)) {
            return 0;
        }
        return days.getOrDefault(day, weekdays.getOrDefault(day.getDayOfWeek(), usual));
    }

    /** Minutes of the longest evening. */
    public int most() {
        int out = usual;
        for (int each : weekdays.values()) {
            out = Math.max(out, each);
        }
        for (int each : days.values()) {
            out = Math.max(out, each);
        }
        return out;
    }

    /** Whether it differs from evening to evening. */
    public boolean varies() {
        return !weekdays.isEmpty() || !days.isEmpty();
    }
}
