package courseworthy.build;

import courseworthy.build.SeasonPlan.PartClash;
import courseworthy.build.SeasonPlan.PlannedRide;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One event of a season with all who ride it.
 *
 * @param rides   in the order of the season
 * @param clashes those of its day
 */
public record SeasonEvent(LocalDate date, String name, String course, List<PlannedRide> rides, List<PartClash> clashes) {

    public SeasonEvent {
        rides = List.copyOf(rides);
        clashes = List.copyOf(clashes);
    }

    /** The events of a season by date, those of one day in the order of the season. */
    public static List<SeasonEvent> of(SeasonPlan season) {
        Map<List<Object>, List<PlannedRide>> together = new LinkedHashMap<>();
        for (PlannedRide ride : season.rides()) {
            together.computeIfAbsent(List.of(ride.date(), ride.event(), ride.course()), key -> new ArrayList<>()).add(ride);
        }
        List<SeasonEvent> out = new ArrayList<>();
        for (List<PlannedRide> rides : together.values()) {
            PlannedRide first = rides.get(0);
            List<PartClash> clashes = season.clashes().stream().filter(each -> each.date().equals(first.date())).toList();
            out.add(new SeasonEvent(first.date(), first.event(), first.course(), rides, clashes));
        }
        return out;
    }

    /** The ride of a rider; null where the rider does not ride it. */
    public PlannedRide of(String rider) {
        return rides.stream().filter(each -> each.rider().equals(rider)).findFirst().orElse(null);
    }
}
