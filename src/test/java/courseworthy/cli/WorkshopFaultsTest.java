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
        text = Files.readString(Path.of("docs/examples/workshops/robin.yaml"));
    }

    private Ran with(String from, String to) throws IOException {
        assertThat(text.contains(from)).as(from).isTrue();
        text = text.replace(from, to);
        Path file = Files.writeString(folder.resolve("w.yaml"), text);
        Ran ran = Ran.of("brief", "course-profiles/heather-ridge.yaml", "--event", "docs/examples/events/heather-ridge.yaml", "--workshop", file.toString());
        return new Ran(ran.code(), ran.out(), ran.err().replace(folder.toString() + "/", ""));
    }

    /** The line on which a part is written. */
    private int line(String name) {
        return (int) text.substring(0, text.indexOf("{name: " + name + ",")).lines().count();
    }

    private static void refused(Ran ran, String message) {
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).isEqualTo(message + "\n");
    }

    @Test
    void aPartMountedTwice() throws IOException {
        Ran ran = with("{name: power crank, kind: crank, on: training bike", "{name: power crank, kind: crank, on: [training bike, race bike]");
        refused(ran, "w.yaml:" + line("power crank") + ": on: found \"power crank\" mounted in 2 places, expected one bike or part\n"
                + "    Name where it is now; what serves several bikes is moved when it is its turn.");
    }

    @Test
    void aCircle() throws IOException {
        Ran ran = with("{name: race stem 70, kind: stem, on: race bike", "{name: race stem 70, kind: stem, on: flat bar 760");
        assertThat(text).contains("{name: flat bar 760, kind: bar, on: race stem 70");
        refused(ran, "w.yaml:" + line("race stem 70") + ": on: found a circle: \"race stem 70\" is on \"flat bar 760\", which is on \"race stem 70\","
                + " expected what carries it\n    One of them is on a bike, or lies loose: then leave its key out.");
    }

    @Test
    void twoPartsWithOneName() throws IOException {
        Ran ran = with("{name: trail tyre 60 B,", "{name: trail tyre 60 A,");
        int first = line("trail tyre 60 A");
        refused(ran, "w.yaml:" + (first + 1) + ": name: found a second \"trail tyre 60 A\" (the first is on line " + first + "), expected a name of"
                + " its own for every bike and part\n    Tell them apart: \"trail tyre 60 A 2\".");
    }

    @Test
    void aPlaceThatNothingIsCalled() throws IOException {
        Ran ran = with("{name: power crank, kind: crank, on: training bike", "{name: power crank, kind: crank, on: trainin bike");
        refused(ran, "w.yaml:" + line("power crank") + ": on: found \"trainin bike\", which is neither a bike nor a part, expected the name of a bike"
                + " or a part\n    Did you mean \"training bike\"?");
    }

    /** A label is free text: one that nothing else carries and that is nearly another is asked about, and counts as what it says. */
    @Test
    void aLabelThatNothingElseCarries() throws IOException {
        Ran ran = with("{name: power crank, kind: crank, on: training bike, mass: 560 g, bottom bracket: wide shell",
                "{name: power crank, kind: crank, mass: 560 g, bottom bracket: wide shel");
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEqualTo("w.yaml:" + line("power crank") + ": warning: bottom bracket: found \"wide shel\", which nothing else carries,"
                + " expected a label that the other side carries too\n    Did you mean \"wide shell\"?\n");
        assertThat(ran.out()).doesNotContain("Put on power crank");
    }

    @Test
    void aMassThatIsMissing() throws IOException {
        Ran ran = with("{name: power crank, kind: crank, on: training bike, mass: 560 g,", "{name: power crank, kind: crank, on: training bike,");
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEqualTo("w.yaml:" + line("power crank") + ": warning: mass: found no mass of \"power crank\", expected one\n"
                + "    Totals leave it out and say so; weigh it.\n");
        assertThat(ran.out().replaceAll("\\s+", " ")).contains("without power crank, whose mass is not known");
    }
}
