package courseworthy.course.matching;

import java.util.Arrays;

/**
 * Finds the positions of a network near a place: a grid of cells, each a run of a sorted array. Columns are counted row by row, so that
 * cells are about square at every latitude.
 */
final class CandidateIndex {

    private static final int POSITION_BITS = 24;
    private static final int COLUMN_BITS = 20;
    /** Least cell, m: 2<sup>20</sup> of them go round the equator. */
    private static final double LEAST_CELL = 50;

    private final NetworkPositions positions;
    private final double rowHeight;
    private final double cell;
    /** Row, column and position of each. */
    private final long[] keys;
    private int[] found = new int[64];
    private double[] distances = new double[64];
    private int size;

    /** @param cell m: about the radius of the searches to come */
    CandidateIndex(NetworkPositions positions, double cell) {
        this.positions = positions;
        this.cell = Math.max(LEAST_CELL, cell);
        // The shortest degree of latitude, at the equator (WGS84).
        this.rowHeight = this.cell / LocalPlane.northScale(0);
        keys = new long[positions.size()];
        for (int i = 0; i < keys.length; i++) {
            int row = row(positions.lat(i));
            keys[i] = key(row, column(row, positions.lon(i))) | i;
        }
        Arrays.sort(keys);
    }

    private int row(double lat) {
        return (int) ((lat + 90) / rowHeight);
    }

    private double columnWidth(int row) {
        return cell / LocalPlane.eastScale((row + 0.5) * rowHeight - 90);
    }

    private int column(int row, double lon) {
        return (int) ((lon + 180) / columnWidth(row));
    }

    private static long key(int row, int column) {
        return ((long) row << COLUMN_BITS | column) << POSITION_BITS;
    }

    /**
     * Finds what lies within a radius.
     *
     * @param most how many to find: the nearest
     * @return how many were found; {@link #found} has them
     */
    int search(double lat, double lon, double radius, int most) {
        size = 0;
        double north = LocalPlane.northScale(lat);
        double east = LocalPlane.eastScale(lat);
        int last = row(lat + radius / north);
        for (int row = row(lat - radius / north); row <= last; row++) {
            double width = radius / east * 1.01;
            search(row, lon - width, lon + width, lat, lon, radius);
        }
        if (size > most) {
            keepNearest(most);
        }
        return size;
    }

    private void search(int row, double west, double eastern, double lat, double lon, double radius) {
        if (west < -180) {
            searchRun(row, west + 360, 180, lat, lon, radius);
        } else if (eastern > 180) {
            searchRun(row, -180, eastern - 360, lat, lon, radius);
        }
        searchRun(row, Math.max(-180, west), Math.min(180, eastern), lat, lon, radius);
    }

    private void searchRun(int row, double west, double eastern, double lat, double lon, double radius) {
        long to = key(row, column(row, eastern) + 1);
        int i = Arrays.binarySearch(keys, key(row, column(row, west)));
        double north = LocalPlane.northScale(lat);
        double east = LocalPlane.eastScale(lat);
        for (i = i < 0 ? -i - 1 : i; i < keys.length && keys[i] < to; i++) {
            int position = (int) (keys[i] & (1L << POSITION_BITS) - 1);
            double x = LocalPlane.east(positions.lon(position), lon) * east;
            double y = (lat - positions.lat(position)) * north;
            double square = x * x + y * y;
            if (square <= radius * radius) {
                add(position, square);
            }
        }
    }

    private void add(int position, double square) {
        if (size == found.length) {
            found = Arrays.copyOf(found, size * 2);
            distances = Arrays.copyOf(distances, size * 2);
        }
        found[size] = position;
        distances[size++] = square;
    }

    private void keepNearest(int most) {
        double[] sorted = Arrays.copyOf(distances, size);
        Arrays.sort(sorted);
        double limit = sorted[most - 1];
        int kept = 0;
        for (int i = 0; i < size && kept < most; i++) {
            if (distances[i] <= limit) {
                found[kept++] = found[i];
            }
        }
        size = kept;
    }

    int found(int i) {
        return found[i];
    }
}
