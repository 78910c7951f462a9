package courseworthy.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import courseworthy.problem.Faults;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class PackedTreeTest {

    @Test
    void aTreeComesBackAsItWas() throws IOException {
        Faults faults = new Faults();
        Node tree = Yaml.read("""
                sheet: H\u00f6henweg \ud83d\udeb2   # cut
                advice:
                  - id: "quoted"
                    when: {hours: over 4:00 h, any of: [a, {b: c}]}
                    because: |
                      two
                      lines
                """.getBytes(StandardCharsets.UTF_8), "f", faults);
        assertThat(faults.faults()).isEmpty();
        assertThat(unpacked(packed(tree))).isEqualTo(tree);
    }

    @Test
    void whatDoesNotFitIsRefusedRatherThanCutShort() {
        Node.Scalar far = new Node.Scalar("x", false, false, 65_536, 1);
        assertThatThrownBy(() -> packed(far)).isInstanceOf(IOException.class);
        Node.Sequence many = new Node.Sequence(Collections.nCopies(65_536, new Node.Scalar("x", false, false, 1, 1)), 1, 1);
        assertThatThrownBy(() -> packed(many)).isInstanceOf(IOException.class);
        Node.Scalar large = new Node.Scalar("x".repeat(65_536), false, false, 1, 1);
        assertThatThrownBy(() -> packed(large)).isInstanceOf(IOException.class);
    }

    @Test
    void theLastThatFitsIsKept() throws IOException {
        Node.Sequence most = new Node.Sequence(List.of(new Node.Scalar("x", true, true, 65_535, 65_535)), 65_535, 65_535);
        assertThat(unpacked(packed(most))).isEqualTo(most);
    }

    private static byte[] packed(Node node) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PackedTree.write(node, new DataOutputStream(bytes));
        return bytes.toByteArray();
    }

    private static Node unpacked(byte[] bytes) throws IOException {
        return PackedTree.read(new DataInputStream(new ByteArrayInputStream(bytes)));
    }
}
