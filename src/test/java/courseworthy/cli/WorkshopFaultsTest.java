package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A slip in a workshop's file is told in one message, with the line and the way out; what only weakens the answer is warned of. */
class WorkshopFaultsTest {

    @TempDir
    private Path folder;
    private String text;

    @BeforeEach
    void theExample() throws IOException {
        text = Files.readString(Path.of("docs/examples/workshops/cellar.yaml"));
    }

    private CommandRun with(String from, String to) throws IOException {
        assertThat(text.contains(from)).as(from).isTrue();
        text = text.replace(from, to);
        Path file = Files.writeString(folder.resolve("w.yaml"), text);
        CommandRun ran = CommandRun.of("brief", "course-profiles/heather-ridge.yaml", "--event", "docs/examples/events/heather-ridge.yaml", "--workshop", file.toString());
        return new CommandRun(ran.code(), ran.out(), ran.err().replace(folder.toString() + "/", ""));
    }

    /** The line on which a part is written. */
    private int line(String name) {
        return (int) text.substring(0, text.indexOf("{name: " + name + ",")).lines().count();
    }

    private static void refused(CommandRun ran, String message) {
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).isEqualTo(message + "\n");
    }

    @Test
    void aPartMountedTwice() throws IOException {
        CommandRun ran = with("{name: power pedals, kind: pedals, on: lane crank", "{name: power pedals, kind: pedals, on: [lane crank, hardtail crank]");
        refused(ran, "w.yaml:" + line("power pedals") + ": on: found \"power pedals\" mounted in 2 places, expected one bike or part\n"
                + "    Name where it is now; what serves several bikes is moved when it is its turn.");
    }

    @Test
    void aCircle() throws IOException {
        CommandRun ran = with("{name: hardtail stem 70, kind: stem, on: hardtail", "{name: hardtail stem 70, kind: stem, on: flat bar 720");
        assertThat(text).contains("{name: flat bar 720, kind: bar, on: hardtail stem 70");
        refused(ran, "w.yaml:" + line("hardtail stem 70") + ": on: found a circle: \"hardtail stem 70\" is on \"flat bar 720\", which is on \"hardtail stem 70\","
                + " expected what carries it\n    One of them is on a bike, or lies loose: then leave its key out.");
    }

    @Test
    void twoPartsWithOneName() throws IOException {
        CommandRun ran = with("{name: root tyre 58 B,", "{name: root tyre 58 A,");
        int first = line("root tyre 58 A");
        refused(ran, "w.yaml:" + (first + 1) + ": name: found a second \"root tyre 58 A\" (the first is on line " + first + "), expected a name of"
                + " its own for every bike and part\n    Tell them apart: \"root tyre 58 A 2\".");
    }

    @Test
    void aPlaceThatNothingIsCalled() throws IOException {
        CommandRun ran = with("{name: lane post, kind: seatpost, on: steel bike", "{name: lane post, kind: seatpost, on: steal bike");
        refused(ran, "w.yaml:" + line("lane post") + ": on: found \"steal bike\", which is neither a bike nor a part, expected the name of a bike"
                + " or a part\n    Did you mean \"steel bike\"?");
    }

    /** A label is free text: one that nothing else carries and that is nearly another is asked about, and counts as what it says. */
    @Test
    void aLabelThatNothingElseCarries() throws IOException {
        CommandRun ran = with("{name: ring 36, kind: chainring, mass: 80 g, teeth: 36, ring mount: three lugs",
                "{name: ring 36, kind: chainring, mass: 80 g, teeth: 36, ring mount: three lug");
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEqualTo("w.yaml:" + line("ring 36") + ": warning: ring mount: found \"three lug\", which nothing else carries,"
                + " expected a label that the other side carries too\n    Did you mean \"three lugs\"?\n");
        assertThat(ran.out()).doesNotContain("Fit ring 36");
    }

    @Test
    void aMassThatIsMissing() throws IOException {
        CommandRun ran = with("{name: power pedals, kind: pedals, on: lane crank, mass: 420 g,", "{name: power pedals, kind: pedals, on: lane crank,");
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEqualTo("w.yaml:" + line("power pedals") + ": warning: mass: found no mass of \"power pedals\", expected one\n"
                + "    Totals leave it out and say so; weigh it.\n");
        assertThat(ran.out().replaceAll("\\s+", " ")).contains("without power pedals, whose mass is not known");
    }
}
