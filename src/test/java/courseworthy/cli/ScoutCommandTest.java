package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.jenetics.jpx.GPX;
import io.jenetics.jpx.WayPoint;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ScoutCommandTest {

    private static final String HALF = "src/test/resources/courseworthy/scout/half-known.yaml";

    @TempDir
    private Path folder;

    @Test
    void textFitsATerminal() {
        CommandRun ran = CommandRun.of("scout", HALF);

        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        assertThat(ran.out().lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
        assertThat(ran.out()).startsWith("Half Known Round                                   where to look before you ride\n")
                .contains("The ground is not known for sure on 5.0 km of 19.0 km.", "\n1. LOOK AT 5.0 KM ", "km 5.00-9.00; km 15.00-16.00",
                        "Look for surface (asphalt, compacted, gravel, ground); smoothness (good,", "surface=gravel, smoothness=bad ");
    }

    @Test
    void aCourseThatIsKnownHasNothingToLookAt() {
        CommandRun ran = CommandRun.of("scout", "course-profiles/market-roads.yaml");

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("The ground is known on the whole course: there is nothing to look at.");
    }

    /** Read back with a library for GPX. */
    @Test
    void wayPointsLieWherePiecesBegin() throws IOException {
        StringBuilder track = new StringBuilder("<gpx xmlns=\"http://www.topografix.com/GPX/1/1\" version=\"1.1\" creator=\"x\"><trk><name>A &amp; B</name><trkseg>");
        for (int i = 0; i <= 100; i++) {
            track.append("<trkpt lat=\"").append(50 + i * 0.001).append("\" lon=\"-20\"/>");
        }
        Path file = Files.writeString(folder.resolve("a.gpx"), track.append("</trkseg></trk></gpx>"));
        Path out = folder.resolve("look.gpx");

        CommandRun ran = CommandRun.of("scout", file.toString(), "--format", "gpx", "-o", out.toString());

        assertThat(ran.code()).as(ran.err()).isZero();
        GPX gpx = GPX.read(out);
        assertThat(gpx.getMetadata().orElseThrow().getName()).contains("A & B");
        List<WayPoint> points = gpx.getWayPoints();
        assertThat(points).hasSize(1);
        assertThat(points.get(0).getLatitude().doubleValue()).isEqualTo(50, within(1e-6));
        assertThat(points.get(0).getName()).contains("Look 1, km 0.00 to 11.12");
        assertThat(points.get(0).getDescription()).contains("look for surface (asphalt, compacted, gravel, ground); smoothness (good, intermediate, bad, "
                + "very_bad, horrible); mtb:scale (1, 2)");
    }

    /** What was found is in the new profile, and scout asks of it no more. */
    @Test
    void anAnswerIsWrittenIntoANewProfile() throws IOException {
        Path to = folder.resolve("found.yaml");

        CommandRun ran = CommandRun.of("scout", HALF, "--answer", "5-9: surface=gravel, smoothness=bad", "--answer", "15-16: surface=ground, mtb:scale=1", "-o",
                to.toString());

        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(CommandRun.of("scout", to.toString()).out()).contains("there is nothing to look at");
        assertThat(CommandRun.of("course", to.toString()).out()).contains("19.0 km");
        CommandRun again = CommandRun.of("scout", HALF, "--answer", "5-9: surface=gravel", "-o", to.toString());
        assertThat(again.code()).isEqualTo(2);
        assertThat(again.err()).contains("something of that name");
    }

    @Test
    void anAnswerOnAMappedTrackKeepsTheTrack() throws IOException {
        Path to = folder.resolve("found.yaml");

        CommandRun ran = CommandRun.of("scout", "docs/examples/maps/sorrel-wood.gpx", "--map", "docs/examples/maps/sorrel-wood.osm", "--no-cache", "--answer",
                "2-3: surface=gravel, smoothness=very_bad", "-o", to.toString());

        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(Files.readString(to)).contains("track: \"sorrel-wood.gpx\"", "smoothness: very_bad  # by hand");
        assertThat(Files.mismatch(folder.resolve("sorrel-wood.gpx"), Path.of("docs/examples/maps/sorrel-wood.gpx"))).isEqualTo(-1);
        assertThat(CommandRun.of("brief", to.toString()).code()).isZero();
    }

    @Test
    void anAnswerWithoutAFileOrBesideARiderIsRefused() {
        CommandRun ran = CommandRun.of("scout", HALF, "--answer", "5-9: surface=gravel", "--rider", "docs/examples/riders/kim-cross-country.yaml");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("--output: found nothing, expected the name of a profile to write",
                "--answer: found a rider, an event or the like beside it, expected a course, with --ground, --map, --elevation, --recording and -o alone");
        assertThat(CommandRun.of("scout", HALF, "--answer", "5-9: surface=gravel", "--format", "json", "-o", "a.yaml").err())
                .contains("--format: found \"json\", expected text, as --answer writes a profile");
    }
}
