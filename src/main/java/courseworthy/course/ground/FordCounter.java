package courseworthy.course.ground;

import courseworthy.course.GeodesicDistance;
import courseworthy.course.Track;
import courseworthy.course.extract.MapExtract;
import courseworthy.course.extract.MapNode;
import courseworthy.course.matching.MatchedPiece;
import courseworthy.course.matching.MatchedTrack;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Counts fords that are mapped as points of the ways that a track follows. */
final class FordCounter {

    /** A ford farther from the track is not on it, m (judgement: a little more than a track is off by under trees). */
    private static final double NEAR = 25;

    private final Track track;
    private final Map<Long, MapNode> fords = new HashMap<>();

    private FordCounter(Track track, MapExtract extract) {
        this.track = track;
        for (MapNode node : extract.nodes()) {
            if (!node.tag("ford").isEmpty() && !node.tag("ford").equals("no")) {
                fords.put(node.id(), node);
            }
        }
    }

    /** The pieces with the fords on them. */
    static List<GroundPiece> counted(Track track, MapExtract extract, MatchedTrack matched, List<GroundPiece> pieces) {
        FordCounter counter = new FordCounter(track, extract);
        if (counter.fords.isEmpty()) {
            return pieces;
        }
        List<GroundPiece> out = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < pieces.size(); i++) {
            int found = 0;
            for (double at : counter.along(matched.pieces().get(i))) {
                // A ford where two pieces meet belongs to both ways.
                found += at - last > NEAR ? 1 : 0;
                last = at;
            }
            out.add(found == 0 ? pieces.get(i) : pieces.get(i).crossed(found));
        }
        return out;
    }

    /** Where the fords of a piece lie, m along the track, in order. */
    private List<Double> along(MatchedPiece piece) {
        List<Double> out = new ArrayList<>();
        for (long id : piece.sure() ? piece.way().nodes() : new long[0]) {
            MapNode ford = fords.get(id);
            double at = ford == null ? Double.NaN : nearest(ford, piece.from() - 1, piece.to() + 1);
            if (!Double.isNaN(at)) {
                out.add(at);
            }
        }
        out.sort(null);
        return out;
    }

    /** Where a part of the track passes a ford, m along it; NaN where it does not. */
    private double nearest(MapNode ford, double from, double to) {
        double best = NEAR;
        double at = Double.NaN;
        for (Track.TrackPiece piece : track.pieces()) {
            for (int i = 0; i + 1 < piece.size(); i++) {
                double start = Math.max(from, piece.distance()[i]);
                double end = Math.min(to, piece.distance()[i + 1]);
                for (double d = start; d <= end; d = d < end ? Math.min(end, d + NEAR / 5) : Double.POSITIVE_INFINITY) {
                    double part = (d - piece.distance()[i]) / (piece.distance()[i + 1] - piece.distance()[i]);
                    double off = GeodesicDistance.metres(between(piece.lat(), i, part), between(piece.lon(), i, part), ford.latitude(), ford.longitude());
                    if (off < best) {
                        best = off;
                        at = d;
                    }
                }
            }
        }
        return at;
    }

    private static double between(double[] values, int i, double part) {
        return values[i] + (values[i + 1] - values[i]) * part;
    }
}
