package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A file of one kind where another is read is told of once, by what it is, and a slip in a file by one message that says what would be right. */
class MistakenFileTest {

    private static final String RIDER = "docs/examples/riders/sam-novice.yaml";

    @TempDir
    private Path folder;

    private static String refused(String... words) {
        CommandRun run = CommandRun.of(words);
        assertThat(run.code()).as(run.out()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        return run.err();
    }

    @ParameterizedTest
    @ValueSource(strings = {"sheet check ", "sheet impact --courses course-profiles none ", "brief course-profiles/fernbrake.yaml --sheet "})
    void aRiderIsNoSheet(String command) {
        assertThat(refused((command + RIDER).split(" "))).isEqualTo(RIDER + ": found a rider's file, expected a sheet of advice\n    Pass it with --rider.\n");
    }

    @Test
    void aSeasonAmongDebriefsIsNamedOnce() throws IOException {
        Files.copy(Path.of("docs/examples/season.yaml"), folder.resolve("season.yaml"));
        assertThat(refused("debrief", folder.toString())).isEqualTo(folder + "/season.yaml: found a season, expected a debrief\n    Its folder goes with: courseworthy season DIR\n");
    }

    private String rider(String line) throws IOException {
        return refused("brief", "course-profiles/fernbrake.yaml", "--rider", Files.writeString(folder.resolve("r.yaml"), "name: Al\n" + line + "\n").toString());
    }

    @Test
    void aSlipHasOneMessage() throws IOException {
        assertThat(rider("mass:")).isEqualTo(folder + "/r.yaml:2: mass: found nothing, expected a mass with its unit, such as 64 kg, 141 lb or 50 g\n"
                + "    Write the value after the colon, or remove the line.\n");
        assertThat(rider("power: 250 W\nheld for: 1:75 h")).endsWith("    Write the minutes with two digits, from 00 to 59, and the unit: 6:05 h.\n");
        assertThat(rider("mass: 64kg")).endsWith("    Put one space between the number and its unit.\n");
    }

    @Test
    void aWordThatIsNoListSaysWhatIsListed() throws IOException {
        Files.copy(Path.of("docs/examples/debriefs/three-becks.json"), folder.resolve("three-becks.json"));
        Path debrief = Files.writeString(folder.resolve("d.yaml"), "debrief: A day\nbrief: three-becks.json\npunctures: noe\n");
        assertThat(refused("debrief", debrief.toString())).isEqualTo(debrief + ":3: punctures: found \"noe\", expected none, or a list such as [{wheel: rear, cause: cut, at: 33 km}]\n"
                + "    Did you mean \"none\"?\n");
    }
}
