package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** No result takes the place of what somebody wrote, or of what it is made from. */
class OverwriteTest {

    private static final Path EXAMPLES = Path.of("docs", "examples");

    @TempDir
    private Path folder;

    @BeforeEach
    void copy() throws IOException {
        CommandRun started = CommandRun.of("new", folder.resolve("my").toString());
        assertThat(started.code()).isZero();
    }

    private static List<Path> files(Path in, String ending) {
        try (Stream<Path> all = Files.walk(in)) {
            return all.filter(path -> path.toString().endsWith(ending)).sorted().toList();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** Every file that ships and that a person could have written. */
    static List<Path> written() {
        List<Path> out = new ArrayList<>(files(Path.of("course-profiles"), ".yaml"));
        out.addAll(files(Path.of("course-profiles"), ".gpx"));
        out.addAll(files(EXAMPLES, ".yaml"));
        out.addAll(files(Path.of("rules"), ".yaml").stream().filter(path -> path.toString().endsWith(".cases.yaml")).limit(5).toList());
        return out;
    }

    private void refused(String message, Path file, String... command) throws IOException {
        byte[] before = Files.readAllBytes(file);
        List<String> args = new ArrayList<>(List.of(command));
        args.addAll(List.of("-o", file.toString()));
        CommandRun ran = CommandRun.of(args.toArray(new String[0]));
        assertThat(ran.code()).as(String.join(" ", args) + "\n" + ran.err()).isEqualTo(2);
        assertThat(ran.err()).contains(file + ": found " + message).contains("Nothing was written.").doesNotContain("Exception");
        assertThat(ran.out()).isEmpty();
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }

    /** Whatever it is called, and though it is not read. */
    @ParameterizedTest
    @MethodSource("written")
    void whatAPersonWroteIsNeverWrittenOver(Path shipped) throws IOException {
        byte[] bytes = Files.readAllBytes(shipped);
        refused("", Files.write(folder.resolve("old.txt"), bytes), "topics");
        refused("", Files.createSymbolicLink(folder.resolve("link"), folder.resolve("old.txt")), "topics");
        refused("", Files.createLink(folder.resolve("hard"), folder.resolve("old.txt")), "schema", "rider");
        String text = new String(bytes, StandardCharsets.UTF_8);
        refused("", Files.writeString(folder.resolve("damaged"), text + "\n\t: [ {\n"), "topics");
        refused("", Files.writeString(folder.resolve("of-elsewhere"), "\uFEFF" + text.replace("\n", "\r\n")), "topics");
    }

    @Test
    void eachKindIsNamed() throws IOException {
        Path my = folder.resolve("my");
        refused("a course", my.resolve("course.yaml"), "topics");
        refused("a rider's file", my.resolve("rider.yaml"), "topics");
        refused("an event's file", my.resolve("event.yaml"), "topics");
        refused("a workshop", my.resolve("workshop.yaml"), "topics");
        refused("a sheet of advice", my.resolve("sheet.yaml"), "topics");
        refused("cases of a sheet", my.resolve("sheet.cases.yaml"), "topics");
        refused("a rider's file", Files.writeString(folder.resolve("short"), "{mass: 70 kg}"), "topics");
        refused("a rider's file", Files.writeString(folder.resolve("one"), "# me\nmass: 70 kg\n"), "topics");
        refused("a season", Files.writeString(folder.resolve("s"), "riders:\n- {name: A}\nevents:\n- {course: x}\n"), "topics");
        refused("a debrief", Files.writeString(folder.resolve("d"), "debrief: x\nbrief: x.json\nhours: 3:00 h\n"), "topics");
        refused("a situation", Files.writeString(folder.resolve("t"), "situation: x\nhours: 3 h\n"), "topics");
        refused("a packed file", Files.write(folder.resolve("t.gpx.gz"), new byte[] {0x1f, (byte) 0x8b, 8, 0}), "topics");
    }

    /** All commands that take a result to a file, in all formats: what they wrote they may write again. */
    @Test
    void whatTheToolWroteIsReplaced() throws IOException {
        String my = folder.resolve("my") + "/";
        Path out = folder.resolve("out");
        String[] day = {my + "course.yaml", "--rider", my + "rider.yaml", "--event", my + "event.yaml", "--workshop", my + "workshop.yaml"};
        for (String format : List.of("text", "json", "markdown")) {
            for (String command : List.of("brief", "checklist", "gears")) {
                twice(out, with(List.of(command), day, "--format", format));
            }
            twice(out, with(List.of("why"), new String[] {my + "course.yaml", "bike"}, "--format", format));
            twice(out, with(List.of("position"), new String[] {my + "workshop.yaml"}, "--format", format));
            twice(out, with(List.of("debrief"), new String[] {EXAMPLES + "/debriefs/heather-ridge.yaml"}, "--format", format));
            if (!format.equals("markdown")) {
                for (String list : List.of("topics", "measures", "rules")) {
                    twice(out, new String[] {list, "--format", format});
                }
                twice(out, with(List.of("course"), new String[] {my + "course.yaml"}, "--format", format));
                twice(out, with(List.of("sheet", "check"), new String[] {my + "sheet.yaml"}, "--format", format));
                twice(out, with(List.of("sheet", "test"), new String[] {my + "sheet.yaml"}, "--format", format));
            }
        }
        for (String kind : courseworthy.schema.Schemas.KINDS) {
            twice(out, new String[] {"schema", kind});
        }
        twice(Files.writeString(folder.resolve("notes"), "Call Ann: bring pads\nname of the inn\n"), new String[] {"topics"});
        twice(Files.writeString(folder.resolve("empty"), ""), new String[] {"topics"});
    }

    private static String[] with(List<String> command, String[] day, String... more) {
        return Stream.of(command.toArray(new String[0]), day, more).flatMap(Stream::of).toArray(String[]::new);
    }

    private static void twice(Path out, String[] command) throws IOException {
        String[] args = with(List.of(command), new String[] {"-o", out.toString()});
        for (int i = 0; i < 2; i++) {
            CommandRun ran = CommandRun.of(args);
            assertThat(ran.code()).as(String.join(" ", args) + "\n" + ran.err()).isZero();
        }
        assertThat(out).isNotEmptyFile();
    }

    /** A saved brief is the tool's, but not over the one that is read. */
    @Test
    void whatIsReadThroughAnotherFileIsNotWrittenOver() throws IOException {
        Path debrief = Files.copy(EXAMPLES.resolve("debriefs").resolve("heather-ridge.yaml"), folder.resolve("d.yaml"));
        Path brief = Files.copy(EXAMPLES.resolve("debriefs").resolve("heather-ridge.json"), folder.resolve("heather-ridge.json"));
        String made = "what the result is made from, expected another file";
        refused(made, brief, "debrief", debrief.toString());
        refused(made, Files.createSymbolicLink(folder.resolve("link"), brief), "debrief", debrief.toString());
        refused(made, Files.createLink(folder.resolve("hard"), brief), "debrief", debrief.toString(), "--format", "json");
        assertThat(CommandRun.of("debrief", debrief.toString(), "-o", folder.resolve("new").toString()).code()).isZero();
        assertThat(CommandRun.of("topics", "-o", brief.toString()).code()).as("not read here").isZero();
    }

    @Test
    void nothingIsWrittenIntoAFolderThatIsRead() throws IOException {
        Path debriefs = Files.createDirectory(folder.resolve("debriefs"));
        for (String name : List.of("heather-ridge.yaml", "heather-ridge.json")) {
            Files.copy(EXAMPLES.resolve("debriefs").resolve(name), debriefs.resolve(name));
        }
        Path link = Files.createSymbolicLink(folder.resolve("linked"), debriefs);
        for (Path place : List.of(debriefs.resolve("record.txt"), link.resolve("record.txt"), debriefs.resolve("new.yaml"))) {
            CommandRun ran = CommandRun.of("debrief", debriefs.toString(), "-o", place.toString());
            assertThat(ran).isEqualTo(new CommandRun(2, "", place + ": found a place in a folder that is read, expected a place outside of it\n"
                    + "    Nothing was written.\n"));
            assertThat(place).doesNotExist();
        }
        Path riders = Files.createDirectory(folder.resolve("riders"));
        Files.copy(folder.resolve("my").resolve("rider.yaml"), riders.resolve("me.yaml"));
        Path courses = Files.createDirectory(folder.resolve("courses"));
        Files.copy(folder.resolve("my").resolve("course.yaml"), courses.resolve("mine.yaml"));
        for (Path read : List.of(riders, courses)) {
            CommandRun ran = CommandRun.of("sheet", "impact", "none", folder.resolve("my") + "/sheet.yaml", "--riders", riders.toString(), "--courses",
                    courses.toString(), "-o", read.resolve("x.txt").toString());
            assertThat(ran.err()).contains("found a place in a folder that is read");
            assertThat(read.resolve("x.txt")).doesNotExist();
        }
    }

    @Test
    void whereTheResultMayNotGoNoExampleIsWrittenEither() throws IOException {
        Path sheet = folder.resolve("my").resolve("sheet.yaml");
        Path examples = folder.resolve("examples");
        refused("a sheet of advice", sheet, "sheet", "check", sheet.toString(), "--examples", examples.toString());
        assertThat(examples).doesNotExist();
    }

    @Test
    void pagesAreNotWrittenAmongTheRules() {
        String home = System.setProperty("courseworthy.home", Path.of("").toAbsolutePath().toString());
        try {
            Path place = Path.of("rules", "book");
            assumeThat(place).doesNotExist();
            assertThat(CommandRun.of("pages", place.toString()).err()).contains("found a place in a folder that is read");
            assertThat(place).doesNotExist();
        } finally {
            if (home == null) {
                System.clearProperty("courseworthy.home");
            } else {
                System.setProperty("courseworthy.home", home);
            }
        }
    }
}
