package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers, names and slopes beyond what there is are refused, or answered; none is a fault of the tool. */
class HugeValuesTest {

    private static final List<String> NUMBERS = List.of("9223372036854775808", "99999999999999999999", "1234567890", "7".repeat(900_000),
            "1." + "3".repeat(900_000));
    private static final String DIGITS = "Write at most nine digits before the point, and twenty after it.";

    @TempDir
    private Path folder;

    @BeforeEach
    void start() {
        assertThat(CommandRun.of("new", my("")).code()).isZero();
    }

    private String my(String file) {
        return folder.resolve("my").resolve(file).toString();
    }

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private static void refused(String number, String mend, String... args) {
        CommandRun ran = CommandRun.of(args);
        String what = args[0] + " with " + number.substring(0, Math.min(30, number.length())) + "\n" + ran.err();
        assertThat(ran.code()).as(what).isEqualTo(2);
        assertThat(ran.err()).as(what).contains(mend).hasSizeLessThan(2000).doesNotContain("Exception");
    }

    /** A long of Java ends at 9223372036854775807; a million digits once took most of a minute. */
    @Test
    void numbersOfTooManyDigitsAreRefusedWhereverOneIsWritten() throws IOException {
        for (String number : NUMBERS) {
            refused(number, DIGITS, "brief", file("c.yaml", "stretches:\n  - {length: " + number + " km, surface: gravel}\n"));
            refused(number, DIGITS, "brief", my("course.yaml"), "--rider", file("r.yaml", "mass: " + number + " kg\n"));
            refused(number, DIGITS, "brief", my("course.yaml"), "--rider", file("r.yaml", "constraints:\n  - id: x\n    say: {plugs: at least "
                    + number + "}\n    because: y\n"));
            refused(number, DIGITS, "brief", my("course.yaml"), "--event", file("e.yaml", "forecast: {low: " + number + " C}\n"));
            refused(number, DIGITS, "brief", my("course.yaml"), "--workshop", file("w.yaml", "bikes: []\nparts:\n  - {name: t, kind: tyre, mass: "
                    + number + " g}\n"));
            refused(number, DIGITS, "compare", my("course.yaml"), "--set", "front tyre width=" + number + " mm");
            refused(number, DIGITS, "why", file("s.yaml", "situation: x\nhours: " + number + " h\n"), "plugs");
            String sheet = Files.readString(Path.of(my("sheet.yaml")));
            for (String row : List.of("when: {rider mass: over " + number + " kg}\n    say: {plugs: prefer 3}",
                    "when: {hours: between 1 h and " + number + " h}\n    say: {plugs: prefer 3}", "say: {front tyre width: prefer " + number + " mm}",
                    "do: {what: a, find: b, by: night before, needs: " + number + " h}")) {
                refused(number, "expected", "sheet", "check", file("a.yaml", "sheet: A\nauthor: b\nadvice:\n  - id: x\n    " + row
                        + "\n    because: c\n"));
            }
            refused(number, "expected", "sheet", "check", file("a.yaml", "sheet: A\nauthor: b\nadvice:\n  - id: x\n    say: {easiest gear: at most "
                    + number + " x ratio needed on the last climb}\n    because: c\n"));
            refused(number, "expected", "sheet", "test", file("b.yaml", sheet), file("b.cases.yaml", "cases for: My advice\ncases:\n  - rule: x\n"
                    + "    fires:\n      a: {hours: " + number + " h}\n"));
        }
    }

    /** The most that can be written times the most that is measured stays a number. */
    @Test
    void theLargestFactorIsNoFaultOfTheTool() throws IOException {
        String sheet = file("a.yaml", "sheet: A\nauthor: b\nadvice:\n  - id: x\n    say: {easiest gear: at most 999999999 x ratio needed on the last climb}\n"
                + "    because: c\n");
        assertThat(CommandRun.of("sheet", "check", sheet).err()).isEmpty();
        assertThat(CommandRun.of("brief", my("course.yaml"), "--sheet", sheet).code()).isIn(0, 2);
    }

    @Test
    void unknownKeysAreCountedAndCut() throws IOException {
        StringBuilder many = new StringBuilder();
        for (int i = 0; i < 60_000; i++) {
            many.append("key").append(i).append(": x\n");
        }
        for (String text : List.of(many.toString(), "k".repeat(900_000) + ": x\n", "name: " + "n".repeat(900_000) + "\n",
                "tags: [" + "t".repeat(900_000) + "]\nmass: x\n", "bike: {" + "k".repeat(400_000) + ": " + "v".repeat(400_000) + "}\n")) {
            for (List<String> command : List.of(List.of("brief", my("course.yaml"), "--rider"), List.of("brief"), List.of("sheet", "check"),
                    List.of("debrief"), List.of("position"), List.of("brief", my("course.yaml"), "--event"))) {
                List<String> args = new ArrayList<>(command);
                args.add(file("f.yaml", text));
                CommandRun ran = CommandRun.of(args.toArray(new String[0]));
                assertThat(ran.code()).as(command + ran.err().substring(0, Math.min(300, ran.err().length()))).isIn(0, 2);
                assertThat(ran.err()).hasSizeLessThan(100_000).doesNotContain("Exception");
            }
        }
        CommandRun ran = CommandRun.of("brief", my("course.yaml"), "--rider", file("f.yaml", many.toString()));
        assertThat(ran.err().lines().filter(line -> line.contains("an unknown key"))).hasSize(100);
        assertThat(ran.err()).endsWith(" more like these; mend the above first.\n");
    }

    /** A stretch is drawn in pieces, of which rounding may leave one of next to no length. */
    @Test
    void whatRoundingLeavesOfAStretchIsNoFaultOfTheTool() throws IOException {
        for (int hundredths = 3740; hundredths <= 3750; hundredths++) {
            String course = file("c.yaml", "stretches:\n  - {length: 12 km, surface: asphalt, ascent: " + hundredths / 100 + "." + hundredths % 100
                    + " m, descent: 60 m}\n");
            assertThat(CommandRun.of("brief", course).code()).as("a rise of " + hundredths + " cm").isZero();
        }
    }

    /** Where all is walked no energy goes into the pedals. */
    @ParameterizedTest
    @ValueSource(strings = {"sand", "mud", "snow"})
    void aCourseThatIsWalkedIsAnswered(String surface) throws IOException {
        for (int rise : List.of(500, 1000, 1125, 1250, 1500)) {
            String course = file("c.yaml", "name: Up\nstretches:\n  - {length: 5 km, ascent: " + rise + " m, surface: " + surface + "}\n");
            for (String command : List.of("brief", "brief --format json", "brief --format markdown", "gears", "gears --format json", "checklist",
                    "course", "brief --event " + my("event.yaml") + " --rider " + my("rider.yaml") + " --workshop " + my("workshop.yaml"),
                    "compare --set bike=gravel", "why bike")) {
                String[] words = command.split(" ");
                List<String> args = new ArrayList<>(List.of(words[0], course));
                args.addAll(List.of(words).subList(1, words.length));
                CommandRun ran = CommandRun.of(args.toArray(new String[0]));
                String what = rise + " m of " + surface + ": " + args + "\n" + ran.err();
                assertThat(ran.code()).as(what).isZero();
                assertThat(ran.out()).as(what).doesNotContain("NaN", "Infinity", "about ,", "about .");
            }
        }
    }
}
