package courseworthy.report.picture;

import java.util.List;
import java.util.Objects;

/**
 * Bars from zero, one below the other.
 *
 * @param labelHeading what the labels are, where the same is shown as a table
 * @param valueHeading what the values are
 */
public record BarChart(String labelHeading, String valueHeading, List<Bar> bars) implements Picture {

    public BarChart {
        Objects.requireNonNull(labelHeading);
        Objects.requireNonNull(valueHeading);
        bars = List.copyOf(bars);
    }

    @Override
    public <T> T accept(PictureVisitor<T> visitor) {
        return visitor.barChart(this);
    }
}
