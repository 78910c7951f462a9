package courseworthy.engine;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.claim.Deadline;
import courseworthy.claim.Task;
import courseworthy.problem.Faults;
import courseworthy.sheet.Row;
import courseworthy.sheet.RuleCase;
import courseworthy.sheet.RulesFolder;
import courseworthy.sheet.Sheet;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every shipped row against the cases beside it. The system property {@code courseworthy.cases} restricts the check to sheets whose
 * path contains its text.
 */
class ShippedRuleCasesTest {

    private static final Path RULES = Path.of("rules");

    @TestFactory
    Stream<DynamicTest> everySheetHoldsAgainstItsCases() {
        return CheckCases.sheets(RULES, System.getProperty("courseworthy.cases", "")).stream().map(sheet ->
                DynamicTest.dynamicTest(RulesFolder.shown(RULES, sheet), () -> {
                    CaseCheck.Outcome outcome = CaseCheck.of(RULES, sheet);
                    assertThat(outcome.problems()).as(String.join("\n", outcome.problems())).isEmpty();
                }));
    }

    /** A value moved by one step, a factor by a twentieth, a verb exchanged, an item due at another time: some case notices. */
    @TestFactory
    Stream<DynamicTest> everyValueSaidIsInItsCases() {
        return CheckCases.sheets(RULES, System.getProperty("courseworthy.cases", "")).stream()
                .map(sheet -> DynamicTest.dynamicTest(RulesFolder.shown(RULES, sheet), () -> {
                    List<String> unnoticed = CaseCheck.unnoticedOutput(RULES, sheet);
                    assertThat(unnoticed).as(String.join("\n", unnoticed)).isEmpty();
                }));
    }

    /** The rule network speaks in the same cases; each row only notes that it fired, whatever it would say. */
    @Test
    void theNetworkHoldsAgainstTheCasesToo() {
        Faults faults = new Faults();
        Map<String, Row> rows = new LinkedHashMap<>();
        Map<Row, List<RuleCase>> cases = new LinkedHashMap<>();
        for (Path path : CheckCases.sheets(RULES, System.getProperty("courseworthy.cases", ""))) {
            Sheet sheet = CaseCheck.sheet(RULES, path, faults);
            List<RuleCase> own = CaseCheck.casesOf(path, RulesFolder.shown(RULES, path), sheet, faults);
            for (Row row : sheet.rows()) {
                Row noting = noting(row);
                rows.put(row.origin().rule(), noting);
                cases.put(noting, own.stream().filter(c -> row.origin().rule().endsWith("/" + c.rule())).toList());
            }
        }
        DroolsRules network = new DroolsRules(List.copyOf(rows.values()), new ShippedRules(List.of(), new GearPairs(List.of()), Map.of()));
        List<String> wrong = new ArrayList<>();
        cases.forEach((row, own) -> own.forEach(one -> {
            if (fires(network, row, one) != one.fires()) {
                wrong.add(one.where() + ": " + one.rule() + ": \"" + one.sentence() + "\"");
            }
        }));
        assertThat(wrong).isEmpty();
    }

    private static Row noting(Row row) {
        Task fired = new Task(row.origin(), "fired", "", Deadline.NIGHT_BEFORE, 0, false, "", List.of(), List.of());
        return new Row(row.origin(), row.condition(), List.of(), fired);
    }

    private static boolean fires(DroolsRules network, Row row, RuleCase one) {
        try (RuleSet.Firing firing = network.open()) {
            return firing.fire(one.facts().after(row.condition().layer())).tasks().stream().anyMatch(task -> task.origin().rule().equals(row.origin().rule()));
        }
    }

    @Test
    void noCasesWithoutASheet() {
        List<String> lost = new ArrayList<>();
        for (Path cases : RulesFolder.files(RULES, ".cases.yaml")) {
            Path sheet = cases.resolveSibling(cases.getFileName().toString().replace(".cases.yaml", ".yaml"));
            Path joins = cases.resolveSibling(cases.getFileName().toString().replace(".cases.yaml", ".drl"));
            if (!Files.exists(sheet) && !Files.exists(joins)) {
                lost.add(RulesFolder.shown(RULES, cases));
            }
        }
        assertThat(lost).isEmpty();
    }
}
