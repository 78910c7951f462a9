package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PagesCommandTest {

    @TempDir
    private Path folder;

    @Test
    void writesThemWholeAndOverwritesNothing() throws IOException {
        String typed = folder.resolve("handbook").toString();
        CommandRun ran = CommandRun.of("pages", typed);
        long written;
        try (Stream<Path> all = Files.walk(folder)) {
            written = all.filter(Files::isRegularFile).count();
        }
        assertThat(ran).isEqualTo(new CommandRun(0, "Wrote " + written + " pages; begin with " + typed + "/README.md\n", ""));
        assertThat(written).isGreaterThan(100);
        assertThat(CommandRun.of("pages", typed)).isEqualTo(
                new CommandRun(2, "", typed + ": found a folder with something in it, expected a new or an empty folder\n    Nothing was written.\n"));
    }
}
