package courseworthy.build;

import courseworthy.build.SeasonPlan.Ride;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** The days by which lent parts are back in a season: when the bike that lent them is ridden next. */
final class ReturnDates {

    private ReturnDates() {
    }

    /** The same rides, with a day for each part that a later ride's bike lent. */
    static List<Ride> of(List<Ride> rides) {
        List<Ride> out = new ArrayList<>();
        for (Ride ride : rides) {
            Build build = ride.build().returning(bike -> next(rides, bike.name(), ride.date()));
            out.add(new Ride(ride.order(), ride.rider(), ride.day(), ride.workshop(), ride.call(), build));
        }
        return out;
    }

    /** The next day on which a bike is ridden; null where there is none. */
    static LocalDate next(List<Ride> rides, String bike, LocalDate after) {
        LocalDate out = null;
        for (Ride ride : rides) {
            boolean later = ride.build().bike() != null && ride.build().bike().name().equals(bike) && ride.date().isAfter(after);
            out = later && (out == null || ride.date().isBefore(out)) ? ride.date() : out;
        }
        return out;
    }
}
