package courseworthy.demand;

/**
 * A measure's value with its range, in ticks or positions (see {@link Scale}).
 *
 * @param low  low end
 * @param mid  the value rules test
 * @param high high end
 */
public record Value(long low, long mid, long high) {

    public Value {
        if (low > mid || mid > high) {
            throw new IllegalArgumentException(low + " " + mid + " " + high);
        }
    }

    /** A value without a range. */
    public static Value exact(long value) {
        return new Value(value, value, value);
    }

    /** A value whose ends may come in any order or inside the middle. */
    public static Value around(long low, long mid, long high) {
        return new Value(Math.min(low, mid), mid, Math.max(high, mid));
    }
}
