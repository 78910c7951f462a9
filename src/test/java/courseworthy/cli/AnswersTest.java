package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Exit code, standard output and standard error of the commands that answer, each apart. */
class AnswersTest {

    private static final String COURSE = "course-profiles/heather-ridge.yaml";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"brief", "checklist", "course"})
    void aCourseIsAnswered(String command) {
        CommandRun ran = CommandRun.of(command, COURSE);
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).startsWith("Heather Ridge").endsWith("\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"topics", "measures", "rules"})
    void thereAreListsAsTextAndJson(String command) {
        CommandRun text = CommandRun.of(command);
        assertThat(text.code()).isZero();
        assertThat(text.err()).isEmpty();
        assertThat(text.out().lines()).hasSizeGreaterThan(100).allMatch(line -> line.length() <= 80);
        CommandRun json = CommandRun.of(command, "--format", "json");
        assertThat(json.code()).isZero();
        assertThat(json.out()).startsWith("{\n  \"format\" : 2,\n  \"" + command + "\" : [");
    }

    @Test
    void rulesCanBeAskedByTopic() {
        CommandRun ran = CommandRun.of("rules", "--topic", "rear rotor");
        assertThat(ran.out()).contains("limit", "pairing/rear-rotor-no-larger", "joins topics, on rear rotor", "rear rotor: prefer")
                .doesNotContain("fork travel");
    }

    @Test
    void oneTopicIsShownInFull() {
        CommandRun ran = CommandRun.of("brief", COURSE, "--topic", "fork travel");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).startsWith("fork travel: ").contains("\nFOR\n", "\nAGAINST\n", "rules/suspension/travel.yaml:");
    }

    @Test
    void aTopicThatThereIsNotIsRefused() {
        assertThat(CommandRun.of("brief", COURSE, "--topic", "fork travl")).isEqualTo(new CommandRun(2, "", """
                --topic: found "fork travl", expected a topic
                    Did you mean "fork travel"?
                """));
    }

    /** Everything wrong in every file and option, in one go. */
    @Test
    void allFaultsAreShownAtOnceAndNothingIsWritten() throws IOException {
        Path course = file("course.yaml", "name: Moor\nstretches:\n  - {length: 12, surface: gravl}\n  - {length: 3 km, lenght: 4 km}\n");
        Path event = file("event.yaml", "name: Cup\nlaps: 0\ndate: 2025-02-30\n");
        Path rider = file("rider.yaml", "name: Kim\nmass: 64\n");
        Path sheet = file("sheet.yaml", "sheet: Mine\nauthor: me\nadvice:\n  - id: x\n    say: {fork travl: prefer 120 mm}\n    because: y\n");
        Path out = file("out.txt", "as it was");
        CommandRun ran = CommandRun.of("brief", course.toString(), "--event", event.toString(), "--rider", rider.toString(), "--sheet", sheet.toString(),
                "--role", "racing", "--date", "14.6.2025", "--ground", "surface=gravl", "-o", out.toString());
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        for (String part : List.of("course.yaml:3: ", "\"12\"", "\"gravl\"", "course.yaml:4: ", "lenght", "event.yaml:2: laps", "event.yaml:3: date",
                "rider.yaml:2: mass", "sheet.yaml:5: ", "fork travl", "--role: found \"racing\", expected training or race",
                "--date: found \"14.6.2025\", expected a day of the calendar such as 2025-06-14", "--ground")) {
            assertThat(ran.err()).contains(part);
        }
        assertThat(ran.err()).doesNotContain("Exception", "\tat ");
        assertThat(Files.readString(out)).isEqualTo("as it was");
        assertThat(names(folder)).hasSize(5);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2025-6-14", "2025-02-30", "0000-01-01", "2025-06-14 ", "20250614", "x", "2025-06-1x"})
    void aDateThatIsNoneIsRefused(String date) {
        CommandRun ran = CommandRun.of("checklist", COURSE, "--date", date);
        String mend = switch (date) {
            case "2025-02-30" -> "    The calendar has no such day.\n";
            case "0000-01-01" -> "    Years run from 1901 to 2099.\n";
            default -> "";
        };
        assertThat(ran).isEqualTo(new CommandRun(2, "",
                "--date: found \"" + date + "\", expected a day of the calendar such as 2025-06-14\n" + mend));
    }

    @Test
    void aFormatThatThereIsNotIsRefused() {
        CommandRun ran = CommandRun.of("brief", COURSE, "--format", "rtf");
        assertThat(ran).isEqualTo(new CommandRun(2, "", "--format: found \"rtf\", expected text, json, markdown, html, ics or pdf\n"));
        assertThat(CommandRun.of("topics", "--format", "jsn")).isEqualTo(new CommandRun(2, "",
                "--format: found \"jsn\", expected text, json, markdown or html\n    Did you mean \"json\"?\n"));
    }

    @Test
    void aMissingCourseIsRefusedWithTheNearestName() {
        String home = System.setProperty("courseworthy.home", Path.of("").toAbsolutePath().toString());
        try {
            assertThat(CommandRun.of("brief", "heather-rige")).isEqualTo(new CommandRun(2, "", """
                    heather-rige: found no such file, expected a course profile (.yaml), a GPX track (.gpx) or the name of a shipped course
                        Did you mean "heather-ridge"?
                    """));
            assertThat(CommandRun.of("course", "heather-ridge").out()).isEqualTo(CommandRun.of("course", COURSE).out());
        } finally {
            restore(home);
        }
    }

    private static void restore(String home) {
        if (home == null) {
            System.clearProperty("courseworthy.home");
        } else {
            System.setProperty("courseworthy.home", home);
        }
    }

    @Test
    void aCourseIsAskedFor() {
        CommandRun ran = CommandRun.of("brief");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("COURSE");
    }

    @ParameterizedTest
    @ValueSource(strings = {"text", "json", "markdown"})
    void aFileTakesExactlyWhatStandardOutputWouldHave(String format) throws IOException {
        Path out = folder.resolve("brief.out");
        CommandRun printed = CommandRun.of("brief", COURSE, "--format", format);
        CommandRun written = CommandRun.of(new Terminal(true, false, false, 80), "brief", COURSE, "--format", format, "-o", out.toString());
        assertThat(written).isEqualTo(new CommandRun(0, "", ""));
        assertThat(Files.readString(out)).isEqualTo(printed.out());
        assertThat(names(folder)).containsExactly("brief.out");
    }

    @Test
    void coloursAreForTerminalsAlone() {
        CommandRun coloured = CommandRun.of(new Terminal(true, false, false, 80), "brief", COURSE);
        CommandRun plain = CommandRun.of("brief", COURSE);
        assertThat(coloured.out()).contains("\u001b[1m");
        assertThat(plain.out()).doesNotContain("\u001b");
        assertThat(coloured.out().replaceAll("\u001b\\[[0-9;]*m", "")).isEqualTo(plain.out());
    }

    @Test
    void warningsAreSaidButDoNotStopTheWork() throws IOException {
        Path course = file("course.yaml", "name: Moor # loop\nstretches:\n  - {length: 12 km, surface: gravel}\n");
        CommandRun ran = CommandRun.of("course", course.toString());
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).startsWith("Moor\n");
        assertThat(ran.err()).contains("course.yaml:1: warning: ");
    }

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
