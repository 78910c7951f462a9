package courseworthy.task;

import courseworthy.checklist.ChecklistSchedule;
import courseworthy.demand.Measure;
import courseworthy.event.Event;
import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;

/** Puts a brief's checklist on the days and hours before and after the ride. */
public final class CalendarTask {

    private CalendarTask() {
    }

    /** @throws BadInput where the day or the time of the start is not given: without them nothing has a time */
    public static CalendarResult of(BriefResult made) {
        Event event = made.ride().event();
        if (event.date() == null || event.start() == null) {
            throw new BadInput(missing(event));
        }
        return new CalendarResult(made.brief(), schedule(made.brief(), event));
    }

    /** Null where the day or the time of the start is not known, or no ride was estimated. */
    static CalendarResult of(Brief brief, Event event) {
        boolean timed = event.date() != null && event.start() != null && brief.checklist() != null && brief.demands().known(Measure.HOURS);
        return timed ? new CalendarResult(brief, schedule(brief, event)) : null;
    }

    /** When a brief's checklist is worked through for an event whose day and start are known. */
    static ChecklistSchedule schedule(Brief brief, Event event) {
        double longest = Measure.HOURS.scale().resolution().base(brief.demands().get(Measure.HOURS).high());
        return ChecklistSchedule.of(brief.checklist(), event, longest);
    }

    private static Fault missing(Event event) {
        boolean date = event.date() == null;
        boolean start = event.start() == null;
        String found = date && start ? "neither a date nor a start" : date ? "no date" : "no time of the start";
        String mend = (date ? "Give --date 2026-06-20, or write date: 2026-06-20 in the event." : "")
                + (start ? (date ? " " : "") + "Write start: 09:00 in the event, and pass it with --event." : "");
        return Fault.of(event.file().isEmpty() ? "--format ics" : event.file(), 0, "", found, "the day and the time of the start, from which a calendar counts", mend);
    }
}
