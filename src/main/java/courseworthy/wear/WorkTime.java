package courseworthy.wear;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.Map;
import java.util.function.ToIntFunction;

/**
 * Time for work on bikes.
 *
 * @param hours minutes for work on the evening of a day
 * @param taken minutes of it that are taken, by day
 */
public record WorkTime(ToIntFunction<LocalDate> hours, Map<LocalDate, Integer> taken) {

    public WorkTime {
        taken = Map.copyOf(taken);
    }

    /** The same on every evening. @param aDay minutes */
    public WorkTime(int aDay, Map<LocalDate, Integer> taken) {
        this(day -> aDay, taken);
    }

    /** The Monday of the week of a day. */
    public static LocalDate week(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    /** Minutes that are free on an evening. */
    int free(LocalDate day) {
        return Math.max(0, hours.applyAsInt(day) - taken.getOrDefault(day, 0));
    }
}
