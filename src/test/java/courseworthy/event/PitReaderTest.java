package courseworthy.event;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.text.YamlReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PitReaderTest {

    private final Faults faults = new Faults();

    private List<Pit> read(String text) {
        return EventReader.read(YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "e.yaml", faults), "e.yaml", faults).plan().pits();
    }

    @Test
    void pitsAreReadInTheOrderOfALap() {
        assertThat(read("laps: 6\npits:\n  - {at: 2.3 km, bottles: yes}\n  - {at: 0 km, helper: yes, bottles: yes, wheels: yes, bike: yes}\n"))
                .containsExactly(new Pit(0, true, true, true, true, 4), new Pit(2300, false, true, false, false, 3));
        assertThat(faults.faults()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "laps: 6~pits: [{bottles: yes}]|e.yaml:2: at: found nothing, expected the distance from the start of the lap Add a line \"at: ...\".",
            "laps: 6~pits: [{at: 1 km, helper: yes}]|e.yaml:2: pits: found a pit where nothing may wait, expected bottles, wheels or bike Add what may wait there, such as \"bottles: yes\".",
            "laps: 6~pits: [{at: -1 km, bottles: yes}]|e.yaml:2: at: found \"-1 km\", expected a distance within a lap, from 0 km",
            "laps: 1~pits: [{at: 1 km, bottles: yes}]|e.yaml:2: pits: found pits on a course of one lap, expected laps, of 2 or more Add \"laps: 6\", or list the points under support.",
            "laps: 6~pits: [{at: 1 km, bottles: yes}, {at: 1 km, wheels: yes}]|e.yaml:2: at: found \"1 km\" a second time, expected each pit once Put what waits there into one line.",
            "laps: 6~rules: {outside help: forbidden}~pits: [{at: 1 km, helper: yes, bottles: yes}]|e.yaml:3: helper: found a helper where the rules forbid outside help, expected one of the two Leave the helper out, or correct \"outside help\"."})
    void aSlipIsSaidInFull(String text, String message) {
        read(text.replace('~', '\n'));
        assertThat(faults.faults()).extracting(Fault::text).extracting(said -> said.replaceAll("\\s+", " ")).containsExactly(message);
    }
}
