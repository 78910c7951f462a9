package courseworthy.ride;

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
}
