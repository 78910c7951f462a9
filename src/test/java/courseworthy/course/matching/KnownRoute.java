package courseworthy.course.matching;

import courseworthy.course.Track;
import courseworthy.course.extract.MapWay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * A line whose way is known at every step.
 *
 * @param lat degrees
 * @param lon degrees
 * @param way that the step to the next point is on; one fewer than points
 */
record KnownRoute(String name, double[] lat, double[] lon, MapWay[] way) {

    /**
     * A track of a route.
     *
     * @param at m along the track of each point of the route
     */
    record Recording(Track track, double[] at) {
    }

    /** The same line with points at an even spacing and where it bends. */
    KnownRoute dense(double spacing) {
        List<double[]> points = new ArrayList<>();
        List<MapWay> ways = new ArrayList<>();
        for (int i = 0; i < way.length; i++) {
            int steps = (int) Math.max(1, Math.round(step(i) / spacing));
            for (int j = 0; j < steps; j++) {
                double share = (double) j / steps;
                points.add(new double[] {lat[i] + share * (lat[i + 1] - lat[i]), lon[i] + share * (lon[i + 1] - lon[i])});
                ways.add(way[i]);
            }
        }
        points.add(new double[] {lat[way.length], lon[way.length]});
        return new KnownRoute(name, column(points, 0), column(points, 1), ways.toArray(new MapWay[0]));
    }

    private static double[] column(List<double[]> points, int column) {
        return points.stream().mapToDouble(p -> p[column]).toArray();
    }

    /** Length of the step from a point to the next, m. */
    double step(int point) {
        return LocalPlane.metres(lat[point], lon[point], lat[point + 1], lon[point + 1]);
    }

    double length() {
        return distances(lat, lon)[lat.length - 1];
    }

    private static double[] distances(double[] lat, double[] lon) {
        double[] out = new double[lat.length];
        for (int i = 1; i < out.length; i++) {
            out[i] = out[i - 1] + Math.max(1e-3, LocalPlane.metres(lat[i - 1], lon[i - 1], lat[i], lon[i]));
        }
        return out;
    }

    /** A track of one piece through places in degrees. */
    static Track track(double[] lat, double[] lon) {
        double[] none = new double[lat.length];
        Arrays.fill(none, Double.NaN);
        return new Track(List.of(new Track.TrackPiece(lat, lon, distances(lat, lon), none)), Track.Elevation.MISSING);
    }

    /** The line as it is. */
    Recording clean() {
        return new Recording(track(lat, lon), distances(lat, lon));
    }

    /**
     * The line as a receiver records it: errors of a Gauss-Markov process.
     *
     * @param sigma       standard deviation per axis, m
     * @param correlation m over which errors lose all but 1/e of what they share; 0 for independent errors
     */
    Recording noisy(double sigma, double correlation, long seed) {
        Random random = new Random(seed);
        double[] at = distances(lat, lon);
        double[] newLat = lat.clone();
        double[] newLon = lon.clone();
        double east = random.nextGaussian();
        double north = random.nextGaussian();
        for (int i = 0; i < lat.length; i++) {
            if (i > 0) {
                double kept = correlation == 0 ? 0 : Math.exp(-(at[i] - at[i - 1]) / correlation);
                east = kept * east + Math.sqrt(1 - kept * kept) * random.nextGaussian();
                north = kept * north + Math.sqrt(1 - kept * kept) * random.nextGaussian();
            }
            newLat[i] += sigma * north / LocalPlane.northScale(lat[i]);
            newLon[i] += sigma * east / LocalPlane.eastScale(lat[i]);
        }
        return new Recording(track(newLat, newLon), distances(newLat, newLon));
    }

    /** Only some of the points, the first and the last among them; what is between lies on the chord in proportion. */
    Recording thinned(double spacing) {
        double[] at = distances(lat, lon);
        List<Integer> kept = new ArrayList<>();
        for (int i = 0; i < lat.length; i++) {
            if (at[i] >= spacing * kept.size() || i == lat.length - 1) {
                kept.add(i);
            }
        }
        Track track = track(kept.stream().mapToDouble(i -> lat[i]).toArray(), kept.stream().mapToDouble(i -> lon[i]).toArray());
        double[] chord = track.pieces().get(0).distance();
        double[] out = new double[at.length];
        for (int k = 0; k + 1 < kept.size(); k++) {
            int from = kept.get(k);
            int to = kept.get(k + 1);
            for (int i = from; i <= to; i++) {
                out[i] = chord[k] + (chord[k + 1] - chord[k]) * (at[i] - at[from]) / (at[to] - at[from]);
            }
        }
        return new Recording(track, out);
    }
}
