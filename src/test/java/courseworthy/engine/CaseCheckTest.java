package courseworthy.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The check of cases itself: it lets good cases pass and lists everything that bad ones let slip. */
class CaseCheckTest {

    private static CaseCheck.Outcome check(String folder) {
        Path rules = Path.of("src/test/resources", folder);
        return CaseCheck.of(rules, rules.resolve("tyres/width.yaml"));
    }

    @Test
    void goodCasesNoticeEveryWrongCondition() {
        CaseCheck.Outcome outcome = check("rules-right");
        assertThat(outcome.problems()).isEmpty();
        assertThat(outcome.cases()).isEqualTo(19);
        assertThat(outcome.mutants()).isGreaterThan(25);
    }

    @Test
    void listsAllThatBadCasesLetSlip() {
        assertThat(check("rules-wrong").problems()).containsExactly(
                "rules/tyres/width.yaml:4: shipped/loose-ends: no case notices roughness from rough (2.0) moved to mixed (1.9)\n"
                        + "    Add a silent case with roughness mixed (1.9).",
                "rules/tyres/width.yaml:4: shipped/loose-ends: no case notices roughness from rough (2.0) moved to rough (2.1)\n"
                        + "    Add a firing case with roughness rough (2.0).",
                "rules/tyres/width.yaml:4: shipped/loose-ends: no case notices descent per km from 18.0 m moved to 17.9 m\n"
                        + "    Add a silent case with descent per km 17.9 m.",
                "rules/tyres/width.yaml:4: shipped/loose-ends: no case notices descent per km from 18.0 m moved to 18.1 m\n"
                        + "    Add a firing case with descent per km 18.0 m.",
                "rules/tyres/width.yaml:4: shipped/loose-ends: no case notices descent per km up to 20.0 m moved to 19.9 m\n"
                        + "    Add a firing case with descent per km 20.0 m.",
                "rules/tyres/width.yaml:4: shipped/loose-ends: no case notices descent per km up to 20.0 m moved to 20.1 m\n"
                        + "    Add a silent case with descent per km 20.1 m.",
                "rules/tyres/width.yaml:4: shipped/loose-ends: no case notices bike at hand road taken away\n"
                        + "    Add a firing case with bike at hand road.",
                "rules/tyres/width.yaml:4: shipped/loose-ends: no case notices \"bike at hand one of [gravel, road]\" dropped\n"
                        + "    Add a case in which \"bike at hand one of [gravel, road]\" fails, and nothing else does.",
                "rules/tyres/width.yaml:4: shipped/loose-ends: no case notices \"descent per km between 18 m and 20 m\" dropped\n"
                        + "    Add a case in which \"descent per km between 18 m and 20 m\" fails, and nothing else does.",
                "rules/tyres/width.yaml:12: shipped/no-cases: no firing case",
                "rules/tyres/width.cases.yaml:11: wrong-case: \"two laps\": must fire, but \"laps over 2\" is false",
                "rules/tyres/width.cases.yaml:16: nobody: no row of this id in rules/tyres/width.yaml");
    }
}
