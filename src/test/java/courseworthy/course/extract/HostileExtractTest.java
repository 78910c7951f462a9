package courseworthy.course.extract;

import static courseworthy.course.extract.PbfFile.nodes;
import static courseworthy.course.extract.PbfFile.smallMap;
import static courseworthy.course.extract.PbfFile.way;
import static courseworthy.course.extract.PbfFile.ways;
import static courseworthy.course.extract.PbfFile.withHeader;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.protobuf.ByteString;
import courseworthy.course.Track;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import crosby.binary.Fileformat;
import crosby.binary.Osmformat;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Map files that are cut short, damaged, of another kind or made to do harm: each ends in one clear message. */
class HostileExtractTest {

    private static final String WANTED = ", expected an OpenStreetMap extract (.osm.pbf, .osm or .osm.gz)";
    private static final String WHOLE = ", expected a whole extract\n    Fetch the file again.";
    private static final String CUT = "found the end of the file inside a block, expected a whole extract\n    The file was cut short: fetch it again.";

    @TempDir
    Path folder;

    private static Corridor corridor() {
        double[] lat = {0, 0.003};
        double[] lon = {0, 0};
        return Corridor.around(new Track(List.of(new Track.TrackPiece(lat, lon, new double[] {0, 331}, lat)), Track.Elevation.MISSING), 100);
    }

    private MapExtract read(byte[] bytes, Faults faults) {
        try {
            return ExtractReader.read(List.of(Files.write(folder.resolve("map"), bytes)), corridor(), faults, Progress.UNSEEN);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** What is said of a file, without its name. */
    private String said(byte[] bytes) {
        Faults faults = new Faults();
        assertThat(read(bytes, faults)).isNull();
        assertThat(faults.faults()).hasSize(1);
        Fault fault = faults.faults().get(0);
        assertThat(fault.file()).isEqualTo(folder.resolve("map").toString());
        return fault.text().substring(fault.file().length() + 1).strip();
    }

    private String said(PbfFile file) {
        return said(file.bytes());
    }

    private String said(String text) {
        return said(text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void theSmallMapItselfIsRead() {
        Faults faults = new Faults();
        MapExtract read = read(smallMap().bytes(), faults);
        assertThat(faults.faults()).isEmpty();
        assertThat(read.ways()).singleElement().satisfies(way -> {
            assertThat(way.id()).isEqualTo(7);
            assertThat(way.nodes()).containsExactly(1, 2, 3, 4);
            assertThat(way.latitude()).containsExactly(0, 0.001, 0.002, 0.003);
            assertThat(way.tags()).containsOnlyKeys("highway").containsEntry("highway", "residential");
        });
        assertThat(read.files().get(0).bounds()).isEqualTo(new Bounds(0, 0, 0.003, 0));
    }

    @Test
    void filesOfAnotherKind() {
        assertThat(said(new byte[0])).isEqualTo("found an empty file" + WANTED + "\n    Fetch the file again.");
        byte[] random = new byte[100_000];
        new Random(3).nextBytes(random);
        assertThat(said(random)).isEqualTo("found a file that does not begin like one in PBF" + WANTED);
        assertThat(said("<html><body>Not found</body></html>")).isEqualTo("found a web page (HTML)" + WANTED
                + "\n    Fetch the file itself: its address gave a page instead.");
        assertThat(said("<gpx/>")).isEqualTo("1: found an XML file that starts with <gpx>" + WANTED + ", which starts with <osm>");
        assertThat(said("BZh91AY")).isEqualTo("found a file compressed by another method than gzip" + WANTED + "\n    Unpack it first.");
        assertThat(said(gzip(new byte[100]))).isEqualTo("found a compressed file (gzip) with no XML in it" + WANTED + "\n    Unpack it first.");
        PbfFile noHeader = new PbfFile().data(nodes(new long[] {1}, 0));
        assertThat(said(noHeader)).isEqualTo("found a file that does not begin like one in PBF" + WANTED);
    }

    @Test
    void filesThatAreNotThere() throws IOException {
        Faults faults = new Faults();
        Path none = folder.resolve("none.osm.pbf");
        assertThat(ExtractReader.read(List.of(none, folder), corridor(), faults, Progress.UNSEEN)).isNull();
        assertThat(faults.faults()).extracting(Fault::text).containsExactlyInAnyOrder(
                folder + ": found a folder" + WANTED + "\n    Check the path and its permissions.",
                none + ": found no such file" + WANTED + "\n    Check the spelling of the path.");
    }

    @Test
    void aFileCutShortAnywhere() {
        byte[] whole = smallMap().bytes();
        int header = withHeader().bytes().length;
        int data = withHeader().data(nodes(new long[] {1, 2, 3, 4}, 0, 10_000, 20_000, 30_000)).bytes().length;
        for (int length = 1; length < whole.length; length++) {
            String said = said(Arrays.copyOf(whole, length));
            if (length == header) {
                assertThat(said).isEqualTo("found an extract without data" + WANTED + "\n    Fetch the file again.");
            } else if (length == data) {
                assertThat(said).isEqualTo("found an extract without a way" + WANTED + "\n    Fetch the file again.");
            } else {
                assertThat(said).as("%s of %s bytes", length, whole.length).isEqualTo(CUT);
            }
        }
    }

    @Test
    void filesThatAskForWhatIsNotKnown() {
        assertThat(said(withHeader("HistoricalInformation"))).isEqualTo("found a history file, with former versions of nodes and ways" + WANTED
                + "\n    Take an extract of the map as it is now.");
        assertThat(said(withHeader("Sorcery"))).isEqualTo("found a file in PBF that asks its readers for \"Sorcery\"" + WANTED
                + "\n    Take an ordinary extract.");
        Fileformat.Blob lzma = Fileformat.Blob.newBuilder().setRawSize(3).setLzmaData(ByteString.copyFrom(new byte[3])).build();
        assertThat(said(withHeader().blob("OSMData", lzma))).isEqualTo("found a file in PBF whose blocks are compressed by another method than zlib"
                + WANTED + "\n    Write it again with zlib, which all programs that write extracts know.");
    }

    private static PbfFile claiming(int rawSize, byte[] content) {
        return withHeader().blob("OSMData", Fileformat.Blob.newBuilder().setRawSize(rawSize)
                .setZlibData(ByteString.copyFrom(PbfFile.deflated(content))).build());
    }

    private static String tooLarge(long size) {
        return "found a block of " + size + " bytes, expected at most 33554432\n    Fetch the file again.";
    }

    @Test
    void sizesThatCannotBe() {
        assertThat(said(claiming(Integer.MAX_VALUE, new byte[9]))).isEqualTo(tooLarge(Integer.MAX_VALUE));
        assertThat(said(claiming(-1, new byte[9]))).isEqualTo(tooLarge(-1));
        assertThat(said(withHeader().framed(Fileformat.BlobHeader.newBuilder().setType("OSMData").setDatasize(-5).build().toByteArray(), new byte[9])))
                .isEqualTo(tooLarge(-5));
        assertThat(said(withHeader().framed(Fileformat.BlobHeader.newBuilder().setType("OSMData").setDatasize(Integer.MAX_VALUE).build().toByteArray(),
                new byte[9]))).isEqualTo(tooLarge(Integer.MAX_VALUE));
        assertThat(said(withHeader().framed(new byte[70_000], new byte[0])))
                .isEqualTo("found a block whose header has a length of 70000 bytes" + WHOLE);
        assertThat(said(claiming(8, new byte[9]))).isEqualTo("found a block of more bytes than the 8 that it says" + WHOLE);
        assertThat(said(claiming(10, new byte[9]))).isEqualTo("found a block of fewer bytes than the 10 that it says" + WHOLE);
    }

    /** A block that inflates to a thousand times its size. */
    @Test
    void aBlockThatInflatesWithoutEnd() {
        byte[] bomb = PbfFile.deflated(new byte[100_000_000]);
        assertThat(bomb).hasSizeLessThan(110_000);
        PbfFile file = withHeader().blob("OSMData", Fileformat.Blob.newBuilder().setRawSize(33_554_432).setZlibData(ByteString.copyFrom(bomb)).build());
        assertThat(said(file)).isEqualTo("found a block of more bytes than the 33554432 that it says" + WHOLE);
    }

    /** Blocks that each keep to the limits, of a field that nobody knows. */
    @Test
    void blocksThatInflateToTooMuch() {
        byte[] unknown = new byte[33_554_432];
        for (int i = 0; i < unknown.length; i += 2) {
            unknown[i] = 15 << 3;
        }
        Fileformat.Blob blob = Fileformat.Blob.newBuilder().setRawSize(unknown.length).setZlibData(ByteString.copyFrom(PbfFile.deflated(unknown))).build();
        PbfFile file = withHeader();
        for (int i = 0; i < 10; i++) {
            file.blob("OSMData", blob);
        }
        assertThat(said(file)).isEqualTo("found blocks that inflate to more than 20 times the file" + WHOLE);
    }

    @Test
    void dataThatDoNotInflate() {
        Fileformat.Blob.Builder blob = Fileformat.Blob.newBuilder().setRawSize(1000);
        assertThat(said(withHeader().blob("OSMData", blob.setZlibData(ByteString.copyFrom(new byte[50])).build())))
                .isEqualTo("found a block whose compressed data are damaged" + WHOLE);
        byte[] cut = Arrays.copyOf(PbfFile.deflated(new byte[1000]), 10);
        assertThat(said(withHeader().blob("OSMData", blob.setZlibData(ByteString.copyFrom(cut)).build())))
                .isEqualTo("found a block whose compressed data end too early" + WHOLE);
        assertThat(said(withHeader().blob("OSMData", Fileformat.Blob.newBuilder().setRawSize(7).build())))
                .isEqualTo("found a block without data" + WHOLE);
    }

    @Test
    void waysThatStandBeforeTheirNodes() {
        String expected = "found ways before nodes, expected nodes first, then ways\n    Sort the extract by type and id, or take another.";
        PbfFile file = withHeader().data(ways(way(7, "track", 1, 2))).data(nodes(new long[] {1, 2}, 0, 10_000));
        assertThat(said(file)).isEqualTo(expected);
        Osmformat.PrimitiveBlock.Builder both = ways(way(7, "track", 1, 2));
        both.addPrimitivegroup(nodes(new long[] {1, 2}, 0, 10_000).getPrimitivegroup(0));
        assertThat(said(withHeader().data(both))).isEqualTo(expected);
        assertThat(said("<osm version='0.6'><way id='7'><nd ref='1'/></way><node id='1' lat='0' lon='0'/></osm>")).isEqualTo(expected);
    }

    private String saidOfNodes(long[] ids, long... latitudes) {
        return said(withHeader().data(nodes(ids, latitudes)).data(ways(way(7, "track", 1, 2))));
    }

    @Test
    void numbersThatLeadOut() {
        String outside = "found a node outside the earth's degrees" + WHOLE;
        assertThat(saidOfNodes(new long[] {1, 2}, 0, 900_000_001)).isEqualTo(outside);
        assertThat(saidOfNodes(new long[] {1, 2}, 0, Long.MAX_VALUE)).isEqualTo(outside);
        Osmformat.DenseNodes.Builder dense = Osmformat.DenseNodes.newBuilder().addId(Long.MAX_VALUE).addId(Long.MAX_VALUE).addLat(0).addLat(0).addLon(0)
                .addLon(0);
        assertThat(said(withHeader().data(PbfFile.group(group -> group.setDense(dense)))))
                .isEqualTo("found a difference that leads out of 64 bits" + WHOLE);
        Osmformat.DenseNodes.Builder fewer = Osmformat.DenseNodes.newBuilder().addId(1).addId(1).addLat(0).addLon(0).addLon(0);
        assertThat(said(withHeader().data(PbfFile.group(group -> group.setDense(fewer)))))
                .isEqualTo("found nodes with fewer coordinates than ids" + WHOLE);
        Osmformat.DenseNodes.Builder more = Osmformat.DenseNodes.newBuilder().addId(1).addLat(0).addLat(0).addLon(0);
        assertThat(said(withHeader().data(PbfFile.group(group -> group.setDense(more)))))
                .isEqualTo("found nodes with more coordinates than ids" + WHOLE);
        for (int scale : new int[] {0, -1}) {
            assertThat(said(withHeader().data(nodes(new long[] {1}, 0).setGranularity(scale))))
                    .isEqualTo("found a scale of coordinates that is not of the earth" + WHOLE);
        }
        assertThat(said(withHeader().data(nodes(new long[] {1}, 0).setLatOffset(Long.MIN_VALUE))))
                .isEqualTo("found a scale of coordinates that is not of the earth" + WHOLE);
        assertThat(said(withHeader().data(nodes(new long[] {Long.MIN_VALUE}, 0))))
                .isEqualTo("found a node with the id -9223372036854775808" + WHOLE);
    }

    @Test
    void countsThatCannotBe() {
        Osmformat.PrimitiveBlock.Builder text = nodes(new long[] {1, 2}, 0, 10_000);
        PbfFile file = withHeader().data(text);
        Osmformat.Way.Builder untold = Osmformat.Way.newBuilder().setId(7).addKeys(1).addVals(9).addRefs(1).addRefs(1);
        Osmformat.PrimitiveBlock.Builder block = ways(way(8, "track", 1, 2));
        block.setPrimitivegroup(0, Osmformat.PrimitiveGroup.newBuilder().addWays(untold));
        assertThat(said(file.data(block))).isEqualTo("found a tag whose text its block does not have" + WHOLE);
        long[] many = new long[100_001];
        Arrays.fill(many, 1);
        assertThat(said(withHeader().data(text).data(ways(way(7, "track", many))))).isEqualTo("found a way of more than 100000 nodes" + WHOLE);
        byte[] length = {0x12, 0x7F, 1};
        assertThat(said(withHeader().block("OSMData", length))).isEqualTo("found a length of 127 with 1 bytes left in its block" + WHOLE);
        byte[] longest = new byte[13];
        Arrays.fill(longest, (byte) 0xFF);
        longest[0] = (byte) (17 << 3 & 0x7F | 0x80);
        longest[1] = 1;
        assertThat(said(withHeader().block("OSMData", longest))).isEqualTo("found a number of more than 64 bits" + WHOLE);
        assertThat(said(withHeader().block("OSMData", new byte[100]))).isEqualTo("found a field without a number" + WHOLE);
        assertThat(said(withHeader().block("OSMData", new byte[] {0x0F}))).isEqualTo("found a field of no known type" + WHOLE);
        assertThat(said(withHeader().block("OSMData", new byte[] {0x12, 2, 0x18, 0}))).isEqualTo("found a field of another type than the format's" + WHOLE);
    }

    private static byte[] field(int number, byte[] content) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(number << 3 | 2);
        for (int left = content.length; ; left >>>= 7) {
            out.write(left < 0x80 ? left : left & 0x7F | 0x80);
            if (left < 0x80) {
                break;
            }
        }
        out.writeBytes(content);
        return out.toByteArray();
    }

    private static byte[] repeated(int times, int... bytes) {
        byte[] out = new byte[times * bytes.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = (byte) bytes[i % bytes.length];
        }
        return out;
    }

    private static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            out.writeBytes(part);
        }
        return out.toByteArray();
    }

    private static final byte[] TEXTS = field(1, joined(field(1, new byte[0]), field(1, "highway".getBytes(StandardCharsets.UTF_8)),
            field(1, "track".getBytes(StandardCharsets.UTF_8))));

    /** Nodes with ids one after the other, all at 0 N 0 E. */
    private static byte[] nodesAtOnePlace(int count, byte[] tags) {
        byte[] dense = joined(field(1, repeated(count, 2)), field(8, new byte[count]), field(9, new byte[count]), field(10, tags));
        return joined(TEXTS, field(2, field(2, dense)));
    }

    /** More than any place on earth has: bounded by what lies near, so that a small file cannot fill the memory. */
    @Test
    void moreThanAMapHasNearATrack() {
        int cells = corridor().cells();
        String fewer = " near the track, expected fewer\n    Take another extract.";
        int most = 2_000_000 + 100 * cells;
        assertThat(said(withHeader().block("OSMData", nodesAtOnePlace(most + 1, new byte[0]))))
                .isEqualTo("found more than " + most + " nodes" + fewer);
        int tagged = 50_000 + 20 * cells;
        assertThat(said(withHeader().block("OSMData", nodesAtOnePlace(tagged + 1, repeated(tagged + 1, 1, 2, 0)))))
                .isEqualTo("found more than " + tagged + " crossings, fords and barriers" + fewer);
        int ways = (2_000_000 + 300 * cells) / 33;
        byte[] way = field(3, joined(new byte[] {8, 1}, field(2, new byte[] {1}), field(3, new byte[] {2}), field(8, new byte[] {2})));
        byte[][] all = new byte[ways + 1][];
        Arrays.fill(all, way);
        assertThat(said(withHeader().block("OSMData", nodesAtOnePlace(3, new byte[0])).block("OSMData", joined(TEXTS, field(2, joined(all))))))
                .isEqualTo("found more than " + ways + " ways with " + (ways + 1) + " nodes" + fewer);
    }

    private static byte[] gzip(byte[] content) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (OutputStream packed = new GZIPOutputStream(out)) {
            packed.write(content);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return out.toByteArray();
    }

    private static String osm(String content) {
        return "<osm version='0.6'>\n" + content + "\n</osm>";
    }

    @Test
    void xmlThatIsNotWell() {
        String wanted = "expected an OpenStreetMap extract (.osm.pbf, .osm or .osm.gz)";
        String again = "\n    Fetch the file again.";
        assertThat(said(osm("<node id='1' lat='91' lon='0'/>")))
                .isEqualTo("2: lat: found \"91\", expected decimal degrees from -90 to 90" + again);
        assertThat(said(osm("<node id='1' lat='1'/>"))).isEqualTo("2: lon: found nothing, expected decimal degrees from -180 to 180" + again);
        assertThat(said(osm("<node id='one' lat='1' lon='1'/>"))).isEqualTo("2: id: found \"one\", expected a whole number" + again);
        assertThat(said(osm("<way id='1'><nd ref='99999999999999999999'/></way>")))
                .isEqualTo("2: ref: found \"99999999999999999999\", expected a whole number" + again);
        assertThat(said(osm("<node id='1' visible='false' lat='1' lon='1'/>"))).isEqualTo(
                "2: node: found a history file, with former versions of nodes and ways, " + wanted + "\n    Take an extract of the map as it is now.");
        assertThat(said("<osmChange version='0.6'/>"))
                .isEqualTo("1: found a file of changes, " + wanted + "\n    Take an extract of the map as it is now.");
        assertThat(said("<osm version='0.5'/>")).isEqualTo("1: version: found \"0.5\", expected \"0.6\"\n    Take an extract of today's format.");
        assertThat(said(osm("<node id='1' lat='1' lon='1'/><way id='2'>")))
                .isEqualTo("3: way: found broken XML, expected well-formed XML" + again);
        assertThat(said("<osm version='0.6'>\n<node id='1' lat='1' lon='1'/><way id='2'>")).isEqualTo(
                "2: way: found the end of the file inside <way>, expected a whole extract\n    The file was cut short: fetch it again.");
        assertThat(said("<!DOCTYPE osm [<!ENTITY a 'b'>]><osm version='0.6'>&a;</osm>"))
                .isEqualTo("1: found a document type or entity of its own, " + wanted + " without one" + again);
        assertThat(said(osm("<a>".repeat(30)))).isEqualTo("2: found elements nested deeper than 20, " + wanted + again);
        assertThat(said(osm(""))).isEqualTo("found an extract without data, " + wanted + again);
        assertThat(said(osm("<node id='1' lat='1' lon='1'/>"))).isEqualTo("found an extract without a way, " + wanted + again);
        assertThat(said("<?xml version='1.0' encoding='no-such'?><osm/>"))
                .isEqualTo("1: found an encoding that is not known here, expected UTF-8" + again);
        StringBuilder attributes = new StringBuilder();
        for (int i = 0; i < 101; i++) {
            attributes.append(" a").append(i).append("=''");
        }
        assertThat(said(osm("<node" + attributes + "/>"))).isEqualTo("2: node: found more than 100 attributes, " + wanted + again);
        assertThat(said(osm("<node id='1' lat='0' lon='0'/><way id='7'>" + "<nd ref='1'/>".repeat(100_001) + "</way>")))
                .isEqualTo("2: way: found more than 100000 nodes, expected fewer" + again);
    }

    @Test
    void compressedXmlThatIsNotWhole() {
        byte[] whole = gzip(osm("<node id='1' lat='1' lon='1'/>").repeat(20).getBytes(StandardCharsets.UTF_8));
        assertThat(said(Arrays.copyOf(whole, whole.length / 2)))
                .isEqualTo("found a compressed file (gzip) that is cut short or damaged, expected a whole one\n    Fetch or export it again.");
        byte[] latin = osm("<node id='1' lat='1' lon='1' user='Z\u00FCrich'/>").getBytes(StandardCharsets.ISO_8859_1);
        assertThat(said(latin)).endsWith("found bytes that do not fit the file's encoding, expected text in the encoding its first line names\n"
                + "    Fetch the file again.");
    }

    /** A small file that unpacks to a thousand times its size. */
    @Test
    void compressedXmlWithoutEnd() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (OutputStream packed = new GZIPOutputStream(out)) {
            packed.write("<osm version='0.6'>".getBytes(StandardCharsets.UTF_8));
            byte[] many = "<note/>".repeat(10_000).getBytes(StandardCharsets.UTF_8);
            for (int i = 0; i < 1000; i++) {
                packed.write(many);
            }
        }
        assertThat(said(out.toByteArray())).endsWith("found a file over 64 MB, expected less\n    Fetch the file again.");
    }
}
