package courseworthy.course.extract;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What has been read from map files so far, and what comes of it when all are read. */
final class ExtractContents {

    /**
     * Bounds on what is kept, for the whole and for each cell of the corridor, so that a file cannot fill the memory. Measured along a settled alpine
     * valley: 14 nodes, 25 units of ways and 0.2 nodes with tags a cell; the densest towns are taken to have some ten times as many.
     */
    private static final Allowance NODES = new Allowance(2_000_000, 100);
    private static final Allowance TAGGED = new Allowance(50_000, 20);
    private static final Allowance WAYS = new Allowance(2_000_000, 300);
    /** Units that a way counts beside its nodes, for its tags. */
    private static final int UNITS_OF_WAY = 32;

    /** How much is kept: so much, and so much for each cell. */
    private record Allowance(int whole, int cell) {
        int of(Corridor corridor) {
            return (int) Math.min(1 << 28, whole + (long) cell * corridor.cells());
        }
    }

    private static final double E7 = 1e7;

    private final NodeTable nodes;
    private final NodeTable beyond;
    private final List<MapNode> tagged = new ArrayList<>();
    private final LongSet taggedIds = new LongSet();
    private final List<WayDraft> ways = new ArrayList<>();
    private final int mostTagged;
    private final long mostOfWays;
    private long unitsOfWays;

    ExtractContents(Corridor corridor) {
        nodes = new NodeTable(NODES.of(corridor));
        beyond = new NodeTable(NODES.of(corridor));
        mostTagged = TAGGED.of(corridor);
        mostOfWays = WAYS.of(corridor);
    }

    void addNode(long id, int latitude, int longitude) {
        nodes.add(id, latitude, longitude);
    }

    void addBeyond(long id, int latitude, int longitude) {
        beyond.add(id, latitude, longitude);
    }

    void addTagged(MapNode node) {
        if (taggedIds.add(node.id())) {
            if (tagged.size() == mostTagged) {
                throw RefusedExtract.tooMuch("more than " + mostTagged + " crossings, fords and barriers near the track");
            }
            tagged.add(node);
        }
    }

    void addWay(WayDraft way) {
        unitsOfWays += way.nodes().length + UNITS_OF_WAY;
        if (unitsOfWays > mostOfWays) {
            throw RefusedExtract.tooMuch("more than " + ways.size() + " ways with " + (unitsOfWays - (ways.size() + 1L) * UNITS_OF_WAY) + " nodes near the track");
        }
        ways.add(way);
    }

    /** The nodes near the track. */
    NodeTable nodes() {
        return nodes;
    }

    /** Joins what several files have of one way. */
    void joinWays() {
        ways.sort(Comparator.comparingLong(WayDraft::id));
        List<WayDraft> joined = WayJoiner.join(ways);
        ways.clear();
        ways.addAll(joined);
    }

    /** Ids of the nodes that follow in ways on those near the track. */
    LongSet idsBeyond() {
        LongSet ids = new LongSet();
        for (WayDraft way : ways) {
            long[] of = way.nodes();
            for (int i = 0; i < of.length; i++) {
                boolean next = i > 0 && nodes.contains(of[i - 1]) || i + 1 < of.length && nodes.contains(of[i + 1]);
                if (next && !nodes.contains(of[i])) {
                    ids.add(of[i]);
                }
            }
        }
        return ids;
    }

    /** The ways, clipped to the corridor. */
    MapExtract extract(List<ExtractFile> files) {
        List<MapWay> out = new ArrayList<>();
        for (WayDraft way : ways) {
            clip(way, out);
        }
        tagged.sort(Comparator.comparingLong(MapNode::id));
        return new MapExtract(out, tagged, files);
    }

    private void clip(WayDraft way, List<MapWay> out) {
        long[] of = way.nodes();
        int from = 0;
        for (int i = 0; i < of.length; i++) {
            boolean last = i == of.length - 1 || !goesOn(of[i], of[i + 1]);
            if (last) {
                if (i > from) {
                    out.add(run(way, from, i + 1));
                }
                from = i + 1;
            }
        }
    }

    /** Whether the line between two nodes is kept: the places of both are known, and one lies near the track. */
    private boolean goesOn(long id, long next) {
        return nodes.contains(id) ? nodes.contains(next) || beyond.contains(next) : beyond.contains(id) && nodes.contains(next);
    }

    private MapWay run(WayDraft way, int from, int to) {
        long[] ids = java.util.Arrays.copyOfRange(way.nodes(), from, to);
        double[] latitude = new double[ids.length];
        double[] longitude = new double[ids.length];
        for (int i = 0; i < ids.length; i++) {
            NodeTable table = nodes.contains(ids[i]) ? nodes : beyond;
            int slot = table.find(ids[i]);
            latitude[i] = table.latitude(slot) / E7;
            longitude[i] = table.longitude(slot) / E7;
        }
        return new MapWay(way.id(), ids, latitude, longitude, way.tags());
    }
}
