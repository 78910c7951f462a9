package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Hints on ground from a recorded ride, through the commands that take {@code --recording}. */
class RecordedRideOptionTest {

    private static final String TRACK = "docs/examples/maps/sorrel-wood.gpx";
    private static final String EXTRACT = "docs/examples/maps/sorrel-wood.osm";

    @TempDir
    private Path folder;

    /** The shipped track ridden at one speed, m/s. */
    private Path ride(double speed) throws IOException {
        StringBuilder out = new StringBuilder("<gpx xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>\n");
        double seconds = 0;
        double[] before = null;
        for (MatchResult each : Pattern.compile("lat=\"(-?[0-9.]+)\" lon=\"(-?[0-9.]+)\"").matcher(Files.readString(Path.of(TRACK))).results().toList()) {
            double[] at = {Double.parseDouble(each.group(1)), Double.parseDouble(each.group(2))};
            double length = before == null ? 0 : Math.hypot(at[0] - before[0], (at[1] - before[1]) * Math.cos(Math.toRadians(at[0]))) * 111_195;
            int steps = (int) Math.max(1, Math.round(length / 10));
            for (int i = before == null ? steps : 1; i <= steps; i++) {
                double share = (double) i / steps;
                seconds += length / steps / speed;
                out.append(String.format(Locale.ROOT, "<trkpt lat=\"%.7f\" lon=\"%.7f\"><time>%s</time></trkpt>%n",
                        before == null ? at[0] : before[0] + share * (at[0] - before[0]), before == null ? at[1] : before[1] + share * (at[1] - before[1]),
                        Instant.ofEpochMilli(1_714_557_600_000L + Math.round(seconds * 1000))));
            }
            before = at;
        }
        return Files.writeString(folder.resolve("ride.gpx"), out.append("</trkseg></trk></gpx>").toString());
    }

    @Test
    void anImportMarksWhatTheRideHintsAtAndReadsBack() throws IOException {
        Path profile = folder.resolve("wood.yaml");
        CommandRun ran = CommandRun.of("import", TRACK, "--map", EXTRACT, "--no-cache", "--recording", ride(7).toString(), "-o", profile.toString());
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out().replaceAll("\\s+", " ")).contains("The recorded ride hints at how rough the ground may be on 0.9 of the 3.0 km of unknown ground");
        assertThat(Files.readString(profile)).contains("a range by recorded-ride").contains("with hints from the recorded ride ride.gpx");
        assertThat(CommandRun.of("course", profile.toString()).code()).isZero();
    }

    @Test
    void aRideCountsAsOneOnTheRidersKindOfBike() throws IOException {
        Path rider = Files.writeString(folder.resolve("rider.yaml"), "bike: {kind: cross-country hardtail}\n");
        String ride = ride(7).toString();
        assertThat(notes("course", TRACK, "--map", EXTRACT, "--no-cache", "--recording", ride)).contains("as of a ride on a gravel bike");
        assertThat(notes("brief", TRACK, "--map", EXTRACT, "--no-cache", "--recording", ride, "--full", "--rider", rider.toString()))
                .contains("as of a ride on a cross-country hardtail bike").doesNotContain("as of a ride on a gravel bike");
    }

    private static String notes(String... arguments) {
        CommandRun ran = CommandRun.of(arguments);
        assertThat(ran.code()).as(ran.err()).isZero();
        return ran.out().replaceAll("\\s+", " ");
    }

    @Test
    void aProfileWithoutATrackCannotTakeARide() throws IOException {
        CommandRun ran = CommandRun.of("course", "course-profiles/market-roads.yaml", "--recording", ride(7).toString());
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).isEqualTo("--recording: found a course without a track, expected a course with a track, on which a ride has its place\n"
                + "    Name a GPX track, or a profile that names one.\n");
    }

    @Test
    void aRideThatIsNotThereOrHasNoTimesIsAFault() {
        assertThat(CommandRun.of("course", TRACK, "--recording", TRACK).err()).contains(TRACK + ": found a track without times");
        assertThat(CommandRun.of("course", TRACK, "--recording", folder.resolve("none.gpx").toString()).code()).isEqualTo(2);
    }
}
