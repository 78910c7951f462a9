package courseworthy.build;

import courseworthy.event.WorkHours;
import courseworthy.wear.UpkeepPlan;
import java.time.LocalDate;
import java.util.List;

/**
 * The work on the bikes of a season.
 *
 * @param hours  the time for work on each evening
 * @param given  whether somebody wrote that time, or it is assumed
 * @param jobs   by date, those of one evening in the order in which they are done
 * @param upkeep service, renewal and shopping by week; empty where no workshop has a log
 */
public record SeasonWork(WorkHours hours, boolean given, List<SeasonJob> jobs, UpkeepPlan upkeep) {

    /** None. */
    public static final SeasonWork NONE = new SeasonWork(WorkHours.ASSUMED, false, List.of(), UpkeepPlan.NONE);

    public SeasonWork {
        jobs = List.copyOf(jobs);
    }

    /** What a job is for. */
    public enum Purpose {
        /** A start to come. */
        START,
        /** The way back from a start to what stood before. */
        RETURN;

        /** {@code return}. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /**
     * A job on the evening of a day.
     *
     * @param workshop its name; may be empty
     * @param rider    whose start it is for, or follows
     * @param event    of that start
     * @param order    of that start in the season
     * @param due      the day by which it must be done: of the start it is for, or the next start of the bike it is done on; null for none
     */
    public record SeasonJob(LocalDate date, Purpose purpose, String workshop, String rider, String event, int order, LocalDate due, WorkPlan.Step step) {

        /** Minutes of the evening that are over when it is done, waits for other work included. */
        public int end() {
            return Math.floorMod(step.begin() - EveningTimes.EVENING, EveningTimes.DAY) + step.minutes();
        }
    }
}
