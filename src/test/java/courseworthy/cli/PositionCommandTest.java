package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.report.json.OutputSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command that carries a position over. */
class PositionCommandTest {

    private static final String CELLAR = "docs/examples/workshops/cellar.yaml";

    @TempDir
    private Path folder;

    private static CommandRun carried(String... more) {
        String[] args = {"position", CELLAR, "--from", "hardtail", "--to", "borrowed bike"};
        String[] all = java.util.Arrays.copyOf(args, args.length + more.length);
        System.arraycopy(more, 0, all, args.length, more.length);
        return CommandRun.of(all);
    }

    @Test
    void textFitsATerminal() {
        CommandRun ran = carried();
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out().lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
        assertThat(ran.out()).startsWith("""
                The cellar                                               bar and saddle position
                borrowed bike, set up to the position of hardtail.

                                     hardtail  borrowed bike now  Difference
                hands forward          434 mm             412 mm      -22 mm
                """).contains("""

                THE STEM
                  Take spare stem 60 (60 mm at -6 deg), with 3 mm of jar of spacers under it.
                  It leaves the hands 2 mm too far forward.
                """, "  - lane stem 90, does not fit: bar clamp: 35 mm against 31.8 mm\n", "change nothing on race", "qualified\n    fitter or a doctor",
                "torque marked on the\n    parts", "minimum-insertion mark", "Sag is not included");
        assertThat(CommandRun.of("position", CELLAR).out().lines()).allMatch(line -> line.length() <= 80).contains("steel bike", "hardtail", "borrowed bike");
    }

    /** What the workshop's file leaves to be asked is said here as in a brief. */
    @Test
    void warnsAsABriefDoes() throws IOException {
        String text = Files.readString(Path.of(CELLAR)).replace("kind: pedals, on: borrowed crank, stays: yes, mass: 510 g", "kind: pedals, on: borrowed crank, stays: yes");
        String file = Files.writeString(folder.resolve("w.yaml"), text).toString();
        String said = CommandRun.of("position", file).err();
        assertThat(said).contains("warning: mass: found no mass of \"borrowed pedals\"");
        assertThat(CommandRun.of("brief", "course-profiles/heather-ridge.yaml", "--workshop", file).err()).isEqualTo(said);
    }

    /** The same figures stand in all three. */
    @Test
    void outputsAgree() {
        String text = carried().out().replaceAll("\\s+", " ");
        for (String line : carried("--format", "markdown").out().split("\n")) {
            if (line.startsWith("- ")) {
                assertThat(text).contains(line.substring(2).replace("\\", ""));
            }
        }
        JsonNode json = OutputSchema.tree(carried("--format", "json").out());
        JsonNode closest = json.get("stems").get(0);
        assertThat(closest.get("stem").textValue()).isEqualTo("spare stem 60");
        assertThat(Math.round(closest.get("hands_too_high_mm").doubleValue())).isZero();
        assertThat(closest.get("spacers_under_mm").doubleValue()).isEqualTo(3);
        assertThat(json.get("from").get("saddle_height_mm").doubleValue()).isEqualTo(694);
        assertThat(OutputSchema.tree(CommandRun.of("position", CELLAR, "--format", "json").out()).get("bikes")).hasSize(3);
        assertThat(CommandRun.of("position", CELLAR, "--format", "markdown").out()).startsWith("# The cellar, bar and saddle position\n").contains("\n## steel bike\n", "- **saddle height:** ");
    }

    /** A level bar clamp of another size, drops against grips, and cranks that differ. */
    @Test
    void aDropBarIsHeldElsewhere() {
        String text = CommandRun.of("position", CELLAR, "--from", "hardtail", "--to", "steel bike").out().replaceAll("\\s+", " ");
        assertThat(text).contains("Flat and drop bars put the hands in different places, so the place of the hands carries over only roughly.",
                "Height 691.5 mm, for cranks that are 2.5 mm longer: 30.5 mm lower than now.");
    }

    @Test
    void whatIsMissingIsAskedFor() throws IOException {
        String file = Files.writeString(folder.resolve("w.yaml"), "bikes:\n  - {name: old, mass: 2 kg}\n  - {name: new, mass: 2 kg}\n").toString();
        CommandRun ran = CommandRun.of("position", file, "--from", "old", "--to", "new");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("  - Measure the stack of old.\n", "  - List the bar that is on new.\n",
                "\nTHE STEM\n  Not known until you measure what is missing.\n", "\nTHE SADDLE\n  Height: not known.\n");
        assertThat(ran.out()).doesNotContain("null", "NaN");
        assertThat(CommandRun.of("position", file, "--from", "old", "--to", "new", "--format", "json").code()).isZero();
        assertThat(CommandRun.of("position", file, "--from", "old", "--to", "new", "--format", "markdown").out()).doesNotContain("null");
    }

    @Test
    void badInputIsRefused() {
        assertThat(CommandRun.of("position", CELLAR, "--from", "hardtial", "--to", "steel bike")).isEqualTo(new CommandRun(2, "", """
                --from: found "hardtial", expected a bike of the workshop: steel bike, hardtail, borrowed bike
                    Did you mean "hardtail"?
                """));
        assertThat(CommandRun.of("position", CELLAR, "--from", "hardtail")).isEqualTo(new CommandRun(2, "", "--to: found none beside --from, expected both, or neither\n"));
        assertThat(CommandRun.of("position", CELLAR, "--from", "hardtail", "--to", "hardtail")).isEqualTo(new CommandRun(2, "",
                "--to: found the bike of --from, expected another bike\n"));
        CommandRun none = CommandRun.of("position", "no-such.yaml");
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.out()).isEmpty();
        assertThat(none.err()).startsWith("no-such.yaml: found no such file");
    }

    @Test
    void helpHasExamples() {
        assertThat(CommandRun.of("position", "--help").out()).contains("courseworthy position workshop.yaml --from hardtail --to 'borrowed bike'");
    }
}
