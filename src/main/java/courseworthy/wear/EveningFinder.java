package courseworthy.wear;

import courseworthy.wear.ServiceEvening.Shortage;
import courseworthy.wear.ServiceEvening.Timing;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Predicate;

/** Finds an evening with enough time for a job, and keeps count of what is left of each. */
final class EveningFinder {

    /** Evenings before the due day that are tried first: a service done much earlier wastes hours of the interval (judgement, no source). */
    private static final int WEEK = 7;

    private final WorkTime time;
    private final LocalDate first;
    private final LocalDate last;
    private final Map<LocalDate, Integer> planned = new HashMap<>();

    /** @param last no later evening is looked at */
    EveningFinder(WorkTime time, LocalDate first, LocalDate last) {
        this.time = time;
        this.first = first;
        this.last = last;
    }

    /**
     * Takes the time of a job: from one of the seven evenings before it is due, the latest first; for what can wait, from one before it is overdue;
     * else from an earlier one; else from the next one after it was due. No evening gets more than it has time for.
     *
     * @param rests   whether the job can be left half done
     * @param before  the last evening before it is due
     * @param overdue the day on which what can wait is overdue; null for what cannot
     * @param wasted  whether an evening is so early that the job would have to be done again
     */
    ServiceEvening take(int minutes, boolean rests, LocalDate before, LocalDate overdue, Predicate<LocalDate> wasted) {
        LocalDate week = before.minusDays(WEEK - 1);
        LocalDate day = back(minutes, before, week, each -> false);
        Timing timing = Timing.BEFORE;
        if (day == null && overdue != null) {
            day = on(minutes, before.plusDays(1), overdue.minusDays(1));
            timing = Timing.WITHIN;
        }
        if (day == null) {
            day = back(minutes, week.minusDays(1), first, wasted);
            timing = Timing.BEFORE;
        }
        if (day == null) {
            day = on(minutes, before.plusDays(1), last);
            timing = Timing.LATE;
        }
        if (day == null) {
            return new ServiceEvening(before, 0, Timing.NONE, new Shortage(minutes, longest(), rests));
        }
        int begin = time.taken().getOrDefault(day, 0) + planned.getOrDefault(day, 0);
        planned.merge(day, minutes, Integer::sum);
        return new ServiceEvening(day, begin, timing);
    }

    /** Minutes of the longest evening, whatever is on it. */
    private int longest() {
        return first.datesUntil(last.plusDays(1)).mapToInt(time.hours()).max().orElse(0);
    }

    private LocalDate back(int minutes, LocalDate from, LocalDate to, Predicate<LocalDate> not) {
        for (LocalDate day = from; !day.isBefore(to) && !day.isBefore(first); day = day.minusDays(1)) {
            if (has(day, minutes) && !not.test(day)) {
                return day;
            }
        }
        return null;
    }

    private LocalDate on(int minutes, LocalDate from, LocalDate to) {
        for (LocalDate day = from; !day.isAfter(to) && !day.isAfter(last); day = day.plusDays(1)) {
            if (has(day, minutes)) {
                return day;
            }
        }
        return null;
    }

    private boolean has(LocalDate day, int minutes) {
        return time.free(day) - planned.getOrDefault(day, 0) >= minutes;
    }
}
