package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A file named in another's place, or with a name that is not quite right. */
class MistakenFilesTest {

    @TempDir
    Path folder;

    /** One message that says what the file is and where it goes, not one for every key. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "--rider | events/heather-ridge.yaml | an event's file | a rider's file | Pass it with --event.",
        "--rider | workshops/cellar.yaml | a workshop | a rider's file | Pass it with --workshop.",
        "--rider | sheets/hill-country.yaml | a sheet of advice | a rider's file | Pass it with --sheet.",
        "--event | riders/kim-cross-country.yaml | a rider's file | an event's file | Pass it with --rider.",
        "--event | debriefs/heather-ridge.yaml | a debrief | an event's file | Its file goes with: courseworthy debrief FILE",
        "--workshop | season.yaml | a season | a workshop | Its folder goes with: courseworthy season DIR"})
    void aFileOfAnotherKindIsNamedAsSuch(String option, String file, String found, String expected, String mend) {
        String typed = "docs/examples/" + file;
        assertThat(CommandRun.of("brief", "course-profiles/heather-ridge.yaml", option, typed)).isEqualTo(new CommandRun(2, "",
                typed + ": found " + found + ", expected " + expected + "\n    " + mend + "\n"));
    }

    @Test
    void anEventIsNoCourse() {
        String typed = "docs/examples/events/heather-ridge.yaml";
        assertThat(CommandRun.of("brief", typed)).isEqualTo(new CommandRun(2, "",
                typed + ": found an event's file, expected a course\n    Pass it with --event.\n"));
    }

    /** A slip in one or two keys stays a slip. */
    @Test
    void aRiderWithAWrongKeyIsStillARider() throws IOException {
        Path rider = Files.writeString(folder.resolve("r.yaml"), "name: Kim\nweight: 64 kg\naim: win\n");
        assertThat(CommandRun.of("brief", "course-profiles/heather-ridge.yaml", "--rider", rider.toString()).err())
                .contains("r.yaml:2: weight: found an unknown key").contains("Did you mean \"mass\"?")
                .contains("r.yaml:3: aim: found an unknown key");
    }

    /** The file that is there, in the folder as it was typed. */
    @ParameterizedTest
    @CsvSource({"--rider, docs/examples/riders/kim-cross-country.yml, docs/examples/riders/kim-cross-country.yaml",
        "--event, docs/examples/events/heater-ridge.yaml, docs/examples/events/heather-ridge.yaml"})
    void theNearestFileIsNamed(String option, String typed, String meant) {
        assertThat(CommandRun.of("brief", "course-profiles/heather-ridge.yaml", option, typed)).isEqualTo(new CommandRun(2, "",
                typed + ": found no such file, expected a file that can be read\n    Did you mean \"" + meant + "\"?\n"));
    }

    /** An empty folder that is there takes all files in one step. */
    @Test
    void anEmptyFolderIsFilled() {
        assertThat(CommandRun.of("new", folder.toString()).code()).isZero();
        assertThat(folder.toFile().list()).isNotEmpty().noneMatch(name -> name.startsWith("."));
    }

    /** The one the user is in is not put another in its place of, which would leave the user nowhere. */
    @Test
    void theFolderOneIsInIsFilledWhereItStands() throws IOException, InterruptedException {
        Object before = Files.readAttributes(folder, BasicFileAttributes.class).fileKey();
        String path = Stream.of(System.getProperty("java.class.path").split(File.pathSeparator)).map(each -> Path.of(each).toAbsolutePath().toString())
                .collect(Collectors.joining(File.pathSeparator));
        Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp", path, "courseworthy.Main",
                "new", ".").directory(folder.toFile()).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
        assertThat(process.waitFor()).isZero();
        assertThat(Files.readAttributes(folder, BasicFileAttributes.class).fileKey()).isEqualTo(before);
        assertThat(folder.toFile().list()).isNotEmpty().noneMatch(name -> name.startsWith("."));
    }
}
