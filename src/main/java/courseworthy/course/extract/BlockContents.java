package courseworthy.course.extract;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** What one block of a file holds near the track, and what the order of blocks and the file's area are found by. */
final class BlockContents {

    private static final double E7 = 1e7;

    private long[] ids = new long[1024];
    private int[] latitudes = new int[1024];
    private int[] longitudes = new int[1024];
    private int size;
    private final List<MapNode> tagged = new ArrayList<>();
    private final List<WayDraft> ways = new ArrayList<>();
    private final BoundsE7 seen = new BoundsE7();
    private long firstId;
    private long lastId;
    /** Whether nodes and ways stand in the block, near the track or not. */
    boolean hasNodes;
    boolean hasWays;

    void clear() {
        forgetNodes();
        ways.clear();
        hasNodes = false;
        hasWays = false;
        seen.clear();
        firstId = Long.MAX_VALUE;
        lastId = Long.MIN_VALUE;
    }

    /** Notes a node of the file, wherever it lies. */
    void see(long id, int latitude, int longitude) {
        seen.add(latitude, longitude);
        firstId = Math.min(firstId, id);
        lastId = Math.max(lastId, id);
    }

    /** Adds a node that is kept. */
    void addNode(long id, int latitude, int longitude) {
        if (size == ids.length) {
            ids = Arrays.copyOf(ids, size * 2);
            latitudes = Arrays.copyOf(latitudes, size * 2);
            longitudes = Arrays.copyOf(longitudes, size * 2);
        }
        ids[size] = id;
        latitudes[size] = latitude;
        longitudes[size] = longitude;
        size++;
    }

    /** Gives tags to the node that was added last. */
    void tagLastNode(Map<String, String> tags) {
        tagged.add(new MapNode(ids[size - 1], latitudes[size - 1] / E7, longitudes[size - 1] / E7, tags));
    }

    void addWay(WayDraft way) {
        ways.add(way);
    }

    /** Puts its nodes among those near the track. */
    void nodesInto(ExtractContents all) {
        for (int i = 0; i < size; i++) {
            all.addNode(ids[i], latitudes[i], longitudes[i]);
        }
        tagged.forEach(all::addTagged);
        forgetNodes();
    }

    /** Puts its nodes among those beyond the corridor. */
    void placesInto(ExtractContents all) {
        for (int i = 0; i < size; i++) {
            all.addBeyond(ids[i], latitudes[i], longitudes[i]);
        }
    }

    private void forgetNodes() {
        size = 0;
        tagged.clear();
    }

    List<WayDraft> ways() {
        return ways;
    }

    /** The box around all its nodes. */
    BoundsE7 seen() {
        return seen;
    }

    long firstId() {
        return firstId;
    }

    long lastId() {
        return lastId;
    }
}
