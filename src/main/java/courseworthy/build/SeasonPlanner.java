package courseworthy.build;

import courseworthy.build.SeasonPlan.PartClash;
import courseworthy.build.SeasonPlan.SettledValue;
import courseworthy.build.SeasonPlan.PlannedRide;
import courseworthy.build.SeasonPlan.Wish;
import courseworthy.call.Call;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Status;
import courseworthy.event.WorkHours;
import courseworthy.fit.FitRules;
import courseworthy.workshop.Workshop;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A season of one workshop: from ride to ride each build begins where the one before left the parts. */
public final class SeasonPlanner {

    private final Workshop start;
    private final Terms terms;
    private final FitRules rules;
    private final Runnable eachDone;
    private final WishList wishes;
    private final SeasonSchedule schedule;
    private final List<PlannedRide> rides = new ArrayList<>();
    private final Map<Integer, Workshop> open = new LinkedHashMap<>();
    private final List<PartClash> clashes = new ArrayList<>();

    /**
     * How work is done.
     *
     * @param hours       the time for work on each evening; null where it is not written
     * @param back        whether everything goes back to where it was after each date
     * @param minuteWorth what a minute at an event is worth, in money; null where that is not said
     */
    public record Terms(WorkHours hours, boolean back, Double minuteWorth) {
    }

    /**
     * What came of it.
     *
     * @param jobs what is done on which evening
     * @param open by the order of a ride, the workshop from which its build was made
     */
    public record PlannedSeason(List<PlannedRide> rides, List<PartClash> clashes, List<Wish> wishes, List<SeasonWork.SeasonJob> jobs, Map<Integer, Workshop> open) {
    }

    private SeasonPlanner(Workshop workshop, Terms terms, FitRules rules, Runnable eachDone) {
        this.eachDone = eachDone;
        this.start = workshop;
        this.terms = terms;
        this.rules = rules;
        this.wishes = new WishList(workshop, terms.minuteWorth());
        this.schedule = new SeasonSchedule(workshop, terms);
    }

    /**
     * @param outings  by date
     * @param eachDone called after each ride, to show how far it is
     */
    public static PlannedSeason of(Workshop workshop, List<Outing> outings, Terms terms, FitRules rules, Runnable eachDone) {
        SeasonPlanner planner = new SeasonPlanner(workshop, terms, rules, eachDone);
        together(outings).forEach(planner::starts);
        planner.schedule.end();
        List<PlannedRide> rides = ReturnDates.of(planner.rides);
        return new PlannedSeason(rides, planner.clashes, planner.wishes.all(), planner.schedule.jobs(rides), planner.open);
    }

    /** Those of one day; and those of different riders of whom one is still away when another leaves. */
    static List<List<Outing>> together(List<Outing> outings) {
        List<List<Outing>> out = new ArrayList<>();
        LocalDate home = null;
        Set<String> riders = new HashSet<>();
        for (Outing each : outings) {
            List<Outing> last = out.isEmpty() ? null : out.get(out.size() - 1);
            boolean sameDay = last != null && last.get(0).date().equals(each.date());
            boolean away = last != null && !each.day().departure().isAfter(home) && !riders.contains(each.rider());
            if (!sameDay && !away) {
                last = new ArrayList<>();
                out.add(last);
                riders.clear();
                home = each.day().home();
            }
            last.add(each);
            riders.add(each.rider());
            home = each.day().home().isAfter(home) ? each.day().home() : home;
        }
        return out;
    }

    /** The evenings of a season are those of its schedule, and what does not fit into them is left out by that. */
    private WorkDeadline deadline(Outing outing) {
        return WorkDeadline.of(outing.date(), outing.day().travel(), null);
    }

    private PartSharing.SharingResult shared(Workshop from, List<Outing> outings) {
        return new PartSharing(from, rules, this::deadline).of(outings);
    }

    private void starts(List<Outing> outings) {
        PartSharing.SharingResult wanted = shared(schedule.now(), outings);
        PartSharing.SharingResult made = wanted;
        WorkPlan plan = schedule.inTime(wanted.made(), outings);
        if (!plan.fits() && schedule.hasWayBack()) {
            made = shared(schedule.stands(), outings);
            plan = schedule.directly(made.made(), outings);
        }
        if (made.clash() != null) {
            clashes.add(made.clash());
        }
        List<OutingBuild> builds = made.made();
        if (!plan.fits()) {
            builds = schedule.partly(made.made(), outings, this::deadline, rules);
            clashes.add(schedule.shortage(made.made(), builds, outings));
            builds = builds == null ? made.made() : builds;
            plan = schedule.plan();
        }
        schedule.done(builds, outings, plan);
        wanted.made().forEach(each -> wishes.ride(each.outing(), each.from(), each.build()));
        add(builds, plan);
    }

    private void add(List<OutingBuild> builds, WorkPlan plan) {
        for (OutingBuild each : builds) {
            Outing outing = each.outing();
            Build build = each.build().planned(schedule.of(outing, builds, plan));
            rides.add(new PlannedRide(outing.order(), outing.rider(), outing.day(), start.name(), decided(outing.call()), build));
            open.put(outing.order(), each.from());
            eachDone.run();
        }
    }

    private static List<SettledValue> decided(Call call) {
        List<SettledValue> out = new ArrayList<>();
        for (Decision decision : call.decisions()) {
            if (decision.status() == Status.SETTLED) {
                out.add(new SettledValue(decision.topic().name(), decision.text()));
            }
        }
        return out;
    }
}
