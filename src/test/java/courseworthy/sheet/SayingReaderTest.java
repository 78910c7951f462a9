package courseworthy.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.claim.Rank;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.text.YamlReader;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Slips in what a row tests and says, each alone, and all that is said of it. */
class SayingReaderTest {

    private final Faults faults = new Faults();

    private void read(String text, Rank rank) {
        SheetReader.decode(YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "s.yaml", faults), "s.yaml", rank, 0, faults);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "fork travel | say: found \"fork travel\", expected a block of topics, such as {fork travel: at least 120 mm}",
        "{fork travel: {prefer: 120 mm}} | fork travel: found a block of keys, expected a verb and a value, or a list of them",
        "{front tyre width: at least shortest rear travel} | front tyre width: found \"shortest rear travel\", known once layer 2 is settled,"
                + " expected a measure known before layer 2"})
    void aSayingIsRefusedInFull(String say, String message) {
        read("sheet: One\nauthor: me\nadvice:\n  - id: a-row\n    say: " + say + "\n    because: So it is.\n", Rank.COACH);
        assertThat(faults.faults()).extracting(Fault::text).containsExactly("s.yaml:5: " + message);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{decided: gravel} | decided: found \"gravel\", expected a block of topics",
        "{any stretch: sand} | 'any stretch: found \"sand\", expected conditions on stretches, such as {sharp stones: yes, length: over 1 km}'",
        "{hours: {over: 4:00 h}} | 'hours: found a block of keys, expected over, under, at least, at most, between A and B, a value, or one of [a, b]'",
        "{roughness: [2.1, rugged]} | 'roughness: found \"rugged\", expected a number, such as 3.0'",
        "{roughness: ruggd} | 'roughness: found \"ruggd\", expected a number or one of: smooth, mixed, rough, rugged, severe;Did you mean \"rugged\"?'"})
    void aTestIsRefusedInFull(String when, String message) {
        read("sheet: One\nauthor: me\nadvice:\n  - id: a-row\n    when: " + when + "\n    say: {plugs: prefer 3}\n    because: So it is.\n", Rank.COACH);
        assertThat(faults.faults()).extracting(Fault::text).containsExactly("s.yaml:5: " + message.replace(";", "\n    "));
    }

    @Test
    void theShippedRulesLeaveNothingOut() {
        read("sheet: One\nauthor: me\nadvice:\n  - {id: a-row, evidence: practice, say: {plugs: prefer 3}, because: So it is.}\nleave out:\n"
                + "  - {rule: shipped/x, because: So it is.}\n", Rank.SHIPPED);
        assertThat(faults.faults()).extracting(Fault::text).containsExactly("s.yaml:6: leave out: found a leave-out, expected none in the shipped rules\n"
                + "    Remove the rule instead.");
    }
}
