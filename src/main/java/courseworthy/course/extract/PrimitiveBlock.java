package courseworthy.course.extract;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * A decoder of the data blocks of a PBF file, used for one block after the other. It takes of a block what lies near the track.
 *
 * <p>Source: OpenStreetMap wiki, "PBF Format" (published specification), osmformat.proto: PrimitiveBlock, PrimitiveGroup, Node, DenseNodes, Way.
 */
final class PrimitiveBlock {

    private static final int KEY_STRINGS = 1 << 3 | ProtobufReader.BYTES;
    private static final int KEY_GROUP = 2 << 3 | ProtobufReader.BYTES;
    private static final int KEY_GRANULARITY = 17 << 3;
    private static final int KEY_LATITUDE_OFFSET = 19 << 3;
    private static final int KEY_LONGITUDE_OFFSET = 20 << 3;

    /** Nodes of a way: the map takes 2,000 (OpenStreetMap API 0.6, "capabilities"); older ways and those of other sources may have more. */
    private static final int MOST_NODES_OF_WAY = 100_000;

    /** Nodes that are read at a time. */
    private static final int CHUNK = 2048;

    private final int file;
    /** Null where nodes are wanted by their ids. */
    private final Corridor corridor;
    /** Ids of nodes; null where they are wanted by their place. */
    private final LongSet wanted;
    private final BlockContents contents = new BlockContents();
    private final StringTable strings = new StringTable();
    private final Coordinates coordinates = new Coordinates();
    private final ProtobufReader block = new ProtobufReader();
    private final ProtobufReader group = new ProtobufReader();
    private final ProtobufReader item = new ProtobufReader();
    private final ProtobufReader ids = new ProtobufReader();
    private final ProtobufReader latitudes = new ProtobufReader();
    private final ProtobufReader longitudes = new ProtobufReader();
    private final ProtobufReader keys = new ProtobufReader();
    private final ProtobufReader values = new ProtobufReader();

    private byte[] data = new byte[0];
    /** Ids, latitudes and longitudes of the nodes that are being read; ids also of those of a way. */
    private final long[] nextIds = new long[CHUNK];
    private final long[] nextLatitudes = new long[CHUNK];
    private final long[] nextLongitudes = new long[CHUNK];
    private long[] wayNodes = new long[CHUNK];
    private int wayNodeCount;
    private Supplier<NodeTable> nodesBefore;
    private NodeTable nodes;

    private PrimitiveBlock(int file, Corridor corridor, LongSet wanted) {
        this.file = file;
        this.corridor = corridor;
        this.wanted = wanted;
    }

    /** A decoder of ways and nodes near a track, in the file of a number. */
    static PrimitiveBlock near(int file, Corridor corridor) {
        return new PrimitiveBlock(file, corridor, null);
    }

    /** A decoder of the nodes that have certain ids. */
    static PrimitiveBlock ofNodes(LongSet wanted) {
        return new PrimitiveBlock(0, null, wanted);
    }

    /** What the last block holds; good until the next is read. */
    BlockContents contents() {
        return contents;
    }

    /**
     * Reads a block.
     *
     * @param nodesBefore gives all nodes of the file that lie near the track, once the first way asks for them
     */
    void read(Blob blob, Supplier<NodeTable> nodesBefore) {
        this.nodesBefore = nodesBefore;
        contents.clear();
        data = blob.content();
        outline(blob.size());
        block.reset(data, 0, blob.size());
        while (block.hasMore()) {
            int key = block.key();
            if (key == KEY_GROUP) {
                group.reset(data, block.bytes(key), block.position());
                group();
            } else {
                block.skip(key);
            }
        }
    }

    /** Reads what groups need to be understood, for it may stand behind them. */
    private void outline(int size) {
        strings.clear();
        long granularity = Coordinates.E7;
        long latitudeOffset = 0;
        long longitudeOffset = 0;
        block.reset(data, 0, size);
        while (block.hasMore()) {
            int key = block.key();
            switch (key) {
                case KEY_STRINGS -> strings.read(data, block.bytes(key), block.position());
                case KEY_GRANULARITY -> granularity = block.varint();
                case KEY_LATITUDE_OFFSET -> latitudeOffset = block.varint();
                case KEY_LONGITUDE_OFFSET -> longitudeOffset = block.varint();
                default -> block.skip(key);
            }
        }
        coordinates.scale(granularity, latitudeOffset, longitudeOffset);
    }

    private void group() {
        while (group.hasMore()) {
            int key = group.key();
            switch (key >>> 3) {
                case 1 -> node(item.reset(data, group.bytes(key), group.position()));
                case 2 -> dense(item.reset(data, group.bytes(key), group.position()));
                case 3 -> {
                    item.reset(data, group.bytes(key), group.position());
                    if (wanted == null) {
                        way(item);
                    }
                }
                default -> group.skip(key);
            }
        }
    }

    private void none() {
        ids.reset(data, 0, 0);
        latitudes.reset(data, 0, 0);
        longitudes.reset(data, 0, 0);
        keys.reset(data, 0, 0);
        values.reset(data, 0, 0);
    }

    private void node(ProtobufReader node) {
        none();
        long id = 0;
        long latitude = 0;
        long longitude = 0;
        while (node.hasMore()) {
            int key = node.key();
            switch (key >>> 3) {
                case 1 -> id = node.signed(key);
                case 2 -> keys.reset(data, node.bytes(key), node.position());
                case 3 -> values.reset(data, node.bytes(key), node.position());
                case 8 -> latitude = node.signed(key);
                case 9 -> longitude = node.signed(key);
                default -> node.skip(key);
            }
        }
        nodesBegin();
        if (sees(id, latitude, longitude)) {
            tagged(strings.tags(keys, values, MapTags.OF_NODES));
        }
    }

    private void nodesBegin() {
        if (contents.hasWays) {
            throw RefusedExtract.waysBeforeNodes();
        }
        contents.hasNodes = true;
    }

    /** Notes a node, and keeps it where it lies near the track. */
    private boolean sees(long id, long rawLatitude, long rawLongitude) {
        int latitude = coordinates.latitude(rawLatitude);
        int longitude = coordinates.longitude(rawLongitude);
        contents.see(id, latitude, longitude);
        if (wanted == null ? !corridor.containsE7(latitude, longitude) : !wanted.contains(id)) {
            return false;
        }
        contents.addNode(id, latitude, longitude);
        return true;
    }

    private void tagged(Map<String, String> tags) {
        if (wanted == null && MapTags.keepsNode(tags)) {
            contents.tagLastNode(tags);
        }
    }

    private void dense(ProtobufReader dense) {
        none();
        while (dense.hasMore()) {
            int key = dense.key();
            switch (key >>> 3) {
                case 1 -> ids.reset(data, dense.bytes(key), dense.position());
                case 8 -> latitudes.reset(data, dense.bytes(key), dense.position());
                case 9 -> longitudes.reset(data, dense.bytes(key), dense.position());
                case 10 -> keys.reset(data, dense.bytes(key), dense.position());
                default -> dense.skip(key);
            }
        }
        if (ids.hasMore()) {
            nodesBegin();
        }
        boolean anyTags = keys.hasMore();
        long[] last = new long[3];
        while (ids.hasMore()) {
            int count = ids.sums(last[0], nextIds, CHUNK);
            if (latitudes.sums(last[1], nextLatitudes, count) < count || longitudes.sums(last[2], nextLongitudes, count) < count) {
                throw RefusedExtract.damaged("nodes with fewer coordinates than ids");
            }
            last = new long[] {nextIds[count - 1], nextLatitudes[count - 1], nextLongitudes[count - 1]};
            for (int i = 0; i < count; i++) {
                boolean near = sees(nextIds[i], nextLatitudes[i], nextLongitudes[i]);
                if (anyTags && keys.hasMore()) {
                    denseTags(near);
                }
            }
        }
        if (latitudes.hasMore() || longitudes.hasMore()) {
            throw RefusedExtract.damaged("nodes with more coordinates than ids");
        }
    }

    /** The tags of the next node: pairs of numbers of texts, with a zero behind the last. */
    private void denseTags(boolean near) {
        if (!near) {
            while (keys.varint() != 0) {
                keys.varint();
            }
            return;
        }
        Map<String, String> tags = new HashMap<>();
        for (long key = keys.varint(); key != 0; key = keys.varint()) {
            long value = keys.varint();
            if (MapTags.OF_NODES.contains(strings.get(key))) {
                tags.put(strings.get(key), strings.get(value));
            }
        }
        tagged(tags);
    }

    private void way(ProtobufReader way) {
        none();
        long id = 0;
        while (way.hasMore()) {
            int key = way.key();
            switch (key >>> 3) {
                case 1 -> id = way.integer(key);
                case 2 -> keys.reset(data, way.bytes(key), way.position());
                case 3 -> values.reset(data, way.bytes(key), way.position());
                case 8 -> ids.reset(data, way.bytes(key), way.position());
                default -> way.skip(key);
            }
        }
        int keysFrom = keys.position();
        if (!contents.hasWays) {
            nodes = nodesBefore.get();
            contents.hasWays = true;
        }
        if (hasKeyOfWays() && isNear()) {
            keys.reset(data, keysFrom, keys.end());
            Map<String, String> tags = strings.tags(keys, values, MapTags.OF_WAYS);
            if (MapTags.keepsWay(tags)) {
                contents.addWay(new WayDraft(file, id, Arrays.copyOf(wayNodes, wayNodeCount), tags));
            }
        }
    }

    private boolean hasKeyOfWays() {
        boolean has = false;
        while (!has && keys.hasMore()) {
            has = strings.isKeyOfWays(keys.varint());
        }
        return has;
    }

    /** Reads the nodes of a way, and says whether one of them lies near the track. */
    private boolean isNear() {
        wayNodeCount = 0;
        boolean near = false;
        while (ids.hasMore()) {
            if (wayNodeCount + CHUNK > wayNodes.length) {
                wayNodes = Arrays.copyOf(wayNodes, wayNodes.length + CHUNK);
            }
            int count = ids.sums(wayNodeCount == 0 ? 0 : wayNodes[wayNodeCount - 1], nextIds, CHUNK);
            System.arraycopy(nextIds, 0, wayNodes, wayNodeCount, count);
            for (int i = 0; i < count && !near; i++) {
                near = nodes.contains(nextIds[i]);
            }
            wayNodeCount += count;
            if (wayNodeCount > MOST_NODES_OF_WAY) {
                throw RefusedExtract.damaged("a way of more than " + MOST_NODES_OF_WAY + " nodes");
            }
        }
        return near;
    }
}
