package courseworthy.engine;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.text.YamlReader;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Slips in the table of real gears, each alone, and all that is said of it. */
class GearPairsReaderTest {

    private static final String GOOD = """
            real pairs: A table
            cassettes:
              11-34 five: [11, 15, 20, 26, 34]
            pairs:
              - {bikes: [road], cassettes: [11-34 five], rings: [50/34]}
            """;

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "26, 34 | 34, 26, 34 | 11-34 five: found \"26\", expected sprockets of 9 to 59 teeth, smallest first|3",
        "rings: [50/34] | rings: [50-34] | rings: found \"50-34\", expected one ring such as 34, or two such as 50/34|5",
        "rings: [50/34] | rings: [34/50] | 'rings: found 34/50 with 11-34 five, expected gears within the bounds of the topics, larger ring first'|5"})
    void aSlipIsSaidInFull(String good, String wrong, String message, int line) {
        assertThat(GOOD).contains(good);
        Faults faults = new Faults();
        GearPairsReader.decode(YamlReader.read(GOOD.replace(good, wrong).getBytes(StandardCharsets.UTF_8), "g.yaml", faults), "g.yaml", faults);
        assertThat(faults.faults()).extracting(Fault::text).contains("g.yaml:" + line + ": " + message);
    }

    @ParameterizedTest
    @CsvSource({"12-34 five", "11-36 five", "eleven to thirty-four"})
    void aCassetteIsNamedByItsSprockets(String name) {
        Faults faults = new Faults();
        GearPairsReader.decode(YamlReader.read(GOOD.replace("11-34 five", name).getBytes(StandardCharsets.UTF_8), "g.yaml", faults), "g.yaml", faults);
        assertThat(faults.faults()).extracting(Fault::text).contains("g.yaml:3: cassettes: found \"" + name
                + "\", expected a name such as 10-50 twelve, of its first and last sprocket");
    }
}
