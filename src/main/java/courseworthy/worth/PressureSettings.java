package courseworthy.worth;

import courseworthy.call.Call;
import courseworthy.claim.Claim;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.decision.Settler;
import courseworthy.demand.DayDemands;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.demand.MountedWidth;
import courseworthy.demand.TyrePressure;
import courseworthy.engine.ShippedRules;
import courseworthy.ride.BikeKind;
import courseworthy.ride.Range;
import courseworthy.sheet.Row;
import courseworthy.sheet.Saying;
import courseworthy.topic.End;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.units.PressureSteps;
import java.util.ArrayList;
import java.util.List;

/**
 * Both tyres' pressures: what to set, where it is pumped, the range worth trying, and what to do if it turns wet.
 *
 * @param front      null where it is not decided
 * @param rear       null where it is not decided
 * @param start      temperature and height of the start, what is known of them
 * @param pumped     temperature and height where they are pumped
 * @param pumpedKnown whether that was written; else it is taken to be the start
 */
public record PressureSettings(TyreSetting front, TyreSetting rear, DayDemands.RideEnvironment start, DayDemands.RideEnvironment pumped, boolean pumpedKnown) {

    /** The shipped row on wet ground. */
    private static final String WET_ROW = "shipped/less-pressure-in-the-wet";

    /** @param turned the call on wet ground; null where none was made */
    static PressureSettings of(Call call, Call turned) {
        DayDemands day = call.demands().estimated().day();
        DayDemands.RideEnvironment start = day.startPlace();
        DayDemands.RideEnvironment written = day.pumped();
        DayDemands.RideEnvironment pumped = written == null ? start : new DayDemands.RideEnvironment(written.temperature() == null ? start.temperature()
                : written.temperature(), written.height() == null ? start.height() : written.height());
        PressureSettings places = new PressureSettings(null, null, start, pumped, written != null);
        return new PressureSettings(places.setting(call, turned, true), places.setting(call, turned, false), start, pumped, written != null);
    }

    private TyreSetting setting(Call call, Call turned, boolean front) {
        End side = front ? End.FRONT : End.REAR;
        Decision pressure = call.on(Topics.FRONT_TYRE_PRESSURE.at(side));
        Double width = base(call, Topics.FRONT_TYRE_WIDTH.at(side));
        Range reference = range(call.demands(), front ? Measure.FRONT_REFERENCE_PRESSURE : Measure.REAR_REFERENCE_PRESSURE);
        Range floor = range(call.demands(), front ? Measure.FRONT_PRESSURE_FLOOR : Measure.REAR_PRESSURE_FLOOR);
        if (pressure.value() == null || width == null || reference == null || floor == null) {
            return null;
        }
        double decided = pressure.topic().resolution().base(pressure.value());
        Double ceiling = pressure.ceiling();
        Double rim = base(call, Topics.FRONT_RIM_INNER_WIDTH.at(side));
        Range mounted = rim == null || rim >= width ? null : MountedWidth.of(width, rim);
        double pump = PressureSteps.nearest(elsewhere(decided, pumped));
        boolean capped = ceiling != null && pump > ceiling;
        return new TyreSetting(load(call, front),
                new TyreSetting.Tyre(width, mounted, rim == null ? 0 : rim, TyrePressure.measured(width, offRoad(call))), decided, capped ? PressureSteps.down(ceiling) : pump, worth(pressure, reference, floor.mid(), width, mounted),
                floor.mid(), ceiling, wetter(call, turned, pressure, reference.mid()), capped, most(call, decided));
    }

    private double elsewhere(double decided, DayDemands.RideEnvironment place) {
        return elsewhere(decided, place.temperature(), place.height());
    }

    /** What is not known of either place is taken to be alike. */
    private double elsewhere(double decided, Double temperature, Double height) {
        boolean heat = start.temperature() != null && temperature != null;
        boolean high = start.height() != null && height != null;
        return PressureCorrection.elsewhere(decided, heat ? start.temperature() : 15, high ? start.height() : 0, heat ? temperature : 15,
                high ? height : 0);
    }

    /** The more of what the hottest place of the ride and its highest would make of it. */
    private double most(Call call, double decided) {
        double most = decided;
        Double hottest = mid(call.demands(), Measure.HOTTEST_TEMPERATURE);
        if (hottest != null) {
            most = Math.max(most, elsewhere(decided, hottest, start.height()));
        }
        Double summit = mid(call.demands(), Measure.SUMMIT_TEMPERATURE);
        Double highest = mid(call.demands(), Measure.HIGHEST_POINT);
        if (summit != null && highest != null) {
            most = Math.max(most, elsewhere(decided, summit, highest));
        }
        return most;
    }

    /** As uncertain as the reference is, the tyre's true width counted, about what is decided and inside every bound on it. */
    private static Range worth(Decision pressure, Range reference, double floor, double width, Range mounted) {
        double decided = pressure.topic().resolution().base(pressure.value());
        double less = mounted == null ? 0 : Math.max(0, 1 - TyrePressure.byWidth(width, mounted.high()));
        double more = mounted == null ? 0 : Math.max(0, TyrePressure.byWidth(width, mounted.low()) - 1);
        double low = decided * (1 - Math.hypot(1 - reference.low() / reference.mid(), less));
        double high = decided * (1 + Math.hypot(reference.high() / reference.mid() - 1, more));
        Double most = atMost(pressure);
        double top = most == null ? high : Math.min(high, most);
        return Range.around(Math.min(decided, PressureSteps.up(Math.max(low, floor))), decided,
                Math.max(decided, PressureSteps.down(top)));
    }

    /**
     * The pressure on wet ground in the same tyre: that of the call made for it where that keeps the tyre, else the same claims with the wet
     * row's among them, settled anew. Null where the ground is wet already or it would be no lower.
     */
    private static Double wetter(Call call, Call turned, Decision dry, double reference) {
        if (wet(call)) {
            return null;
        }
        Decision wet = turned != null && sameTyre(call, turned, dry.topic()) ? turned.on(dry.topic()) : settled(dry, reference);
        return wet.value() == null || wet.value() >= dry.value() ? null : Double.valueOf(wet.topic().resolution().base(wet.value()));
    }

    /** Whether two calls mount the same tyre where a pressure is decided: its width, casing and insert. */
    static boolean sameTyre(Call one, Call other, Topic pressure) {
        for (Topic topic : Topics.ofTyre(pressure)) {
            if (!one.on(topic).text().equals(other.on(topic).text())) {
                return false;
            }
        }
        return true;
    }

    /** What the tyre of a call is given on wet ground, as text: never more than dry. Empty where nothing is decided. */
    static String kept(Call dry, Topic pressure) {
        Range reference = range(dry.demands(), pressure.end() == End.FRONT ? Measure.FRONT_REFERENCE_PRESSURE
                : Measure.REAR_REFERENCE_PRESSURE);
        Decision now = dry.on(pressure);
        if (now.value() == null || reference == null) {
            return "";
        }
        Decision wet = wet(dry) ? now : settled(now, reference.mid());
        return wet.value() == null || wet.value() >= now.value() ? now.text() : wet.text();
    }

    private static Decision settled(Decision dry, double reference) {
        List<Claim> claims = new ArrayList<>(dry.taken());
        for (Decision.LosingClaim lost : dry.lost()) {
            claims.add(lost.claim());
        }
        Row row = ShippedRules.row(WET_ROW);
        for (Saying saying : row.sayings()) {
            if (saying.topic().equals(dry.topic()) && saying.source() instanceof Saying.Times times) {
                long value = times.on(saying.topic(), times.measure().scale().resolution().ticks(reference));
                claims.add(Claim.of(row.origin(), saying.topic(), saying.verb(), value, saying.written(), List.of()));
            }
        }
        return Settler.settle(dry.topic(), claims);
    }

    /** Whether a call is for wet ground. */
    static boolean wet(Call call) {
        MeasureValue going = call.demands().get(Measure.GOING);
        return going != null && Measure.GOING.scale().text(going.mid()).equals("wet");
    }

    /** The tightest of the bounds from above that hold; null where there is none. */
    private static Double atMost(Decision pressure) {
        Double least = null;
        for (Claim claim : pressure.taken()) {
            if (claim.verb() == Verb.AT_MOST) {
                double most = pressure.topic().resolution().base(claim.value());
                least = least == null ? most : Math.min(least, most);
            }
        }
        return least;
    }

    private static Range load(Call call, boolean front) {
        BikeKind kind = BikeKind.of(text(call, Topics.BIKE));
        BikeKind ridden = kind == null ? call.demands().estimated().estimate().basis().kind() : kind;
        return range(call.demands(), Measure.START_LINE_MASS).times(front ? ridden.frontShare() : 1 - ridden.frontShare());
    }

    private static boolean offRoad(Call call) {
        MeasureValue paved = call.demands().get(Measure.PAVED_SHARE);
        return paved == null || paved.mid() != Measure.PAVED_SHARE.scale().resolution().ticks(1.0);
    }

    private static String text(Call call, Topic topic) {
        Decision decision = call.on(topic);
        return decision.value() == null ? "" : decision.topic().text(decision.value());
    }

    /** What is decided, in base units; null where nothing is. */
    static Double base(Call call, Topic topic) {
        Decision decision = call.on(topic);
        return decision.value() == null ? null : Double.valueOf(decision.topic().resolution().base(decision.value()));
    }

    private static Double mid(Demands demands, Measure measure) {
        MeasureValue value = demands.get(measure);
        return value == null ? null : Double.valueOf(measure.scale().resolution().base(value.mid()));
    }

    /** A measure in base units; null where unknown. */
    static Range range(Demands demands, Measure measure) {
        MeasureValue value = demands.get(measure);
        return value == null ? null : new Range(measure.scale().resolution().base(value.low()),
                measure.scale().resolution().base(value.mid()), measure.scale().resolution().base(value.high()));
    }
}
