package courseworthy.course.extract;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.CRC32C;

/**
 * The form in which what lies near a track is kept in the cache: whole numbers as differences, as in PBF, and each text once. A first line names
 * the version of the form, and a checksum at the end shows that the file is whole.
 */
final class StoredExtract {

    private static final byte[] START = "courseworthy extract 1\n".getBytes(StandardCharsets.US_ASCII);
    private static final int CHECKSUM = 4;
    private static final double E7 = 1e7;

    private StoredExtract() {
    }

    /** The bytes of an extract. */
    static byte[] write(MapExtract extract) {
        return new StoredWriter().extract(extract);
    }

    /**
     * The extract that was written.
     *
     * @param names of its files, as the user typed them this time
     * @return null where the bytes are damaged or of another version
     */
    static MapExtract read(byte[] bytes, List<String> names) {
        int end = bytes.length - CHECKSUM;
        if (end < START.length || !Arrays.equals(bytes, 0, START.length, START, 0, START.length)) {
            return null;
        }
        int sum = 0;
        for (int i = end; i < bytes.length; i++) {
            sum = sum << 8 | bytes[i] & 0xFF;
        }
        if (sum != checksum(bytes, end)) {
            return null;
        }
        try {
            return new StoredReader(bytes, START.length, end).extract(names);
        } catch (RuntimeException damaged) {
            return null;
        }
    }

    private static int checksum(byte[] bytes, int end) {
        CRC32C sum = new CRC32C();
        sum.update(bytes, 0, end);
        return (int) sum.getValue();
    }

    private static int e7(double degrees) {
        return (int) Math.rint(degrees * E7);
    }

    private static final class StoredWriter {

        private final ByteArrayOutputStream out = new ByteArrayOutputStream();
        private final Map<String, Integer> texts = new LinkedHashMap<>();
        private long latitude;
        private long longitude;

        byte[] extract(MapExtract extract) {
            out.writeBytes(START);
            number(extract.files().size());
            extract.files().forEach(this::file);
            extract.ways().forEach(way -> collect(way.tags()));
            extract.nodes().forEach(node -> collect(node.tags()));
            number(texts.size());
            texts.keySet().forEach(this::text);
            number(extract.ways().size());
            long last = 0;
            for (MapWay way : extract.ways()) {
                number(way.id() - last);
                way(way);
                last = way.id();
            }
            number(extract.nodes().size());
            last = 0;
            for (MapNode node : extract.nodes()) {
                number(node.id() - last);
                place(node.latitude(), node.longitude());
                tags(node.tags());
                last = node.id();
            }
            int sum = checksum(out.toByteArray(), out.size());
            for (int shift = 24; shift >= 0; shift -= 8) {
                out.write(sum >>> shift);
            }
            return out.toByteArray();
        }

        private void file(ExtractFile file) {
            text(file.digest());
            number(file.attributionNeeded() ? 1 : 0);
            Bounds bounds = file.bounds();
            for (double edge : new double[] {bounds.south(), bounds.west(), bounds.north(), bounds.east()}) {
                number(Double.doubleToLongBits(edge));
            }
        }

        private void way(MapWay way) {
            number(way.size());
            long last = way.id();
            for (int i = 0; i < way.size(); i++) {
                number(way.nodes()[i] - last);
                last = way.nodes()[i];
                place(way.latitude()[i], way.longitude()[i]);
            }
            tags(way.tags());
        }

        private void place(double lat, double lon) {
            number(e7(lat) - latitude);
            number(e7(lon) - longitude);
            latitude = e7(lat);
            longitude = e7(lon);
        }

        private void collect(Map<String, String> tags) {
            new TreeMap<>(tags).forEach((key, value) -> {
                texts.putIfAbsent(key, texts.size());
                texts.putIfAbsent(value, texts.size());
            });
        }

        private void tags(Map<String, String> tags) {
            number(tags.size());
            new TreeMap<>(tags).forEach((key, value) -> {
                number(texts.get(key));
                number(texts.get(value));
            });
        }

        private void text(String text) {
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            number(bytes.length);
            out.writeBytes(bytes);
        }

        private void number(long value) {
            long left = value << 1 ^ value >> 63;
            while ((left & ~0x7FL) != 0) {
                out.write((int) (left & 0x7F | 0x80));
                left >>>= 7;
            }
            out.write((int) left);
        }
    }

    private static final class StoredReader {

        private final ProtobufReader in;
        private final byte[] bytes;
        private String[] texts = {};
        private long latitude;
        private long longitude;

        StoredReader(byte[] bytes, int from, int to) {
            this.bytes = bytes;
            in = new ProtobufReader().reset(bytes, from, to);
        }

        MapExtract extract(List<String> names) {
            List<ExtractFile> files = new ArrayList<>();
            int count = count();
            for (int i = 0; i < count; i++) {
                files.add(file(names.get(i)));
            }
            texts = new String[count()];
            for (int i = 0; i < texts.length; i++) {
                texts[i] = text();
            }
            List<MapWay> ways = new ArrayList<>();
            long last = 0;
            for (int left = count(); left > 0; left--) {
                last += in.signed();
                ways.add(way(last));
            }
            List<MapNode> nodes = new ArrayList<>();
            last = 0;
            for (int left = count(); left > 0; left--) {
                last += in.signed();
                place();
                nodes.add(new MapNode(last, latitude / E7, longitude / E7, tags()));
            }
            return new MapExtract(ways, nodes, files);
        }

        /** A number of things, each of which takes a byte at least. */
        private int count() {
            long count = in.signed();
            if (count < 0 || count > in.end() - in.position()) {
                throw new IllegalArgumentException("a count of " + count);
            }
            return (int) count;
        }

        private ExtractFile file(String name) {
            String digest = text();
            boolean attributionNeeded = in.signed() == 1;
            double[] edges = new double[4];
            for (int i = 0; i < edges.length; i++) {
                edges[i] = Double.longBitsToDouble(in.signed());
            }
            return new ExtractFile(name, digest, new Bounds(edges[0], edges[1], edges[2], edges[3]), attributionNeeded);
        }

        private String text() {
            int length = count();
            int from = in.position();
            in.reset(bytes, from + length, in.end());
            return new String(bytes, from, length, StandardCharsets.UTF_8);
        }

        private MapWay way(long id) {
            int size = count();
            long[] nodes = new long[size];
            double[] lat = new double[size];
            double[] lon = new double[size];
            long last = id;
            for (int i = 0; i < size; i++) {
                last += in.signed();
                nodes[i] = last;
                place();
                lat[i] = latitude / E7;
                lon[i] = longitude / E7;
            }
            return new MapWay(id, nodes, lat, lon, tags());
        }

        private void place() {
            latitude += in.signed();
            longitude += in.signed();
        }

        private Map<String, String> tags() {
            Map<String, String> tags = new LinkedHashMap<>();
            for (int left = count(); left > 0; left--) {
                String key = texts[(int) in.signed()];
                tags.put(key, texts[(int) in.signed()]);
            }
            return tags;
        }
    }
}
