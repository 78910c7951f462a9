package courseworthy.ride;

import courseworthy.RealData;
import crosby.binary.BinaryParser;
import crosby.binary.Osmformat;
import crosby.binary.file.BlockInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Mapped ways that are graded for mountain bikes ((c) OpenStreetMap contributors, ODbL 1.0), as lines on a plane. */
final class MappedTrails extends BinaryParser {

    private static final double EARTH = 6_371_008.8;

    /**
     * A way.
     *
     * @param grade {@code mtb:scale}, 0 to 6
     * @param east  m
     * @param north m
     * @param nodes that it runs through
     */
    record Trail(double grade, double[] east, double[] north, List<Long> nodes) {

        double length() {
            double sum = 0;
            for (int i = 1; i < east.length; i++) {
                sum += Math.hypot(east[i] - east[i - 1], north[i] - north[i - 1]);
            }
            return sum;
        }
    }

    private final Map<Long, double[]> places = new HashMap<>();
    private final List<Osmformat.Way> graded = new ArrayList<>();
    private final List<Double> grades = new ArrayList<>();

    private MappedTrails() {
    }

    static List<Trail> of(String file) throws IOException {
        MappedTrails read = new MappedTrails();
        try (InputStream in = Files.newInputStream(RealData.at(file))) {
            new BlockInputStream(in, read).process();
        }
        List<Trail> out = new ArrayList<>();
        for (int i = 0; i < read.graded.size(); i++) {
            out.add(read.trail(read.graded.get(i), read.grades.get(i)));
        }
        return out;
    }

    private Trail trail(Osmformat.Way way, double grade) {
        List<Long> nodes = new ArrayList<>();
        long node = 0;
        for (long more : way.getRefsList()) {
            node += more;
            nodes.add(node);
        }
        double[] east = new double[nodes.size()];
        double[] north = new double[nodes.size()];
        for (int i = 0; i < east.length; i++) {
            double[] at = places.get(nodes.get(i));
            north[i] = Math.toRadians(at[0]) * EARTH;
            east[i] = Math.toRadians(at[1]) * EARTH * Math.cos(Math.toRadians(47.15));
        }
        return new Trail(grade, east, north, nodes);
    }

    @Override
    protected void parseDense(Osmformat.DenseNodes nodes) {
        long id = 0;
        long lat = 0;
        long lon = 0;
        for (int i = 0; i < nodes.getIdCount(); i++) {
            id += nodes.getId(i);
            lat += nodes.getLat(i);
            lon += nodes.getLon(i);
            places.put(id, new double[] {parseLat(lat), parseLon(lon)});
        }
    }

    @Override
    protected void parseNodes(List<Osmformat.Node> nodes) {
        for (Osmformat.Node node : nodes) {
            places.put(node.getId(), new double[] {parseLat(node.getLat()), parseLon(node.getLon())});
        }
    }

    @Override
    protected void parseWays(List<Osmformat.Way> ways) {
        for (Osmformat.Way way : ways) {
            for (int i = 0; i < way.getKeysCount(); i++) {
                String value = getStringById(way.getVals(i));
                if (getStringById(way.getKeys(i)).equals("mtb:scale") && value.matches("[0-6][+-]?")) {
                    graded.add(way);
                    grades.add((double) (value.charAt(0) - '0'));
                }
            }
        }
    }

    @Override
    protected void parseRelations(List<Osmformat.Relation> relations) {
        // Not asked for.
    }

    @Override
    protected void parse(Osmformat.HeaderBlock header) {
        // Not asked for.
    }

    @Override
    public void complete() {
        // Ways are looked at once all nodes are known.
    }
}
