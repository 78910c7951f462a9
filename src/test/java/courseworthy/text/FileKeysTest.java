package courseworthy.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.units.Dimension;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Keys that a reader declares, read from blocks. */
class FileKeysTest {

    private final Faults faults = new Faults();
    private final FileKeys keys = new FileKeys();
    private final FileKey<Double> mass = keys.amount("mass", "As weighed", Dimension.MASS, 1, 2, "a mass from 1 kg to 2 kg");
    private final FileKey<Integer> laps = keys.others("bike").whole("laps", "", 1, 9);
    private final FileKey<Boolean> lights = keys.yesNo("lights", "");
    private final FileKey<String> going = keys.word("going", "", List.of("dry", "wet"));
    private final FileKey<String> notes = keys.line("notes", "", 5);
    private final FileKey<List<String>> tags = keys.names("tags", "");

    private FieldReader block(String yaml) {
        return new FieldReader("x.yaml", YamlReader.read(yaml.getBytes(StandardCharsets.UTF_8), "x.yaml", faults), faults);
    }

    private List<Object> read(String yaml) {
        FieldReader from = block(yaml);
        List<Object> out = new ArrayList<>();
        for (FileKey<?> key : List.of(mass, laps, lights, going, notes, tags)) {
            out.add(key.read(from));
        }
        return out;
    }

    @Test
    void valuesAreReadInTheirForms() {
        assertThat(read("{mass: 1500 g, laps: 3, lights: yes, going: wet, notes: 'a ', tags: [b, c]}"))
                .containsExactly(1.5, 3, true, "wet", "a", List.of("b", "c"));
        assertThat(read("{}")).containsExactly(null, null, null, null, "", List.of());
        assertThat(faults.faults()).isEmpty();
    }

    @Test
    void whatIsOutOfBoundsIsRefused() {
        read("mass: 3 kg\nlaps: 10\nlights: dim\ngoing: damp\nnotes: too long\ntags: 'b, c'");
        assertThat(faults.faults()).extracting(Fault::text).satisfiesExactly(
                fault -> assertThat(fault).contains("x.yaml:1: mass: found \"3 kg\", expected a mass from 1 kg to 2 kg"),
                fault -> assertThat(fault).contains("x.yaml:2: laps: found \"10\", expected a whole number from 1 to 9"),
                fault -> assertThat(fault).contains("x.yaml:3: lights: found \"dim\", expected yes or no"),
                fault -> assertThat(fault).contains("x.yaml:4: going: found \"damp\", expected one of: dry, wet"),
                fault -> assertThat(fault).contains("x.yaml:5: notes: found 8 characters, expected at most 5"),
                fault -> assertThat(fault).contains("x.yaml:6: tags: found \"b, c\", which is one text, expected each by itself"));
    }

    @Test
    void theyStandInTheOrderOfTheirDeclaration() {
        assertThat(keys.names()).containsExactly("mass", "bike", "laps", "lights", "going", "notes", "tags");
        assertThat(keys.all()).extracting(FileKey::form).containsExactly(FileKey.Form.AMOUNT, FileKey.Form.OTHER, FileKey.Form.WHOLE, FileKey.Form.YES_NO,
                FileKey.Form.WORD, FileKey.Form.LINE, FileKey.Form.NAMES);
    }

    @Test
    void noNameStandsForTwo() {
        assertThatThrownBy(() -> keys.yesNo("laps", "")).isInstanceOf(IllegalStateException.class).hasMessage("two keys laps");
    }
}
