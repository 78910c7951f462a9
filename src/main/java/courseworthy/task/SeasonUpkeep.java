package courseworthy.task;

import courseworthy.build.Outing;
import courseworthy.build.SeasonPlan.PlannedRide;
import courseworthy.build.SeasonPlanner;
import courseworthy.event.WorkHours;
import courseworthy.wear.RideUse;
import courseworthy.wear.UpkeepPlan;
import courseworthy.wear.UpkeepPlanner;
import courseworthy.wear.UpkeepPlanner.TyreChange;
import courseworthy.wear.WorkTime;
import courseworthy.workshop.Workshop;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What falls due on the parts of a workshop over a season, and when there is time for it. */
final class SeasonUpkeep {

    private SeasonUpkeep() {
    }

    /**
     * @param outings as planned
     * @param result  what came of them
     * @param hours   the time for work on each evening
     */
    static UpkeepPlan of(Workshop workshop, List<Outing> outings, SeasonPlanner.PlannedSeason result, WorkHours hours) {
        List<PlannedRide> rides = result.rides();
        if (workshop.log() == null || rides.isEmpty()) {
            return UpkeepPlan.NONE;
        }
        List<RideUse> uses = new ArrayList<>();
        List<TyreChange> changes = new ArrayList<>();
        LocalDate until = rides.get(0).date();
        for (PlannedRide ride : rides) {
            Outing outing = outings.stream().filter(each -> each.order() == ride.order()).findFirst().orElseThrow();
            RideUse use = RideUpkeep.use(outing.recommended().call(), ride.build(), ride.date(), ride.event());
            if (use != null) {
                uses.add(use);
            }
            changes.addAll(RideUpkeep.changes(ride.build(), ride.date()));
            until = ride.date().isAfter(until) ? ride.date() : until;
        }
        return UpkeepPlanner.of(workshop, uses, changes, time(result, hours), until);
    }

    /** What each evening has beside the work for starts and the way back: nothing on the evening of packing, nor until the bike is home. */
    private static WorkTime time(SeasonPlanner.PlannedSeason result, WorkHours hours) {
        Map<LocalDate, Integer> taken = new HashMap<>();
        result.jobs().forEach(each -> taken.merge(each.date(), each.end(), Math::max));
        for (PlannedRide ride : result.rides()) {
            for (LocalDate day = ride.day().departure().minusDays(1); !day.isAfter(ride.day().home()); day = day.plusDays(1)) {
                taken.put(day, hours.most());
            }
        }
        return new WorkTime(hours::minutes, taken);
    }
}
