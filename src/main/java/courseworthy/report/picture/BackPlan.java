package courseworthy.report.picture;

import java.util.List;

/**
 * The days before a ride, planned back from its start. Moments are seconds from the start, so below 0 before it.
 *
 * @param startOfDay  the start in seconds after midnight; null where it is not known
 * @param startDate   the day of the start as {@code 2026-06-20}; empty where it is not known
 * @param sittings    when work is done, the earliest first
 * @param waits       what has to wait for hours, the earliest first
 * @param lastMoments when work has to begin if the forecast turns, the earliest first
 */
public record BackPlan(Integer startOfDay, String startDate, List<SessionBar> sittings, List<WaitBar> waits, List<DeadlineMark> lastMoments)
        implements Picture {

    public BackPlan {
        sittings = List.copyOf(sittings);
        waits = List.copyOf(waits);
        lastMoments = List.copyOf(lastMoments);
    }

    /**
     * Work done in one go.
     *
     * @param label       {@code night before}
     * @param endSeconds  when it is done
     * @param items       how many things there are to do
     * @param critical    on how many of them safety hangs
     * @param workSeconds how long the work takes one person, an estimate; null where that is not known
     */
    public record SessionBar(String label, double endSeconds, int items, int critical, Double workSeconds) {
    }

    /** Something left alone until it is ready: {@code sealant}. */
    public record WaitBar(String label, double fromSeconds, double toSeconds) {
    }

    /**
     * The last moment to begin a change.
     *
     * @param label what the forecast turns to, and how much changes: {@code wet: 3 changes}
     */
    public record DeadlineMark(String label, double atSeconds) {
    }

    @Override
    public <T> T accept(PictureVisitor<T> visitor) {
        return visitor.backPlan(this);
    }
}
