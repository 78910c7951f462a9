package courseworthy.report.picture;

/** Heights along a course. */
public final class ElevationProfile implements Picture {
    private final double[] distances;
    private final double[] heights;
    private final boolean compact;

    /**
     * @param distances from the start, m; never falling
     * @param heights   m, one for each distance; NaN where it is not known
     * @param compact   to be drawn small, without axes
     */
    public ElevationProfile(double[] distances, double[] heights, boolean compact) {
        if (distances.length == 0 || distances.length != heights.length) {
            throw new IllegalArgumentException(distances.length + " distances and " + heights.length + " heights");
        }
        this.distances = distances.clone();
        this.heights = heights.clone();
        this.compact = compact;
    }

    public int size() {
        return distances.length;
    }

    /** From the start, m. */
    public double distance(int point) {
        return distances[point];
    }

    /** In m; NaN where it is not known. */
    public double height(int point) {
        return heights[point];
    }

    /** From the start to the end, m. */
    public double length() {
        return distances[distances.length - 1];
    }

    /** True where it is to be drawn small, without axes. */
    public boolean compact() {
        return compact;
    }

    @Override
    public <T> T accept(PictureVisitor<T> visitor) {
        return visitor.elevationProfile(this);
    }
}
