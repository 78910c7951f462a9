package courseworthy.wear;

import java.time.LocalDate;

/**
 * The evening on which a job of service is done.
 *
 * @param date   its day; where no evening has the time, the last day before the job is due
 * @param begin  minutes after the evening's work begins
 * @param timing how the evening stands to the day on which the job is due
 */
public record ServiceEvening(LocalDate date, int begin, Timing timing) {

    /** How an evening stands to the day on which a job is due. */
    public enum Timing {
        /** Before it is due. */
        BEFORE,
        /** After it is due, and before it is overdue. */
        WITHIN,
        /** Too late. */
        LATE,
        /** There is no evening. */
        NONE
    }

    /** Whether there is an evening that has the time. */
    public boolean found() {
        return timing != Timing.NONE;
    }

    /** Whether it is not done in time. */
    public boolean late() {
        return timing == Timing.LATE || timing == Timing.NONE;
    }
}
