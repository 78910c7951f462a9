package courseworthy.course.terrain;

/**
 * A rectangle of heights out of a tile.
 *
 * @param frame       of the whole tile
 * @param firstRow    of the tile, 0-based
 * @param firstColumn of the tile, 0-based
 * @param rows        in the rectangle, at least 1
 * @param columns     in the rectangle, at least 1
 * @param heights     m, row after row; NaN where the tile has none
 */
record HeightWindow(GridFrame frame, int firstRow, int firstColumn, int rows, int columns, float[] heights) {

    /** The height at a place within the rectangle, m, between the four around it (bilinear); NaN where one that counts is missing. */
    double at(double latitude, double longitude) {
        double row = within(frame.row(latitude) - firstRow, rows);
        double column = within(frame.column(longitude) - firstColumn, columns);
        int top = (int) row;
        int left = (int) column;
        double down = row - top;
        double right = column - left;
        return weighted(top, left, (1 - down) * (1 - right)) + weighted(top, left + 1, (1 - down) * right)
                + weighted(top + 1, left, down * (1 - right)) + weighted(top + 1, left + 1, down * right);
    }

    private static double within(double at, int size) {
        return Math.max(0, Math.min(at, size - 1));
    }

    private double weighted(int row, int column, double weight) {
        return weight == 0 ? 0 : weight * heights[row * columns + column];
    }
}
