package courseworthy.course.matching;

import courseworthy.course.extract.MapWay;
import java.util.Arrays;
import java.util.List;

/**
 * The ways of a map as a graph: links run between junctions, which are the ends of ways and the nodes that ways share. Ways that cross
 * without a shared node, as on a bridge, are not joined. A link is travelled in either direction: {@code 2 * link} is the direction in
 * which the way was drawn, {@code 2 * link + 1} the opposite one.
 */
final class RoadNetwork {

    /** Metres at the ends of a link that give its heading there: shorter steps are drawn too roughly. */
    private static final double HEADING = 8;

    private final List<MapWay> ways;
    private final long[] junctionNodes;
    private int links;
    private int[] way = new int[256];
    private int[] start = new int[256];
    private int[] end = new int[256];
    private int[] firstVertex = new int[257];
    private int vertices;
    private double[] lat = new double[1024];
    private double[] lon = new double[1024];
    private double[] along = new double[1024];
    private double[] heading;
    private int[] firstDeparture;
    private int[] departures;

    private RoadNetwork(List<MapWay> ways) {
        this.ways = ways;
        this.junctionNodes = junctions(ways);
    }

    static RoadNetwork of(List<MapWay> ways) {
        RoadNetwork network = new RoadNetwork(ways);
        for (int i = 0; i < ways.size(); i++) {
            network.add(i, ways.get(i));
        }
        network.collectDepartures();
        network.collectHeadings();
        return network;
    }

    private void collectHeadings() {
        heading = new double[2 * links];
        for (int link = 0; link < links; link++) {
            int first = firstVertex[link];
            int last = firstVertex[link + 1] - 1;
            int ahead = first + 1;
            while (ahead < last && along[ahead] < HEADING) {
                ahead++;
            }
            int back = last - 1;
            while (back > first && along[last] - along[back] < HEADING) {
                back--;
            }
            heading[2 * link] = heading(first, ahead);
            heading[2 * link + 1] = heading(last, back);
        }
    }

    private double heading(int from, int to) {
        return Math.atan2(LocalPlane.east(lon[from], lon[to]) * LocalPlane.eastScale(lat[from]), (lat[to] - lat[from]) * LocalPlane.northScale(lat[from]));
    }

    /** Cosine of the angle by which the direction of travel changes from the end of one link to the start of another; 1 straight on. */
    double straightness(int from, int to) {
        return -Math.cos(heading[from ^ 1] - heading[to]);
    }

    /** Sorted ids of the nodes that are ends or are passed more than once. */
    private static long[] junctions(List<MapWay> ways) {
        int size = 0;
        for (MapWay each : ways) {
            size += each.size() + 2;
        }
        long[] all = new long[size];
        int n = 0;
        for (MapWay each : ways) {
            long[] nodes = each.nodes();
            System.arraycopy(nodes, 0, all, n, nodes.length);
            n += nodes.length;
            // Counted twice, ends are junctions.
            all[n++] = nodes[0];
            all[n++] = nodes[nodes.length - 1];
        }
        Arrays.sort(all);
        int kept = 0;
        for (int i = 1; i < size; i++) {
            if (all[i] == all[i - 1] && (kept == 0 || all[kept - 1] != all[i])) {
                all[kept++] = all[i];
            }
        }
        return Arrays.copyOf(all, kept);
    }

    private void add(int index, MapWay each) {
        int from = Arrays.binarySearch(junctionNodes, each.nodes()[0]);
        open(each, 0);
        for (int i = 1; i < each.size(); i++) {
            if (each.nodes()[i] == each.nodes()[i - 1]) {
                continue;
            }
            vertex(each, i);
            int junction = Arrays.binarySearch(junctionNodes, each.nodes()[i]);
            if (junction >= 0) {
                close(index, from, junction);
                open(each, i);
                from = junction;
            }
        }
        vertices = firstVertex[links];
    }

    private void open(MapWay each, int node) {
        vertices = firstVertex[links];
        vertex(each, node);
    }

    private void vertex(MapWay each, int node) {
        if (vertices == lat.length) {
            lat = Arrays.copyOf(lat, vertices * 2);
            lon = Arrays.copyOf(lon, vertices * 2);
            along = Arrays.copyOf(along, vertices * 2);
        }
        lat[vertices] = each.latitude()[node];
        lon[vertices] = each.longitude()[node];
        along[vertices] = vertices == firstVertex[links] ? 0
                : along[vertices - 1] + LocalPlane.metres(lat[vertices - 1], lon[vertices - 1], lat[vertices], lon[vertices]);
        vertices++;
    }

    private void close(int index, int from, int to) {
        if (links == way.length) {
            way = Arrays.copyOf(way, links * 2);
            start = Arrays.copyOf(start, links * 2);
            end = Arrays.copyOf(end, links * 2);
            firstVertex = Arrays.copyOf(firstVertex, links * 2 + 1);
        }
        way[links] = index;
        start[links] = from;
        end[links] = to;
        links++;
        firstVertex[links] = vertices;
    }

    private void collectDepartures() {
        firstDeparture = new int[junctionNodes.length + 1];
        for (int link = 0; link < links; link++) {
            firstDeparture[start[link] + 1]++;
            firstDeparture[end[link] + 1]++;
        }
        for (int i = 0; i < junctionNodes.length; i++) {
            firstDeparture[i + 1] += firstDeparture[i];
        }
        departures = new int[2 * links];
        int[] next = Arrays.copyOf(firstDeparture, junctionNodes.length);
        for (int link = 0; link < links; link++) {
            departures[next[start[link]]++] = 2 * link;
            departures[next[end[link]]++] = 2 * link + 1;
        }
    }

    int links() {
        return links;
    }

    /** The way that a link is part of. */
    MapWay way(int link) {
        return ways.get(way[link]);
    }

    /** Number of the way that a link is part of, in the order of the map. */
    int wayIndex(int link) {
        return way[link];
    }

    /** Whether two directions of links are parts of one way. */
    boolean sameWay(int directed, int other) {
        return way(directed >> 1).id() == way(other >> 1).id();
    }

    /** Length in m. */
    double length(int link) {
        return along[firstVertex[link + 1] - 1];
    }

    /** The junction that a direction of a link leads to. */
    int target(int directed) {
        return (directed & 1) == 0 ? end[directed >> 1] : start[directed >> 1];
    }

    /** First of the directions of links that leave a junction. */
    int firstDeparture(int junction) {
        return firstDeparture[junction];
    }

    /** One after the last of the directions of links that leave a junction. */
    int endDeparture(int junction) {
        return firstDeparture[junction + 1];
    }

    /** A direction of a link, by its number among all departures. */
    int departure(int number) {
        return departures[number];
    }

    int firstVertex(int link) {
        return firstVertex[link];
    }

    int endVertex(int link) {
        return firstVertex[link + 1];
    }

    double lat(int vertex) {
        return lat[vertex];
    }

    double lon(int vertex) {
        return lon[vertex];
    }

    /** Metres from the start of the vertex's link. */
    double along(int vertex) {
        return along[vertex];
    }

    /** Vertex at the end of a direction of a link. */
    int lastVertex(int directed) {
        return (directed & 1) == 0 ? firstVertex[(directed >> 1) + 1] - 1 : firstVertex[directed >> 1];
    }
}
