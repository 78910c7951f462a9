package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.course.terrain.TileFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Seasons whose courses take their ground from a map, and their heights from tiles. */
class SeasonMapTest {

    @TempDir
    private Path folder;

    @BeforeEach
    void files() throws IOException {
        Files.copy(Path.of("docs/examples/workshops/cellar.yaml"), folder.resolve("cellar.yaml"));
        Files.copy(Path.of("docs/examples/riders/joss-steel.yaml"), folder.resolve("joss-steel.yaml"));
        Files.copy(Path.of("docs/examples/maps/sorrel-wood.gpx"), folder.resolve("wood.gpx"));
        Files.copy(Path.of("docs/examples/maps/sorrel-wood.osm"), folder.resolve("wood.osm"));
        Files.writeString(folder.resolve("mapped.osm"), Files.readString(Path.of("docs/examples/maps/sorrel-wood.osm")).replaceFirst(" copyright=\"[^\"]*\"", ""));
        TileFiles.hgt(folder.resolve("tiles"), "N49W009.hgt", 49, -9, 1201, (lat, lon) -> 200 + 150 * Math.sin(2 * Math.PI * lat / 0.01));
    }

    private CommandRun season(String event, String... options) throws IOException {
        Files.writeString(folder.resolve("season.yaml"), """
                season: One day
                riders:
                  - {name: Joss, rider: joss-steel.yaml, workshop: cellar.yaml}
                events:
                  - {course: wood.gpx, %s, date: 2026-06-01, role: race}
                """.formatted(event));
        String[] all = new String[options.length + 2];
        all[0] = "season";
        all[1] = folder.toString();
        System.arraycopy(options, 0, all, 2, options.length);
        return CommandRun.of(all);
    }

    /** Open Database Licence 1.0, section 4.3: whoever sees what was made from the data must be told of it. */
    @ParameterizedTest
    @ValueSource(strings = {"text", "markdown", "json", "csv", "html"})
    void whoMadeTheMapIsNamed(String format) throws IOException {
        CommandRun ran = season("map: mapped.osm", "--format", format);
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out()).contains("(c) OpenStreetMap contributors, ODbL 1.0");
        assertThat(season("map: wood.osm", "--format", format).out()).as("an invented place").doesNotContain("OpenStreetMap contributors");
    }

    @Test
    void heightsComeFromTiles() throws IOException {
        CommandRun flat = season("map: wood.osm", "--format", "json");
        CommandRun raised = season("map: wood.osm, elevation: tiles", "--format", "json");
        assertThat(raised.code()).as(raised.err()).isZero();
        assertThat(raised.out()).isNotEqualTo(flat.out());
    }

    @Test
    void tilesThatAreNotInTheFolderAreRefused() throws IOException {
        assertThat(season("elevation: far").err()).endsWith("season.yaml:5: elevation: found \"far\", which is no folder here, "
                + "expected a folder with elevation tiles in the season's folder\n    Copy the tiles into it.\n");
        assertThat(season("elevation: ../tiles").err()).endsWith("season.yaml:5: elevation: found \"../tiles\", expected a path inside the season's folder\n"
                + "    Copy the file into it.\n");
        Files.createSymbolicLink(folder.resolve("link"), Path.of("docs").toAbsolutePath());
        assertThat(season("elevation: link").code()).isEqualTo(2);
    }
}
