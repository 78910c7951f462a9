package courseworthy.demand;

import courseworthy.demand.Demands.Assumed;
import courseworthy.ride.Range;
import courseworthy.units.Resolution;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Collects measures as they become known, in ticks, and what had to be assumed for them. Values are in base units. */
final class DemandsBuilder {

    private final Map<Measure, MeasureValue> values = new EnumMap<>(Measure.class);
    private final List<Assumed> assumed = new ArrayList<>();

    void exact(Measure measure, double base) {
        values.put(measure, MeasureValue.exact(ticks(measure, base)));
    }

    /** To the nearest tick; a null is unknown. */
    void exact(Measure measure, Double base) {
        if (base != null) {
            exact(measure, base.doubleValue());
        }
    }

    /** A null is unknown. */
    void range(Measure measure, Range base) {
        if (base != null) {
            values.put(measure, new MeasureValue(ticks(measure, base.low()), ticks(measure, base.mid()), ticks(measure, base.high())));
        }
    }

    /** Something marked or given that must never be taken for more than it is: down to a whole tick. */
    void atMost(Measure measure, Double base) {
        if (base != null) {
            values.put(measure, MeasureValue.exact((long) Math.floor(inTicks(measure, base) + 1e-6)));
        }
    }

    /** Something asked for that must never be taken for less than it is: up to a whole tick. */
    void atLeast(Measure measure, Double base) {
        if (base != null) {
            values.put(measure, MeasureValue.exact((long) Math.ceil(inTicks(measure, base) - 1e-6)));
        }
    }

    void count(Measure measure, long low, long mid, long high) {
        values.put(measure, MeasureValue.around(low, mid, high));
    }

    /** A word of the measure's scale; a null is unknown. */
    void word(Measure measure, String word) {
        if (word != null) {
            values.put(measure, MeasureValue.exact(position(measure, word)));
        }
    }

    /** A word that is only likely, between two others. */
    void word(Measure measure, String low, String mid, String high) {
        values.put(measure, MeasureValue.around(position(measure, low), position(measure, mid), position(measure, high)));
    }

    /** A null is unknown. */
    void yesNo(Measure measure, Boolean yes) {
        if (yes != null) {
            values.put(measure, MeasureValue.exact(yes ? 1 : 0));
        }
    }

    void assume(String what, String value) {
        assumed.add(new Assumed(what, value));
    }

    /** The value of a measure, or null where unknown. */
    MeasureValue get(Measure measure) {
        return values.get(measure);
    }

    Demands demands(List<StretchFacts> stretches, EstimatedRide estimated, Occasion occasion) {
        return new Demands(values, stretches, assumed, estimated, occasion);
    }

    private static int position(Measure measure, String word) {
        int position = measure.scale().words().indexOf(word);
        if (position < 0) {
            throw new IllegalArgumentException(measure + " has no word " + word);
        }
        return position;
    }

    private static long ticks(Measure measure, double base) {
        return measure.scale().resolution().ticks(base);
    }

    private static double inTicks(Measure measure, double base) {
        Resolution resolution = measure.scale().resolution();
        return resolution.unit().fromBase(base) / resolution.step().doubleValue();
    }
}
