package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command that writes a sheet to begin with. */
class SheetNewCommandTest {

    @TempDir
    private Path folder;

    private List<String> names() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void whatItWritesWorksAtOnce() throws IOException {
        String sheet = folder.resolve("mine.yaml").toString();
        CommandRun ran = CommandRun.of("sheet", "new", sheet);
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).contains("sheet check " + sheet, "sheet test " + sheet);
        assertThat(names()).containsExactly("mine.cases.yaml", "mine.yaml");
        CommandRun check = CommandRun.of("sheet", "check", sheet);
        assertThat(check.err()).isEmpty();
        assertThat(check.code()).isZero();
        assertThat(check.out().replaceAll("\\s+", " ")).contains("nothing found").doesNotContain("Such as");
    }

    @Test
    void nothingIsOverwrittenAndNothingLeftBehind() throws IOException {
        Path sheet = Files.writeString(folder.resolve("mine.yaml"), "mine\n");
        Path cases = Files.writeString(folder.resolve("other.cases.yaml"), "mine too\n");
        Files.createSymbolicLink(folder.resolve("link.yaml"), folder.resolve("nowhere"));
        refused(sheet.toString(), sheet + ": found something of that name, expected a new file\n    Nothing was written.\n");
        refused(folder.resolve("other.yaml").toString(), cases + ": found something of that name, expected a new file\n    Nothing was written.\n");
        refused(folder.resolve("link.yaml").toString(), folder.resolve("link.yaml") + ": found something of that name, expected a new file\n"
                + "    Nothing was written.\n");
        refused(folder + "/none/deep.yaml", folder + "/none/deep.yaml: found no folder to put it in, expected a new file in a folder that exists\n"
                + "    Nothing was written.\n");
        refused(folder + "/mine.txt", folder + "/mine.txt: found another ending, expected the name of a sheet, such as mine.yaml\n"
                + "    Nothing was written.\n");
        assertThat(names()).containsExactly("link.yaml", "mine.yaml", "other.cases.yaml");
        assertThat(sheet).hasContent("mine\n");
        assertThat(cases).hasContent("mine too\n");
    }

    private static void refused(String typed, String message) {
        assertThat(CommandRun.of("sheet", "new", typed)).isEqualTo(new CommandRun(2, "", message));
    }
}
