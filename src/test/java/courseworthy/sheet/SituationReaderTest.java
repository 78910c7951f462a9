package courseworthy.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Facts that no day has are slips; the limits are those of the readers of riders, events and courses. */
class SituationReaderTest {

    private final Faults faults = new Faults();

    private List<String> said(String facts) {
        Node.Mapping tree = YamlReader.read((facts + "\n").getBytes(StandardCharsets.UTF_8), "s.yaml", faults);
        new SituationReader("s.yaml", faults).called(Situation.NONE, "situation", tree);
        return faults.faults().stream().map(Fault::text).toList();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"rider mass: 900 kg | rider mass: found \"900 kg\", expected between 30.0 kg and 200.0 kg",
        "hours: -3:00 h | hours: found \"-3:00 h\", expected a time with its unit, such as 6:30 h, 4 h, 45 min or 40 s",
        "hours: -3 h | hours: found \"-3 h\", expected between 0:00 h and 3000:00 h", "roughness: 9.5 | roughness: found \"9.5\", expected between smooth (0.0) and severe (5.0)",
        "stretches: [{length: 1 m, ascent: 3000 m}] | stretches: found 3000 m up and down in 0.00 km, expected less climbing and descending than it is long",
        "stretches: [{length: 2 km, ledge height: 30 m}] | ledge height: found \"30 m\", expected between 0.00 m and 5.00 m",
        "date: 9999-05-09 | date: found \"9999-05-09\", expected a day of the calendar such as 2026-05-09",
        "front reference pressure: 2.1 bar | front reference pressure: found what follows from decisions, expected what it follows from"})
    void nonsenseIsRefused(String facts, String message) {
        assertThat(said(facts)).hasSize(1).allMatch(text -> text.startsWith("s.yaml:1: " + message));
    }

    /** Each slip alone, and all that is said of it. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "front reference pressure: 2.1 bar | front reference pressure: found what follows from decisions, expected what it follows from;"
                + "It is worked out from other figures: write start-line mass, and under decided the bike, tyre widths, casings and inserts.",
        "rider: [Kim, Robin] | rider: found a list, expected one name",
        "decided: gravel | decided: found \"gravel\", expected topics, such as {bike: gravel}",
        "stretches: [{surface: sand}] | stretches: found a block of keys, expected stretches, each with its length, such as {length: 1.5 km}",
        "hours: [4:00 h] | hours: found a list, expected one value"})
    void aSlipIsSaidInFull(String facts, String message) {
        assertThat(said(facts)).containsExactly("s.yaml:1: " + message.replace(";", "\n    "));
    }

    @ParameterizedTest
    @ValueSource(strings = {"rider mass: 30 kg", "roughness: severe", "stretches: [{length: 20 m, ascent: 12 m}]", "highest point: -420 m", "coldest temperature: -30 C",
        "decided: {fork travel: 10 mm}"})
    void whatThereIsIsTaken(String facts) {
        assertThat(said(facts).stream().filter(text -> !text.contains("\"severe\""))).isEmpty();
    }

    @Test
    void severalTagsInOneTextAreAsked() {
        assertThat(said("rider tag: under 15, beginner")).containsExactly("s.yaml:1: rider tag: found \"under 15, beginner\", which is one name, expected a name "
                + "or one of [a, b]\n    Write a list: [under 15, beginner]; what has a comma in it goes in quotes there.");
    }
}
