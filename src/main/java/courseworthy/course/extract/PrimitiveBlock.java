package courseworthy.course.extract;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A decoder of the data blocks of a PBF file, used for one block after the other. It takes of a block only what lies near the track.
 *
 * <p>Source: OpenStreetMap wiki, "PBF Format" (published specification), osmformat.proto: PrimitiveBlock, DenseNodes, Way.
 */
final class PrimitiveBlock {

    private static final int KEY_STRINGS = 1 << 3 | ProtobufReader.BYTES;
    private static final int KEY_GROUP = 2 << 3 | ProtobufReader.BYTES;
    private static final int KEY_GRANULARITY = 17 << 3;
    private static final int KEY_LATITUDE_OFFSET = 19 << 3;
    private static final int KEY_LONGITUDE_OFFSET = 20 << 3;

    /** Nanodegrees in a unit of 10<sup>-7</sup> degree. */
    private static final int E7 = 100;
    private static final long QUARTER = 90_000_000_000L;
    private static final long MOST_OFFSET = 1_000_000_000_000L;
    /** Nodes of a way: the map's own limit is 2000 (OpenStreetMap API 0.6); ways of old or of other sources are longer. */
    private static final int MOST_REFERENCES = 1_000_000;

    private final Corridor corridor;
    private final ProtobufReader block = new ProtobufReader();
    private final ProtobufReader group = new ProtobufReader();
    private final ProtobufReader item = new ProtobufReader();
    private final ProtobufReader ids = new ProtobufReader();
    private final ProtobufReader latitudes = new ProtobufReader();
    private final ProtobufReader longitudes = new ProtobufReader();
    private final ProtobufReader keys = new ProtobufReader();
    private final ProtobufReader values = new ProtobufReader();

    private byte[] data;
    private int[] stringStarts = new int[1024];
    private int strings;
    private final List<int[]> groups = new ArrayList<>();
    private long granularity;
    private long latitudeOffset;
    private long longitudeOffset;

    PrimitiveBlock(Corridor corridor) {
        this.corridor = corridor;
    }

    /** What is done with what a block holds. */
    interface Sink {
        void node(long id, int latitude, int longitude, Map<String, String> tags);

        boolean wants(long[] nodes, int count);

        void way(WayDraft way);
    }

    void read(byte[] bytes, int length, Sink sink) {
        data = bytes;
        outline(length);
        for (int[] each : groups) {
            group.reset(data, each[0], each[1]);
            group(sink);
        }
    }

    private void outline(int length) {
        groups.clear();
        strings = 0;
        granularity = E7;
        latitudeOffset = 0;
        longitudeOffset = 0;
        block.reset(data, 0, length);
        while (block.hasMore()) {
            int key = block.key();
            switch (key) {
                case KEY_STRINGS -> strings(block.bytes(key), block.position());
                case KEY_GROUP -> groups.add(new int[] {block.bytes(key), block.position()});
                case KEY_GRANULARITY -> granularity = block.varint();
                case KEY_LATITUDE_OFFSET -> latitudeOffset = block.varint();
                case KEY_LONGITUDE_OFFSET -> longitudeOffset = block.varint();
                default -> block.skip(key);
            }
        }
        if (granularity < 1 || granularity > Integer.MAX_VALUE || Math.abs(latitudeOffset) > MOST_OFFSET
                || Math.abs(longitudeOffset) > MOST_OFFSET) {
            throw RefusedExtract.damaged("a scale of coordinates outside its range");
        }
    }

    private void strings(int from, int to) {
        item.reset(data, from, to);
        while (item.hasMore()) {
            int key = item.key();
            if (key != (1 << 3 | ProtobufReader.BYTES)) {
                item.skip(key);
                continue;
            }
            if (strings * 2 + 2 > stringStarts.length) {
                stringStarts = java.util.Arrays.copyOf(stringStarts, stringStarts.length * 2);
            }
            stringStarts[strings * 2] = item.bytes(key);
            stringStarts[strings * 2 + 1] = item.position();
            strings++;
        }
    }

    private String string(long index) {
        if (index < 0 || index >= strings) {
            throw RefusedExtract.damaged("a text that its block does not have");
        }
        int from = stringStarts[(int) index * 2];
        return new String(data, from, stringStarts[(int) index * 2 + 1] - from, StandardCharsets.UTF_8);
    }

    private void group(Sink sink) {
        while (group.hasMore()) {
            int key = group.key();
            switch (key >>> 3) {
                case 1 -> node(group.bytes(key), group.position(), sink);
                case 2 -> dense(group.bytes(key), group.position(), sink);
                case 3 -> way(group.bytes(key), group.position(), sink);
                default -> group.skip(key);
            }
        }
    }

    private void node(int from, int to, Sink sink) {
        item.reset(data, from, to);
        long id = 0;
        long latitude = 0;
        long longitude = 0;
        keys.reset(data, 0, 0);
        values.reset(data, 0, 0);
        while (item.hasMore()) {
            int key = item.key();
            switch (key >>> 3) {
                case 1 -> id = zigzag(item.integer(key));
                case 2 -> keys.reset(data, item.bytes(key), item.position());
                case 3 -> values.reset(data, item.bytes(key), item.position());
                case 8 -> latitude = zigzag(item.integer(key));
                case 9 -> longitude = zigzag(item.integer(key));
                default -> item.skip(key);
            }
        }
        int lat = e7(latitude, latitudeOffset, QUARTER);
        int lon = e7(longitude, longitudeOffset, 2 * QUARTER);
        if (corridor.containsE7(lat, lon)) {
            sink.node(id, lat, lon, tags(MapTags.OF_NODES));
        }
    }

    private static long zigzag(long value) {
        return value >>> 1 ^ -(value & 1);
    }

    private int e7(long raw, long offset, long most) {
        if (Math.abs(raw) > (most + MOST_OFFSET) / granularity + 1 || Math.abs(raw * granularity + offset) > most) {
            throw RefusedExtract.damaged("a node outside the earth's degrees");
        }
        return (int) Math.round((raw * granularity + offset) / (double) E7);
    }

    private Map<String, String> tags(Set<String> kept) {
        Map<String, String> tags = new HashMap<>();
        while (keys.hasMore()) {
            String key = string(keys.varint());
            if (!values.hasMore()) {
                throw RefusedExtract.damaged("a tag without a value");
            }
            long value = values.varint();
            if (kept.contains(key)) {
                tags.put(key, string(value));
            }
        }
        return tags;
    }

    private void dense(int from, int to, Sink sink) {
        item.reset(data, from, to);
        ids.reset(data, 0, 0);
        latitudes.reset(data, 0, 0);
        longitudes.reset(data, 0, 0);
        keys.reset(data, 0, 0);
        while (item.hasMore()) {
            int key = item.key();
            switch (key >>> 3) {
                case 1 -> ids.reset(data, item.bytes(key), item.position());
                case 8 -> latitudes.reset(data, item.bytes(key), item.position());
                case 9 -> longitudes.reset(data, item.bytes(key), item.position());
                case 10 -> keys.reset(data, item.bytes(key), item.position());
                default -> item.skip(key);
            }
        }
        long id = 0;
        long latitude = 0;
        long longitude = 0;
        boolean tagged = keys.hasMore();
        while (ids.hasMore()) {
            id += ids.signed();
            latitude += latitudes.signed();
            longitude += longitudes.signed();
            int lat = e7(latitude, latitudeOffset, QUARTER);
            int lon = e7(longitude, longitudeOffset, 2 * QUARTER);
            boolean inside = corridor.containsE7(lat, lon);
            Map<String, String> tags = Map.of();
            for (long key = tagged ? keys.varint() : 0; key != 0; key = keys.varint()) {
                long value = keys.varint();
                if (inside && MapTags.OF_NODES.contains(string(key))) {
                    tags = tags.isEmpty() ? new HashMap<>() : tags;
                    tags.put(string(key), string(value));
                }
            }
            if (inside) {
                sink.node(id, lat, lon, tags);
            }
        }
    }

    private void way(int from, int to, Sink sink) {
        item.reset(data, from, to);
        long id = 0;
        ids.reset(data, 0, 0);
        keys.reset(data, 0, 0);
        values.reset(data, 0, 0);
        while (item.hasMore()) {
            int key = item.key();
            switch (key >>> 3) {
                case 1 -> id = item.integer(key);
                case 2 -> keys.reset(data, item.bytes(key), item.position());
                case 3 -> values.reset(data, item.bytes(key), item.position());
                case 8 -> ids.reset(data, item.bytes(key), item.position());
                default -> item.skip(key);
            }
        }
        Map<String, String> tags = tags(MapTags.OF_WAYS);
        if (!MapTags.keepsWay(tags)) {
            return;
        }
        long[] nodes = new long[Math.min(MOST_REFERENCES, ids.end() - ids.position())];
        int count = 0;
        long node = 0;
        while (ids.hasMore()) {
            node += ids.signed();
            nodes[count++] = node;
        }
        if (sink.wants(nodes, count)) {
            sink.way(new WayDraft(id, java.util.Arrays.copyOf(nodes, count), tags));
        }
    }
}
