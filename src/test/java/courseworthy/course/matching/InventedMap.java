package courseworthy.course.matching;

import courseworthy.course.Track;
import courseworthy.course.extract.Bounds;
import courseworthy.course.extract.ExtractFile;
import courseworthy.course.extract.MapExtract;
import courseworthy.course.extract.MapWay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A map drawn by hand on a plane, in metres east and north of a place in the open sea. Places with the same coordinates are one node unless said. */
final class InventedMap {

    private static final double LAT = 44;
    private static final double LON = -30;

    private final List<MapWay> ways = new ArrayList<>();
    private final Map<String, Long> nodes = new HashMap<>();

    /**
     * Adds a way.
     *
     * @param tags   such as "highway=track surface=gravel"
     * @param places metres east and north of each node
     */
    InventedMap way(long id, String tags, double... places) {
        return wayAt("", id, tags, places);
    }

    /** Adds a way whose nodes are those of a level alone: where it crosses ways of other levels they share no node. */
    InventedMap wayAt(String level, long id, String tags, double... places) {
        int n = places.length / 2;
        long[] ids = new long[n];
        double[] lat = new double[n];
        double[] lon = new double[n];
        for (int i = 0; i < n; i++) {
            double[] at = degrees(places[2 * i], places[2 * i + 1]);
            ids[i] = nodes.computeIfAbsent(level + places[2 * i] + " " + places[2 * i + 1], key -> (long) nodes.size() + 1);
            lat[i] = at[0];
            lon[i] = at[1];
        }
        Map<String, String> said = new HashMap<>();
        for (String tag : tags.split(" ")) {
            said.put(tag.split("=")[0], tag.split("=")[1]);
        }
        ways.add(new MapWay(id, ids, lat, lon, said));
        return this;
    }

    private static double[] degrees(double east, double north) {
        return new double[] {LAT + north / LocalPlane.northScale(LAT), LON + east / LocalPlane.eastScale(LAT)};
    }

    MapExtract extract() {
        return new MapExtract(ways, List.of(), List.of(new ExtractFile("invented.osm", "", new Bounds(-90, -180, 90, 180), false)));
    }

    /** Matches a track of one piece with a point every 5 m through places in m. */
    MatchedTrack match(double... places) {
        return MapMatcher.match(track(places), extract());
    }

    static Track track(double[]... pieces) {
        List<Track.TrackPiece> out = new ArrayList<>();
        double from = 0;
        for (double[] places : pieces) {
            Track.TrackPiece piece = piece(from, places);
            out.add(piece);
            from = piece.distance()[piece.size() - 1];
        }
        return new Track(out, Track.Elevation.MISSING);
    }

    private static Track.TrackPiece piece(double from, double[] places) {
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i + 3 < places.length; i += 2) {
            double east = places[i + 2] - places[i];
            double north = places[i + 3] - places[i + 1];
            int steps = (int) Math.max(1, Math.round(Math.hypot(east, north) / 5));
            for (int j = i == 0 ? 0 : 1; j <= steps; j++) {
                points.add(degrees(places[i] + east * j / steps, places[i + 1] + north * j / steps));
            }
        }
        double[] lat = points.stream().mapToDouble(p -> p[0]).toArray();
        double[] lon = points.stream().mapToDouble(p -> p[1]).toArray();
        double[] distance = new double[lat.length];
        distance[0] = from;
        for (int i = 1; i < lat.length; i++) {
            distance[i] = distance[i - 1] + LocalPlane.metres(lat[i - 1], lon[i - 1], lat[i], lon[i]);
        }
        double[] none = new double[lat.length];
        Arrays.fill(none, Double.NaN);
        return new Track.TrackPiece(lat, lon, distance, none);
    }

    /** The ways of a match in order with the metres at which each begins, such as {@code "1@0 2@150 -@300"}; rounded to 10 m. */
    static String ways(MatchedTrack matched) {
        StringBuilder out = new StringBuilder();
        String before = "";
        for (MatchedPiece piece : matched.pieces()) {
            String way = piece.way() == null ? "-" : Long.toString(piece.way().id());
            if (!way.equals(before)) {
                out.append(out.isEmpty() ? "" : " ").append(way).append('@').append(Math.round(piece.from() / 10) * 10);
            }
            before = way;
        }
        return out.toString();
    }
}
