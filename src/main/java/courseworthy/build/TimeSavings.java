package courseworthy.build;

import courseworthy.call.Call;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.ride.Range;
import courseworthy.topic.Topic;
import courseworthy.worth.WorthCalculator;

/** What departures and mass cost in time on the course of a call: likely values, in whole seconds. */
interface TimeSavings {

    /** Time counts for nothing: it is no race, or no ride can be estimated. */
    TimeSavings NONE = new TimeSavings() {
        @Override
        public long apart(Topic topic, long one, long other) {
            return 0;
        }

        @Override
        public long perKilogram() {
            return 0;
        }
    };

    /** Seconds that two values of a topic are apart, whichever is faster; 0 where that cannot be computed. */
    long apart(Topic topic, long one, long other);

    /** Seconds that 1 kg less returns. */
    long perKilogram();

    /** @param worths of the call; null where no ride was estimated */
    static TimeSavings of(Call call, WorthCalculator worths) {
        MeasureValue role = call.demands().get(Measure.ROLE);
        boolean race = role != null && Measure.ROLE.scale().text(role.mid()).equals("race");
        return race && worths != null && worths.known() ? new SimulatedSavings(worths) : NONE;
    }

    /** By the ride that was estimated. */
    record SimulatedSavings(WorthCalculator worths) implements TimeSavings {
        @Override
        public long apart(Topic topic, long one, long other) {
            Range returned = worths.returned(topic, one, other);
            return returned == null ? 0 : Math.round(Math.abs(returned.mid()));
        }

        @Override
        public long perKilogram() {
            return Math.max(0, Math.round(worths.perKilogram().mid()));
        }
    }
}
