package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.course.terrain.TileFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Heights from tiles through the commands that take {@code --elevation}. */
class ElevationTilesOptionTest {

    private static final String EXTRACT = "docs/examples/maps/sorrel-wood.osm";
    private static final Pattern ASCENT = Pattern.compile("\"ascent_m\"\\s*:\\s*([0-9.]+)");

    @TempDir
    private Path folder;
    private Path track;
    private Path tiles;

    @BeforeEach
    void files() throws IOException {
        track = Files.copy(Path.of("docs/examples/maps/sorrel-wood.gpx"), folder.resolve("wood.gpx"));
        tiles = folder.resolve("tiles");
        Matcher first = Pattern.compile("lat=\"(-?[0-9.]+)\" lon=\"(-?[0-9.]+)\"").matcher(Files.readString(track));
        assertThat(first.find()).isTrue();
        int south = (int) Math.floor(Double.parseDouble(first.group(1)));
        int west = (int) Math.floor(Double.parseDouble(first.group(2)));
        String name = String.format("%s%02d%s%03d.hgt", south < 0 ? "S" : "N", Math.abs(south), west < 0 ? "W" : "E", Math.abs(west));
        // Hills 80 m high, about 1.1 km from top to top northward.
        TileFiles.hgt(tiles, name, south, west, 1201, (lat, lon) -> 200 + 40 * Math.sin(2 * Math.PI * lat / 0.01));
    }

    private static double ascent(String json) {
        Matcher found = ASCENT.matcher(json);
        assertThat(found.find()).as(json).isTrue();
        return Double.parseDouble(found.group(1));
    }

    @Test
    void aTrackWithoutHeightsIsGivenSome() {
        CommandRun flat = CommandRun.of("course", track.toString());
        CommandRun raised = CommandRun.of("course", track.toString(), "--elevation", tiles.toString());

        assertThat(flat.out()).contains("The track has no elevation.").doesNotContain("Heights come from elevation tiles");
        assertThat(raised.code()).as(raised.err()).isZero();
        assertThat(raised.out().replaceAll("\\s+", " ")).contains("Heights come from elevation tiles (", "a height every 93 m), since the track has none.")
                .doesNotContain("The track has no elevation.");
    }

    @Test
    void anImportKeepsTheHeightsInATrackOfItsOwn() throws IOException {
        Path profile = folder.resolve("club/wood.yaml");
        Files.createDirectories(profile.getParent());

        CommandRun ran = CommandRun.of("import", track.toString(), "--map", EXTRACT, "--elevation", tiles.toString(), "-o", profile.toString(), "--no-cache");

        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(Files.readString(profile)).contains("track: \"wood.gpx\"");
        double direct = ascent(CommandRun.of("brief", track.toString(), "--map", EXTRACT, "--elevation", tiles.toString(), "--no-cache", "--format", "json").out());
        double kept = ascent(CommandRun.of("brief", profile.toString(), "--format", "json").out());
        assertThat(direct).isGreaterThan(100);
        // Smoothed once more when it is read again.
        assertThat(kept).isEqualTo(direct, within(0.05 * direct));
    }

    @Test
    void anImportOverwritesNoTrack() throws IOException {
        Files.createDirectories(folder.resolve("club"));
        Path taken = Files.writeString(folder.resolve("club/wood.gpx"), "mine");

        CommandRun ran = CommandRun.of("import", track.toString(), "--map", EXTRACT, "--elevation", tiles.toString(), "-o",
                folder.resolve("club/wood.yaml").toString(), "--no-cache");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("another track beside it, wood.gpx", "a name that is free for the profile and for its track with heights");
        assertThat(Files.readString(taken)).isEqualTo("mine");
        assertThat(folder.resolve("club/wood.yaml")).doesNotExist();
    }

    @Test
    void aFolderWithoutTilesIsAFault() {
        CommandRun ran = CommandRun.of("brief", track.toString(), "--elevation", folder.resolve("none").toString());

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("none: found no such folder, expected a folder with elevation tiles (.hgt, .tif)");
    }

    @Test
    void aProfileWithoutATrackSaysThatTilesAreOfNoUse() {
        CommandRun ran = CommandRun.of("course", "course-profiles/market-roads.yaml", "--elevation", tiles.toString());

        assertThat(ran.code()).isZero();
        assertThat(ran.out().replaceAll("\\s+", " ")).contains("A profile without a track has no place on elevation tiles: its climbing is as it is written.");
    }
}
