package courseworthy.ride;

import java.util.function.ToDoubleFunction;

/**
 * An uncertain figure: the likely value and the ends between which it should lie.
 *
 * @param low  low end
 * @param mid  likely value
 * @param high high end
 */
public record Range(double low, double mid, double high) {

    public Range {
        if (!(low <= mid && mid <= high)) {
            throw new IllegalArgumentException(low + " " + mid + " " + high);
        }
    }

    public static Range exact(double value) {
        return new Range(value, value, value);
    }

    /** A value and how far it may be off either way. */
    public static Range within(double mid, double off) {
        return new Range(mid - off, mid, mid + off);
    }

    /** Each end times a factor of 0 or more. */
    public Range times(double factor) {
        return new Range(low * factor, mid * factor, high * factor);
    }

    public Range plus(double more) {
        return new Range(low + more, mid + more, high + more);
    }

    /** The sum of two independent figures: the ends by the root of the sum of squares (JCGM 100:2008, 5.1.2, from memory). */
    public Range plus(Range other) {
        return new Range(mid + other.mid - Math.hypot(mid - low, other.mid - other.low), mid + other.mid,
                mid + other.mid + Math.hypot(high - mid, other.high - other.mid));
    }

    /** The value whose ends may lie in any order, or inside the middle. */
    public static Range around(double a, double mid, double b) {
        return new Range(Math.min(mid, Math.min(a, b)), mid, Math.max(mid, Math.max(a, b)));
    }

    public boolean isExact() {
        return low == high;
    }

    /**
     * A result of independent inputs: each in turn is set to its ends with the others in the middle, and what the result changes by up and
     * down is joined by the root of the sum of squares (JCGM 100:2008, 5.1.2, from memory).
     */
    public static Range of(ToDoubleFunction<double[]> result, Range... inputs) {
        double[] at = new double[inputs.length];
        for (int i = 0; i < at.length; i++) {
            at[i] = inputs[i].mid;
        }
        double mid = result.applyAsDouble(at);
        double down = 0;
        double up = 0;
        for (int i = 0; i < at.length; i++) {
            double low = with(result, at, i, inputs[i].low) - mid;
            double high = with(result, at, i, inputs[i].high) - mid;
            down = Math.hypot(down, Math.max(0, -Math.min(low, high)));
            up = Math.hypot(up, Math.max(0, Math.max(low, high)));
        }
        return new Range(mid - down, mid, mid + up);
    }

    private static double with(ToDoubleFunction<double[]> result, double[] at, int input, double value) {
        double kept = at[input];
        at[input] = value;
        double changed = result.applyAsDouble(at);
        at[input] = kept;
        return changed;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Range that && Double.compare(low, that.low) == 0 && Double.compare(mid, that.mid) == 0
                && Double.compare(high, that.high) == 0;
    }

    @Override
    public int hashCode() {
        return (Double.hashCode(low) * 31 + Double.hashCode(mid)) * 31 + Double.hashCode(high);
    }
}
