package courseworthy.report.picture;

import java.util.List;

/**
 * Time that other values of decisions save or cost against what is recommended, the most saved first.
 *
 * @param rows those whose time is known
 */
public record WorthChart(List<WorthBar> rows) implements Picture {

    public WorthChart {
        rows = List.copyOf(rows);
    }

    /**
     * One alternative.
     *
     * @param topic        the decision
     * @param recommended  its value in words
     * @param alternative  the other value in words
     * @param savedSeconds above 0 where the alternative is faster
     * @param close        whether its range spans 0, so that which is faster is not known
     * @param breakEven    at what odds of a stop both are equal, in a few words for the row's end; empty where there is none
     */
    public record WorthBar(String topic, String recommended, String alternative, ValueRange savedSeconds, boolean close, String breakEven) {
    }

    @Override
    public <T> T accept(PictureVisitor<T> visitor) {
        return visitor.worthChart(this);
    }
}
