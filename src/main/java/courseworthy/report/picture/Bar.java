package courseworthy.report.picture;

import java.util.Objects;

/**
 * One bar of a chart.
 *
 * @param value   its length, not negative, in a unit that all bars of a chart share
 * @param written the value with its unit
 */
public record Bar(String label, double value, String written) {

    public Bar {
        Objects.requireNonNull(label);
        Objects.requireNonNull(written);
        if (!(value >= 0)) {
            throw new IllegalArgumentException("a bar of " + value);
        }
    }
}
