package courseworthy.wear;

import java.time.LocalDate;

/**
 * The evening on which a job of service is done.
 *
 * @param date     its day; where no evening has the time, the last day before the job is due
 * @param begin    minutes after the evening's work begins
 * @param timing   how the evening stands to the day on which the job is due
 * @param shortage why there is none; null where there is one
 */
public record ServiceEvening(LocalDate date, int begin, Timing timing, Shortage shortage) {

    /** An evening that has the time. */
    public ServiceEvening(LocalDate date, int begin, Timing timing) {
        this(date, begin, timing, null);
    }

    /**
     * Why no evening has the time for a job.
     *
     * @param minutes of work
     * @param longest minutes of the longest evening of all, with nothing on it
     * @param rests   whether the job can be left half done from one evening to another
     */
    public record Shortage(int minutes, int longest, boolean rests) {

        /** What is short, and what would do. */
        public String words() {
            String day = "give it a free day in \"time for work\"";
            if (longest >= minutes) {
                return "no evening has " + minutes + " min left for it: give one more time, or " + day;
            }
            if (longest == 0) {
                return "no evening has " + minutes + " min for it, nor any time at all: " + day;
            }
            String remedy = rests ? "it can rest half done, so spread it over " + (minutes + longest - 1) / longest + " evenings, or " + day : "it is done in one go, so " + day;
            return "no evening has " + minutes + " min for it, the longest has " + longest + " min: " + remedy;
        }
    }

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
