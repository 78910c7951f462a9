package courseworthy.build;

import courseworthy.event.WorkHours;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * Evenings in a row on which there may be time for work.
 *
 * @param first the first evening; null where there is no first
 * @param last  the last evening
 * @param hours the time on each
 * @param used  minutes of the first evening that are taken already
 */
record WorkWindow(LocalDate first, LocalDate last, WorkHours hours, int used) {

    /** So many days back it makes sense to look for an evening (computing). */
    private static final int LONGEST = 120;

    /** The earliest evening on which work may begin. */
    LocalDate earliest() {
        LocalDate bound = last.minusDays(LONGEST);
        return first == null || first.isBefore(bound) ? bound : first;
    }

    /** The same from a later evening on, of which some minutes are taken. */
    WorkWindow from(LocalDate day, int minutes) {
        return new WorkWindow(day, last, hours, day.equals(first) ? Math.max(used, minutes) : minutes);
    }

    /** The times from an evening on, in minutes from the midnight before it. */
    EveningTimes times(LocalDate begin) {
        int[] minutes = new int[(int) Math.max(0, ChronoUnit.DAYS.between(begin, last) + 1)];
        for (int i = 0; i < minutes.length; i++) {
            minutes[i] = hours.minutes(begin.plusDays(i));
        }
        return EveningTimes.of(minutes).from(EveningTimes.EVENING + (begin.equals(first) ? used : 0));
    }

    /** Minutes of work that there is time for. */
    int minutes() {
        int sum = 0;
        for (LocalDate day = earliest(); !day.isAfter(last); day = day.plusDays(1)) {
            sum += hours.minutes(day);
        }
        return Math.max(0, sum - used);
    }
}
