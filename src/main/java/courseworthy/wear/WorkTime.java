package courseworthy.wear;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.Map;

/**
 * Time for work on bikes.
 *
 * @param aDay  minutes on a day on which there is nothing else
 * @param taken minutes of it that are taken, by day
 */
public record WorkTime(int aDay, Map<LocalDate, Integer> taken) {

    private static final int WEEK = 7;

    public WorkTime {
        taken = Map.copyOf(taken);
    }

    /** The Monday of the week of a day. */
    public static LocalDate week(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    /** Minutes that are free in a week, from a day on. */
    int free(LocalDate monday, LocalDate from) {
        int out = 0;
        for (int i = 0; i < WEEK; i++) {
            LocalDate day = monday.plusDays(i);
            out += day.isBefore(from) ? 0 : Math.max(0, aDay - taken.getOrDefault(day, 0));
        }
        return out;
    }
}
