package courseworthy.task;

import courseworthy.build.Build;
import courseworthy.build.SeasonPlan.Ride;
import courseworthy.build.SeasonPlanner.Outing;
import courseworthy.wear.RideUse;
import courseworthy.wear.UpkeepPlan;
import courseworthy.wear.UpkeepPlanner;
import courseworthy.wear.UpkeepPlanner.Change;
import courseworthy.wear.WorkTime;
import courseworthy.workshop.Workshop;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What falls due on the parts of a workshop over a season, and when there is time for it. */
final class SeasonUpkeep {

    /** Days from the last evening of work to an event: the evening before is for packing (common practice, no source). */
    private static final int SPARE = 2;
    /** Work of a build is looked for so many days back (judgement, no source). */
    private static final int LONGEST = 28;

    private SeasonUpkeep() {
    }

    /**
     * @param outings as planned
     * @param rides   what came of them
     * @param aDay    minutes for work on a day
     */
    static UpkeepPlan of(Workshop workshop, List<Outing> outings, List<Ride> rides, int aDay) {
        if (workshop.log() == null || rides.isEmpty()) {
            return UpkeepPlan.NONE;
        }
        List<RideUse> uses = new ArrayList<>();
        List<Change> changes = new ArrayList<>();
        Map<LocalDate, Integer> taken = new HashMap<>();
        for (Ride ride : rides) {
            taken.put(ride.date(), aDay);
            taken.put(ride.date().minusDays(1), aDay);
        }
        LocalDate until = rides.get(0).date();
        for (Ride ride : rides) {
            Outing outing = outings.stream().filter(each -> each.order() == ride.order()).findFirst().orElseThrow();
            RideUse use = RideUpkeep.use(outing.recommended().call(), ride.build(), ride.date(), ride.event());
            if (use != null) {
                uses.add(use);
            }
            changes.addAll(RideUpkeep.changes(ride.build(), ride.date()));
            take(taken, ride.build(), ride.date(), aDay);
            until = ride.date().isAfter(until) ? ride.date() : until;
        }
        return UpkeepPlanner.of(workshop, uses, changes, new WorkTime(aDay, taken), until);
    }

    /** The evenings before a ride that the work on its build takes. */
    private static void take(Map<LocalDate, Integer> taken, Build build, LocalDate date, int aDay) {
        int left = (int) Math.round(build.minutes());
        for (int back = SPARE; left > 0 && back < LONGEST; back++) {
            LocalDate day = date.minusDays(back);
            int more = Math.min(left, Math.max(0, aDay - taken.getOrDefault(day, 0)));
            taken.merge(day, more, Integer::sum);
            left -= more;
        }
    }
}
