package courseworthy.text;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** JSON (RFC 8259) as a tree with lines. */
class JsonReaderTest {

    @TempDir
    private Path folder;

    private final Faults faults = new Faults();

    private Node.Mapping read(String text) {
        try {
            return JsonReader.read(Files.writeString(folder.resolve("x.json"), text), "x.json", 1_000_000, "an object", faults);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private List<String> said() {
        return faults.faults().stream().map(Fault::text).toList();
    }

    @Test
    void valuesKeepTheirTextAndTheirLines() {
        Node.Mapping tree = read("{\n \"a\" : 0.680,\n \"b\" : [\"x\", null,\n true],\n \"c\" : {\"d\" : \"\\u00e9\"} }\n");
        assertThat(tree.get("a")).isEqualTo(new Node.Scalar("0.680", false, false, 2, 8));
        Node.Sequence list = (Node.Sequence) tree.get("b");
        assertThat(list.items()).extracting(each -> ((Node.Scalar) each).text()).containsExactly("x", "null", "true");
        assertThat(list.items()).extracting(each -> ((Node.Scalar) each).quoted()).containsExactly(true, false, false);
        assertThat(list.items().get(2).line()).isEqualTo(4);
        assertThat(((Node.Scalar) ((Node.Mapping) tree.get("c")).get("d")).text()).isEqualTo("\u00e9");
        assertThat(said()).isEmpty();
    }

    @Test
    void whatIsNoObjectIsRefused() {
        assertThat(read("")).isNull();
        assertThat(read("[]")).isNull();
        assertThat(read("{} {}")).isNull();
        assertThat(read("{\n\"a\" : 1,\n\"a\" : 2}")).isNull();
        assertThat(read("{\n\"a\" : 01}")).isNull();
        assertThat(read("{\"a\" : NaN}")).isNull();
        assertThat(said()).containsExactly("x.json:1: found what is no JSON object, expected an object",
                "x.json:1: found what cannot be read as JSON, expected an object",
                "x.json:2: found what cannot be read as JSON, expected an object",
                "x.json:3: found what cannot be read as JSON, expected an object");
    }

    /** Twenty deep is read, deeper is refused, however deep it is. */
    @Test
    void depthHasAnEnd() {
        assertThat(read("{\"a\" : " + "[".repeat(18) + "1" + "]".repeat(18) + "}")).isNotNull();
        assertThat(read("{\"a\" : " + "[".repeat(19) + "1" + "]".repeat(19) + "}")).isNull();
        assertThat(read("{\"a\" : " + "[".repeat(100_000))).isNull();
    }

    @Test
    void aFileThatCannotBeReadIsRefused() {
        JsonReader.read(folder, "x", 1_000_000, "an object", faults);
        JsonReader.read(folder.resolve("none.json"), "none.json", 1_000_000, "an object", faults);
        read("{\"a\" : \"" + "x".repeat(1_000_000) + "\"}");
        assertThat(said()).containsExactly("none.json: found no such file, expected an object\n    Check the spelling of the path.",
                "x: found a folder, expected an object", "x.json: found a file over 1 MB, expected an object");
    }
}
