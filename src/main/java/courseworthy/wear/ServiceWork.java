package courseworthy.wear;

import java.time.LocalDate;
import java.util.List;

/**
 * A job of service or renewal, planned for an evening.
 *
 * @param evening  when it is done
 * @param due      the day by which it should be done
 * @param latest   the day after which it is overdue at the longest interval; null where that is not reached
 * @param workshop its name; may be empty
 * @param bike     the bike that the part is on; empty where it lies loose
 * @param part     the part, or the bike where the job is on the bike itself
 * @param job      what to do, in a few words: {@code renew}, {@code oil and seals}
 * @param minutes  of work
 * @param safety   whether the rider falls or cannot stop where it is left undone
 * @param why      hours, distance or days that it rests on, in a phrase
 */
public record ServiceWork(ServiceEvening evening, LocalDate due, LocalDate latest, String workshop, String bike, String part, String job, int minutes,
        boolean safety, String why) {

    /** The Monday of the week in which it is planned. */
    public LocalDate week() {
        return WorkTime.week(evening.date());
    }

    /** Whether even the longest interval is over by the day on which it is due. */
    public boolean overdue() {
        return latest != null && !latest.isAfter(due);
    }

    /** Minutes of several jobs together. */
    public static int total(List<ServiceWork> work) {
        return work.stream().mapToInt(ServiceWork::minutes).sum();
    }

    /** What to do, as an order. */
    public String task() {
        return task(job);
    }

    /** A job as an order: {@code service the pivot bearings} for one that is named by its part, {@code renew} as it is. */
    public static String task(String job) {
        return switch (job) {
            case "oil and seals" -> "change oil and seals";
            case "full service" -> "give it a full service";
            case "air can", "bearings", "bottom bracket", "headset bearings", "hub bearings", "pivot bearings" -> "service the " + job;
            default -> job;
        };
    }

    /** {@code hardtail chain: renew}. */
    public String what() {
        return part + ": " + task();
    }
}
