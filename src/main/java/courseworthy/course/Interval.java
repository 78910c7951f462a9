package courseworthy.course;

/**
 * The ends between which a measured figure lies.
 *
 * @param low  not above {@code high}
 * @param high of the figure's own unit
 */
public record Interval(double low, double high) {

    public Interval {
        if (!(low <= high)) {
            throw new IllegalArgumentException(low + " " + high);
        }
    }
}
