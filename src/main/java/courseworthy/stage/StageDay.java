package courseworthy.stage;

import courseworthy.call.Call;
import courseworthy.demand.RideInput;
import courseworthy.ride.Range;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.worth.WorthCalculator;

/**
 * One day of a stage race.
 *
 * @param number  from 1
 * @param ride    course, rider and event of the day
 * @param alone   what would be recommended if it were the only day
 * @param settled what is recommended with the set-up of the race
 * @param worths  what departures from the day's own set-up cost, on the bike of the race
 */
public record StageDay(int number, RideInput ride, Call alone, Call settled, WorthCalculator worths) {

    /** Riding time, s; null where it is not known. */
    public Range hours() {
        return settled.demands().estimated() == null ? null : settled.demands().estimated().estimate().riding();
    }

    /** What counts for the day where nothing else does: its hours, or 1 where they are not known. */
    double weight() {
        return alone.demands().estimated() == null ? 1 : alone.demands().estimated().estimate().riding().mid();
    }

    StageDay settledAs(Call call) {
        return new StageDay(number, ride, alone, call, worths);
    }

    /** What a value costs against the one that the day alone would want, s, never below 0; null where no time hangs on it that can be computed. */
    public Range loss(Topic topic, long value) {
        Long wanted = alone.on(topic).value();
        if (topic.equals(Topics.BIKE) && wanted != null && alone.demands().estimated() != null && settled.demands().estimated() != null) {
            double more = settled.demands().estimated().estimate().trace().total() - alone.demands().estimated().estimate().trace().total();
            return Range.exact(wanted == value ? 0 : Math.max(0, more));
        }
        Range returned = wanted == null || !worths.known() ? null : worths.returned(topic, wanted, value);
        return returned == null ? null
                : new Range(Math.max(0, -returned.high()), Math.max(0, -returned.mid()), Math.max(0, -returned.low()));
    }
}
