package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A sheet that is only begun, with no row of advice yet, is answered like any other. */
class SheetWithoutRowsTest {

    @ParameterizedTest
    @ValueSource(strings = {"values:\n  long day: {value: \"6:00 h\", because: Beyond six hours riders live on what they eat.}\n",
        "leave out:\n  - {rule: shipped/keep-the-proven-saddle, because: We try saddles in winter.}\n"})
    void everyCommandAnswers(String rest, @TempDir Path folder) throws IOException {
        String sheet = Files.writeString(folder.resolve("s.yaml"), "sheet: Begun\nauthor: a coach\n" + rest).toString();
        for (String command : new String[] {"sheet check", "sheet check --gaps", "sheet test", "sheet test --cover", "sheet impact"}) {
            CommandRun ran = CommandRun.of((command + " " + sheet).split(" "));
            assertThat(ran.code()).as(command + ": " + ran.err()).isBetween(0, 2);
        }
        CommandRun brief = CommandRun.of("brief", "course-profiles/fernbrake.yaml", "--sheet", sheet);
        assertThat(brief.code()).as(brief.err()).isZero();
    }
}
