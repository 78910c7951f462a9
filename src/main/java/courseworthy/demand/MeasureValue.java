package courseworthy.demand;

/**
 * A measure's value with its range, in ticks or positions (see {@link MeasureScale}).
 *
 * @param low  low end
 * @param mid  the value rules test
 * @param high high end
 */
public record MeasureValue(long low, long mid, long high) {

    public MeasureValue {
        if (low > mid || mid > high) {
            throw new IllegalArgumentException(low + " " + mid + " " + high);
        }
    }

    /** A value without a range. */
    public static MeasureValue exact(long value) {
        return new MeasureValue(value, value, value);
    }

    /** A value whose ends may come in any order or inside the middle. */
    public static MeasureValue around(long low, long mid, long high) {
        return new MeasureValue(Math.min(low, mid), mid, Math.max(high, mid));
    }
}
