package courseworthy.course.matching;

import courseworthy.RealData;
import courseworthy.course.CourseReader;
import courseworthy.course.Track;
import courseworthy.course.extract.Corridor;
import courseworthy.course.extract.ExtractReader;
import courseworthy.course.extract.MapExtract;
import courseworthy.course.extract.MapWay;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Routes over mapped ways, known way by way, and the map near each ((c) OpenStreetMap contributors, ODbL 1.0). */
final class MappedRoutes {

    /** How far from a track the map is read, m. */
    private static final double CORRIDOR = 250;
    /** Metres between the points of a route. */
    private static final double SPACING = 5;

    private final Map<Long, MapWay> ways = new HashMap<>();
    private final RouteGenerator generator;
    private final Map<String, MapExtract> near = new HashMap<>();

    MappedRoutes() {
        // A line through the country: the corridor round it holds all of it.
        Track through = KnownRoute.track(new double[] {47.05, 47.27}, new double[] {9.55, 9.55});
        MapExtract all = read(Corridor.around(through, 20_000));
        all.ways().forEach(way -> ways.put(way.id(), way));
        generator = new RouteGenerator(all.ways());
    }

    static MapExtract read(Corridor corridor) {
        Faults faults = new Faults();
        MapExtract extract = ExtractReader.read(List.of(RealData.at("osm/liechtenstein-2022.osm.pbf")), corridor, faults, Progress.UNSEEN);
        if (extract == null) {
            throw new IllegalStateException(faults.faults().toString());
        }
        return extract;
    }

    /** A course joined from mapped ways, whose list of ways is the truth. */
    KnownRoute course(String name) throws IOException {
        Path file = RealData.at("tracks/" + name + ".gpx");
        Track.TrackPiece piece = CourseReader.read(file, name, null, new Faults()).track().pieces().get(0);
        MapWay[] way = new MapWay[piece.size() - 1];
        List<String> rows = Files.readAllLines(RealData.at("osm/" + name + ".ways.csv"));
        for (String row : rows.subList(1, rows.size())) {
            String[] cells = row.split(",", -1);
            for (int i = Integer.parseInt(cells[1]); i < Integer.parseInt(cells[2]); i++) {
                way[i] = ways.get(Long.parseLong(cells[0]));
            }
        }
        return new KnownRoute(name, piece.lat(), piece.lon(), way).dense(SPACING);
    }

    /** A route of 5 to 12 km that favours tracks and paths more or less; the same for the same seed. */
    KnownRoute generated(long seed) {
        return generator.route(seed, 5000, 12_000).dense(SPACING);
    }

    /** Matches a recording of a route on the map, and adds how well to a score. */
    void match(KnownRoute route, KnownRoute.Recording recording, Set<Long> removed, MatchScore score) {
        MapExtract extract = near.computeIfAbsent(route.name(), key -> read(Corridor.around(route.clean().track(), CORRIDOR)));
        MapExtract left = removed.isEmpty() ? extract
                : new MapExtract(extract.ways().stream().filter(way -> !removed.contains(way.id())).toList(), extract.nodes(), extract.files());
        score.add(route, recording.at(), MapMatcher.match(recording.track(), left), removed);
    }
}
