package courseworthy.build;

import courseworthy.build.SeasonPlan.PlannedRide;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** The days by which lent parts are back in a season: when the bike that lent them is ridden next. */
final class ReturnDates {

    private ReturnDates() {
    }

    /** The same rides, with a day for each part that a later ride's bike lent. */
    static List<PlannedRide> of(List<PlannedRide> rides) {
        List<PlannedRide> out = new ArrayList<>();
        for (PlannedRide ride : rides) {
            Build build = ride.build().returning(bike -> next(rides, bike.name(), ride.date()));
            out.add(new PlannedRide(ride.order(), ride.rider(), ride.day(), ride.workshop(), ride.call(), build));
        }
        return out;
    }

    /** The next day on which a bike is ridden; null where there is none. */
    static LocalDate next(List<PlannedRide> rides, String bike, LocalDate after) {
        LocalDate out = null;
        for (PlannedRide ride : rides) {
            boolean later = ride.build().bike() != null && ride.build().bike().name().equals(bike) && ride.date().isAfter(after);
            out = later && (out == null || ride.date().isBefore(out)) ? ride.date() : out;
        }
        return out;
    }
}
