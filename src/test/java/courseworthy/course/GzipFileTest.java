package courseworthy.course;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tracks compressed as RFC 1952 has it are read as they are, unpacked no further than a track may be long. */
class GzipFileTest {

    private static final String HILL = Points.track("<trkpt lat=\"47\" lon=\"9\"><ele>400</ele></trkpt><trkpt lat=\"47.01\" lon=\"9\"><ele>420</ele></trkpt>"
            + "<trkpt lat=\"47.02\" lon=\"9\"><ele>440</ele></trkpt>");

    @TempDir
    private Path folder;

    private final Faults faults = new Faults();

    private static byte[] packed(byte[] bytes) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(out)) {
            gzip.write(bytes);
        }
        return out.toByteArray();
    }

    private static byte[] packed(String text) throws IOException {
        return packed(text.getBytes(StandardCharsets.UTF_8));
    }

    private Course read(String name, byte[] bytes) throws IOException {
        return CourseReader.read(Files.write(folder.resolve(name), bytes), name, null, faults);
    }

    private String said() {
        assertThat(faults.faults()).hasSize(1);
        return faults.faults().get(0).text();
    }

    @Test
    void isReadUnderAnyName() throws IOException {
        Course plain = read("hill.gpx", HILL.getBytes(StandardCharsets.UTF_8));
        for (String name : new String[] {"hill.gpx.gz", "hill.gz", "other.gpx", "hill"}) {
            Course packed = read(name, packed(HILL));
            assertThat(packed.length()).isEqualTo(plain.length());
            assertThat(packed.climbing()).isEqualTo(plain.climbing());
        }
        assertThat(read("hill.gpx.gz", packed(HILL.replaceAll("<name>.*?</name>", ""))).name()).isEqualTo("hill");
        assertThat(faults.faults()).isEmpty();
    }

    @Test
    void isReadBehindAProfile() throws IOException {
        Files.write(folder.resolve("hill.gpx.gz"), packed(HILL));
        Course course = read("p.yaml", "name: Hill\ntrack: hill.gpx.gz\n".getBytes(StandardCharsets.UTF_8));
        assertThat(faults.faults()).isEmpty();
        assertThat(course.track()).isNotNull();
    }

    @Test
    void whatIsCutShortIsSaidSo() throws IOException {
        byte[] whole = packed(HILL);
        for (int length : new int[] {4, 12, whole.length - 9}) {
            Faults own = new Faults();
            CourseReader.read(Files.write(folder.resolve("cut.gpx.gz"), Arrays.copyOf(whole, length)), "cut.gpx.gz", null, own);
            assertThat(own.faults()).extracting(Fault::text).as("of %d bytes", length).containsExactly("cut.gpx.gz: found a compressed file (gzip) that is "
                    + "cut short or damaged, expected a whole one\n    Fetch or export it again.");
        }
    }

    @Test
    void anotherFileInItIsSaidSo() throws IOException {
        read("profile.yaml.gz", packed("stretches: [{length: 1 km}]"));
        assertThat(said()).isEqualTo("profile.yaml.gz: found a compressed file (gzip) with no XML in it, expected a course profile (.yaml) or a GPX track "
                + "(.gpx, .gpx.gz)\n    Unpack it first: gunzip, or what opens archives on your machine.");
    }

    /** A megabyte that unpacks to more than a thousand times as much: no more of it is unpacked than a file may have. */
    @Test
    void aBombIsUnpackedNoFurtherThanAFileMayGo() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(out)) {
            gzip.write("<?xml version=\"1.0\"?><gpx version=\"1.1\" xmlns=\"http://www.topografix.com/GPX/1/1\"><!--".getBytes(StandardCharsets.UTF_8));
            byte[] blank = new byte[1 << 20];
            Arrays.fill(blank, (byte) ' ');
            for (int i = 0; i < 300; i++) {
                gzip.write(blank);
            }
        }
        read("bomb.gpx.gz", out.toByteArray());
        assertThat(said()).contains("a single element or text over 1 MB");
    }
}
