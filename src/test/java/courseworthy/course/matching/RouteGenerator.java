package courseworthy.course.matching;

import courseworthy.course.extract.MapWay;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Random;
import java.util.function.ToDoubleFunction;

/**
 * Makes routes on a map whose ways are known: cheapest paths between nodes drawn by chance, each favouring tracks, paths and roads in another
 * measure. Works node by node, apart from the matcher's own network.
 */
final class RouteGenerator {

    private final Map<Long, List<Edge>> edges = new HashMap<>();
    private final List<Long> nodes = new ArrayList<>();

    private record Edge(MapWay way, int from, int to) {

        double length() {
            return LocalPlane.metres(way.latitude()[from], way.longitude()[from], way.latitude()[to], way.longitude()[to]);
        }

        long end() {
            return way.nodes()[to];
        }
    }

    private record Entry(long node, double cost) {
    }

    RouteGenerator(List<MapWay> ways) {
        for (MapWay way : ways) {
            if (way.tag("route").equals("ferry") || way.tag("highway").matches("motorway.*|trunk.*|steps")) {
                continue;
            }
            for (int i = 0; i + 1 < way.size(); i++) {
                edges.computeIfAbsent(way.nodes()[i], key -> new ArrayList<>()).add(new Edge(way, i, i + 1));
                edges.computeIfAbsent(way.nodes()[i + 1], key -> new ArrayList<>()).add(new Edge(way, i + 1, i));
            }
        }
        nodes.addAll(edges.keySet());
        nodes.sort(null);
    }

    /**
     * A route of some kilometres, the same for the same seed.
     *
     * @param least m
     * @param most  m
     */
    KnownRoute route(long seed, double least, double most) {
        Random random = new Random(seed);
        while (true) {
            double tracks = 0.3 + 0.5 * random.nextDouble();
            double paths = 0.4 + random.nextDouble();
            double roads = 0.8 + random.nextDouble();
            long start = nodes.get(random.nextInt(nodes.size()));
            long end = nodes.get(random.nextInt(nodes.size()));
            List<Edge> path = cheapest(start, end, way -> switch (way.tag("highway")) {
                case "track" -> tracks;
                case "path", "cycleway", "bridleway" -> paths;
                case "footway" -> paths + 0.3;
                default -> roads;
            });
            double length = path.stream().mapToDouble(Edge::length).sum();
            if (length >= least && length <= most) {
                return route("route " + seed, path);
            }
        }
    }

    /** Empty where there is none (Dijkstra 1959). */
    private List<Edge> cheapest(long start, long end, ToDoubleFunction<MapWay> price) {
        Map<Long, Double> best = new HashMap<>(Map.of(start, 0.0));
        Map<Long, Edge> last = new HashMap<>();
        PriorityQueue<Entry> queue = new PriorityQueue<>((a, b) -> Double.compare(a.cost(), b.cost()));
        queue.add(new Entry(start, 0));
        while (!queue.isEmpty() && queue.peek().node() != end) {
            Entry entry = queue.poll();
            if (entry.cost() > best.get(entry.node())) {
                continue;
            }
            for (Edge edge : edges.get(entry.node())) {
                double cost = entry.cost() + price.applyAsDouble(edge.way()) * edge.length();
                if (cost < best.getOrDefault(edge.end(), Double.POSITIVE_INFINITY)) {
                    best.put(edge.end(), cost);
                    last.put(edge.end(), edge);
                    queue.add(new Entry(edge.end(), cost));
                }
            }
        }
        List<Edge> path = new ArrayList<>();
        for (Edge edge = last.get(end); edge != null && !queue.isEmpty(); edge = edge.way().nodes()[edge.from()] == start ? null : last.get(edge.way().nodes()[edge.from()])) {
            path.add(edge);
        }
        Collections.reverse(path);
        return path;
    }

    private static KnownRoute route(String name, List<Edge> path) {
        double[] lat = new double[path.size() + 1];
        double[] lon = new double[path.size() + 1];
        MapWay[] ways = new MapWay[path.size()];
        for (int i = 0; i < ways.length; i++) {
            Edge edge = path.get(i);
            ways[i] = edge.way();
            lat[i] = edge.way().latitude()[edge.from()];
            lon[i] = edge.way().longitude()[edge.from()];
            lat[i + 1] = edge.way().latitude()[edge.to()];
            lon[i + 1] = edge.way().longitude()[edge.to()];
        }
        return new KnownRoute(name, lat, lon, ways);
    }
}
