package courseworthy.rulebase;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every shipped row against the cases beside it. The system property {@code courseworthy.cases} restricts the check to sheets whose
 * path contains its text.
 */
class HouseRuleCasesTest {

    private static final Path RULES = Path.of("rules");

    @TestFactory
    Stream<DynamicTest> everySheetHoldsAgainstItsCases() {
        return CheckCases.sheets(RULES, System.getProperty("courseworthy.cases", "")).stream().map(sheet ->
                DynamicTest.dynamicTest(RulesFolder.shown(RULES, sheet), () -> {
                    CaseCheck.Outcome outcome = CaseCheck.of(RULES, sheet);
                    assertThat(outcome.problems()).as(String.join("\n", outcome.problems())).isEmpty();
                }));
    }

    @Test
    void noCasesWithoutASheet() {
        List<String> lost = new ArrayList<>();
        for (Path cases : RulesFolder.files(RULES, ".cases.yaml")) {
            Path sheet = cases.resolveSibling(cases.getFileName().toString().replace(".cases.yaml", ".yaml"));
            if (!Files.exists(sheet)) {
                lost.add(RulesFolder.shown(RULES, cases));
            }
        }
        assertThat(lost).isEmpty();
    }
}
