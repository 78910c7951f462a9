package courseworthy.course;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.InetSocketAddress;
import java.nio.channels.ServerSocketChannel;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What is taken from a GPX file and what is refused. The format: topografix.com/GPX/1/1, and 1/0. */
class GpxReaderTest {

    private static final String TWO = "<trkpt lat=\"47.1\" lon=\"9.5\"><ele>450.5</ele></trkpt><trkpt lat=\"47.2\" lon=\"9.6\"/>";
    private static final String WANTED = "a GPX file, version 1.0 or 1.1";

    @TempDir
    Path folder;

    private final Faults faults = new Faults();

    private GpxFile read(byte[] bytes) {
        try {
            return GpxReader.read(Files.write(folder.resolve("t.gpx"), bytes), "t.gpx", faults);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private GpxFile read(String text) {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    private List<String> said() {
        return faults.faults().stream().map(Fault::text).toList();
    }

    private static void assertTwo(GpxFile gpx) {
        assertThat(gpx.segments()).hasSize(1);
        assertThat(gpx.segments().get(0).lat()).containsExactly(47.1, 47.2);
        assertThat(gpx.segments().get(0).lon()).containsExactly(9.5, 9.6);
        assertThat(gpx.segments().get(0).elevation()).containsExactly(450.5, Double.NaN);
    }

    @Test
    void pointsAreReadAsWritten() {
        assertTwo(read(Points.track(TWO)));
        assertThat(said()).isEmpty();
    }

    @Test
    void prefixedNamespacesAndVersionOneNoughtAreRead() {
        String prefixed = Points.track(TWO).replace("xmlns=", "xmlns:g=").replaceAll("<(/?)(gpx|trk|trkseg|trkpt|ele)\\b", "<$1g:$2");
        assertTwo(read(prefixed));
        assertTwo(read(Points.track(TWO).replace("GPX/1/1", "GPX/1/0").replace("version=\"1.1\"", "version=\"1.0\"")));
        assertTwo(read(Points.track(TWO).replace(" xmlns=\"http://www.topografix.com/GPX/1/1\"", "")));
        assertThat(said()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"UTF-8", "ISO-8859-1", "UTF-16", "windows-1252"})
    void declaredEncodingsAreRead(String encoding) {
        String text = Points.file("<trk><name>H\u00f6he</name><trkseg>" + TWO + "</trkseg></trk>").replace("UTF-8", encoding);
        GpxFile gpx = read(text.getBytes(Charset.forName(encoding)));
        assertTwo(gpx);
        assertThat(gpx.name()).isEqualTo("H\u00f6he");
    }

    /** Written by some programs: the declaration says UTF-16, the bytes are UTF-8. */
    @Test
    void aDeclarationThatCannotBeTrueIsPassedOver() {
        assertTwo(read(Points.track(TWO).replace("UTF-8", "utf-16")));
    }

    @Test
    void aByteOrderMarkIsPassedOver() {
        assertTwo(read("\uFEFF" + Points.track(TWO)));
    }

    @Test
    void elementsOfOtherNamespacesAreNoPartOfThePoint() {
        GpxFile gpx = read(Points.track("<trkpt lat=\"47.1\" lon=\"9.5\"><extensions><x:ele xmlns:x=\"urn:x\">1</x:ele><ele>2</ele></extensions>"
                + "<ele> 450.5 </ele><x:ele xmlns:x=\"urn:x\">3</x:ele></trkpt><trkpt lat=\"47.2\" lon=\"9.6\"/>"));
        assertTwo(gpx);
    }

    @Test
    void segmentsAndTracksStayApart() {
        GpxFile gpx = read(Points.file("<wpt lat=\"1\" lon=\"2\"/><trk><trkseg>" + TWO + "</trkseg><trkseg/></trk><trk><trkseg>" + TWO
                + "</trkseg></trk><rte><rtept lat=\"5\" lon=\"5\"/></rte>"));
        assertThat(gpx.segments()).extracting(GpxFile.Segment::size).containsExactly(2, 0, 2);
        assertThat(gpx.route()).isFalse();
        assertThat(gpx.wayPoints()).isEqualTo(1);
    }

    @Test
    void aRouteIsReadWhereThereIsNoTrack() {
        GpxFile gpx = read(Points.file("<rte><name>Way</name>" + TWO.replace("trkpt", "rtept") + "</rte>"));
        assertTwo(gpx);
        assertThat(gpx.route()).isTrue();
        assertThat(gpx.name()).isEqualTo("Way");
    }

    @Test
    void namesAreKeptToOneLineOfBoundedLength() {
        assertThat(read(Points.file("<metadata><name>File</name></metadata><trk><name>A\n\tB<![CDATA[<b>]]></name><trkseg>" + TWO
                + "</trkseg></trk>")).name()).isEqualTo("A  B<b>");
        assertThat(read(Points.file("<metadata><name>File</name></metadata><trk><trkseg>" + TWO + "</trkseg></trk>")).name())
                .isEqualTo("File");
        assertThat(read(Points.file("<trk><name>" + "x".repeat(100_000) + "</name><trkseg>" + TWO + "</trkseg></trk>")).name())
                .hasSize(200);
    }

    @ParameterizedTest
    @CsvSource({"'', NaN", "NaN, NaN", "' ', NaN", "1e2, 100", "+7.25, 7.25", "-14.6, -14.6", "0, 0", ".5, 0.5", "5., 5",
            "123.456789012345678901, 123.456789012345678901"})
    void elevationsAreReadOrMissing(String written, double metres) {
        GpxFile gpx = read(Points.track("<trkpt lat=\"1\" lon=\"2\"><ele>" + written + "</ele></trkpt>"));
        assertThat(gpx.segments().get(0).elevation()).containsExactly(metres);
        assertThat(said()).isEmpty();
    }

    /** One piece of wrong text and the whole of what is said of it. */
    static List<Arguments> refused() {
        String lat = "decimal degrees from -90 to 90, such as 47.0756\n    ";
        String mend = "Correct or remove them, or export the track again.";
        return List.of(
                Arguments.of("a decimal comma", Points.track("\n" + TWO.replace("47.1", "47,1")),
                        "t.gpx:3: lat: found \"47,1\", expected " + lat + "Write decimals with a point. " + mend),
                Arguments.of("no number", Points.track("\n\n" + TWO.replace("47.1", "NaN")),
                        "t.gpx:4: lat: found \"NaN\", expected " + lat + mend),
                Arguments.of("out of range", Points.track(TWO.replace("9.5", "180.5")),
                        "t.gpx:2: lon: found \"180.5\", expected decimal degrees from -180 to 180, such as 9.5312\n    " + mend),
                Arguments.of("a hexadecimal number", Points.track(TWO.replace("47.1", "0x1p3")),
                        "t.gpx:2: lat: found \"0x1p3\", expected " + lat + mend),
                Arguments.of("no longitude", Points.track("<trkpt lat=\"1\"/>"),
                        "t.gpx:2: trkpt: found no \"lon\", expected lat and lon in decimal degrees\n    " + mend),
                Arguments.of("two wrong values", Points.track(TWO.replace("450.5", "450,5").replace("47.2", "147.2")),
                        "t.gpx:2: ele: found \"450,5\", expected metres as a decimal number, such as 450.5\n"
                                + "    2 values in the file are wrong; this is the first. Write decimals with a point. " + mend),
                Arguments.of("another XML file", "<kml/>",
                        "t.gpx:1: found an XML file that starts with <kml>, expected " + WANTED + ", which starts with <gpx>\n"
                                + "    Export the course as GPX."),
                Arguments.of("another namespace", Points.track(TWO).replace("http://www.topografix.com/GPX/1/1", "urn:other"),
                        "t.gpx:2: gpx: found the namespace \"urn:other\", expected \"http://www.topografix.com/GPX/1/1\"\n"
                                + "    Export the course as GPX 1.1."),
                Arguments.of("a web page", "\n<!DOCTYPE HTML>\n<html><p>Not found<br></html>",
                        "t.gpx: found a web page (HTML), expected " + WANTED + "\n    Fetch the file itself: its address gave a page instead."),
                Arguments.of("a document type", "<!DOCTYPE gpx>" + "<gpx/>",
                        "t.gpx:1: found a document type or entity of its own, expected " + WANTED + " without one\n"
                                + "    Export the track again, or remove the <!DOCTYPE ...> part."),
                Arguments.of("an entity without a document type", Points.track(TWO.replace("450.5", "&x;")),
                        "t.gpx:2: found a document type or entity of its own, expected " + WANTED + " without one\n"
                                + "    Export the track again, or remove the <!DOCTYPE ...> part."),
                Arguments.of("cut short in a tag", Points.track(TWO).substring(0, 190),
                        "t.gpx:2: trkseg: found the end of the file inside <trkseg>, expected a complete GPX file\n"
                                + "    The file was cut short: fetch or export it again."),
                Arguments.of("cut short after a tag", Points.track("\n" + TWO).replace("</trkseg></trk></gpx>\n", ""),
                        "t.gpx:3: trkseg: found the end of the file inside <trkseg>, expected a complete GPX file\n"
                                + "    The file was cut short: fetch or export it again."),
                Arguments.of("cut short after much", Points.track(("\n" + TWO).repeat(20_000)).replace("</trkseg></trk></gpx>\n", ""),
                        "t.gpx:20002: trkseg: found the end of the file inside <trkseg>, expected a complete GPX file\n"
                                + "    The file was cut short: fetch or export it again."),
                Arguments.of("tags that do not match", Points.track("\n<trkpt lat=\"1\" lon=\"2\"></wrong>\n"),
                        "t.gpx:3: trkpt: found broken XML, expected well-formed GPX\n    Export the track again."),
                Arguments.of("plain text", "just words\n",
                        "t.gpx:1: found text that is not XML, expected " + WANTED + "\n    Export the course as GPX."),
                Arguments.of("nothing", "", "t.gpx: found an empty file, expected " + WANTED + "\n    Export the course again."),
                Arguments.of("an unknown encoding", Points.track(TWO).replace("UTF-8", "UTF-99"),
                        "t.gpx:1: found an encoding that is not known here, expected UTF-8 or another common encoding\n"
                                + "    Save the file as UTF-8."));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refused")
    void isRefusedInOneMessage(String what, String text, String message) {
        assertThat(read(text)).isNull();
        assertThat(said()).containsExactly(message);
    }

    @Test
    void bytesThatDoNotFitTheEncodingAreRefused() {
        String text = Points.file("<trk><name>H\u00f6he</name></trk>");
        PrintStream before = System.err;
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        try {
            System.setErr(new PrintStream(err, true, StandardCharsets.UTF_8));
            assertThat(read(text.getBytes(StandardCharsets.ISO_8859_1))).isNull();
        } finally {
            System.setErr(before);
        }
        assertThat(err.size()).as("written to standard error").isZero();
        assertThat(said()).hasSize(1).first().asString().contains("found bytes that do not fit the file's encoding");
    }

    @Test
    void messagesDoNotDependOnTheUsersLanguage() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.JAPAN);
            read(Points.track(TWO).substring(0, 190));
            assertThat(said()).hasSize(1).first().asString().startsWith("t.gpx:2: trkseg: found the end of the file inside <trkseg>");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void nothingButTheFileIsOpened() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret"), "47.1");
        try (ServerSocketChannel server = ServerSocketChannel.open().bind(new InetSocketAddress("127.0.0.1", 0))) {
            server.configureBlocking(false);
            String there = "http://127.0.0.1:" + ((InetSocketAddress) server.getLocalAddress()).getPort() + "/x.dtd";
            for (String type : List.of("<!DOCTYPE gpx SYSTEM \"" + there + "\">", "<!DOCTYPE gpx [<!ENTITY x SYSTEM \"" + secret.toUri() + "\">]>",
                    "<!DOCTYPE gpx [<!ENTITY % p SYSTEM \"" + there + "\"> %p;]>")) {
                Faults found = new Faults();
                Path file = Files.writeString(folder.resolve("t.gpx"),
                        "<?xml version=\"1.0\"?>" + type + Points.track("<trkpt lat=\"1\" lon=\"2\"><ele>&x;</ele></trkpt>").substring(39));
                assertThat(GpxReader.read(file, "t.gpx", found)).isNull();
                assertThat(found.faults()).hasSize(1);
                assertThat(found.faults().get(0).found()).isEqualTo("a document type or entity of its own");
            }
            // A connection is made before whoever asks for it goes on, so one that was made waits here by now.
            assertThat(server.accept()).as("the reader reached for the network").isNull();
        }
    }

    @Test
    void bombsEndAtOnceInOneMessage() throws IOException {
        String schema = " xsi:schemaLocation=\"a b\" xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\"";
        List<String> bombs = List.of(
                Points.file("<a>".repeat(500_000)),
                Points.file("<trk><name>" + "<a>".repeat(500_000)),
                Points.track("<trkpt lat=\"1\" lon=\"" + "1".repeat(20_000_000) + "\"/>"),
                Points.file("<!--" + "x".repeat(20_000_000) + "-->"),
                Points.track(TWO.repeat(1000)).replace("creator", schema + " creator") + "x".repeat(5_000_000),
                "<!DOCTYPE gpx [" + "<!ENTITY a \"b\">".repeat(1_000_000) + "]><gpx/>",
                "x".repeat(20_000_000),
                "<?xml version=\"1.0\"?>" + " ".repeat(20_000_000));
        for (String bomb : bombs) {
            Faults found = new Faults();
            assertThat(taken(bomb, found)).as(bomb.substring(0, 200)).isLessThan(XmlText.MOST_AT_ONCE + 10_000);
            assertThat(found.faults()).as(bomb.substring(0, 200)).hasSize(1);
        }
    }

    /** How many characters the parser took in; what it takes in costs the same a character, so this bounds its work. */
    private long taken(String text, Faults found) throws IOException {
        long[] taken = new long[1];
        GpxReader.read(Files.writeString(folder.resolve("t.gpx"), text), "t.gpx", false, found, characters -> taken[0] = characters);
        return taken[0];
    }

    @Test
    void manyAttributesInOneElementAreRefused() throws IOException {
        StringBuilder attributes = new StringBuilder();
        for (int i = 0; i < 60_000; i++) {
            attributes.append(" a").append(i).append("=\"\"");
        }
        assertThat(taken(Points.track("<trkpt" + attributes + " lat=\"1\" lon=\"2\"/>"), faults)).isLessThan(XmlText.MOST_AT_ONCE);
        assertThat(said()).hasSize(1);
    }

    @Test
    void moreTextAtOnceThanATrackHasIsRefused() {
        read(Points.track("<trkpt lat=\"1\" lon=\"2\" name=\"" + "a".repeat(2 * XmlText.MOST_AT_ONCE) + "\"/>"));
        assertThat(said()).containsExactly("t.gpx:2: found a single element or text over 1 MB, expected " + WANTED + "\n"
                + "    Thin the track out, or export it without extensions.");
    }

    @Test
    void bytesOfAnotherEncodingAreRefused() {
        read(Points.file("<trk><name>H\u00f6he</name></trk>").getBytes(StandardCharsets.ISO_8859_1));
        assertThat(said()).containsExactly("t.gpx: found bytes that do not fit the file's encoding, expected text in the encoding its first line names\n"
                + "    Save the file as UTF-8.");
    }

    @Test
    void moreThanTheMostPointsAreRefused() {
        String point = "<trkpt lat=\"1\" lon=\"2\"/>";
        assertThat(read(Points.track(point.repeat(GpxReader.MOST_POINTS))).points()).isEqualTo(GpxReader.MOST_POINTS);
        assertThat(read(Points.track(point.repeat(GpxReader.MOST_POINTS + 1)))).isNull();
        assertThat(said()).containsExactly("t.gpx:2: trkpt: found more than 400000 points, expected at most 400000\n"
                + "    Thin the track out: one point every 5 m is plenty.");
    }

    @Test
    void aFolderAndAMissingFileAreSaidSo() {
        assertThat(GpxReader.read(folder, "x", faults)).isNull();
        assertThat(GpxReader.read(folder.resolve("none"), "y", faults)).isNull();
        assertThat(said()).containsExactly("x: found a folder, expected a file that can be read\n    Check the path and its permissions.",
                "y: found no such file, expected a file that can be read\n    Check the spelling of the path.");
    }

    @Test
    void brokenFilesNeverThrow() {
        byte[] good = Points.file("<metadata/><trk><name>N\u00e4me</name><trkseg>" + TWO.repeat(5) + "</trkseg></trk>").getBytes(StandardCharsets.UTF_8);
        Random random = new Random(11);
        for (int i = 0; i < 3000; i++) {
            byte[] bytes = good.clone();
            for (int n = 1 + random.nextInt(4); n > 0; n--) {
                bytes[random.nextInt(bytes.length)] = (byte) (random.nextBoolean() ? random.nextInt(256) : "<>&\"'/ =!?[]-".charAt(random.nextInt(13)));
            }
            Faults found = new Faults();
            GpxFile gpx;
            try {
                gpx = GpxReader.read(Files.write(folder.resolve("f.gpx"), bytes), "f.gpx", found);
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
            assertThat(gpx == null).as(new String(bytes, StandardCharsets.UTF_8)).isEqualTo(found.stop());
            assertThat(found.faults().size()).isLessThan(2);
        }
    }
}
