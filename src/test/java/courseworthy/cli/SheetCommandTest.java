package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.report.json.OutputSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command that looks over a sheet, on its full text. */
class SheetCommandTest {

    static final String SHEET = """
            sheet: Mine
            author: a coach
            advice:
              - id: never
                when: {hours: over 5 h, none of: [{hours: over 3 h}]}
                say: {plugs: prefer 3}
                because: It cannot be.
              - id: road-fork
                when: {decided: {bike: road}}
                say: {fork travel: prefer 120 mm}
                because: It does not apply.
              - id: always
                when: {any of: [{hours: over 3 h}, {hours: under 4 h}]}
                say: {food: prefer 60 g/h}
                because: It always holds.
              - id: stones
                when: {sharp stones: over 10 %, roughness: at least rough}
                say: {front tyre casing: at least heavy}
                because: First.
              - id: again
                when: {none of: [{sharp stones: at most 10 %}, {roughness: under rough}]}
                say: {front tyre casing: at least heavy}
                because: The same in other words.
              - id: many
                when: {sharp stones: over 30 %, roughness: at least rough}
                say: {front tyre casing: at least reinforced}
                because: Nothing new.
              - id: light
                when: {sharp stones: over 20 %, roughness: at least rugged}
                say: {front tyre casing: prefer light}
                because: It is light.
              - id: short
                when: {hours: under 3 h}
                say: {water: prefer 0.7 L}
                because: A bottle will do.
              - id: middling
                when: {hours: between 3 h and 4 h}
                say: {water: prefer 0.7 L}
                because: A bottle will do still.
            """;

    private static final String REMARKS = """
            FILE 9 rows, 7 findings

            FILE:4: Mine/never: can never apply
                hours: over 5 h and none of [hours: over 3 h] cannot hold together.
                Correct a condition, or remove the row.
                Such as: hours 3:00 h.

            FILE:8: Mine/road-fork: never counts
                Where it applies, fork travel does not apply.
                Correct the condition on the bike, or say it on another topic.
                Such as: decided: bike road.

            FILE:12: Mine/always: always holds
                It holds for every value, as long as it is known.
                Leave out "when", or correct a condition.
                Such as: hours 3:01 h.

            FILE:20: Mine/again: same in other words
                It applies exactly where Mine/stones does, and says the same. (FILE:16)
                Keep one of them.
                Such as: sharp stones 11 %, roughness rough (2.0).

            FILE:24: Mine/many: adds nothing
                Wherever it applies, Mine/stones says as much. (FILE:16)
                Remove it, or let it say more.
                Such as: sharp stones 31 %, roughness rough (2.0).

            FILE:28: Mine/light: contradicts
                Whenever it applies, Mine/stones applies too: front tyre casing: at least
                heavy, and front tyre casing: prefer light. (FILE:16)
                Change one, or let their conditions exclude each other.
                Such as: sharp stones 21 %, roughness rugged (3.0).

            FILE:36: Mine/middling: could be one row
                It says what Mine/short does, where hours lies next to its range. (FILE:32)
                One row will do, with hours at most 4:00 h.
                Such as: hours 3:00 h.
            """;

    @TempDir
    private Path folder;

    @Test
    void everyRemarkSaysWhatIsSoAndWhatToDoAndShowsIt() throws IOException {
        String file = Files.writeString(folder.resolve("mine.yaml"), SHEET).toString();
        CommandRun ran = CommandRun.of("sheet", "check", file);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        assertThat(plain(ran.out(), file)).isEqualTo(plain(REMARKS, file));
        assertThat(OutputSchema.tree(CommandRun.of("sheet", "check", file, "--format", "json").out()).get("remarks")).hasSize(7);
    }

    /** The place of the file decides where lines break. */
    private static String plain(String text, String file) {
        return text.replace(file, "FILE").replaceAll("\\s+", " ");
    }

    /** An exception that avoids what the rule prefers wins by the sum of the votes, so it is none of the contradictions. */
    @Test
    void anExceptionThatSaysSoContradictsNothing() throws IOException {
        String rule = """
                sheet: Mine
                author: me
                advice:
                  - id: dropper
                    when: {roughness: at least mixed}
                    say: {seatpost: prefer dropper}
                    because: So.
                  - id: rigid
                    when: {roughness: at least rough}
                    say: {seatpost: %s}
                    because: So.
                """;
        assertThat(contradictions(rule.formatted("prefer rigid"))).isEqualTo(1);
        assertThat(contradictions(rule.formatted("[prefer rigid, avoid dropper]"))).isZero();
    }

    private long contradictions(String sheet) throws IOException {
        String file = Files.writeString(folder.resolve("mine.yaml"), sheet).toString();
        return CommandRun.of("sheet", "check", file).out().lines().filter(line -> line.endsWith(": contradicts")).count();
    }

    @Test
    void aSheetThatCannotBeUsedIsRefused() throws IOException {
        String file = Files.writeString(folder.resolve("mine.yaml"), "sheet: Mine\nauthor: me\nadvice:\n  - id: x\n"
                + "    say: {fork travl: prefer 120 mm}\n    because: y\n").toString();
        CommandRun ran = CommandRun.of("sheet", "check", file);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("mine.yaml:5: ", "fork travl", "Did you mean \"fork travel\"?");
        assertThat(CommandRun.of("sheet", "chek", file)).isEqualTo(new CommandRun(2, "", """
                courseworthy sheet: no command 'chek'
                    Did you mean "check"?
                    'courseworthy sheet --help' lists what there is.
                """));
    }

    /** A preference and a bound that leaves no room for it go ill together whichever speaks less often, and whichever stands first. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"prefer 3 | at most 2", "at most 2 | prefer 3", "prefer 1 | at least 2", "at least 2 | prefer 1"})
    void aPreferenceAndABoundContradictInBothDirections(String often, String seldom) throws IOException {
        for (boolean seldomFirst : new boolean[] {false, true}) {
            String one = "  - id: often\n    when: {hours: over 3:00 h}\n    say: {plugs: " + often + "}\n    because: It is so.\n";
            String other = "  - id: seldom\n    when: {hours: over 5:00 h}\n    say: {plugs: " + seldom + "}\n    because: It is so.\n";
            String sheet = Files.writeString(folder.resolve("both.yaml"), "sheet: Mine\nauthor: me\nadvice:\n" + (seldomFirst ? other + one : one + other)).toString();
            String told = CommandRun.of("sheet", "check", sheet).out().replaceAll("\\s+", " ");
            assertThat(told).contains("Mine/seldom: contradicts Whenever it applies, Mine/often applies too: ").contains("1 finding");
            assertThat(told.contains("Leave it if you want it as the exception")).isEqualTo(often.startsWith("prefer"));
        }
    }
}
