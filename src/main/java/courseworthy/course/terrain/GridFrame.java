package courseworthy.course.terrain;

/**
 * Where the heights of a tile lie: rows from north to south, columns from west to east, evenly spaced in WGS84 degrees.
 *
 * @param north   latitude of the first row's heights, degrees
 * @param west    longitude of the first column's heights, degrees
 * @param rowStep degrees of latitude between rows, above 0
 * @param columnStep degrees of longitude between columns, above 0
 * @param rows    at least 2
 * @param columns at least 2
 */
record GridFrame(double north, double west, double rowStep, double columnStep, int rows, int columns) {

    /** Tiles that do not share their edges leave one step between them: each reaches half a step beyond its outermost heights. */
    private static final double REACH = 0.5 + 1e-6;
    /** Metres to a degree of latitude: a nautical mile, 1852 m, was set as its sixtieth part. */
    private static final double METRES_PER_DEGREE = 60 * 1852.0;

    /** Rows from the first, with a fraction. */
    double row(double latitude) {
        return (north - latitude) / rowStep;
    }

    /** Columns from the first, with a fraction. */
    double column(double longitude) {
        return (longitude - west) / columnStep;
    }

    boolean covers(double latitude, double longitude) {
        double row = row(latitude);
        double column = column(longitude);
        return row >= -REACH && row <= rows - 1 + REACH && column >= -REACH && column <= columns - 1 + REACH;
    }

    /** Distance between rows, m. */
    double spacing() {
        return rowStep * METRES_PER_DEGREE;
    }
}
