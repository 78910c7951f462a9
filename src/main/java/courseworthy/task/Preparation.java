package courseworthy.task;

import courseworthy.checklist.Checklist.ChecklistItem;
import courseworthy.checklist.ChecklistSchedule;
import courseworthy.checklist.ChecklistSchedule.ScheduledSection;
import courseworthy.claim.Deadline;
import courseworthy.event.Event;
import courseworthy.worth.PlanB;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The days before a ride, planned back from its start. Moments are seconds from the start, so below 0.
 *
 * @param start       of the ride, local time
 * @param sittings    when sections of the checklist are worked through, the earliest first; without what comes after the ride
 * @param waits       what has to be left alone for hours, the earliest first
 * @param lastMoments when work has to start if the forecast turns, the earliest first; without turns that change nothing
 */
public record Preparation(LocalDateTime start, List<WorkSession> sittings, List<WaitingTime> waits, List<SwitchDeadline> lastMoments) {

    public Preparation {
        sittings = List.copyOf(sittings);
        waits = List.copyOf(waits);
        lastMoments = List.copyOf(lastMoments);
    }

    /**
     * One section of the checklist.
     *
     * @param when     its title
     * @param from     when it is begun, s
     * @param to       when it is done, s
     * @param items    how many things there are to do
     * @param critical on how many of them safety hangs
     */
    public record WorkSession(String when, double from, double to, int items, int critical) {
    }

    /**
     * Something left alone until it is ready.
     *
     * @param part what it is, as the checklist's parts are called
     * @param what what was done to it
     * @param from when the work on it is done, s
     * @param to   when it is ready, s
     */
    public record WaitingTime(String part, String what, double from, double to) {
    }

    /**
     * The last moment to start work.
     *
     * @param turns   what the forecast turns to, in words
     * @param changes how many decisions change then
     * @param at      s
     */
    public record SwitchDeadline(String turns, int changes, double at) {
    }

    /** The longest of some waits, of equals the first. */
    public static WaitingTime longest(List<WaitingTime> waits) {
        WaitingTime out = waits.get(0);
        for (WaitingTime each : waits) {
            out = each.to() - each.from() > out.to() - out.from() ? each : out;
        }
        return out;
    }

    /** Null where the day or the time of the start is not known, or no ride was estimated. */
    static Preparation of(Brief brief, Event event) {
        CalendarResult calendar = CalendarTask.of(brief, event);
        if (calendar == null) {
            return null;
        }
        ChecklistSchedule schedule = calendar.schedule();
        List<WorkSession> sittings = new ArrayList<>();
        List<WaitingTime> waits = new ArrayList<>();
        for (ScheduledSection slot : schedule.slots()) {
            if (slot.section().due() != Deadline.AFTER_THE_RACE) {
                double to = seconds(schedule.start(), slot.to());
                List<ChecklistItem> items = slot.section().items();
                sittings.add(new WorkSession(slot.section().when(), seconds(schedule.start(), slot.from()), to, items.size(),
                        (int) items.stream().filter(ChecklistItem::critical).count()));
                items.stream().filter(each -> each.needs() > 0).forEach(each -> waits.add(new WaitingTime(each.part(), each.what(), to, to + each.needs())));
            }
        }
        return new Preparation(schedule.start(), sittings, waits, lastMoments(brief.outlook().otherwise()));
    }

    private static double seconds(LocalDateTime start, LocalDateTime at) {
        return Duration.between(start, at).toSeconds();
    }

    private static List<SwitchDeadline> lastMoments(List<PlanB> otherwise) {
        List<SwitchDeadline> out = new ArrayList<>();
        for (PlanB other : otherwise) {
            if (other.workStarts() != null) {
                out.add(new SwitchDeadline(other.turns(), other.lines().size(), other.workStarts()));
            }
        }
        out.sort(Comparator.comparingDouble(SwitchDeadline::at));
        return out;
    }
}
