package courseworthy.analysis;

import java.time.LocalDate;

/** Days of the year, counted as those of a leap year are, which has every day there is. */
final class DaysOfYear {

    static final int FIRST = 1;
    static final int LAST = 366;
    private static final int LEAP = 2024;

    private DaysOfYear() {
    }

    static int of(LocalDate date) {
        return date.withYear(LEAP).getDayOfYear();
    }

    /** From one to another, both included; over New Year where it starts later in the year than it ends. */
    static ValueSet of(LocalDate from, LocalDate to) {
        int first = of(from);
        int last = of(to);
        return first <= last ? ValueSet.of(first, last) : ValueSet.of(FIRST, last).or(ValueSet.of(first, LAST));
    }

    /** The same, each as month times 100 and day. */
    static ValueSet of(int from, int to) {
        return of(LocalDate.of(LEAP, from / 100, from % 100), LocalDate.of(LEAP, to / 100, to % 100));
    }

    /**
     * A day that has both a date and a day of the year out of some; null where there is none within nine years of a span's ends, by when
     * every day of the year has come round.
     */
    static LocalDate both(ValueSet dates, ValueSet ofYear) {
        for (int span = 0; span < dates.spans(); span++) {
            long least = dates.least(span);
            long start = least > VariableTable.FIRST_DAY.toEpochDay() ? least
                    : Math.min(dates.most(span) - 9 * LAST, LocalDate.of(LEAP, 1, 1).toEpochDay());
            for (long day = Math.max(start, least); day <= Math.min(dates.most(span), start + 9L * LAST); day++) {
                long at = of(LocalDate.ofEpochDay(day));
                if (ofYear.meets(ValueSet.of(at, at))) {
                    return LocalDate.ofEpochDay(day);
                }
            }
        }
        return null;
    }
}
