package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.TextSlips;
import courseworthy.ToolOutput;
import courseworthy.browser.ExamplePages;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the commands say of the shipped examples reads as a careful writer would have it. */
class ExampleTextTest {

    static Stream<Map.Entry<String, List<String>>> commands() {
        return ExamplePages.commands().entrySet().stream();
    }

    @ParameterizedTest
    @MethodSource("commands")
    void noSlipStandsInAnyText(Map.Entry<String, List<String>> command) {
        List<String> line = new ArrayList<>(command.getValue());
        line.addAll(List.of("--format", "markdown"));
        assertThat(TextSlips.in(new ToolOutput().run(line.toArray(String[]::new)))).as(command.getKey()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"the the gear", "4:03 h (4:03 h (3:40 to 4:31))", "from 3 to 3 km", "so,, it is", "so , it is", "in 1 days", "in 12 evening", "a easy gear", "an tyre",
        "0 m of sand", "it is null"})
    void aSlipIsFound(String text) {
        assertThat(TextSlips.in(text)).hasSize(1);
    }

    @Test
    void whatIsNoSlipIsNotFound() {
        assertThat(TextSlips.in("A one-day race of 1 day, 2 days before; 34x50 (0.68), 3:40 to 4:31 h, 1.1 rides; an hour, 2.0 m of mud ...")).isEmpty();
    }
}
