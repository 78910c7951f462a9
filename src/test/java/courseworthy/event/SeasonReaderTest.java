package courseworthy.event;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Slips in a season's file, each alone, and all that is said of it. */
class SeasonReaderTest {

    private static final String GOOD = """
            riders:
              - {name: Ann, workshop: w.yaml}
              - {name: Bea, workshop: w.yaml}
            events:
              - {course: c.yaml, starts: [{rider: Ann}]}
            """;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "name: Bea | name: Ann | season.yaml:3: name: found a second \"Ann\", expected a name of its own for every rider",
        "{rider: Ann} | {rider: Anne} | season.yaml:5: rider: found \"Anne\", expected a rider of this season: Ann, Bea;Did you mean \"Ann\"?",
        "{rider: Ann} | '{rider: Ann}, {rider: Ann}' | season.yaml:5: rider: found \"Ann\" a second time, expected each rider once",
        "{rider: Ann} | '{rider: Ann, may change: [tyre]}' | season.yaml:5: may change: found no bike, expected the bike on which only these may be changed;"
                + "Add \"bike: ...\".",
        "course: c.yaml | course: ../c.yaml | season.yaml:5: course: found \"../c.yaml\", expected a path inside the season's folder;Copy the file into it."})
    void aSlipIsSaidInFull(String good, String wrong, String message) throws IOException {
        assertThat(GOOD).contains(good);
        Faults faults = new Faults();
        SeasonReader.read(Files.writeString(folder.resolve("season.yaml"), GOOD.replace(good, wrong)), "season.yaml", faults);
        assertThat(faults.faults()).extracting(Fault::text).containsExactly(message.replace(";", "\n    "));
    }
}
