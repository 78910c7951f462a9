package courseworthy.course.extract;

import crosby.binary.BinaryParser;
import crosby.binary.Osmformat;
import crosby.binary.file.BlockInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A whole PBF file as a library reads it (osmpbf): what our own reader is held against. */
final class MapLibrary extends BinaryParser {

    /** Latitude and longitude, degrees, by the ids of nodes. */
    final Map<Long, double[]> places = new HashMap<>();
    final Map<Long, Map<String, String>> tagsOfNodes = new TreeMap<>();
    final Map<Long, List<Long>> nodesOfWays = new TreeMap<>();
    final Map<Long, Map<String, String>> tagsOfWays = new HashMap<>();

    static MapLibrary of(Path file) throws IOException {
        MapLibrary read = new MapLibrary();
        try (InputStream in = Files.newInputStream(file)) {
            new BlockInputStream(in, read).process();
        }
        return read;
    }

    @Override
    protected void parseDense(Osmformat.DenseNodes nodes) {
        long id = 0;
        long lat = 0;
        long lon = 0;
        int at = 0;
        for (int i = 0; i < nodes.getIdCount(); i++) {
            id += nodes.getId(i);
            lat += nodes.getLat(i);
            lon += nodes.getLon(i);
            places.put(id, new double[] {parseLat(lat), parseLon(lon)});
            Map<String, String> tags = new HashMap<>();
            while (at < nodes.getKeysValsCount() && nodes.getKeysVals(at) != 0) {
                tags.put(getStringById(nodes.getKeysVals(at)), getStringById(nodes.getKeysVals(at + 1)));
                at += 2;
            }
            at++;
            tagsOfNodes.put(id, tags);
        }
    }

    @Override
    protected void parseNodes(List<Osmformat.Node> nodes) {
        for (Osmformat.Node node : nodes) {
            places.put(node.getId(), new double[] {parseLat(node.getLat()), parseLon(node.getLon())});
            tagsOfNodes.put(node.getId(), tags(node.getKeysList(), node.getValsList()));
        }
    }

    @Override
    protected void parseWays(List<Osmformat.Way> ways) {
        for (Osmformat.Way way : ways) {
            List<Long> nodes = new ArrayList<>();
            long node = 0;
            for (long step : way.getRefsList()) {
                node += step;
                nodes.add(node);
            }
            nodesOfWays.put(way.getId(), nodes);
            tagsOfWays.put(way.getId(), tags(way.getKeysList(), way.getValsList()));
        }
    }

    private Map<String, String> tags(List<Integer> keys, List<Integer> values) {
        Map<String, String> tags = new HashMap<>();
        for (int i = 0; i < keys.size(); i++) {
            tags.put(getStringById(keys.get(i)), getStringById(values.get(i)));
        }
        return tags;
    }

    @Override
    protected void parseRelations(List<Osmformat.Relation> relations) {
        // Routes and areas are not read.
    }

    @Override
    protected void parse(Osmformat.HeaderBlock header) {
        // What the header says is not compared.
    }

    @Override
    public void complete() {
        // Nothing is left to do at the end of the file.
    }
}
