package courseworthy.course.extract;

import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** Reads from map files what lies near a track. */
public final class ExtractReader implements PrimitiveBlock.Sink {

    /** Most nodes near a track. */
    static final int MOST_NODES = 8_000_000;

    private final Corridor corridor;
    private final NodeTable table = new NodeTable(MOST_NODES);
    private final List<WayDraft> ways = new ArrayList<>();
    private final List<MapNode> nodes = new ArrayList<>();
    private final List<ExtractFile> files = new ArrayList<>();

    private ExtractReader(Corridor corridor) {
        this.corridor = corridor;
    }

    /**
     * Reads files.
     *
     * @param paths    .osm.pbf, .osm or .osm.gz, as the user typed them
     * @param corridor what is near
     * @param progress told how far the reading has come
     * @return what lies in the corridor, or null with faults that say why not
     */
    public static MapExtract read(List<Path> paths, Corridor corridor, Faults faults, Progress progress) {
        ExtractReader reader = new ExtractReader(corridor);
        for (Path path : paths) {
            faults.reads(path);
            try (InputStream in = new BufferedInputStream(Files.newInputStream(path), 1 << 16)) {
                reader.pbf(in, path.toString());
            } catch (RefusedExtract e) {
                faults.add(e.fault(path.toString()));
            } catch (IOException e) {
                faults.add(path.toString(), 0, "", "a file that cannot be read", RefusedExtract.WANTED, "Check the path and its permissions.");
            }
        }
        return faults.stop() ? null : reader.result();
    }

    private void pbf(InputStream in, String shown) throws IOException {
        PbfReader pbf = new PbfReader(in);
        PrimitiveBlock block = new PrimitiveBlock(corridor);
        while (pbf.next()) {
            if (pbf.type().equals("OSMData")) {
                block.read(pbf.raw(), pbf.rawSize(), this);
            }
        }
        files.add(new ExtractFile(shown, "", new Bounds(-90, -180, 90, 180), true));
    }

    @Override
    public void node(long id, int latitude, int longitude, Map<String, String> tags) {
        table.add(id, latitude, longitude);
        for (String key : tags.keySet()) {
            if (MapTags.THAT_KEEP_A_NODE.contains(key)) {
                nodes.add(new MapNode(id, latitude / 1e7, longitude / 1e7, tags));
                return;
            }
        }
    }

    @Override
    public boolean wants(long[] nodes, int count) {
        for (int i = 0; i < count; i++) {
            if (table.contains(nodes[i])) {
                return true;
            }
        }
        return false;
    }

    @Override
    public void way(WayDraft way) {
        ways.add(way);
    }

    private MapExtract result() {
        List<MapWay> out = new ArrayList<>();
        for (WayDraft way : ways) {
            clip(way, out);
        }
        out.sort(Comparator.comparingLong(MapWay::id));
        nodes.sort(Comparator.comparingLong(MapNode::id));
        return new MapExtract(out, nodes, files);
    }

    /** Runs of nodes whose place is known. */
    private void clip(WayDraft way, List<MapWay> out) {
        int from = 0;
        for (int i = 0; i <= way.nodes().length; i++) {
            if (i == way.nodes().length || !table.contains(way.nodes()[i])) {
                if (i - from > 1) {
                    out.add(run(way, from, i));
                }
                from = i + 1;
            }
        }
    }

    private MapWay run(WayDraft way, int from, int to) {
        long[] ids = java.util.Arrays.copyOfRange(way.nodes(), from, to);
        double[] latitude = new double[ids.length];
        double[] longitude = new double[ids.length];
        for (int i = 0; i < ids.length; i++) {
            int slot = table.find(ids[i]);
            latitude[i] = table.latitude(slot) / 1e7;
            longitude[i] = table.longitude(slot) / 1e7;
        }
        return new MapWay(way.id(), ids, latitude, longitude, way.tags());
    }
}
