package courseworthy.render.svg;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * The values at which an axis is marked: multiples of 1, 2 or 5 and a power of ten.
 *
 * @param decimals how many decimals they need, all the same
 */
record AxisTicks(List<Double> values, int decimals) {

    private static final int[] STEPS = {1, 2, 5};

    AxisTicks {
        values = List.copyOf(values);
    }

    /** Marks between two values, the smallest step that needs no more than a number of them. */
    static AxisTicks within(double low, double high, int most) {
        return of(low, high, most, false);
    }

    /** Marks that enclose two values: the first at or below the low one, the last at or above the high one. At least three are asked for, since zero may lie between. */
    static AxisTicks around(double low, double high, int most) {
        return of(low, high, most, true);
    }

    private static AxisTicks of(double low, double high, int most, boolean enclosing) {
        if (!(low <= high) || most < (enclosing ? 3 : 2)) {
            throw new IllegalArgumentException(most + " marks from " + low + " to " + high);
        }
        double span = Math.max(high - low, Math.max(Math.abs(high), 1) * 1e-6);
        int exponent = (int) Math.floor(Math.log10(span / most));
        while (true) {
            for (int step : STEPS) {
                BigDecimal unit = BigDecimal.valueOf(step).scaleByPowerOfTen(exponent);
                long first = multiple(low, unit, !enclosing);
                long last = multiple(high, unit, enclosing);
                if (enclosing && first == last) {
                    last++;
                }
                if (last - first < most) {
                    return new AxisTicks(multiples(unit, first, last), Math.max(0, -exponent));
                }
            }
            exponent++;
        }
    }

    /** The number of whole steps to a value, up or down. A value that is a step but for its last binary digit is that step. */
    private static long multiple(double value, BigDecimal unit, boolean up) {
        double steps = value / unit.doubleValue();
        double nearest = Math.rint(steps);
        if (Math.abs(steps - nearest) < 1e-9 * Math.max(1, Math.abs(steps))) {
            return (long) nearest;
        }
        return (long) (up ? Math.ceil(steps) : Math.floor(steps));
    }

    private static List<Double> multiples(BigDecimal unit, long first, long last) {
        List<Double> out = new ArrayList<>();
        for (long i = first; i <= last; i++) {
            out.add(unit.multiply(BigDecimal.valueOf(i)).doubleValue());
        }
        return out;
    }

    /** Marks of a logarithmic axis between two values above zero: 1, 2 and 5 of each power of ten, and 3 and 7 where there is room for them. */
    static AxisTicks logarithmic(double low, double high, int most) {
        if (!(low > 0 && high > low)) {
            throw new IllegalArgumentException("a logarithmic axis from " + low + " to " + high);
        }
        List<int[]> choices = List.of(new int[] {1, 2, 3, 5, 7}, STEPS, new int[] {1, 3}, new int[] {1});
        for (int[] digits : choices) {
            List<Double> values = powers(low, high, digits);
            if (values.size() <= most) {
                return new AxisTicks(values, Math.max(0, (int) -Math.floor(Math.log10(low) + 1e-9)));
            }
        }
        return new AxisTicks(List.of(low, high), 0);
    }

    private static List<Double> powers(double low, double high, int[] digits) {
        List<Double> out = new ArrayList<>();
        for (int exponent = (int) Math.floor(Math.log10(low)); exponent <= Math.ceil(Math.log10(high)); exponent++) {
            for (int digit : digits) {
                double value = BigDecimal.valueOf(digit).scaleByPowerOfTen(exponent).doubleValue();
                if (value >= low * (1 - 1e-9) && value <= high * (1 + 1e-9)) {
                    out.add(value);
                }
            }
        }
        return out;
    }

    double first() {
        return values.get(0);
    }

    double last() {
        return values.get(values.size() - 1);
    }
}
