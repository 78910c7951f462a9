package courseworthy.course.extract;

import com.google.protobuf.ByteString;
import crosby.binary.Fileformat;
import crosby.binary.Osmformat;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.zip.Deflater;

/** A PBF file put together block by block, well made or not, from the messages of a library (osmpbf). */
final class PbfFile {

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

    private static ByteString utf8(String text) {
        return ByteString.copyFrom(text, StandardCharsets.UTF_8);
    }
}
