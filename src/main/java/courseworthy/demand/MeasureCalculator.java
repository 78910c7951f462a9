package courseworthy.demand;

import courseworthy.ride.Range;
import courseworthy.units.Resolution;
import java.util.function.Function;

/**
 * How a measure is worked out. What it is given is in base units; what it gives is in ticks or positions of the measure's scale, or null where
 * the measure cannot be known.
 *
 * @param <T> what it is worked out from
 */
@FunctionalInterface
interface MeasureCalculator<T> {

    MeasureValue calculate(T input, MeasureScale scale);

    /** To the nearest tick. */
    static <T> MeasureCalculator<T> exact(Function<T, ? extends Number> base) {
        return known(base, (number, scale) -> MeasureValue.exact(scale.resolution().ticks(number.doubleValue())));
    }

    static <T> MeasureCalculator<T> range(Function<T, Range> base) {
        return known(base, (range, scale) -> scale.value(range));
    }

    /** Something marked or given that must never be taken for more than it is: down to a whole tick. */
    static <T> MeasureCalculator<T> atMost(Function<T, Double> base) {
        return known(base, (number, scale) -> MeasureValue.exact((long) Math.floor(inTicks(scale, number) + 1e-6)));
    }

    /** Something asked for that must never be taken for less than it is: up to a whole tick. */
    static <T> MeasureCalculator<T> atLeast(Function<T, Double> base) {
        return known(base, (number, scale) -> MeasureValue.exact((long) Math.ceil(inTicks(scale, number) - 1e-6)));
    }

    /** In ticks or positions already. */
    static <T> MeasureCalculator<T> ticks(Function<T, MeasureValue> value) {
        return known(value, (ticks, scale) -> ticks);
    }

    static <T> MeasureCalculator<T> word(Function<T, String> word) {
        return known(word, (found, scale) -> MeasureValue.exact(scale.position(found)));
    }

    static <T> MeasureCalculator<T> yesNo(Function<T, Boolean> yes) {
        return known(yes, (found, scale) -> MeasureValue.exact(found ? 1 : 0));
    }

    private static <T, V> MeasureCalculator<T> known(Function<T, ? extends V> value, MeasureCalculator<V> counted) {
        return (input, scale) -> {
            V found = value.apply(input);
            return found == null ? null : counted.calculate(found, scale);
        };
    }

    private static double inTicks(MeasureScale scale, double base) {
        Resolution resolution = scale.resolution();
        return resolution.unit().fromBase(base) / resolution.step().doubleValue();
    }
}
