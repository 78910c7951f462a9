package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TerminalTest {

    /** NO_COLOR by its convention (no-color.org): present and not an empty string, whatever its value. */
    @ParameterizedTest
    @CsvSource({
        "1, , xterm, true",
        "0, , xterm, false",
        "1, 1, xterm, false",
        "1, 0, xterm, false",
        "1, '', xterm, true",
        "1, , dumb, false",
    })
    void coloursNeedATerminalAndNoRefusal(String tty, String noColour, String term, boolean colours) {
        Properties properties = new Properties();
        properties.setProperty("courseworthy.tty", tty);
        Map<String, String> environment = noColour == null
                ? Map.of("TERM", term) : Map.of("TERM", term, "NO_COLOR", noColour);
        assertThat(Terminal.of(properties, environment)).isEqualTo(new Terminal(colours, false, false, 80));
    }

    @ParameterizedTest
    @CsvSource({"1, true", "0, false", "'', false"})
    void tracesAreShownWhenAsked(String value, boolean trace) {
        assertThat(Terminal.of(new Properties(), Map.of("COURSEWORTHY_TRACE", value)).trace()).isEqualTo(trace);
    }

    /** What is no number of columns, as from a terminal that does not say, leaves the usual width. */
    @ParameterizedTest
    @CsvSource({"72, 72", "200, 200", "'', 80", "0, 80", "-5, 80", "wide, 80", "99999999999, 80"})
    void theWidthIsTheTerminals(String columns, int width) {
        Properties properties = new Properties();
        properties.setProperty("courseworthy.columns", columns);
        assertThat(Terminal.of(properties, Map.of()).width()).isEqualTo(width);
    }

    @Test
    void aPageIsAsWideAsTheTerminalAndAFileIsNot(@TempDir Path folder) throws IOException {
        Terminal wide = new Terminal(false, false, false, 96);
        assertThat(CommandRun.of(wide, "topics").out().lines().findFirst()).hasValueSatisfying(line -> assertThat(line).hasSize(96));
        String file = folder.resolve("topics.txt").toString();
        assertThat(CommandRun.of(wide, "topics", "-o", file).code()).isZero();
        assertThat(Files.readAllLines(Path.of(file)).get(0)).hasSize(80);
    }
}
