package courseworthy.task;

import courseworthy.checklist.ChecklistSchedule;
import courseworthy.checklist.RaceSchedule;
import courseworthy.checklist.RaceSchedule.StageTimes;
import courseworthy.demand.Measure;
import courseworthy.event.Event;
import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.ride.Range;
import courseworthy.stage.StageDay;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/** Puts a brief's checklist on the days and hours before and after the ride. */
public final class CalendarTask {

    private static final double MINUTE = 60;

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

    /**
     * When the checklist of a race over several days is worked through.
     *
     * @throws BadInput where the day or the time of the start of a stage is not given
     */
    public static RaceSchedule ofRace(StagesResult race) {
        List<StageTimes> stages = new ArrayList<>();
        for (StageDay day : race.setUp().days()) {
            Event event = day.ride().event();
            if (event.date() == null || event.start() == null) {
                throw new BadInput(missing(event));
            }
            LocalDateTime start = event.date().atTime(event.start());
            Range hours = day.hours();
            stages.add(new StageTimes(day.number(), day.ride().course().name(), start, hours == null ? start : start.plusMinutes((long) Math.ceil(hours.high() / MINUTE))));
        }
        return RaceSchedule.of(race.checklist(), stages, race.event().zone());
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
