package courseworthy.wear;

import java.time.LocalDate;
import java.util.List;

/**
 * How far a job on a part has come, ride by ride.
 *
 * @param interval how often it is done
 * @param start    from when rides count
 * @param dirt     what dirt does
 */
record ServiceClock(ServiceInterval interval, ServiceStart start, DirtFactors dirt) {

    /**
     * When a job falls due.
     *
     * @param due    the day on which it is due, the earliest or a likely one as the job is planned; null where it is not by the end of the rides
     * @param latest the day from which it is overdue at the most that the interval gives; null where it is not by then
     * @param hours  s ridden by the due day
     * @param dirty  s of them in the wet or in mud
     * @param byAge  whether it falls due by its age rather than by hours or distance
     */
    record Due(LocalDate due, LocalDate latest, double hours, double dirty, boolean byAge) {
    }

    /** Shares of an interval that are used up. */
    private static final class TimeSpent {
        /** At the least, as planned, and by distance. */
        private double low;
        private double due;
        private double length;
        private double hours;
        private double dirty;
    }

    /** @param uses of the part, by date; the first day of the plan is {@code from}: what was due before is due then */
    Due due(List<RideUse> uses, LocalDate from) {
        TimeSpent spent = begin();
        LocalDate due = over(spent, true) ? from : null;
        LocalDate latest = over(spent, false) ? from : null;
        double hours = spent.hours;
        double dirty = spent.dirty;
        for (RideUse use : uses) {
            if (start.day() != null && !use.date().isAfter(start.day())) {
                continue;
            }
            add(spent, use);
            LocalDate day = use.date().isBefore(from) ? from : use.date();
            due = due == null && over(spent, true) ? day : due;
            latest = latest == null && over(spent, false) ? day : latest;
            if (due == null || !day.isAfter(due)) {
                hours = spent.hours;
                dirty = spent.dirty;
            }
        }
        LocalDate old = age(true, from);
        boolean byAge = old != null && (due == null || old.isBefore(due));
        return new Due(byAge ? old : due, earlier(latest, age(false, from)), hours, dirty, byAge);
    }

    private TimeSpent begin() {
        TimeSpent out = new TimeSpent();
        out.hours = start.hours();
        if (start.used() != null) {
            out.low = start.used();
            out.due = start.used();
        } else if (interval.every().hours() != null) {
            out.low = start.hours() / interval.every().hours().high();
            out.due = start.hours() / planned(interval.every().hours(), false);
        }
        return out;
    }

    private void add(TimeSpent spent, RideUse use) {
        IntervalBounds hours = interval.every().hours();
        IntervalBounds factor = dirt.on(use.going(), use.mud(), interval.dirt());
        if (hours != null) {
            spent.low += use.hours().low() * factor.low() / hours.high();
            double ridden = interval.work().atTheEarliest() ? use.hours().high() : use.hours().mid();
            spent.due += ridden * planned(factor, true) / planned(hours, false);
        }
        if (interval.every().length() != null && use.length() != null) {
            spent.length += use.length() * planned(factor, true) / interval.every().length().low();
        }
        spent.hours += use.hours().mid();
        spent.dirty += factor.low() > 1 ? use.hours().mid() : 0;
    }

    /** The end that makes it due earliest, or the middle of a ratio. @param more whether more of it makes it due earlier */
    private double planned(IntervalBounds bounds, boolean more) {
        return !interval.work().atTheEarliest() ? Math.sqrt(bounds.low() * bounds.high()) : more ? bounds.high() : bounds.low();
    }

    private static boolean over(TimeSpent spent, boolean early) {
        return Math.max(early ? spent.due : spent.low, spent.length) >= 1 - 1e-9;
    }

    /** The day on which it falls due by its age, not before the plan begins; null where age does not count or is not known. */
    private LocalDate age(boolean early, LocalDate from) {
        IntervalBounds days = interval.every().days();
        if (days == null || start.day() == null || start.used() != null) {
            return null;
        }
        LocalDate day = start.day().plusDays(Math.round(early ? planned(days, false) : days.high()));
        return day.isBefore(from) ? from : day;
    }

    private static LocalDate earlier(LocalDate one, LocalDate other) {
        return one == null || other != null && other.isBefore(one) ? other : one;
    }
}
