package courseworthy.course.matching;

import courseworthy.course.Track;
import courseworthy.course.extract.MapWay;
import java.util.Arrays;

/**
 * The ways that a piece of track follows one after another, with the places along the track at which they change: a change is put where
 * the track, moved by its estimated error, is nearest to the junction.
 */
final class WaySequence {

    private final Track.TrackPiece piece;
    private MapWay[] ways = new MapWay[64];
    private double[] starts = new double[64];
    private int size;

    WaySequence(Track.TrackPiece piece) {
        this.piece = piece;
    }

    /** Adds the ways of some of the samples of a trellis. */
    void add(Trellis trellis, int[] path, int from, int to) {
        for (int sample = from; sample < to; sample++) {
            boolean off = path[sample] == trellis.off(sample);
            int link = off ? -1 : trellis.directed(sample, path[sample]) >> 1;
            MapWay way = off ? null : trellis.network.way(link);
            if (sample == 0) {
                enter(way, trellis.samples.at(0));
                continue;
            }
            boolean wasOff = path[sample - 1] == trellis.off(sample - 1);
            if (!off && !wasOff && pass(trellis, path, sample - 1)) {
                continue;
            }
            enter(way, (trellis.samples.at(sample - 1) + trellis.samples.at(sample)) / 2);
        }
    }

    /** Enters the links between two states on the network; false where they are not joined. */
    private boolean pass(Trellis trellis, int[] path, int sample) {
        int from = trellis.directed(sample, path[sample]);
        int to = trellis.directed(sample + 1, path[sample + 1]);
        int here = trellis.position(sample, path[sample]);
        int there = trellis.position(sample + 1, path[sample + 1]);
        if (from == (to ^ 1) && here == there || from == to && ((from & 1) == 0 ? there >= here : there <= here)) {
            return true;
        }
        TransitionDistances.Reach reach = trellis.distances.from(from);
        int found = reach.indexOf(to);
        if (found < 0) {
            return false;
        }
        int[] chain = reach.chain(found);
        double remaining = Math.max(0, trellis.remaining(sample, path[sample]) - ahead(trellis, sample, path[sample]));
        double total = remaining + reach.distance()[found] + Math.max(0, trellis.network.length(to >> 1) - trellis.remaining(sample + 1, path[sample + 1])
                + ahead(trellis, sample + 1, path[sample + 1]));
        int before = from;
        for (int i : chain) {
            double share = total > 0 ? (remaining + reach.distance()[i]) / total : 0.5;
            enter(trellis.network.way(reach.link()[i] >> 1), passage(trellis, path, sample, before, Math.min(1, share)));
            before = reach.link()[i];
        }
        return true;
    }

    /** Metres by which a sample lies farther along its link, in the direction of travel, than the position that its state stands for. */
    private static double ahead(Trellis trellis, int sample, int state) {
        double drawn = drawn(trellis, sample, state);
        return (trellis.directed(sample, state) & 1) == 0 ? drawn : -drawn;
    }

    /** The same in the direction in which the way was drawn. */
    private static double drawn(Trellis trellis, int sample, int state) {
        double most = trellis.positions.cell(trellis.directed(sample, state) >> 1) / 2;
        return Math.max(-most, Math.min(most, trellis.along(sample, state)));
    }

    /** Where the track passes the end of a link, m along the track. */
    private double passage(Trellis trellis, int[] path, int sample, int directed, double share) {
        TrackSamples samples = trellis.samples;
        double step = samples.at(sample + 1) - samples.at(sample);
        // The chords of a sparse track cut corners, so that the nearest place means little.
        if (step > TransitionModel.SPARSE) {
            return samples.at(sample) + share * step;
        }
        int vertex = trellis.network.lastVertex(directed);
        double[] before = error(trellis, sample, path[sample]);
        double[] after = error(trellis, sample + 1, path[sample + 1]);
        double east = before[0] + share * (after[0] - before[0]);
        double north = before[1] + share * (after[1] - before[1]);
        double lat = trellis.network.lat(vertex);
        double lon = trellis.network.lon(vertex) + east / LocalPlane.eastScale(lat);
        return nearest(lat + north / LocalPlane.northScale(lat), lon, samples.at(sample) - step / 2, samples.at(sample + 1) + step / 2);
    }

    /** Metres east and north by which a sample lies off its way; what the spacing of positions adds is left out. */
    private static double[] error(Trellis trellis, int sample, int state) {
        double[] unit = trellis.positions.direction(trellis.position(sample, state));
        double ahead = drawn(trellis, sample, state);
        return new double[] {trellis.east(sample, state) - ahead * unit[0], trellis.north(sample, state) - ahead * unit[1]};
    }

    private double nearest(double lat, double lon, double from, double to) {
        double[] distance = piece.distance();
        int i = Arrays.binarySearch(distance, from);
        i = Math.max(0, i < 0 ? -i - 2 : i);
        double best = Double.POSITIVE_INFINITY;
        double found = from;
        double eastScale = LocalPlane.eastScale(lat);
        double northScale = LocalPlane.northScale(lat);
        for (; i + 1 < piece.size() && distance[i] < to; i++) {
            double x = LocalPlane.east(lon, piece.lon()[i]) * eastScale;
            double y = (piece.lat()[i] - lat) * northScale;
            double dx = LocalPlane.east(piece.lon()[i], piece.lon()[i + 1]) * eastScale;
            double dy = (piece.lat()[i + 1] - piece.lat()[i]) * northScale;
            double length = distance[i + 1] - distance[i];
            double share = -(x * dx + y * dy) / (dx * dx + dy * dy);
            share = Math.max((from - distance[i]) / length, Math.min((to - distance[i]) / length, share));
            share = Math.max(0, Math.min(1, share));
            double square = (x + share * dx) * (x + share * dx) + (y + share * dy) * (y + share * dy);
            if (square < best) {
                best = square;
                found = distance[i] + share * length;
            }
        }
        return found;
    }

    private void enter(MapWay way, double at) {
        if (size > 0 && ways[size - 1] == way) {
            return;
        }
        if (size == ways.length) {
            ways = Arrays.copyOf(ways, size * 2);
            starts = Arrays.copyOf(starts, size * 2);
        }
        ways[size] = way;
        starts[size] = size == 0 ? at : Math.max(at, starts[size - 1]);
        size++;
    }

    int size() {
        return size;
    }

    /** Null off the network. */
    MapWay way(int i) {
        return ways[i];
    }

    /** Metres along the track at which a way begins. */
    double start(int i) {
        return starts[i];
    }

    /** Metres along the track at which a way ends. */
    double end(int i) {
        return i + 1 < size ? starts[i + 1] : piece.distance()[piece.size() - 1];
    }
}
