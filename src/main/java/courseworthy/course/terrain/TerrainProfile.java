package courseworthy.course.terrain;

import courseworthy.course.Interval;
import courseworthy.course.Track;
import courseworthy.problem.Faults;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Heights of the ground along a track, from tiles: looked up every {@link #STEP}, carried straight over bridges and through tunnels, and
 * averaged over {@link #WINDOW}.
 *
 * @param pieces  the track's pieces with points added between its own, and the ground's height at each, m; NaN where no tile has one
 * @param covered share of the length that has a height, 0 to 1
 */
public record TerrainProfile(List<Track.TrackPiece> pieces, double covered) {

    /** Points are added so that they lie no further apart, m: a third of the spacing of the finest tiles in common use. */
    static final double STEP = 10;
    /**
     * Heights are averaged over this length, m. Tiles of 30 m are off by 2 m against their neighbours (90 %), which is a gradient of 4 % over
     * 30 m and of 1.2 % over 100 m (Copernicus DEM product specification, and arithmetic): no gradient is taken from less.
     */
    static final double WINDOW = 100;

    /**
     * Looks the heights up.
     *
     * @param bridged stretches of bridges and tunnels, m along the track, where the ground's height is not the way's
     * @return null with a fault where a tile cannot be read
     */
    public static TerrainProfile along(Track track, ElevationTiles tiles, List<Interval> bridged, Faults faults) {
        List<Track.TrackPiece> pieces = new ArrayList<>();
        double length = 0;
        double known = 0;
        for (Track.TrackPiece piece : track.pieces()) {
            Track.TrackPiece dense = dense(piece);
            double[] heights = tiles.heights(dense.lat(), dense.lon(), faults);
            if (heights == null) {
                return null;
            }
            for (int i = 1; i < heights.length; i++) {
                double step = dense.distance()[i] - dense.distance()[i - 1];
                length += step;
                known += Double.isNaN(heights[i]) || Double.isNaN(heights[i - 1]) ? 0 : step;
            }
            bridge(dense.distance(), heights, bridged);
            pieces.add(new Track.TrackPiece(dense.lat(), dense.lon(), dense.distance(), averaged(dense.distance(), heights)));
        }
        return new TerrainProfile(List.copyOf(pieces), length == 0 ? 0 : known / length);
    }

    /** The points of a piece with others between them. Few metres apart, a straight line in degrees is one on the ground. */
    private static Track.TrackPiece dense(Track.TrackPiece piece) {
        int size = 1;
        for (int i = 1; i < piece.size(); i++) {
            size += parts(piece, i);
        }
        double[] lat = new double[size];
        double[] lon = new double[size];
        double[] distance = new double[size];
        int at = 0;
        for (int i = 1; i < piece.size(); i++) {
            int parts = parts(piece, i);
            double turn = piece.lon()[i] - piece.lon()[i - 1];
            double east = turn > 180 ? turn - 360 : turn < -180 ? turn + 360 : turn;
            for (int k = 0; k < parts; k++) {
                double part = (double) k / parts;
                lat[at] = piece.lat()[i - 1] + part * (piece.lat()[i] - piece.lat()[i - 1]);
                lon[at] = wrapped(piece.lon()[i - 1] + part * east);
                distance[at] = piece.distance()[i - 1] + part * (piece.distance()[i] - piece.distance()[i - 1]);
                at++;
            }
        }
        int last = piece.size() - 1;
        lat[at] = piece.lat()[last];
        lon[at] = piece.lon()[last];
        distance[at] = piece.distance()[last];
        return new Track.TrackPiece(lat, lon, distance, new double[0]);
    }

    private static int parts(Track.TrackPiece piece, int i) {
        return (int) Math.max(1, Math.ceil((piece.distance()[i] - piece.distance()[i - 1]) / STEP));
    }

    private static double wrapped(double longitude) {
        return longitude > 180 ? longitude - 360 : longitude < -180 ? longitude + 360 : longitude;
    }

    /** Straight lines between the heights at both ends of each bridge and tunnel. */
    private static void bridge(double[] distance, double[] heights, List<Interval> bridged) {
        for (Interval interval : bridged) {
            int from = index(distance, interval.low());
            int to = Math.min(index(distance, interval.high()) + 1, distance.length - 1);
            if (distance[to] < interval.low() || distance[from] > interval.high() || to - from < 2) {
                continue;
            }
            for (int i = from + 1; i < to; i++) {
                double part = (distance[i] - distance[from]) / (distance[to] - distance[from]);
                heights[i] = heights[from] + part * (heights[to] - heights[from]);
            }
        }
    }

    /** The last point at or before a distance, or the first. */
    private static int index(double[] distance, double at) {
        int found = Arrays.binarySearch(distance, at);
        return found >= 0 ? found : Math.max(0, -found - 2);
    }

    /** The mean of what is known within half the window to either side, as far to one as to the other, so that ends and slopes stay. */
    private static double[] averaged(double[] distance, double[] heights) {
        double[] out = new double[heights.length];
        double last = distance[distance.length - 1];
        for (int i = 0; i < out.length; i++) {
            double half = Math.min(WINDOW / 2, Math.min(distance[i] - distance[0], last - distance[i]));
            out[i] = Double.isNaN(heights[i]) ? Double.NaN : mean(distance, heights, i, half);
        }
        return out;
    }

    private static double mean(double[] distance, double[] heights, int middle, double half) {
        double sum = 0;
        double length = 0;
        for (int i = middle; i > 0 && distance[middle] - distance[i] < half && !Double.isNaN(heights[i - 1]); i--) {
            double step = Math.min(distance[i] - distance[i - 1], half - (distance[middle] - distance[i]));
            double slope = (heights[i - 1] - heights[i]) / (distance[i] - distance[i - 1]);
            sum += step * (heights[i] + slope * step / 2);
            length += step;
        }
        for (int i = middle; i < heights.length - 1 && distance[i] - distance[middle] < half && !Double.isNaN(heights[i + 1]); i++) {
            double step = Math.min(distance[i + 1] - distance[i], half - (distance[i] - distance[middle]));
            double slope = (heights[i + 1] - heights[i]) / (distance[i + 1] - distance[i]);
            sum += step * (heights[i] + slope * step / 2);
            length += step;
        }
        return length == 0 ? heights[middle] : sum / length;
    }

    /**
     * How far a track's own heights stray from the ground's, a constant difference aside: 90 % of its points lie within this, m. NaN where
     * nothing can be compared.
     *
     * @param track with cleaned heights
     */
    public double strays(Track track) {
        List<Double> differences = new ArrayList<>();
        for (int p = 0; p < pieces.size(); p++) {
            Track.TrackPiece own = track.pieces().get(p);
            Track.TrackPiece ground = pieces.get(p);
            for (int i = 0, k = 0; i < own.size(); i++) {
                while (ground.distance()[k] < own.distance()[i]) {
                    k++;
                }
                double difference = own.elevation()[i] - ground.elevation()[k];
                if (!Double.isNaN(difference)) {
                    differences.add(difference);
                }
            }
        }
        double[] all = differences.stream().mapToDouble(d -> d).sorted().toArray();
        if (all.length == 0) {
            return Double.NaN;
        }
        double middle = all[all.length / 2];
        double[] away = Arrays.stream(all).map(d -> Math.abs(d - middle)).sorted().toArray();
        return away[(int) Math.min(away.length - 1, Math.ceil(0.9 * away.length) - 1)];
    }
}
