package courseworthy.wear;

import courseworthy.workshop.Part;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.Workshop;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;

/** Finds what falls due on the parts of a workshop until a day, and puts each job on an evening that has time for it. */
public final class UpkeepPlanner {

    /** Days between the last work on a bike and an event: the evening before is for packing (common practice, no source). */
    private static final int SPARE = 2;
    /** Without a log's day, the plan begins so many days before the first ride (judgement, no source). */
    private static final int LEAD = 14;
    /** More jobs than any season has (computing). */
    private static final int MOST_JOBS = 5000;
    private static final Comparator<PlannedJob> ORDER = Comparator.comparing((PlannedJob each) -> each.by).thenComparing(each -> !each.interval.work().safety())
            .thenComparing(each -> each.part.name()).thenComparing(each -> each.interval.job());

    private final Workshop workshop;
    private final LocalDate from;
    private final LocalDate until;
    private final Map<String, List<RideUse>> uses = new HashMap<>();
    private final List<TyreChange> changes;
    private final PriorityQueue<PlannedJob> queue = new PriorityQueue<>(ORDER);
    private final EveningFinder evenings;
    private final List<ServiceWork> planned = new ArrayList<>();
    private final List<PlannedJob> done = new ArrayList<>();

    /**
     * Another tyre on a wheel: its sealant is fresh.
     *
     * @param before the day of the ride for which it is changed
     * @param wheel  its name
     */
    public record TyreChange(LocalDate before, String wheel) {
    }

    private static final class PlannedJob {
        private final Part part;
        private final ServiceInterval interval;
        private ServiceStart start;
        private ServiceClock.Due due;
        private LocalDate by;
        private RideUse before;

        private PlannedJob(Part part, ServiceInterval interval, ServiceStart start) {
            this.part = part;
            this.interval = interval;
            this.start = start;
        }
    }

    private UpkeepPlanner(Workshop workshop, List<RideUse> events, List<TyreChange> changes, WorkTime time, LocalDate until) {
        this.workshop = workshop;
        this.until = until;
        this.changes = changes.stream().sorted(Comparator.comparing(TyreChange::before)).toList();
        this.from = from(workshop, events, until);
        this.evenings = new EveningFinder(time, from, until);
    }

    private static LocalDate from(Workshop workshop, List<RideUse> events, LocalDate until) {
        LocalDate last = workshop.log().last();
        return last != null ? last.plusDays(1) : events.stream().map(RideUse::date).min(Comparator.naturalOrder()).orElse(until).minusDays(LEAD);
    }

    /**
     * A plan for a workshop with a log; empty for one without.
     *
     * @param events  what will be ridden besides usual weeks; those up to the last day of the log are taken as logged
     * @param changes wheels that get another tyre for these events
     * @param until   the last day of the plan
     */
    public static UpkeepPlan of(Workshop workshop, List<RideUse> events, List<TyreChange> changes, WorkTime time, LocalDate until) {
        if (workshop.log() == null) {
            return UpkeepPlan.NONE;
        }
        UpkeepPlanner planner = new UpkeepPlanner(workshop, events, changes, time, until);
        RideUses made = new RideUses(workshop);
        planner.rides(made, events);
        planner.queueAll();
        planner.work();
        List<Purchase> purchases = StockPlanner.of(workshop, planner.needs(), planner.from, until);
        return new UpkeepPlan(planner.planned, purchases, PartHoursCounter.of(workshop, planner.uses, planner.from), planner.notes(made));
    }

    private void rides(RideUses made, List<RideUse> events) {
        List<RideUse> all = new ArrayList<>(made.ridden());
        List<RideUse> later = events.stream().filter(each -> !each.date().isBefore(from) && !each.date().isAfter(until)).toList();
        all.addAll(later);
        all.addAll(made.usual(from, until, later));
        all.sort(Comparator.comparing(RideUse::date));
        for (RideUse use : all) {
            use.parts().forEach(part -> uses.computeIfAbsent(part, name -> new ArrayList<>()).add(use));
        }
    }

    // What falls due

    private void queueAll() {
        List<Part> all = new ArrayList<>(workshop.bikes());
        all.addAll(workshop.parts());
        for (Part part : all) {
            for (ServiceInterval interval : part.owned() ? IntervalTable.shipped().on(part, workshop) : List.<ServiceInterval>of()) {
                queue(new PlannedJob(part, interval, ServiceStart.of(part, interval, workshop)));
            }
        }
    }

    private void queue(PlannedJob job) {
        if (falls(job)) {
            queue.add(job);
        }
    }

    /** Works out by when a job has to be done; whether it has to be. */
    private boolean falls(PlannedJob job) {
        List<RideUse> of = uses.getOrDefault(job.part.name(), List.of());
        job.due = new ServiceClock(job.interval, job.start, IntervalTable.shipped().dirt()).due(of, from);
        for (TyreChange each : changes) {
            LocalDate fresh = each.before().minusDays(SPARE);
            boolean after = job.start.day() == null || fresh.isAfter(job.start.day());
            if (after && isIn(job.part, each.wheel()) && !riddenDue(job, of, each.before())) {
                job.start = ServiceStart.done(fresh, ServiceStart.RENEW);
                job.due = new ServiceClock(job.interval, job.start, IntervalTable.shipped().dirt()).due(of, from);
            }
        }
        job.before = job.due.due() == null ? null : of.stream().filter(each -> !each.date().isBefore(job.due.due())).findFirst().orElse(null);
        if (job.before == null) {
            return false;
        }
        LocalDate day = job.before.event() == null ? job.before.date() : job.before.date().minusDays(SPARE);
        job.by = day.isBefore(from) ? from : day;
        return true;
    }

    /** Whether a part is ridden before a day though its job is due. */
    private static boolean riddenDue(PlannedJob job, List<RideUse> uses, LocalDate before) {
        return job.due.due() != null && uses.stream().anyMatch(each -> !each.date().isBefore(job.due.due()) && each.date().isBefore(before));
    }

    private static boolean isIn(Part sealant, String wheel) {
        for (Part at = sealant.kind() == PartKind.SEALANT ? sealant.on() : null; at != null; at = at.on()) {
            if (at.name().equals(wheel)) {
                return true;
            }
        }
        return false;
    }

    // Onto evenings

    private void work() {
        while (!queue.isEmpty() && planned.size() < MOST_JOBS) {
            PlannedJob job = queue.poll();
            LocalDate was = job.by;
            if (!falls(job)) {
                continue;
            }
            if (job.by.isAfter(was)) {
                queue.add(job);
                continue;
            }
            plan(job);
        }
    }

    private void plan(PlannedJob job) {
        int minutes = minutes(job);
        LocalDate before = job.by.isAfter(from) ? job.by.minusDays(1) : from;
        boolean waits = !job.interval.work().safety() && job.before.event() == null;
        LocalDate overdue = !waits ? null : job.due.latest() == null ? until.plusDays(1) : job.due.latest();
        ServiceEvening evening = evenings.take(minutes, job.interval.work().rests(), before, overdue, day -> returns(job, day));
        LocalDate latest = job.due.latest() == null || !job.due.latest().isBefore(job.by) ? job.due.latest() : job.by;
        String bike = job.part.bike() == null ? job.before.bike() : job.part.bike().name();
        planned.add(new ServiceWork(evening, job.by, latest, workshop.name(), bike, job.part.name(), job.interval.job(), minutes, job.interval.work().safety(),
                ServicePhrases.why(job.interval, job.start, job.due) + ServicePhrases.timing(evening)));
        done.add(job);
        restart(job, evening.date());
    }

    /** Whether a job that is done on a day is due again by the day for which it was done. */
    private boolean returns(PlannedJob job, LocalDate day) {
        PlannedJob next = new PlannedJob(job.part, job.interval, ServiceStart.done(day, job.interval.job()));
        return falls(next) && !next.by.isAfter(job.by);
    }

    /** Restarts the count of a job, and of the jobs that are done with it. */
    private void restart(PlannedJob job, LocalDate day) {
        List<PlannedJob> same = new ArrayList<>();
        for (PlannedJob other : queue) {
            boolean with = other.part == job.part && IntervalTable.shipped().resets(job.part.kind(), job.interval.job(), other.interval.job());
            boolean tyre = job.interval.job().equals(ServiceStart.RENEW) && job.part.kind() == PartKind.TYRE && ServiceStart.isIn(other.part, job.part);
            if (with || tyre) {
                same.add(other);
            }
        }
        queue.removeAll(same);
        for (PlannedJob each : same) {
            queue(new PlannedJob(each.part, each.interval, ServiceStart.done(day, job.interval.job())));
        }
        // One ride alone may fill an interval: then the next ride counts.
        LocalDate next = returns(job, day) ? job.before.date() : day;
        queue(new PlannedJob(job.part, job.interval, ServiceStart.done(next, job.interval.job())));
    }

    private int minutes(PlannedJob job) {
        Double written = job.interval.job().equals(ServiceStart.RENEW) ? workshop.minutes().get(job.part.kind()) : null;
        return written == null ? job.interval.work().minutes() : (int) Math.round(written / 60);
    }

    // Around it

    private List<StockPlanner.StockNeed> needs() {
        List<StockPlanner.StockNeed> out = new ArrayList<>();
        for (int i = 0; i < done.size(); i++) {
            ServiceInterval.ServiceJob work = done.get(i).interval.work();
            if (work.takes() != null) {
                ServiceWork of = planned.get(i);
                out.add(new StockPlanner.StockNeed(of.evening().date(), work.takes(), work.amount(), of.bike(), of.part(), of.job()));
            }
        }
        return out;
    }

    private List<String> notes(RideUses made) {
        List<String> parts = new ArrayList<>();
        for (PlannedJob each : done) {
            if (!each.start.complete() && !parts.contains(each.part.name())) {
                parts.add(each.part.name());
            }
        }
        return ServicePhrases.notes(workshop, made.weekly(), from, parts);
    }
}
