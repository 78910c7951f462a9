package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import courseworthy.problem.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputTest {

    @TempDir
    private Path folder;

    @Test
    void writesUtf8AndLeavesNothingElse() throws IOException {
        Output.replace(folder.resolve("brief.txt"), "Höhe 12\u00a0m\n");
        assertThat(folder.resolve("brief.txt")).hasBinaryContent(
                new byte[] {'H', (byte) 0xc3, (byte) 0xb6, 'h', 'e', ' ', '1', '2', (byte) 0xc2, (byte) 0xa0, 'm', '\n'});
        assertThat(names()).containsExactly("brief.txt");
    }

    @Test
    void whoReadsTheOldFileKeepsIt() throws IOException {
        Path file = Files.writeString(folder.resolve("brief.txt"), "old");
        try (Stream<String> reader = Files.lines(file)) {
            Output.replace(file, "new");
            assertThat(reader).containsExactly("old");
        }
        assertThat(file).hasContent("new");
    }

    @Test
    void aLinkStaysALink() throws IOException {
        Path target = Files.writeString(folder.resolve("target"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link"), target);
        Output.replace(link, "new");
        assertThat(link).isSymbolicLink().hasContent("new");
        assertThat(target).hasContent("new");
    }

    @Test
    void aDeviceIsWrittenTo() {
        Path device = Path.of("/dev/null");
        assumeTrue(Files.exists(device));
        Output.replace(device, "new");
        assertThat(Files.isRegularFile(device)).isFalse();
    }

    @Test
    void aFolderIsRefused() {
        assertThatThrownBy(() -> Output.replace(folder, "new")).isInstanceOf(BadInput.class)
                .hasMessage(folder + ": found a folder, expected the name of a file\n    Nothing was written.");
    }

    @Test
    void aFolderThatDoesNotExistIsRefused() throws IOException {
        Path file = folder.resolve("nowhere").resolve("brief.txt");
        assertThatThrownBy(() -> Output.replace(file, "new")).isInstanceOf(BadInput.class)
                .hasMessage(file + ": found no folder nowhere, expected a folder that exists\n    Nothing was written.");
        assertThat(names()).isEmpty();
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
