package courseworthy.course.extract;

import com.google.protobuf.ByteString;
import courseworthy.course.Track;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import crosby.binary.Fileformat;
import crosby.binary.Osmformat;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.zip.Deflater;

/** A PBF file put together block by block, well made or not, from the messages of a library (osmpbf). */
public final class PbfFile {

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();

    /** A file with a header that asks for what all extracts ask for, and for what is given. */
    static PbfFile withHeader(String... features) {
        Osmformat.HeaderBlock.Builder header = Osmformat.HeaderBlock.newBuilder().addRequiredFeatures("OsmSchema-V0.6")
                .addRequiredFeatures("DenseNodes");
        for (String feature : features) {
            header.addRequiredFeatures(feature);
        }
        return new PbfFile().block("OSMHeader", header.build().toByteArray());
    }

    /** A small map near 0 N 0 E: a road of four nodes 111 m apart northwards, 1 to 4, as way 7. */
    static PbfFile smallMap() {
        return withHeader().data(nodes(new long[] {1, 2, 3, 4}, 0, 10_000, 20_000, 30_000)).data(ways(way(7, "residential", 1, 2, 3, 4)));
    }

    /** The shipped map of an invented place, in this format: with its blocks deflated, or as they are. */
    public static byte[] exampleMap(boolean deflated) {
        PbfFile file = withHeader();
        for (Osmformat.PrimitiveBlock block : blocks(exampleMap())) {
            if (deflated) {
                file.block("OSMData", block.toByteArray());
            } else {
                file.blob("OSMData", Fileformat.Blob.newBuilder().setRaw(block.toByteString()).build());
            }
        }
        return file.bytes();
    }

    PbfFile block(String type, byte[] content) {
        return blob(type, Fileformat.Blob.newBuilder().setRawSize(content.length).setZlibData(ByteString.copyFrom(deflated(content))).build());
    }

    PbfFile blob(String type, Fileformat.Blob blob) {
        return framed(Fileformat.BlobHeader.newBuilder().setType(type).setDatasize(blob.getSerializedSize()).build().toByteArray(), blob.toByteArray());
    }

    PbfFile framed(byte[] header, byte[] blob) {
        try {
            DataOutputStream data = new DataOutputStream(out);
            data.writeInt(header.length);
            data.write(header);
            data.write(blob);
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    PbfFile data(Osmformat.PrimitiveBlock.Builder block) {
        return block("OSMData", block.build().toByteArray());
    }

    byte[] bytes() {
        return out.toByteArray();
    }

    static byte[] deflated(byte[] content) {
        Deflater deflater = new Deflater();
        deflater.setInput(content);
        deflater.finish();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        byte[] buffer = new byte[1 << 16];
        while (!deflater.finished()) {
            out.write(buffer, 0, deflater.deflate(buffer));
        }
        deflater.end();
        return out.toByteArray();
    }

    /** Nodes on the meridian of Greenwich, latitudes in units of 1e-7 degree, in the dense form. */
    static Osmformat.PrimitiveBlock.Builder nodes(long[] ids, long... latitudes) {
        Osmformat.DenseNodes.Builder dense = Osmformat.DenseNodes.newBuilder();
        for (int i = 0; i < ids.length; i++) {
            dense.addId(ids[i] - (i == 0 ? 0 : ids[i - 1])).addLat(latitudes[i] - (i == 0 ? 0 : latitudes[i - 1])).addLon(0);
        }
        return group(group -> group.setDense(dense));
    }

    static Osmformat.PrimitiveBlock.Builder group(Consumer<Osmformat.PrimitiveGroup.Builder> filled) {
        Osmformat.PrimitiveGroup.Builder group = Osmformat.PrimitiveGroup.newBuilder();
        filled.accept(group);
        return Osmformat.PrimitiveBlock.newBuilder().setStringtable(Osmformat.StringTable.newBuilder().addS(ByteString.EMPTY))
                .addPrimitivegroup(group);
    }

    /** A way with one tag, highway, whose value stands as text 2 + its place in {@link #ways}. */
    record Way(long id, String highway, long... nodes) {
    }

    static Way way(long id, String highway, long... nodes) {
        return new Way(id, highway, nodes);
    }

    static Osmformat.PrimitiveBlock.Builder ways(Way... ways) {
        List<ByteString> texts = new ArrayList<>(List.of(ByteString.EMPTY, utf8("highway")));
        Osmformat.PrimitiveGroup.Builder group = Osmformat.PrimitiveGroup.newBuilder();
        for (Way way : ways) {
            Osmformat.Way.Builder built = Osmformat.Way.newBuilder().setId(way.id()).addKeys(1).addVals(texts.size());
            texts.add(utf8(way.highway()));
            long before = 0;
            for (long node : way.nodes()) {
                built.addRefs(node - before);
                before = node;
            }
            group.addWays(built);
        }
        return Osmformat.PrimitiveBlock.newBuilder().setStringtable(Osmformat.StringTable.newBuilder().addAllS(texts)).addPrimitivegroup(group);
    }

    private static MapExtract exampleMap() {
        double[] lat = {49.59, 49.65};
        Track across = new Track(List.of(new Track.TrackPiece(lat, new double[] {-8.31, -8.31}, new double[] {0, 6000}, lat)), Track.Elevation.MISSING);
        return ExtractReader.read(List.of(Path.of("docs", "examples", "maps", ExampleMap.MAP)), Corridor.around(across, 5000), new Faults(),
                Progress.UNSEEN);
    }

    private static List<Osmformat.PrimitiveBlock> blocks(MapExtract map) {
        Map<Long, int[]> places = new TreeMap<>();
        for (MapWay way : map.ways()) {
            for (int i = 0; i < way.size(); i++) {
                places.put(way.nodes()[i], new int[] {(int) Math.rint(way.latitude()[i] * 1e7), (int) Math.rint(way.longitude()[i] * 1e7)});
            }
        }
        Map<Long, Map<String, String>> tagged = new TreeMap<>();
        map.nodes().forEach(node -> tagged.put(node.id(), node.tags()));
        List<ByteString> texts = new ArrayList<>(List.of(ByteString.EMPTY));
        Osmformat.DenseNodes.Builder dense = Osmformat.DenseNodes.newBuilder();
        long[] before = new long[3];
        for (Map.Entry<Long, int[]> node : places.entrySet()) {
            long[] now = {node.getKey(), node.getValue()[0], node.getValue()[1]};
            dense.addId(now[0] - before[0]).addLat(now[1] - before[1]).addLon(now[2] - before[2]);
            tagged.getOrDefault(node.getKey(), Map.of()).forEach((key, value) ->
                    dense.addKeysVals(number(texts, key)).addKeysVals(number(texts, value)));
            dense.addKeysVals(0);
            before = now;
        }
        Osmformat.PrimitiveGroup.Builder ways = Osmformat.PrimitiveGroup.newBuilder();
        for (MapWay way : map.ways()) {
            Osmformat.Way.Builder built = ways.addWaysBuilder().setId(way.id());
            way.tags().forEach((key, value) -> built.addKeys(number(texts, key)).addVals(number(texts, value)));
            for (int i = 0; i < way.size(); i++) {
                built.addRefs(way.nodes()[i] - (i == 0 ? 0 : way.nodes()[i - 1]));
            }
        }
        Osmformat.StringTable table = Osmformat.StringTable.newBuilder().addAllS(texts).build();
        return List.of(Osmformat.PrimitiveBlock.newBuilder().setStringtable(table)
                        .addPrimitivegroup(Osmformat.PrimitiveGroup.newBuilder().setDense(dense)).build(),
                Osmformat.PrimitiveBlock.newBuilder().setStringtable(table).addPrimitivegroup(ways).build());
    }

    private static int number(List<ByteString> texts, String text) {
        int at = texts.indexOf(utf8(text));
        if (at < 0) {
            texts.add(utf8(text));
            return texts.size() - 1;
        }
        return at;
    }

    private static ByteString utf8(String text) {
        return ByteString.copyFrom(text, StandardCharsets.UTF_8);
    }
}
