package courseworthy.build;

import courseworthy.build.Build.Swap;
import courseworthy.event.WorkHours;
import courseworthy.workshop.Part;
import courseworthy.workshop.WorkRules;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Work evening by evening, in the order that finishes earliest.
 *
 * @param hours    the time free on each evening
 * @param given    whether somebody wrote that time, or it is assumed
 * @param backFrom the first evening for the work back; null where the day of return is not written
 * @param fits     whether there is time for all of it
 * @param evenings those on which there is work, first to last
 */
public record WorkPlan(WorkHours hours, boolean given, LocalDate backFrom, boolean fits, List<WorkEvening> evenings) {

    /** No work. */
    static final WorkPlan NONE = new WorkPlan(WorkHours.ASSUMED, false, null, true, List.of());

    public WorkPlan {
        evenings = List.copyOf(evenings);
    }

    /**
     * The work of an evening.
     *
     * @param number 1 for the first evening; evenings without work are counted too
     * @param date   its day; null where the day of the ride is not known
     * @param free   minutes that there are
     * @param steps  in order
     */
    public record WorkEvening(int number, LocalDate date, int free, List<Step> steps) {
        public WorkEvening {
            steps = List.copyOf(steps);
        }

        /** Minutes of work. */
        public int minutes() {
            return steps.stream().mapToInt(Step::minutes).sum();
        }
    }

    /**
     * A job.
     *
     * @param bike    what it is done on: a bike, or a wheel or a crank that lies loose
     * @param what    what to do
     * @param label   the same in a word or two; empty for what goes without saying
     * @param begin   minutes after midnight
     * @param minutes of work
     * @param pause   minutes that must pass before the next thing that waits for it; 0 for none
     * @param before  what waits for it then; empty for nothing
     */
    public record Step(String bike, String what, String label, int begin, int minutes, int pause, String before) {
    }

    /** Minutes of work in all. */
    public int minutes() {
        return evenings.stream().mapToInt(WorkEvening::minutes).sum();
    }

    /**
     * The work before a ride, as late as can be: a bike is ridden as it is until then.
     *
     * @param before what is mounted before the work
     */
    static WorkPlan of(List<Swap> swaps, MountingState before, WorkDeadline deadline) {
        WorkGraph graph = WorkGraph.of(swaps, before, WorkRules.shipped());
        if (deadline.ride() == null) {
            WorkHours hours = deadline.hours().usual() > 0 ? deadline.hours() : WorkHours.ASSUMED;
            WorkScheduler found = scheduler(graph, EveningTimes.every(hours.usual()));
            return new WorkPlan(hours, deadline.given(), null, true, evenings(graph, found, null, day -> hours.usual()));
        }
        WorkPlan out = latest(graph, deadline.window());
        out = out.fits() ? out : latest(graph, deadline.wholeWindow());
        LocalDate home = deadline.home();
        return new WorkPlan(deadline.hours(), deadline.given(), home == null ? null : home.plusDays(1), out.fits(), out.evenings());
    }

    /** The work of some swaps in a window, begun as late as can be; not one that fits where there is no time for it. */
    static WorkPlan latest(WorkGraph graph, WorkWindow window) {
        for (LocalDate begin = window.last(); !begin.isBefore(window.earliest()); begin = begin.minusDays(1)) {
            WorkPlan out = begun(graph, window, begin);
            if (out.fits()) {
                return out;
            }
        }
        return graph.jobs().isEmpty() ? begun(graph, window, window.last()) : new WorkPlan(window.hours(), true, null, false, List.of());
    }

    /** The same, begun on the first evening that has time. */
    static WorkPlan soonest(WorkGraph graph, WorkWindow window) {
        return begun(graph, window, window.earliest());
    }

    private static WorkPlan begun(WorkGraph graph, WorkWindow window, LocalDate begin) {
        EveningTimes times = window.times(begin);
        int longest = graph.jobs().stream().mapToInt(WorkJob::minutes).max().orElse(0);
        int all = graph.jobs().stream().mapToInt(WorkJob::minutes).sum();
        if (times.filled(times.begin(), all, longest) >= EveningTimes.NEVER) {
            return new WorkPlan(window.hours(), true, null, false, List.of());
        }
        WorkScheduler found = scheduler(graph, times);
        return new WorkPlan(window.hours(), true, null, found.fits(), found.fits() ? evenings(graph, found, begin, window.hours()::minutes) : List.of());
    }

    /** Minutes free on a day; the day may be null where it does not matter. */
    @FunctionalInterface
    private interface Free {
        int on(LocalDate day);
    }

    private static List<WorkEvening> evenings(WorkGraph graph, WorkScheduler plan, LocalDate begin, Free free) {
        int[][] waits = graph.waits();
        List<WorkEvening> out = new ArrayList<>();
        List<Step> steps = new ArrayList<>();
        int[] order = plan.order();
        int first = order.length == 0 ? 0 : EveningTimes.day(plan.starts()[0]);
        for (int k = 0; k < order.length; k++) {
            steps.add(step(graph.jobs(), waits[order[k]], order[k], EveningTimes.clock(plan.starts()[k])));
            int day = EveningTimes.day(plan.starts()[k]);
            if (k + 1 == order.length || EveningTimes.day(plan.starts()[k + 1]) != day) {
                LocalDate date = begin == null ? null : begin.plusDays(day);
                out.add(new WorkEvening(day - first + 1, date, free.on(date), steps));
                steps = new ArrayList<>();
            }
        }
        return out;
    }

    /** The same swaps in the order that finishes earliest. */
    static List<Swap> inOrder(List<Swap> swaps, MountingState before) {
        List<Swap> out = new ArrayList<>();
        for (WorkJob job : jobs(swaps, before)) {
            if (job.swap() != null) {
                out.add(job.swap());
            }
        }
        for (Swap each : swaps) {
            if (!out.contains(each)) {
                out.add(each);
            }
        }
        return out;
    }

    /** All jobs of some swaps in that order. */
    static List<WorkJob> jobs(List<Swap> swaps, MountingState before) {
        return jobs(WorkGraph.of(swaps, before, WorkRules.shipped()));
    }

    /** All jobs in that order. */
    static List<WorkJob> jobs(WorkGraph graph) {
        List<WorkJob> out = new ArrayList<>();
        for (int job : scheduler(graph, EveningTimes.every(WorkHours.ASSUMED.usual())).order()) {
            out.add(graph.jobs().get(job));
        }
        return out;
    }

    private static WorkScheduler scheduler(WorkGraph graph, EveningTimes times) {
        List<WorkJob> jobs = graph.jobs();
        List<Part> bikes = new ArrayList<>();
        int[] minutes = new int[jobs.size()];
        int[] bike = new int[jobs.size()];
        for (int i = 0; i < minutes.length; i++) {
            WorkJob job = jobs.get(i);
            minutes[i] = job.minutes();
            if (!bikes.contains(job.bike())) {
                bikes.add(job.bike());
            }
            bike[i] = bikes.indexOf(job.bike());
        }
        return new WorkScheduler(minutes, graph.waits(), bike, times);
    }

    private static Step step(List<WorkJob> jobs, int[] waits, int job, int begin) {
        int longest = 0;
        String before = "";
        for (int j = 0; j < waits.length; j++) {
            if (waits[j] > longest) {
                longest = waits[j];
                before = jobs.get(j).kind();
            }
        }
        return new Step(jobs.get(job).bike().name(), jobs.get(job).what(), jobs.get(job).label(), begin, jobs.get(job).minutes(), longest, before);
    }
}
