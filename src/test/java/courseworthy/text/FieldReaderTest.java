package courseworthy.text;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.units.Dimension;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FieldReaderTest {

    private static final String LENGTH = "a length with its unit, such as 84 km, 52 mi, 1900 m, 6200 ft, 57 mm or 2.25 in";

    private final Faults faults = new Faults();

    private FieldReader fields(String text) {
        return new FieldReader("f.yaml", YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "f.yaml", faults), faults);
    }

    private List<String> said() {
        return faults.faults().stream().map(Fault::text).toList();
    }

    private List<String> warned() {
        return faults.warnings().stream().map(Fault::text).toList();
    }

    /** Values in metres: international yard and pound agreement of 1959, 1 ft = 0.3048 m, so 1 mi = 1609.344 m, 1 in = 25.4 mm. */
    @ParameterizedTest
    @CsvSource({"84 km, 84000", "52 mi, 83685.888", "1900 m, 1900", "6200 ft, 1889.76", "57 mm, 0.057", "2.25 in, 0.05715",
            "0.5 m, 0.5", "-3 m, -3"})
    void amountsAreReadInTheirBaseUnit(String written, double metres) {
        assertThat(fields("x: " + written).amount("x", Dimension.LENGTH).inBase()).isEqualTo(metres);
        assertThat(said()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "84|Add the unit, one of: km, mi, m, ft, cm, mm, in.",
            "84km|Put one space between the number and its unit.",
            "8,4 km|Write the decimal with a point and no thousands separator.",
            "1,000 m|Write the decimal with a point and no thousands separator.",
            "1_000 m|Put one space between the number and its unit.",
            "84  km|",
            "1e3 m|Put one space between the number and its unit.",
            "010 km|",
            ".5 km|",
            "5. km|",
            "84 kg|",
            "84 KM|",
            "far|"})
    void whatIsNoAmountIsRefused(String written, String mend) {
        assertThat(fields("a: 1\nx: " + written).amount("x", Dimension.LENGTH)).isNull();
        assertThat(said()).containsExactly("f.yaml:2: x: found \"" + written + "\", expected " + LENGTH
                + (mend == null ? "" : "\n    " + mend));
    }

    @Test
    void anAmountOutOfBoundsIsRefusedWithTheBounds() {
        FieldReader fields = fields("mass: 6400 kg");
        assertThat(fields.amount("mass", Dimension.MASS, 30, 200, "a mass from 30 kg to 200 kg")).isNull();
        assertThat(said()).containsExactly("f.yaml:1: mass: found \"6400 kg\", expected a mass from 30 kg to 200 kg");
    }

    @Test
    void aListWhereAnAmountShouldBeIsRefused() {
        assertThat(fields("x: [1 m, 2 m]").amount("x", Dimension.LENGTH)).isNull();
        assertThat(said()).containsExactly("f.yaml:1: x: found a list, expected " + LENGTH);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "7", "10"})
    void wholeNumbersAreRead(String written) {
        assertThat(fields("x: " + written).whole("x", 0, 10)).isEqualTo(Integer.valueOf(written));
    }

    @ParameterizedTest
    @ValueSource(strings = {"-1", "11", "010", "1.0", "-0", "+3", "1e1", "9999999999", "-", "\u0663"})
    void whatIsNoWholeNumberIsRefused(String written) {
        assertThat(fields("x: '" + written + "'").whole("x", 0, 10)).isNull();
        assertThat(said()).containsExactly("f.yaml:1: x: found \"" + written + "\", expected a whole number from 0 to 10");
    }

    @ParameterizedTest
    @CsvSource({"yes, true", "true, true", "no, false", "false, false"})
    void yesAndNoAreRead(String written, boolean truth) {
        assertThat(fields("x: " + written).yesNo("x")).isEqualTo(truth);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Yes", "on", "1", "y", "nope"})
    void otherWordsAreNeitherYesNorNo(String written) {
        assertThat(fields("x: " + written).yesNo("x")).isNull();
        assertThat(said()).containsExactly("f.yaml:1: x: found \"" + written + "\", expected yes or no");
    }

    @Test
    void aMisspeltWordIsToldTheNearest() {
        assertThat(fields("surface: asfalt").word("surface", List.of("asphalt", "gravel"))).isNull();
        assertThat(fields("surface: [asphalt]").word("surface", List.of("asphalt", "gravel"))).isNull();
        assertThat(said()).containsExactly(
                "f.yaml:1: surface: found \"asfalt\", expected one of: asphalt, gravel\n    Did you mean \"asphalt\"?",
                "f.yaml:1: surface: found a list, expected one of: asphalt, gravel");
    }

    @Test
    void anUnknownKeyIsToldTheNearest() {
        FieldReader fields = fields("lenght: 3 km\nrise: 5 m\nzebra: 1\n");
        fields.node("length");
        fields.node("rise");
        fields.done();
        assertThat(said()).containsExactly(
                "f.yaml:1: lenght: found an unknown key, expected one of: length, rise\n    Did you mean \"length\"?",
                "f.yaml:3: zebra: found an unknown key, expected one of: length, rise");
    }

    @Test
    void aMissingKeyIsToldWhereItBelongs() {
        FieldReader fields = fields("a: 1\nb:\n  c: 1\n");
        assertThat(fields.fields("b").required("length", LENGTH)).isNull();
        assertThat(said()).containsExactly(
                "f.yaml:3: length: found nothing, expected " + LENGTH + "\n    Add a line \"length: ...\".");
    }

    @Test
    void aCutTextIsWarnedOf() {
        FieldReader fields = fields("name: Ride #3\nkit: [a, b]\nlist:\n  - x # y\nlength: 3 km # measured\n");
        assertThat(fields.prose("name")).isEqualTo("Ride");
        assertThat(fields.texts("kit")).containsExactly("a", "b");
        assertThat(fields.texts("list")).containsExactly("x");
        assertThat(fields.amount("length", Dimension.LENGTH).inBase()).isEqualTo(3000);
        assertThat(said()).isEmpty();
        String mend = "\n    What follows \" #\" is a comment; quote the text if it belongs to it.";
        assertThat(warned()).containsExactly(
                "f.yaml:1: warning: name: found \"Ride\" followed by \" #\", expected the whole text" + mend,
                "f.yaml:4: warning: list: found \"x\" followed by \" #\", expected the whole text" + mend);
    }

    @Test
    void blocksAndListsAreTakenApart() {
        FieldReader fields = fields("one: {a: 1}\nmany:\n  - {a: 1}\n  - word\ntext: x\n");
        assertThat(fields.fields("one").whole("a", 0, 9)).isEqualTo(1);
        assertThat(fields.fields("text")).isNull();
        assertThat(fields.blocks("many")).hasSize(1);
        assertThat(fields.blocks("none")).isEmpty();
        assertThat(fields.items("text")).hasSize(1);
        assertThat(said()).containsExactly(
                "f.yaml:4: many: found \"word\", expected a block of keys",
                "f.yaml:5: text: found \"x\", expected a block of keys");
    }

    @Test
    void aLongWrongWordIsCutInTheMessage() {
        String word = "x".repeat(900_000);
        assertThat(fields("surface: " + word).word("surface", List.of("asphalt", "gravel"))).isNull();
        assertThat(said()).containsExactly(
                "f.yaml:1: surface: found \"" + "x".repeat(57) + "...\", expected one of: asphalt, gravel");
    }
}
