package courseworthy.course.extract;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Makes the map under docs/examples/maps, of an invented wood in the open sea, and a track round it as a device would have recorded it, without
 * elevation. The ways of the loop follow each other as {@link #LOOP} has them; others branch off, run beside or cut across. The same bytes each time.
 * Run {@link #main} to write the files anew.
 */
final class ExampleMap {

    static final String MAP = "sorrel-wood.osm";
    static final String TRACK = "sorrel-wood.gpx";

    private static final double LATITUDE = 49.6200;
    private static final double LONGITUDE = -8.3100;
    /** Metres of a degree there, by the usual series for WGS84 (from memory; good to a metre). */
    private static final double NORTH = 111_223;
    private static final double EAST = 72_260;
    private static final int SHAPE = 20_000;

    /**
     * A way of the loop.
     *
     * @param metres  how long it is
     * @param spacing m between its nodes
     * @param sway    how far it swings to either side of the line, m
     * @param wave    m from one swing to the next
     * @param tags    as "key=value", parted by a semicolon
     */
    record Plan(double metres, double spacing, double sway, double wave, String tags) {
    }

    static final List<Plan> LOOP = List.of(
            new Plan(600, 30, 0, 1, "highway=residential;name=Mill Lane;surface=asphalt;lit=yes;sidewalk=both"),
            new Plan(1100, 45, 4, 420, "highway=unclassified;name=Sorrel Road;surface=asphalt;smoothness=good"),
            new Plan(1500, 30, 5, 310, "highway=track;name=Long Ride;tracktype=grade2;surface=gravel;smoothness=bad;width=3.5"),
            new Plan(1250, 25, 6, 240, "highway=track;tracktype=grade3"),
            new Plan(250, 20, 3, 120, "highway=track;name=Otter Ford;tracktype=grade4;surface=ground"),
            new Plan(1050, 12, 8, 95, "highway=path;name=Root Trail;surface=ground;smoothness=very_bad;mtb:scale=1;trail_visibility=good;width=1"),
            new Plan(550, 8, 9, 60, "highway=path;name=Badger Rake;surface=ground;smoothness=horrible;mtb:scale=2;mtb:scale:uphill=3;width=0.6"),
            new Plan(850, 14, 7, 110, "highway=path"),
            new Plan(120, 20, 0, 1, "highway=footway;name=Weir Bridge;surface=wood;bridge=yes;layer=1;bicycle=dismount;width=1.5"),
            new Plan(750, 25, 5, 200, "highway=track;tracktype=grade4;surface=grass"),
            new Plan(1350, 35, 3, 500, "highway=cycleway;surface=compacted;smoothness=intermediate;width=2.5"),
            new Plan(1000, 30, 4, 350, "highway=track;tracktype=grade1;surface=fine_gravel"),
            new Plan(900, 30, 6, 260, "highway=track"),
            new Plan(330, 30, 0, 1, "highway=service;service=driveway"),
            new Plan(400, 30, 0, 1, "highway=residential;name=Church Street;surface=paving_stones;lit=yes"));

    private final StringBuilder nodes = new StringBuilder();
    private final StringBuilder ways = new StringBuilder();
    private final List<double[]> places = new ArrayList<>();
    private final List<double[]> ridden = new ArrayList<>();
    private final double[][] line = line();
    private int wayCount;

    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args.length > 0 ? args[0] : "docs/examples/maps"));
        for (Map.Entry<String, String> file : files().entrySet()) {
            Files.writeString(folder.resolve(file.getKey()), file.getValue(), StandardCharsets.UTF_8);
        }
    }

    /** The texts of the files, by their names. */
    static Map<String, String> files() {
        ExampleMap map = new ExampleMap();
        map.draw();
        Map<String, String> out = new LinkedHashMap<>();
        out.put(MAP, map.osm());
        out.put(TRACK, map.gpx());
        return out;
    }

    static double length() {
        return LOOP.stream().mapToDouble(Plan::metres).sum();
    }

    /** A closed line with a few large bends, m east and north of its start, and the way along it. */
    private static double[][] line() {
        double[] x = new double[SHAPE + 1];
        double[] y = new double[SHAPE + 1];
        double[] along = new double[SHAPE + 1];
        for (int i = 0; i <= SHAPE; i++) {
            double turn = 2 * StrictMath.PI * i / SHAPE;
            double radius = 1 + 0.18 * StrictMath.sin(2 * turn + 0.4) + 0.12 * StrictMath.sin(3 * turn + 1.1) + 0.05 * StrictMath.sin(7 * turn);
            x[i] = radius * StrictMath.sin(turn);
            y[i] = radius * StrictMath.cos(turn);
            along[i] = i == 0 ? 0 : along[i - 1] + length(x[i] - x[i - 1], y[i] - y[i - 1]);
        }
        double scale = length() / along[SHAPE];
        for (int i = 0; i <= SHAPE; i++) {
            x[i] *= scale;
            y[i] *= scale;
            along[i] *= scale;
        }
        return new double[][] {x, y, along};
    }

    private static double length(double x, double y) {
        return StrictMath.sqrt(x * x + y * y);
    }

    /** A place on the line, or so many metres to the right of it: east, north. */
    private double[] place(double at, double right) {
        int low = 0;
        int high = SHAPE;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (line[2][middle] <= at) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double part = (at - line[2][low]) / (line[2][high] - line[2][low]);
        double x = line[0][high] - line[0][low];
        double y = line[1][high] - line[1][low];
        double length = length(x, y);
        return new double[] {line[0][low] + part * x + right * y / length, line[1][low] + part * y - right * x / length};
    }

    private void draw() {
        double at = 0;
        List<Integer> junctions = new ArrayList<>();
        junctions.add(node(place(0, 0), ""));
        ridden.add(places.get(0));
        for (int i = 0; i < LOOP.size(); i++) {
            boolean last = i == LOOP.size() - 1;
            junctions.add(loopWay(LOOP.get(i), at, junctions.get(i), last ? junctions.get(0) : -1));
            at += LOOP.get(i).metres();
        }
        branches(junctions);
        beside(junctions);
    }

    /** Draws one way of the loop, and gives the number of its last node. */
    private int loopWay(Plan plan, double from, int first, int last) {
        List<Integer> of = new ArrayList<>(List.of(first));
        int steps = (int) StrictMath.round(plan.metres() / plan.spacing());
        for (int i = 1; i <= steps; i++) {
            double along = plan.metres() * i / steps;
            double swing = plan.sway() * StrictMath.sin(2 * StrictMath.PI * along / plan.wave());
            double ends = StrictMath.min(1, StrictMath.min(along, plan.metres() - along) / 30);
            boolean closes = i == steps && last >= 0;
            String tags = plan.tags().contains("Ford") && i == steps / 2 ? "ford=yes" : plan.tags().contains("Long Ride") && i == 2 ? "barrier=gate;bicycle=yes" : "";
            int node = closes ? last : node(place(from + along, swing * ends), tags);
            of.add(node);
            ridden.add(places.get(node));
        }
        way(of, plan.tags());
        return of.get(of.size() - 1);
    }

    private static final String[] BRANCHES = {"highway=residential;name=Weavers Row;surface=asphalt;lit=yes",
            "highway=tertiary;name=Sorrel Road;surface=asphalt;lanes=2", "highway=track;tracktype=grade3;surface=gravel", "highway=track",
            "highway=path;foot=yes;bicycle=no", "highway=track;tracktype=grade5;surface=mud", "highway=path;mtb:scale=3;surface=rock",
            "highway=footway;surface=gravel", "highway=path;surface=ground", "highway=track;tracktype=grade2;surface=compacted",
            "highway=unclassified;surface=asphalt", "highway=secondary;name=Coast Road;ref=B 77;surface=asphalt;maxspeed=60",
            "highway=track;tracktype=grade4", "highway=service", "highway=residential;surface=asphalt"};

    /** A way that leaves the loop at each junction, to the left and to the right in turn. */
    private void branches(List<Integer> junctions) {
        double at = 0;
        for (int i = 0; i < LOOP.size(); i++) {
            List<Integer> of = new ArrayList<>(List.of(junctions.get(i)));
            double side = i % 2 == 0 ? 1 : -1;
            int steps = 8 + 2 * (i % 4);
            for (int k = 1; k <= steps; k++) {
                of.add(node(place(at + 6 * k * (i % 3 - 1) + (at < 200 ? 50 : 0) * k / steps, side * 35 * k), ""));
            }
            way(of, BRANCHES[i]);
            at += LOOP.get(i).metres();
        }
    }

    /** A main road beside the cycleway, a trail beside the root trail, and steps that cut a corner. */
    private void beside(List<Integer> junctions) {
        double cycleway = start("cycleway");
        List<Integer> road = new ArrayList<>();
        for (int k = -6; k <= 33; k++) {
            road.add(node(place(cycleway + k * 50, 14), k == 0 ? "highway=crossing;crossing=unmarked" : ""));
        }
        way(road, "highway=secondary;name=Coast Road;ref=B 77;surface=asphalt;smoothness=excellent;maxspeed=80");
        way(List.of(junctions.get(10), road.get(6)), "highway=footway;footway=crossing;surface=asphalt");
        double trail = start("Root Trail");
        List<Integer> line = new ArrayList<>();
        line.add(junctions.get(5));
        for (int k = 1; k < 14; k++) {
            line.add(node(place(trail + k * 75, -22 + 5 * StrictMath.sin(k)), ""));
        }
        line.add(junctions.get(6));
        way(line, "highway=path;informal=yes;surface=ground;mtb:scale=0");
        double path = start("Badger Rake");
        way(List.of(junctions.get(6), node(place(path + 120, 40), ""), node(place(path + 240, 55), "")), "highway=steps;surface=wood;step_count=64");
    }

    private double start(String part) {
        double at = 0;
        for (Plan plan : LOOP) {
            if (plan.tags().contains(part)) {
                return at;
            }
            at += plan.metres();
        }
        throw new IllegalArgumentException(part);
    }

    private int node(double[] place, String tags) {
        places.add(place);
        nodes.append("  <node id=\"").append(places.size()).append("\" ").append(degrees(place, 7)).append(tags.isEmpty() ? "/>\n" : ">\n");
        if (!tags.isEmpty()) {
            nodes.append(tags(tags)).append("  </node>\n");
        }
        return places.size() - 1;
    }

    private void way(List<Integer> of, String tags) {
        ways.append("  <way id=\"").append(++wayCount).append("\">\n");
        for (int node : of) {
            ways.append("    <nd ref=\"").append(node + 1).append("\"/>\n");
        }
        ways.append(tags(tags)).append("  </way>\n");
    }

    private static String tags(String tags) {
        StringBuilder out = new StringBuilder();
        for (String tag : tags.split(";")) {
            String[] parts = tag.split("=");
            out.append("    <tag k=\"").append(parts[0]).append("\" v=\"").append(parts[1]).append("\"/>\n");
        }
        return out.toString();
    }

    private static String degrees(double[] place, int digits) {
        return "lat=\"" + decimal(LATITUDE + place[1] / NORTH, digits) + "\" lon=\"" + decimal(LONGITUDE + place[0] / EAST, digits) + "\"";
    }

    private static String decimal(double value, int digits) {
        return java.math.BigDecimal.valueOf(value).setScale(digits, java.math.RoundingMode.HALF_EVEN).toPlainString();
    }

    private String osm() {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<osm version=\"0.6\" generator=\"Courseworthy\" copyright=\"Courseworthy: an invented place\">\n"
                + "  <bounds minlat=\"49.59\" minlon=\"-8.36\" maxlat=\"49.65\" maxlon=\"-8.26\"/>\n" + nodes + ways + "</osm>\n";
    }

    /** A point every 10 m, off by errors of 2 m a side that drift over 100 m. */
    private String gpx() {
        StringBuilder out = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<gpx version=\"1.1\" creator=\"Courseworthy\" "
                + "xmlns=\"http://www.topografix.com/GPX/1/1\">\n<trk><name>Sorrel Wood</name><trkseg>\n");
        Random random = new Random(41);
        double keeps = StrictMath.exp(-0.1);
        double fresh = 2 * StrictMath.sqrt(1 - keeps * keeps);
        double[] error = new double[2];
        double due = 0;
        for (int i = 1; i < ridden.size(); i++) {
            double[] a = ridden.get(i - 1);
            double[] b = ridden.get(i);
            double length = length(b[0] - a[0], b[1] - a[1]);
            for (; due <= length; due += 10) {
                for (int k = 0; k < 2; k++) {
                    error[k] = keeps * error[k] + fresh * random.nextGaussian();
                }
                double[] here = {a[0] + due / length * (b[0] - a[0]) + error[0], a[1] + due / length * (b[1] - a[1]) + error[1]};
                out.append("<trkpt ").append(degrees(here, 6)).append("/>\n");
            }
            due -= length;
        }
        return out.append("</trkseg></trk>\n</gpx>\n").toString();
    }
}
