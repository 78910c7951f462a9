package courseworthy.build;

import courseworthy.build.Build.Swap;
import courseworthy.workshop.Part;
import courseworthy.workshop.WorkRules;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Work evening by evening, in the order that finishes earliest.
 *
 * @param free     minutes free in an evening
 * @param begin    the last day on which it can begin; null where the day of the ride is not known
 * @param evenings those on which there is work, first to last
 */
public record WorkPlan(int free, LocalDate begin, List<Evening> evenings) {

    /** No work. */
    static final WorkPlan NONE = new WorkPlan(WorkPlan.FREE, null, List.of());

    /** Free in an evening where nothing else is said, min (judgement, no source). */
    public static final int FREE = 120;
    /** Days from the last evening of work to the start: the evening before is for packing (common practice, no source). */
    private static final int SPARE = 2;

    public WorkPlan {
        evenings = List.copyOf(evenings);
    }

    /**
     * The work of an evening.
     *
     * @param number 1 for the first evening; evenings without work are counted too
     * @param steps  in order
     */
    public record Evening(int number, List<Step> steps) {
        public Evening {
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
     * @param what    what to do
     * @param minutes of work
     * @param pause   minutes that must pass before the next thing that waits for it; 0 for none
     * @param before  what waits for it then; empty for nothing
     */
    public record Step(String what, int minutes, int pause, String before) {
    }

    /** The last day for an evening of work; null where the day of the ride is not known. */
    public LocalDate day(Evening evening) {
        return begin == null ? null : begin.plusDays(evening.number() - 1);
    }

    /** Minutes of work in all. */
    public int minutes() {
        return evenings.stream().mapToInt(Evening::minutes).sum();
    }

    /**
     * @param before what is mounted before the work
     * @param start  the day of the ride; null where it is not known
     */
    static WorkPlan of(List<Swap> swaps, MountingState before, LocalDate start, int free) {
        WorkGraph graph = WorkGraph.of(swaps, before, WorkRules.shipped());
        int[][] waits = graph.waits();
        WorkScheduler plan = scheduler(graph.jobs(), waits, free);
        List<Evening> evenings = new ArrayList<>();
        List<Step> steps = new ArrayList<>();
        int[] order = plan.order();
        for (int k = 0; k < order.length; k++) {
            steps.add(step(graph.jobs(), waits[order[k]], order[k]));
            int day = plan.starts()[k] / (24 * 60);
            if (k + 1 == order.length || plan.starts()[k + 1] / (24 * 60) != day) {
                evenings.add(new Evening(day + 1, steps));
                steps = new ArrayList<>();
            }
        }
        int last = evenings.isEmpty() ? 0 : evenings.get(evenings.size() - 1).number();
        return new WorkPlan(free, start == null || last == 0 ? null : start.minusDays(last - 1 + SPARE), evenings);
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
        WorkGraph graph = WorkGraph.of(swaps, before, WorkRules.shipped());
        List<WorkJob> out = new ArrayList<>();
        for (int job : scheduler(graph.jobs(), graph.waits(), FREE).order()) {
            out.add(graph.jobs().get(job));
        }
        return out;
    }

    private static WorkScheduler scheduler(List<WorkJob> jobs, int[][] waits, int free) {
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
        return new WorkScheduler(minutes, waits, bike, free);
    }

    private static Step step(List<WorkJob> jobs, int[] waits, int job) {
        int longest = 0;
        String before = "";
        for (int j = 0; j < waits.length; j++) {
            if (waits[j] > longest) {
                longest = waits[j];
                before = jobs.get(j).kind();
            }
        }
        return new Step(jobs.get(job).what(), jobs.get(job).minutes(), longest, before);
    }
}
