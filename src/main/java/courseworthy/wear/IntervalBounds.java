package courseworthy.wear;

/**
 * How much of something an interval is: the least after which the work may be due, and the most after which it is overdue.
 *
 * @param low  s, m or days
 * @param high the same where a manufacturer states one figure
 */
public record IntervalBounds(double low, double high) {

    public IntervalBounds {
        if (!(low > 0 && low <= high)) {
            throw new IllegalArgumentException(low + " " + high);
        }
    }

    static IntervalBounds exact(double value) {
        return new IntervalBounds(value, value);
    }
}
