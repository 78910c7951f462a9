package courseworthy.course.extract;

import courseworthy.course.Track;

/**
 * The places near a track, as cells of a grid: every place within the given distance is in it, and some up to three cells farther.
 */
public final class Corridor {

    /** Cells in the width of the corridor on one side. */
    private static final int CELLS = 2;
    /** Least cell, m: a corridor of few metres needs no finer grid. */
    private static final double LEAST_CELL = 25;
    /** Metres in a degree of latitude: shortest, at the equator (WGS84). */
    private static final double DEGREE = 110_574;
    /** Latitude beyond which meridians are taken to run no closer, degrees. */
    private static final double POLAR = 85;
    private static final double E7 = 1e7;

    private final double metres;
    private final int cellHeight;
    private final int cellWidth;
    private final long columns;
    private final LongSet cells = new LongSet();
    private long lastPlace = -1;
    private int south = Integer.MAX_VALUE;
    private int north = Integer.MIN_VALUE;
    private int west = Integer.MAX_VALUE;
    private int east = Integer.MIN_VALUE;

    private Corridor(double metres, double farthestFromEquator) {
        this.metres = metres;
        double cell = Math.max(LEAST_CELL, metres / CELLS);
        cellHeight = (int) Math.ceil(cell / DEGREE * E7);
        cellWidth = (int) Math.ceil(cell / (DEGREE * cosine(farthestFromEquator)) * E7);
        columns = (3_600_000_000L + cellWidth - 1) / cellWidth;
    }

    /**
     * The places near a track.
     *
     * @param metres how far a place may lie from the track, above 0
     */
    public static Corridor around(Track track, double metres) {
        if (!(metres > 0 && metres <= 20_000)) {
            throw new IllegalArgumentException("a corridor of " + metres + " m");
        }
        double farthest = 0;
        for (Track.TrackPiece piece : track.pieces()) {
            for (double lat : piece.lat()) {
                farthest = Math.max(farthest, Math.abs(lat));
            }
        }
        Corridor corridor = new Corridor(metres, farthest);
        for (Track.TrackPiece piece : track.pieces()) {
            corridor.add(piece.lat(), piece.lon());
        }
        return corridor;
    }

    private static double cosine(double latitude) {
        return Math.cos(Math.toRadians(Math.min(POLAR, Math.abs(latitude))));
    }

    private void add(double[] lat, double[] lon) {
        for (int i = 0; i < lat.length; i++) {
            if (i > 0) {
                between(lat[i - 1], lon[i - 1], lat[i], lon[i]);
            }
            place(lat[i], lon[i]);
        }
    }

    /** Marks places along a step at most a cell apart; the short way round where it crosses the 180th meridian. */
    private void between(double lat1, double lon1, double lat2, double lon2) {
        double north = lat2 - lat1;
        double east = lon2 - lon1;
        east -= Math.rint(east / 360) * 360;
        int steps = (int) Math.ceil(Math.max(Math.abs(north) * E7 / cellHeight, Math.abs(east) * E7 / cellWidth));
        for (int i = 1; i < steps; i++) {
            double lon = lon1 + east * i / steps;
            place(lat1 + north * i / steps, lon - Math.rint(lon / 360) * 360);
        }
    }

    /** Marks all cells within the distance of a place, and one more on each side for what lies between two places. */
    private void place(double lat, double lon) {
        long cell = row(e7(lat)) * columns + column(e7(lon));
        if (cell == lastPlace) {
            return;
        }
        lastPlace = cell;
        int reach = 1 + (int) Math.ceil(metres / DEGREE * E7 / cellHeight);
        int wide = 1 + (int) Math.ceil(metres / (DEGREE * cosine(Math.abs(lat) + 0.2)) * E7 / cellWidth);
        int row = row(e7(lat));
        long column = column(e7(lon));
        for (int up = -reach; up <= reach; up++) {
            for (int right = -wide; right <= wide; right++) {
                cells.add((row + up) * columns + Math.floorMod(column + right, columns));
            }
        }
        south = Math.min(south, e7(lat) - (reach + 2) * cellHeight);
        north = Math.max(north, e7(lat) + (reach + 2) * cellHeight);
        long margin = (wide + 2L) * cellWidth;
        boolean round = e7(lon) - margin < -1_800_000_000L || e7(lon) + margin > 1_800_000_000L;
        west = round ? Integer.MIN_VALUE : (int) Math.min(west, e7(lon) - margin);
        east = round ? Integer.MAX_VALUE : (int) Math.max(east, e7(lon) + margin);
    }

    private static int e7(double degrees) {
        return (int) Math.rint(degrees * E7);
    }

    private int row(int latitude) {
        return (latitude + 900_000_000) / cellHeight;
    }

    private long column(int longitude) {
        return (longitude + 1_800_000_000L) / cellWidth;
    }

    /** Whether a place lies near the track. */
    public boolean contains(double latitude, double longitude) {
        return containsE7(e7(latitude), e7(longitude));
    }

    /** Whether a place lies near the track; coordinates in units of 10<sup>-7</sup> degree, as maps have them. */
    boolean containsE7(int latitude, int longitude) {
        return latitude >= south && latitude <= north && longitude >= west && longitude <= east
                && cells.contains(row(latitude) * columns + Math.min(column(longitude), columns - 1));
    }

    /** How far a place may lie from the track, m. */
    public double metres() {
        return metres;
    }

    /** Whether some place of an area may lie near the track. */
    boolean mayTouch(Bounds area) {
        boolean round = area.west() > area.east() || west == Integer.MIN_VALUE;
        return area.south() <= north / E7 && area.north() >= south / E7 && (round || area.west() <= east / E7 && area.east() >= west / E7);
    }

    /** Number of cells of the grid, each of a quarter of {@link #metres} squared. */
    int cells() {
        return cells.size();
    }
}
