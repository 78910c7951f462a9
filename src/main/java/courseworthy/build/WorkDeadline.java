package courseworthy.build;

import courseworthy.event.Travel;
import courseworthy.event.WorkHours;
import java.time.LocalDate;

/**
 * The days between which the work for a ride has to be done, and the time for it.
 *
 * @param ride  the day of the ride; null where it is not known
 * @param leave the day on which the bike leaves for it; null where the day of the ride is not known
 * @param home  the day on which it is back; null where that is not written
 * @param hours the time for work on each evening
 * @param given whether somebody wrote that time, or it is assumed
 */
public record WorkDeadline(LocalDate ride, LocalDate leave, LocalDate home, WorkHours hours, boolean given) {

    /** Days from the last evening of work to the departure: the evening before is for packing (common practice, no source). */
    private static final int SPARE = 2;

    /** @param hours null where they are not written */
    public static WorkDeadline of(LocalDate ride, Travel travel, WorkHours hours) {
        return new WorkDeadline(ride, ride == null ? null : travel.departure(ride), travel.home(), hours == null ? WorkHours.ASSUMED : hours, hours != null);
    }

    /** Of a ride without a journey, in the time that is assumed. @param ride null where it is not known */
    public static WorkDeadline of(LocalDate ride) {
        return of(ride, Travel.NONE, null);
    }

    /** All evenings with time for it but the last, which is for packing. */
    WorkWindow window() {
        return new WorkWindow(hours.from(), leave.minusDays(SPARE), hours, 0);
    }

    /** The same with the last evening too. */
    WorkWindow wholeWindow() {
        return new WorkWindow(hours.from(), leave.minusDays(1), hours, 0);
    }
}
