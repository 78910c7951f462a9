package courseworthy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.opentest4j.TestAbortedException;

/** Tests without their data are skipped aloud, or fail where the data is required; nothing shipped takes a folder outside for granted. */
class RealDataTest {

    @TempDir
    private Path folder;
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

    private RealData data(String named, boolean required) {
        return new RealData(named, required, new PrintStream(bytes, true, StandardCharsets.UTF_8));
    }

    @Test
    void withoutAFolderEachTestIsSkippedAloudAndCounted() {
        RealData none = data("", false);
        for (int i = 1; i <= 3; i++) {
            String words = "SKIPPED for want of real data, " + i + " so far: courseworthy.data names no folder (src/test/README.md)";
            assertThatThrownBy(() -> none.find("tracks")).isInstanceOf(TestAbortedException.class).hasMessageContaining(words);
            assertThat(bytes.toString(StandardCharsets.UTF_8).lines()).hasSize(i).last().isEqualTo(words);
        }
        assertThatThrownBy(() -> data(folder + "/none", false).find("tracks")).isInstanceOf(TestAbortedException.class)
                .hasMessageContaining(folder + "/none, where no folder is");
    }

    @Test
    void whereItIsRequiredItsAbsenceFails() {
        assertThatThrownBy(() -> data("", true).find("tracks")).isInstanceOf(AssertionError.class).hasMessageContaining("Real data is required");
        assertThatThrownBy(() -> data(folder + "/none", true).find("tracks")).isInstanceOf(AssertionError.class);
        assertThat(bytes.size()).isZero();
    }

    @Test
    void whatIsThereIsFound() {
        assertThat(data(folder.toString(), true).find("tracks")).isEqualTo(folder.resolve("tracks"));
    }

    /** A folder beside the checkout stands in the commands of CI and in the page about the tests, and nowhere else. */
    @Test
    void noFolderOutsideIsTakenForGranted() throws IOException {
        try (Stream<Path> all = Stream.of("pom.xml", "courseworthy", "README.md", "DEVELOPERS.md", "docs", "rules", "src", "course-profiles")
                .map(Path::of).flatMap(RealDataTest::files)) {
            List<Path> named = all.filter(file -> read(file).contains("../" + "shared")).toList();
            assertThat(named).containsExactly(Path.of("src", "test", "README.md"));
        }
        assertThat(read(Path.of("pom.xml"))).contains("<courseworthy.data></courseworthy.data>");
        assertThat(read(Path.of("DEVELOPERS.md"))).contains("(src/test/README.md)");
    }

    private static Stream<Path> files(Path root) {
        try {
            return Files.walk(root).filter(Files::isRegularFile);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file, StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
