package courseworthy.course.extract;

/**
 * An area between two parallels and two meridians, edges included, in degrees. Where west is greater than east it spans the 180th meridian.
 *
 * @param south least latitude
 * @param west  longitude of the western edge
 * @param north greatest latitude
 * @param east  longitude of the eastern edge
 */
public record Bounds(double south, double west, double north, double east) {

    /** An area that holds no place. */
    public static final Bounds EMPTY = new Bounds(Double.POSITIVE_INFINITY, 0, Double.NEGATIVE_INFINITY, 0);

    /** Whether a place lies in it. */
    public boolean contains(double latitude, double longitude) {
        boolean between = west <= east ? longitude >= west && longitude <= east : longitude >= west || longitude <= east;
        return between && latitude >= south && latitude <= north;
    }

    /** Whether no place lies in it. */
    public boolean isEmpty() {
        return !(south <= north);
    }
}
