package courseworthy.report.picture;

/**
 * A figure with the ends between which it should lie; the unit is in the name of what holds it.
 *
 * @param low  low end
 * @param mid  likely value
 * @param high high end
 */
public record ValueRange(double low, double mid, double high) {

    public ValueRange {
        if (!(low <= mid && mid <= high)) {
            throw new IllegalArgumentException(low + " " + mid + " " + high);
        }
    }

    /** True where nothing is uncertain. */
    public boolean isExact() {
        return low == high;
    }
}
