package courseworthy.worth;

import courseworthy.call.Call;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.ride.Range;
import courseworthy.ride.RideChange;
import courseworthy.ride.RideEstimate;
import courseworthy.ride.Walking;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.worth.PitPlan.Kind;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Works out what wheels and a second bike in the pits of a race of laps are worth on its course. */
final class PitWorthCalculator {

    /** A muddy bike hosed, brushed and its chain lubricated, s (common practice, no source). */
    static final Range WASHING = new Range(180, 300, 480);
    private static final List<Topic> TYRES = List.of(Topics.FRONT_TYRE_WIDTH, Topics.REAR_TYRE_WIDTH, Topics.FRONT_TYRE_CASING, Topics.REAR_TYRE_CASING,
            Topics.FRONT_TYRE_TREAD, Topics.REAR_TYRE_TREAD);

    private final Call call;
    private final RideEstimate ride;
    private final int laps;
    private final RideEstimate wetRide;
    private final Range rolling;
    private final Range lost;

    /** @param wet the call for wet ground; null where none is made, or it wants the same tyres */
    PitWorthCalculator(Call call, Call wet) {
        this.call = call;
        ride = call.demands().estimated().estimate();
        laps = ride.basis().laps();
        wetRide = wet == null ? null : wet.demands().estimated().estimate();
        rolling = wet == null ? null : perLap(Sensitivity.of(wet.demands()).saved(tyres(wet)));
        lost = wet == null ? null : perLap(lost(wetRide.saved(RideChange.NONE.withDryPace())));
    }

    /** Wet ground takes time or none: where the ground hardly limits the pace, the low end of a small difference would fall below nothing. */
    private static Range lost(Range saved) {
        return new Range(Math.max(0, saved.low()), Math.max(0, saved.mid()), Math.max(0, saved.high()));
    }

    /** What the tyres of the wet do to mass, drag and rolling; those of one make at both ends are off alike. */
    private Effect tyres(Call wet) {
        Map<String, Effect> effects = new LinkedHashMap<>();
        for (Topic topic : TYRES) {
            Long from = call.on(topic).value();
            Long to = wet.on(topic).value();
            if (from != null && to != null) {
                effects.merge(topic.plain(), WorthCalculator.effect(topic, from, to), Effect::alike);
            }
        }
        Effect out = Effect.NONE;
        for (Effect each : effects.values()) {
            out = out.and(each);
        }
        return out;
    }

    private Range perLap(Range seconds) {
        return seconds.times(1.0 / laps);
    }

    /** @param exchange time that taking it costs, s */
    PitWorth of(Kind kind, Range exchange) {
        Range lap = perLap((kind == Kind.WET_WHEELS ? wetRide : ride).riding());
        return switch (kind) {
            case SPARE_WHEELS -> new PitWorth(null, repair(exchange), null, null, lap);
            case WET_WHEELS -> new PitWorth(wet(exchange), null, null, null, lap);
            case SECOND_BIKE -> new PitWorth(lost == null ? null : wet(exchange), null, perLap(Sensitivity.of(call.demands()).perKilogram()), WASHING, lap);
        };
    }

    private PitWorth.Wet wet(Range exchange) {
        double most = rolling.mid() + lost.mid();
        int needed = most > 0 ? (int) Math.ceil(exchange.mid() / most) : laps;
        double share = lost.mid() > 0 ? (exchange.mid() / (laps - 1) - rolling.mid()) / lost.mid() : Double.POSITIVE_INFINITY;
        return new PitWorth.Wet(rolling, lost, share, Math.max(0, laps - needed));
    }

    /** Null where it is not known how long a tube takes. */
    private PitWorth.RepairTime repair(Range exchange) {
        MeasureValue stop = call.demands().get(Measure.TUBE_STOP);
        if (stop == null) {
            return null;
        }
        Range tube = new Range(seconds(stop.low()), seconds(stop.mid()), seconds(stop.high()));
        double saved = Math.max(0, tube.mid() - exchange.mid());
        return new PitWorth.RepairTime(tube, saved, saved * Walking.SPEED.mid());
    }

    private static double seconds(long ticks) {
        return Measure.TUBE_STOP.scale().resolution().base(ticks);
    }
}
