package courseworthy.build;

import courseworthy.build.Build.Swap;
import courseworthy.build.SeasonPlan.ClashChoice;
import courseworthy.build.SeasonPlan.PartClash;
import courseworthy.build.SeasonPlan.PlannedRide;
import courseworthy.build.SeasonPlanner.Terms;
import courseworthy.build.SeasonWork.SeasonJob;
import courseworthy.build.SeasonWork.Purpose;
import courseworthy.event.WorkHours;
import courseworthy.fit.FitRules;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.WorkRules;
import courseworthy.workshop.Workshop;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * The evenings of a season's workshop, from one start to the next: the way back from the last start as soon as can be, then the work for the
 * next as late as can be. Where there is no time for both, what stands is changed directly into what is wanted next; where there is none for
 * that either, in part.
 */
final class SeasonSchedule {

    /** The evening before the departure is for packing, unless there is no other time (common practice, no source). */
    private static final int SPARE = 2;
    /** Days that the way back may take after the last start of a season (computing). */
    private static final int AFTERWARDS = 60;

    /** As at the beginning, but for sealant, which is as new as its tyre is. */
    private Workshop start;
    private final Terms terms;
    private final WorkHours hours;
    private final List<SeasonJob> jobs = new ArrayList<>();
    /** As the last start left it. */
    private Workshop stands;
    private List<Outing> before = List.of();
    private List<OutingBuild> lastBuilds = List.of();
    private WorkPlan wayBack = WorkPlan.NONE;
    private WorkPlan planned = WorkPlan.NONE;
    private WorkWindow planWindow;

    SeasonSchedule(Workshop start, Terms terms) {
        this.start = start;
        this.stands = start;
        this.terms = terms;
        this.hours = terms.hours() == null ? WorkHours.ASSUMED : terms.hours();
    }

    /** From which builds are made: what stood at the beginning where everything goes back, else what stands. */
    Workshop now() {
        return terms.back() ? start : stands;
    }

    Workshop stands() {
        return stands;
    }

    /** Whether anything has to go back. */
    boolean hasWayBack() {
        return terms.back() && !back().jobs().isEmpty();
    }

    WorkPlan plan() {
        return planned;
    }

    private WorkWindow window(List<Outing> outings, int spare) {
        LocalDate leave = outings.stream().map(each -> each.day().departure()).min(Comparator.naturalOrder()).orElseThrow();
        LocalDate home = before.stream().map(each -> each.day().home()).max(Comparator.naturalOrder()).orElse(null);
        LocalDate first = home == null ? hours.from() : home.plusDays(1);
        return new WorkWindow(first, leave.minusDays(spare), hours, 0);
    }

    private WorkGraph back() {
        MountingState from = MountingState.of(stands);
        MountingState to = state(stands, MountingState.of(start).written(), MountingState.of(start).ends());
        return WorkGraph.of(swaps(stands, from, to), from, WorkRules.shipped(), (bike, followUp) -> !followUp.job().equals(WorkRules.TEST_RIDE));
    }

    private static MountingState state(Workshop workshop, Map<String, String> written, Map<String, String> ends) {
        Workshop mounted = workshop.mounted(written, ends);
        MountingState out = MountingState.of(workshop);
        for (Part part : workshop.parts()) {
            String host = written.get(part.name());
            if (host != null) {
                out.put(part, host.isEmpty() ? null : workshop.find(host), mounted.find(part.name()).place());
            }
        }
        return out;
    }

    private static List<Swap> swaps(Workshop workshop, MountingState from, MountingState to) {
        return workshop.bikes().isEmpty() ? List.of() : WorkOrder.all(workshop.bikes().get(0), workshop, from, to);
    }

    private static WorkGraph work(Workshop from, List<OutingBuild> made) {
        Set<String> ridden = new HashSet<>();
        made.stream().filter(each -> each.build().bike() != null).forEach(each -> ridden.add(each.build().bike().name()));
        return work(from, MountingState.of(from), state(from, OutingBuild.moved(made), OutingBuild.ends(made)), ridden);
    }

    /** The work from one state to another. @param ridden the bikes that are ridden then: one that only lends parts is tested when it has them back */
    static WorkGraph work(Workshop workshop, MountingState from, MountingState to, Set<String> ridden) {
        return WorkGraph.of(swaps(workshop, from, to), from, WorkRules.shipped(), (bike, followUp) -> ridden.contains(bike.name()));
    }

    /** The work for some builds, after the way back from what stands. */
    WorkPlan inTime(List<OutingBuild> made, List<Outing> outings) {
        WorkGraph back = terms.back() ? back() : WorkGraph.none();
        WorkGraph work = work(now(), made);
        for (int spare = SPARE; spare > 0; spare--) {
            WorkWindow window = window(outings, spare);
            wayBack = back.jobs().isEmpty() ? WorkPlan.NONE : WorkPlan.soonest(back, window);
            planWindow = wayBack.evenings().isEmpty() ? window : after(window, wayBack);
            planned = wayBack.fits() ? WorkPlan.latest(work, planWindow) : wayBack;
            if (planned.fits()) {
                return planned;
            }
        }
        return planned;
    }

    private static WorkWindow after(WorkWindow window, WorkPlan plan) {
        WorkPlan.WorkEvening last = plan.evenings().get(plan.evenings().size() - 1);
        int used = last.minutes() + (last.date().equals(window.earliest()) ? window.used() : 0);
        return window.from(last.date(), used);
    }

    /** The work from what stands to some builds, without a way back before it. */
    WorkPlan directly(List<OutingBuild> made, List<Outing> outings) {
        wayBack = WorkPlan.NONE;
        WorkGraph work = work(stands, made);
        for (int spare = SPARE; spare > 0; spare--) {
            planned = WorkPlan.latest(work, window(outings, spare));
            if (planned.fits()) {
                return planned;
            }
        }
        return planned;
    }

    /** What can be had of some builds in time; null where nothing can. */
    List<OutingBuild> partly(List<OutingBuild> made, List<Outing> outings, Function<Outing, WorkDeadline> deadlines, FitRules rules) {
        wayBack = WorkPlan.NONE;
        List<OutingBuild> out = TimeShortage.of(stands, made, window(outings, 1), deadlines, rules);
        if (out != null) {
            directly(out, outings);
        }
        return out;
    }

    /** What there is no time for, and what is done instead. */
    PartClash shortage(List<OutingBuild> wanted, List<OutingBuild> got, List<Outing> outings) {
        List<String> wanting = new ArrayList<>();
        for (Outing each : before) {
            wanting.add(each.rider() + " (" + each.event() + ")");
        }
        for (Outing each : outings) {
            wanting.add(each.rider() + " (" + each.event() + ")");
        }
        List<ClashChoice> choices = new ArrayList<>();
        if (got != null) {
            choices.add(TimeShortage.leftOut(wanted, got, stands));
        }
        int needed = work(stands, wanted).jobs().stream().mapToInt(WorkJob::minutes).sum();
        WorkWindow window = window(outings, 1);
        choices.add(new ClashChoice("Find the time: " + needed + " min of work, test rides included, with " + window.minutes() + " min for it"
                + (window.first() == null ? " before " : " between " + window.first().minusDays(1) + " and ") + window.last().plusDays(1), List.of(), null));
        return new PartClash(outings.get(0).date(), List.of("time"), wanting, choices);
    }

    /** Keeps a plan, and what stands once it is done. */
    void done(List<OutingBuild> made, List<Outing> outings, WorkPlan plan) {
        add(wayBack, lastBuilds, Purpose.RETURN);
        add(plan, made, Purpose.START);
        Workshop from = made.isEmpty() || made.get(0).build().after() == null ? stands : fromWhich(made);
        Map<String, LocalDate> fresh = fresh(made, plan);
        stands = from.mounted(OutingBuild.moved(made), OutingBuild.ends(made)).sealed(fresh);
        start = start.sealed(fresh);
        before = outings;
        lastBuilds = made;
    }

    /** Wheels that get another tyre on the way back or for some builds, and fresh sealant with it, with the day of the work. */
    private Map<String, LocalDate> fresh(List<OutingBuild> made, WorkPlan plan) {
        Map<String, LocalDate> out = new HashMap<>();
        if (!wayBack.evenings().isEmpty()) {
            MountingState home = state(stands, MountingState.of(start).written(), MountingState.of(start).ends());
            tyres(out, swaps(stands, MountingState.of(stands), home), home, wayBack);
        }
        for (OutingBuild each : made) {
            if (each.build().after() != null) {
                tyres(out, each.build().swaps(), each.build().after(), plan);
            }
        }
        return out;
    }

    private static void tyres(Map<String, LocalDate> to, List<Swap> swaps, MountingState after, WorkPlan plan) {
        for (Swap each : swaps) {
            Part wheel = each.place().kind() == PartKind.TYRE && each.on() != null ? after.on(each.on()) : null;
            if (wheel != null && !plan.evenings().isEmpty()) {
                to.put(wheel.name(), plan.evenings().get(0).date());
            }
        }
    }

    /** Where there was time for the way back the builds began at home, else at what stood. */
    private Workshop fromWhich(List<OutingBuild> made) {
        boolean home = terms.back() && (wayBack != WorkPlan.NONE || back().jobs().isEmpty());
        return home ? start : stands;
    }

    /** The way back from the last start. */
    void end() {
        if (hasWayBack()) {
            LocalDate home = before.stream().map(each -> each.day().home()).max(Comparator.naturalOrder()).orElseThrow();
            add(WorkPlan.soonest(back(), new WorkWindow(home.plusDays(1), home.plusDays(AFTERWARDS), hours, 0)), lastBuilds, Purpose.RETURN);
        }
    }

    private void add(WorkPlan plan, List<OutingBuild> made, Purpose purpose) {
        for (WorkPlan.WorkEvening evening : plan.evenings()) {
            for (WorkPlan.Step step : evening.steps()) {
                Outing outing = owner(step, made).outing();
                jobs.add(new SeasonJob(evening.date(), purpose, start.name(), outing.rider(), outing.event(), outing.order(), outing.date(), step));
            }
        }
    }

    /** The start on whose bike a step is done; of other bikes, the first. */
    private static OutingBuild owner(WorkPlan.Step step, List<OutingBuild> made) {
        for (OutingBuild each : made) {
            if (each.build().bike() != null && each.build().bike().name().equals(step.bike())) {
                return each;
            }
        }
        return made.get(0);
    }

    /** The part of a plan that is work for one start. */
    WorkPlan of(Outing outing, List<OutingBuild> made, WorkPlan plan) {
        List<WorkPlan.WorkEvening> evenings = new ArrayList<>();
        for (WorkPlan.WorkEvening each : plan.evenings()) {
            List<WorkPlan.Step> steps = each.steps().stream().filter(step -> owner(step, made).outing() == outing).toList();
            if (!steps.isEmpty()) {
                evenings.add(new WorkPlan.WorkEvening(each.number(), each.date(), each.free(), steps));
            }
        }
        LocalDate home = outing.day().travel().home();
        return new WorkPlan(hours, terms.hours() != null, home == null ? null : home.plusDays(1), plan.fits(), evenings);
    }

    /** All jobs by date; those of the way back with the day on which their bike is ridden next. */
    List<SeasonJob> jobs(List<PlannedRide> rides) {
        List<SeasonJob> out = new ArrayList<>();
        for (SeasonJob job : jobs) {
            boolean back = job.purpose() == Purpose.RETURN;
            LocalDate due = back ? ReturnDates.next(rides, job.step().bike(), job.due()) : job.due();
            out.add(new SeasonJob(job.date(), job.purpose(), job.workshop(), job.rider(), job.event(), job.order(), due, job.step()));
        }
        out.sort(Comparator.comparing(SeasonJob::date));
        return out;
    }
}
