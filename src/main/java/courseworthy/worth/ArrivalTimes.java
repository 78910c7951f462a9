package courseworthy.worth;

import courseworthy.demand.DayDemands.SupportStop;
import courseworthy.demand.EstimatedRide;
import courseworthy.ride.Range;
import courseworthy.ride.RideEstimate;
import java.util.List;

/** When a rider is at a place of an estimated ride: riding time, and the stops before it. */
final class ArrivalTimes {

    private final RideEstimate estimate;
    private final List<SupportStop> stops;
    private final double whole;

    ArrivalTimes(EstimatedRide on) {
        estimate = on.estimate();
        stops = on.day().stops();
        whole = estimate.way().length() * estimate.basis().laps();
    }

    /** Time from the start to a place, m from the start over all laps; s. At the finish it is that of the whole ride. */
    Range after(double at) {
        return at >= whole ? estimate.total() : estimate.arrivals(at).plus(estimate.stopped(passed(at), estimate.arrivalAt(at)));
    }

    /** How many support points lie before a place. */
    private int passed(double at) {
        int passed = 0;
        for (SupportStop stop : stops) {
            passed += stop.at() < at ? 1 : 0;
        }
        return passed;
    }
}
