package courseworthy.task;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Slips in a set-up, each alone, and all that is said of it. */
class SetUpReaderTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "umbrella=open | found \"umbrella\", expected a topic;'courseworthy topics' lists them.",
        "front tyre widht=45 mm | found \"front tyre widht\", expected a topic;Did you mean \"front tyre width\"?",
        "front tyre width=400 mm | front tyre width: found \"400 mm\", expected from 23 mm to 75 mm",
        "front insert=maybe | front insert: found \"maybe\", expected one of: none, fitted"})
    void aSlipIsSaidInFull(String written, String message) {
        Faults faults = new Faults();
        assertThat(new SetUpReader(faults).read(written)).isEmpty();
        assertThat(faults.faults()).extracting(Fault::text).containsExactly("--set: " + message.replace(";", "\n    "));
    }
}
