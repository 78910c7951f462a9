package courseworthy.task;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import courseworthy.ToolOutput;
import courseworthy.cli.Format;
import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.problem.OutputFailure;
import courseworthy.workshop.WorkshopReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NewTaskTest {

    @TempDir
    private Path place;

    private final List<String> remarks = new ArrayList<>();
    private final ToolOutput tool = new ToolOutput(Path.of(""), remarks::add);

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void whatItWritesWorksAtOnce() throws IOException {
        Path folder = place.resolve("race");
        String said = tool.run("new", folder.toString());
        assertThat(said).contains("brief " + folder + "/course.yaml --rider ");
        assertThat(names(folder)).containsExactlyInAnyOrderElementsOf(NewTask.FILES);
        assertThat(names(place)).as("nothing beside it").containsExactly("race");
        Request request = Request.builder(folder + "/course.yaml").event(folder + "/event.yaml").rider(folder + "/rider.yaml")
                .sheets(List.of(folder + "/sheet.yaml")).workshop(folder + "/workshop.yaml").build();
        assertThat(tool.brief(request, Format.TEXT)).contains("My course", "My event, for Me", "Top up sealant and spin both wheels", "THE BUILD");
        Faults faults = new Faults();
        WorkshopReader.read(folder.resolve("workshop.yaml"), "workshop.yaml", faults);
        assertThat(faults.faults()).isEmpty();
        assertThat(faults.warnings()).isEmpty();
        assertThat(remarks).isEmpty();
        assertThat(tool.brief(request, Format.TEXT)).as("the bike weighs what the rider's file says").contains("as it is now 9.21 kg");
        assertThat(Files.readString(folder.resolve("rider.yaml"))).contains("mass: 9.2 kg");
    }

    @Test
    void everyFileExplainsItself() throws IOException {
        tool.run("new", place.resolve("race").toString());
        for (String file : NewTask.FILES) {
            assertThat(Files.readString(place.resolve("race").resolve(file))).as(file).startsWith("# ").endsWith("\n");
        }
    }

    @Test
    void nothingIsOverwritten() throws IOException {
        Path mine = Files.writeString(place.resolve("rider.yaml"), "name: Mine\n");
        assertRefused(place.toString(), "found a folder with something in it, expected a new or an empty folder\n    Nothing was written.");
        assertRefused(mine.toString(), "found something that is not a folder, expected a new folder\n    Nothing was written.");
        assertThat(names(place)).containsExactly("rider.yaml");
        assertThat(mine).hasContent("name: Mine\n");
    }

    @Test
    void anEmptyFolderIsFilledAndAMissingOneAboveIsNotMade() throws IOException {
        tool.run("new", Files.createDirectory(place.resolve("empty")).toString());
        assertThat(names(place.resolve("empty"))).hasSize(NewTask.FILES.size());
        assertRefused(place + "/none/deep", "found no folder to put it in, expected a new folder in one that exists\n    Nothing was written.");
        assertThat(names(place)).containsExactly("empty");
    }

    private void assertRefused(String typed, String message) {
        assertThatThrownBy(() -> NewTask.of(new Workspace(Path.of(""), warning -> { }), typed)).isInstanceOfSatisfying(BadInput.class,
                bad -> assertThat(bad.faults()).extracting(Fault::text).containsExactly(typed + ": " + message));
    }

    /** Ended in the middle as by {@code kill -9}, which leaves no time to clean up. */
    public static void main(String[] args) {
        NewFolder.write(Path.of(args[0]), args[0], into -> {
            Files.writeString(into.resolve("course.yaml"), "half");
            Runtime.getRuntime().halt(137);
        });
    }

    private int killed(Path folder) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp",
                System.getProperty("java.class.path"), NewTaskTest.class.getName(), folder.toString()).inheritIO().start();
        return process.waitFor();
    }

    @Test
    void killedItLeavesTheFolderAsItWasAndTheNextRunLeavesNothing() throws IOException, InterruptedException {
        Path empty = Files.createDirectory(place.resolve("empty"));
        assertThat(killed(empty)).isEqualTo(137);
        assertThat(killed(place.resolve("new"))).isEqualTo(137);
        assertThat(empty).isEmptyDirectory();
        assertThat(names(place)).allMatch(name -> name.equals("empty") || name.startsWith(".courseworthy-new.")).as("the second removed what the first left").hasSize(2);
        tool.run("new", empty.toString());
        assertThat(names(empty)).containsExactlyInAnyOrderElementsOf(NewTask.FILES);
        assertThat(names(place)).containsExactly("empty");
    }

    /** Whoever stands in the folder, and a folder in a place that cannot be written to, has it filled file by file; an interrupted run left some. */
    @Test
    void whatAnInterruptedRunPutThereIsCompleted() throws IOException {
        Path folder = Files.createDirectory(place.resolve("race"));
        tool.run("new", place.resolve("whole").toString());
        for (String file : NewTask.FILES.subList(0, 2)) {
            Files.copy(place.resolve("whole").resolve(file), folder.resolve(file));
        }
        tool.run("new", folder.toString());
        assertThat(names(folder)).containsExactlyInAnyOrderElementsOf(NewTask.FILES);
        assertRefused(folder.toString(), "found a folder with something in it, expected a new or an empty folder\n    Nothing was written.");
        Path other = Files.createDirectory(place.resolve("other"));
        Files.copy(folder.resolve("rider.yaml"), other.resolve("rider.yaml"));
        Files.writeString(other.resolve("event.yaml"), "name: Mine\n");
        assertRefused(other.toString(), "found a folder with something in it, expected a new or an empty folder\n    Nothing was written.");
        assertThat(names(other)).containsExactly("event.yaml", "rider.yaml");
        assertThat(names(place)).containsExactly("other", "race", "whole");
    }

    @Test
    void whereWritingFailsNothingIsLeft() throws IOException {
        Path empty = Files.createDirectory(place.resolve("empty"));
        for (Path folder : List.of(empty, place.resolve("new"))) {
            assertThatThrownBy(() -> NewFolder.write(folder, "typed", into -> {
                Files.writeString(into.resolve("course.yaml"), "half");
                throw new IOException("No space left on device");
            })).isInstanceOf(OutputFailure.class).hasMessage("typed: the result could not be written (No space left on device)");
        }
        assertThat(empty).isEmptyDirectory();
        assertThat(names(place)).containsExactly("empty");
    }

    @Test
    void aFolderThatWasThereKeepsItsPermissions() throws IOException {
        Path empty = Files.createDirectory(place.resolve("empty"));
        Files.setPosixFilePermissions(empty, PosixFilePermissions.fromString("rwx------"));
        tool.run("new", empty.toString());
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(empty))).isEqualTo("rwx------");
    }
}
