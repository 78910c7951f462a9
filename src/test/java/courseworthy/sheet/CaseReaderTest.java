package courseworthy.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Slips in a file of cases, each alone, and all that is said of it. */
class CaseReaderTest {

    private static final String GOOD = """
            cases for: Mine
            cases:
              - rule: long
                fires: {five hours: {hours: 5:00 h}}
                silent: {an hour: {hours: 1:00 h}}
              - {call: a day, course: c.yaml, fires: long}
            """;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "cases for: Mine | cases for: Yours | c.yaml:1: cases for: found \"Yours\", expected the title of the sheet beside it, \"Mine\"",
        "fires: {five hours: {hours: 5:00 h}} | fires: five hours | c.yaml:4: fires: found \"five hours\", expected sentences, each with its facts",
        "{hours: 5:00 h} | 5:00 h | 'c.yaml:4: five hours: found \"5:00 h\", expected facts, such as {roughness: 2.4}'",
        "{hours: 5:00 h} | '{hours: 5:00 h, says: often}' | 'c.yaml:4: say: found \"often\", expected a block of topics, such as {fork travel: at least 120 mm}'",
        "{hours: 5:00 h} | '{hours: 5:00 h, says: {easiest gear: prefer ratio needed on the last climb}}' | c.yaml:4: easiest gear: found"
                + " \"ratio needed on the last climb\", expected the value that comes of it in this case;Give the measure among the facts, and work the value out.",
        "{hours: 5:00 h} | '{hours: 5:00 h, does: later}' | 'c.yaml:4: does: found \"later\", expected by, needs, critical and after, such as {by: night before}'",
        "{hours: 1:00 h} | '{hours: 1:00 h, says: {plugs: prefer 3}}' | c.yaml:5: an hour: found what comes of it where it must not apply, expected facts alone;"
                + "Move says and does to a case under fires or still fires.",
        "', fires: long' | '' | c.yaml:6: call: found nothing that must come of it, expected expect, firmness, fires or silent",
        "fires: long | 'fires: [{long: yes}]' | c.yaml:6: fires: found a block of keys, expected ids of rules",
        "', course: c.yaml' | '' | c.yaml:6: call: found no course, expected course, or measures;Add a line \"course: ...\".",
        "fires: long | 'fires: long, measures: {hours: 5:00 h}' | c.yaml:6: measures: found a course besides, expected either a course or measures",
        "fires: long | 'fires: long, rider: [kim.yaml]' | c.yaml:6: rider: found a list, expected a file beside this one, or what would stand in it",
        "course: c.yaml | 'measures: {hours: 5:00 h}, rider: kim.yaml' | c.yaml:6: rider: found no course for it, expected only measures, or a course too;"
                + "Write what is known of rider and day under measures."})
    void aSlipIsSaidInFull(String good, String wrong, String message) throws IOException {
        assertThat(GOOD).contains(good);
        Faults faults = new Faults();
        CaseReader.read(Files.writeString(folder.resolve("c.yaml"), GOOD.replace(good, wrong)), "c.yaml", "Mine", faults);
        assertThat(faults.faults()).extracting(Fault::text).containsExactly(message.replace(";", "\n    "));
    }
}
