package courseworthy;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.Faults;
import courseworthy.sheet.Condition;
import courseworthy.sheet.Row;
import courseworthy.sheet.Sheet;
import courseworthy.sheet.SheetReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The coach's page of advice among the examples: it holds, nothing of it is left untried, and the docs speak of what is in it. */
class ExampleSheetTest {

    private static final String SHEET = "docs/examples/sheets/hill-country.yaml";

    private final List<String> remarks = new ArrayList<>();
    private final ToolOutput tool = new ToolOutput(Path.of(""), remarks::add);

    private static Sheet sheet() {
        Faults faults = new Faults();
        Sheet sheet = SheetReader.read(Path.of(SHEET), SHEET, 0, faults);
        assertThat(faults.faults()).isEmpty();
        assertThat(faults.warnings()).isEmpty();
        return sheet;
    }

    @Test
    void itHasThirtyRowsWithNothingToLookAt() {
        assertThat(sheet().rows()).hasSize(30);
        assertThat(tool.run("sheet", "check", SHEET)).isEqualTo(SHEET + "                    30 rows, nothing found\n");
        assertThat(remarks).isEmpty();
    }

    @Test
    void itsCasesHoldAndTouchEverything() {
        String text = tool.run("sheet", "test", SHEET, "--cover");
        assertThat(text.replaceAll("\\s+", " "))
                .startsWith(SHEET + " 30 rows, 100 cases, all as expected, all of it covered With the advice of \"Hill country\" 2026-11 by the coach of a hill country club (" + SHEET + ", CC-BY-4.0, sha256 ")
                .contains("shipped/a-little-more-to-get-round is left out by \"Hill country\" (" + SHEET + ":");
        assertThat(remarks).isEmpty();
    }

    /** What the docs explain is used in it. */
    @Test
    void itUsesEveryKindOfCondition() {
        Set<String> used = new TreeSet<>();
        for (Row row : sheet().rows()) {
            kinds(row.condition(), used);
        }
        assertThat(used).containsExactlyInAnyOrder("MeasureCondition", "DecisionCondition", "Stretches", "StretchShareCondition", "OccasionTest", "AllOf", "AnyOf", "NoneOf");
    }

    private static void kinds(Condition condition, Set<String> out) {
        out.add(condition.getClass().getSimpleName());
        List<Condition> parts = condition instanceof Condition.AllOf all ? all.parts() : condition instanceof Condition.AnyOf any ? any.parts()
                : condition instanceof Condition.NoneOf none ? none.parts() : List.of();
        parts.forEach(part -> kinds(part, out));
    }

    /** Each row, case and leave-out that the docs quote from it stands in it just so. */
    @Test
    void theDocsQuoteItRightly() throws IOException {
        String docs = Files.readString(Path.of("docs/sheets.md"));
        String written = Files.readString(Path.of(SHEET));
        Matcher rows = Pattern.compile("(?ms)^  - id: .*?because: [^\n]*\n").matcher(docs);
        int quoted = 0;
        while (rows.find()) {
            assertThat(written).contains(rows.group());
            quoted++;
        }
        assertThat(quoted).isEqualTo(2);
        assertThat(written).contains("leave out:\n  - rule: shipped/a-little-more-to-get-round\n    because: Our riders know their tyres; "
                + "a little more air has cost us grip.\n");
        assertThat(docs).contains("    because: Our riders know their tyres; a little more air has cost us grip.\n");
    }
}
