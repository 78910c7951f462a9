package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Properties;
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
        assertThat(Terminal.of(properties, environment)).isEqualTo(new Terminal(colours, false, false));
    }

    @ParameterizedTest
    @CsvSource({"1, true", "0, false", "'', false"})
    void tracesAreShownWhenAsked(String value, boolean trace) {
        assertThat(Terminal.of(new Properties(), Map.of("COURSEWORTHY_TRACE", value)).trace()).isEqualTo(trace);
    }
}
