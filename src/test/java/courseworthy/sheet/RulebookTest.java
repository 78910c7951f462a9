package courseworthy.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.claim.Rank;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What may be put together, and what may be left out. */
class RulebookTest {

    private final Faults faults = new Faults();

    private Sheet sheet(String file, Rank rank, String text) {
        Node.Mapping tree = YamlReader.read(text.getBytes(StandardCharsets.UTF_8), file, faults);
        return SheetReader.decode(tree, file, rank, 0, faults);
    }

    private Sheet shipped() {
        return sheet("rules/h.yaml", Rank.SHIPPED, """
                sheet: Shipped
                author: shipped
                advice:
                  - id: wide
                    say: {front tyre width: prefer 45 mm}
                    because: So.
                  - id: brakes
                    do: {what: Pull the brakes, find: They hold, by: race morning, critical: yes}
                    because: So.
                """);
    }

    private Sheet limits() {
        return sheet("rules/limits/l.yaml", Rank.LIMIT, """
                sheet: Limits
                author: shipped
                advice:
                  - id: hookless
                    when: {hookless: yes}
                    say: {front tyre pressure: at most 5 bar}
                    because: So.
                """);
    }

    private Sheet coach(String file, String title, String rest) {
        return sheet(file, Rank.COACH, "sheet: " + title + "\nauthor: me\n" + rest);
    }

    private static String leaveOut(String rule) {
        return "leave out:\n  - {rule: " + rule + ", because: We do not ride so.}\n";
    }

    private Rulebook book(Sheet... coaches) {
        return Rulebook.of(List.of(shipped(), limits()), List.of(), List.of(coaches), faults);
    }

    private List<String> said() {
        return faults.faults().stream().map(Fault::text).toList();
    }

    @Test
    void aSheetLeavesOutAShippedRuleWithItsReason() {
        Rulebook book = book(coach("a.yaml", "Ours", leaveOut("shipped/wide")));
        assertThat(said()).isEmpty();
        assertThat(book.rows()).extracting(row -> row.origin().rule()).containsExactly("shipped/brakes", "limit/hookless");
        assertThat(book.leftOut()).extracting(Sheet.LeaveOut::because).containsExactly("We do not ride so.");
    }

    @Test
    void limitsAndWhatSafetyHangsOnStay() {
        Rulebook book = book(coach("a.yaml", "Ours", leaveOut("limit/hookless")), coach("b.yaml", "Theirs", leaveOut("shipped/brakes")),
                coach("c.yaml", "More", leaveOut("shipped/wid")), coach("d.yaml", "Joins", leaveOut("pairing/rear-rotor-no-larger")));
        assertThat(said()).containsExactly(
                "a.yaml:4: leave out: found \"limit/hookless\", a limit, expected advice\n    Limits cannot be left out.",
                "b.yaml:4: leave out: found \"shipped/brakes\", on which safety hangs, expected advice\n"
                        + "    What safety hangs on cannot be left out.",
                "c.yaml:4: leave out: found \"shipped/wid\", expected the id of a rule in force\n    Did you mean \"shipped/wide\"?",
                "d.yaml:4: leave out: found \"pairing/rear-rotor-no-larger\", a limit, expected advice\n    Limits cannot be left out.");
        assertThat(book.rows()).hasSize(3);
        assertThat(book.leftOut()).isEmpty();
    }

    @Test
    void twoSheetsOfOneNameAreAFault() {
        String row = "advice:\n  - id: x\n    say: {front tyre width: prefer 40 mm}\n    because: So.\n";
        book(coach("a.yaml", "Ours", row), coach("b.yaml", "Ours", row));
        assertThat(said()).containsExactly(
                "b.yaml:1: sheet: found \"Ours\" a second time, expected a name of its own\n    It is also the name of a.yaml.",
                "b.yaml:4: id: found \"Ours/x\" a second time, expected an id of its own\n    It first stands in a.yaml:4.");
    }

    @Test
    void namesOfTheToolAreTaken() {
        book(coach("a.yaml", "Shipped", leaveOut("shipped/wide")), coach("b.yaml", "One/two", leaveOut("shipped/wide")));
        assertThat(said()).containsExactly(
                "a.yaml:1: sheet: found \"Shipped\", expected a name of its own\n    Other names: all but shipped, limit, pairing, rider.",
                "b.yaml:1: sheet: found \"One/two\", expected a name without \"/\"");
    }

    @Test
    void whatComesAfterMustComeAfterSomething() {
        book(coach("a.yaml", "Ours", """
                advice:
                  - id: first
                    do: {what: Wash it, find: Clean, by: night before}
                    because: So.
                  - id: second
                    do: {what: Oil it, find: Shiny, by: night before, after: [first, shipped/brakes, frist, shipped/wide]}
                    because: So.
                """));
        assertThat(said()).containsExactly(
                "a.yaml:7: after: found \"Ours/frist\", expected a row that has something to do\n    Did you mean \"Ours/first\"?",
                "a.yaml:7: after: found \"shipped/wide\", expected a row that has something to do\n    Did you mean \"shipped/wide\"?");
    }
}
