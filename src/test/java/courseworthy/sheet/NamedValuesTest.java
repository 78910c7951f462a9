package courseworthy.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.claim.Rank;
import courseworthy.demand.Measure;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures that are named once and used by name. */
class NamedValuesTest {

    private final Faults faults = new Faults();

    private Node.Mapping tree(String text) {
        return YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "s.yaml", faults);
    }

    private Sheet sheet(String values, String when, String say) {
        return SheetReader.decode(tree("sheet: One\nauthor: me\nvalues: " + values + "\nadvice:\n  - id: a-row\n    when: " + when + "\n    say: " + say
                + "\n    because: So it is.\n"), "s.yaml", Rank.COACH, 0, faults);
    }

    private Row row(String values, String when, String say) {
        Row row = sheet(values, when, say).rows().get(0);
        assertThat(faults.faults()).isEmpty();
        assertThat(faults.warnings()).isEmpty();
        return row;
    }

    private List<String> faultsOf(String values, String when, String say) {
        sheet(values, when, say);
        return faults.faults().stream().map(Fault::text).toList();
    }

    @Test
    void aNameStandsForItsFigureInATestAndIsShownWithIt() {
        Row row = row("{heavy load: {value: 100 kg, because: Few are heavier.}}", "{start-line mass: at least the heavy load}", "{lubricant: prefer wet}");
        assertThat(row.condition().canonical()).isEqualTo("all[start-line mass[200..]]");
        assertThat(((Condition.MeasureCondition) row.condition().parts().get(0)).written()).isEqualTo("at least 100 kg (heavy load)");
    }

    @Test
    void bothEndsOfATestAndTheItemsOfAListMayBeNamed() {
        assertThat(row("{short day: {value: 2 h, because: So.}, long day: {value: 6 h, because: So.}}", "{hours: between the short day and the long day}",
                "{lubricant: prefer wet}").condition().canonical()).isEqualTo("all[hours[120..360]]");
        Row among = row("{short day: {value: 2 h, because: So.}}", "{hours: [the short day, 3:00 h]}", "{lubricant: prefer wet}");
        assertThat(among.condition().canonical()).isEqualTo("all[hours[120, 180]]");
        assertThat(((Condition.MeasureCondition) among.condition().parts().get(0)).written()).isEqualTo("one of [2 h (short day), 3:00 h]");
    }

    @Test
    void aNameStandsForItsFigureInWhatIsSaid() {
        Saying saying = row("{usual gear: {value: 34x50, because: So.}}", "{role: race}", "{easiest gear: prefer the usual gear}").sayings().get(0);
        assertThat(saying.source()).isEqualTo(new Saying.Literal(680));
        assertThat(saying.written()).isEqualTo("the usual gear");
        assertThat(saying.text()).isEqualTo("prefer the usual gear (0.680)");
    }

    @Test
    void aNameMayBeAFactor() {
        Saying saying = row("{gear in hand: {value: 0.95, because: So.}}", "{role: race}",
                "{easiest gear: at most the gear in hand x ratio needed on the last climb}").sayings().get(0);
        assertThat(saying.source()).isEqualTo(new Saying.Times(new BigDecimal("0.95"), Measure.RATIO_NEEDED_ON_THE_LAST_CLIMB));
        assertThat(saying.written()).isEqualTo("0.95 (gear in hand) x ratio needed on the last climb");
    }

    @Test
    void aNameMayBeTheTimeThatSomethingNeeds() {
        Sheet sheet = SheetReader.decode(tree("""
                sheet: One
                author: me
                values:
                  night: {value: 12 h, because: So.}
                advice:
                  - id: a-row
                    do: {what: Wait, find: Dry, by: night before, needs: the night}
                    because: So it is.
                """), "s.yaml", Rank.COACH, 0, faults);
        assertThat(faults.faults()).isEmpty();
        assertThat(sheet.rows().get(0).task().needs()).isEqualTo(12 * 3600);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{heavy load: {value: 100 kg, because: So.}} | {start-line mass: at least the hevy load} "
                + "| 6: start-line mass: found \"the hevy load\", expected one of the values of the sheet: heavy load# Did you mean \"heavy load\"?",
        "{heavy load: {value: 100 kg, because: So.}} | {hours: at least the heavy load} "
                + "| 6: hours: found \"the heavy load\", which is 100 kg, expected a time with its unit, such as 6:30 h, 4 h, 45 min or 40 s",
        "{heavy load: {value: 100 kg}} | {start-line mass: at least the heavy load} "
                + "| 3: heavy load: found no reason, expected because, or source where it is published# Add a line \"because: ...\".",
        "{heavy load: {value: much, because: So.}} | {role: race} "
                + "| 3: heavy load: found \"much\", expected a figure with its unit, such as 100 kg, 5 bar, 12 % or 0.68",
        "{heavy load: {because: So.}} | {role: race} "
                + "| 3: value: found nothing, expected a figure with its unit# Add a line \"value: ...\".",
        "{Heavy load: {value: 100 kg, because: So.}} | {start-line mass: at least the Heavy load} "
                + "| 3: values: found \"Heavy load\", expected a name in small letters, without \"the\", \"and\" or \"x\", such as heavy load",
        "{load and bags: {value: 100 kg, because: So.}} | {start-line mass: at least the load and bags} "
                + "| 3: values: found \"load and bags\", expected a name in small letters, without \"the\", \"and\" or \"x\", such as heavy load",
        "{heavy load: 100 kg} | {role: race} | 3: heavy load: found \"100 kg\", expected a block of keys"})
    void whatIsWrongWithAValueIsTold(String values, String when, String fault) {
        assertThat(faultsOf(values, when, "{lubricant: prefer wet}")).containsExactly("s.yaml:" + fault.strip().replace("# ", "\n    "));
    }

    @Test
    void aNameWithoutAnyValuesIsTold() {
        SheetReader.decode(tree("sheet: One\nauthor: me\nadvice:\n  - id: a-row\n    say: {fork travel: prefer the usual travel}\n    because: So.\n"), "s.yaml",
                Rank.COACH, 0, faults);
        assertThat(faults.faults()).extracting(Fault::text).containsExactly("s.yaml:5: fork travel: found \"the usual travel\", expected a length with its unit, "
                + "such as 84 km, 52 mi, 1900 m, 6200 ft, 57 mm or 2.25 in\n    Name it under \"values:\" to use it so.");
    }

    @Test
    void aValueThatNoRowUsesIsWarnedOf() {
        assertThat(faultsOf("{heavy load: {value: 100 kg, because: So.}}", "{role: race}", "{lubricant: prefer wet}")).isEmpty();
        assertThat(faults.warnings()).extracting(Fault::text).containsExactly("s.yaml:3: warning: values: found \"heavy load\", which no row uses, "
                + "expected a row that uses it\n    Write \"the heavy load\" where you use it, or remove it.");
    }

    /** The shipped sheets share their values, so that a name stands in one of them alone. */
    @Test
    void shippedSheetsShareTheirValues() {
        Map<String, Node.Mapping> trees = new LinkedHashMap<>();
        trees.put("rules/a.yaml", tree("sheet: A\nauthor: shipped\nvalues:\n  heavy load: {value: 100 kg, because: So.}\n"));
        trees.put("rules/b.yaml", tree("sheet: B\nauthor: shipped\nadvice:\n  - id: x\n    when: {start-line mass: over the heavy load}\n"
                + "    say: {lubricant: prefer wet}\n    because: So.\n"));
        List<Sheet> sheets = RulesFolder.decode(trees, faults);
        assertThat(faults.faults()).isEmpty();
        assertThat(faults.warnings()).isEmpty();
        assertThat(sheets.get(1).rows().get(0).condition().canonical()).isEqualTo("all[start-line mass[201..]]");
        trees.put("rules/c.yaml", tree("sheet: C\nauthor: shipped\nvalues:\n  heavy load: {value: 90 kg, because: So.}\n"));
        RulesFolder.decode(trees, faults);
        assertThat(faults.faults()).extracting(Fault::text).containsExactly(
                "rules/c.yaml:4: values: found \"heavy load\" a second time, expected a name of its own\n    It first stands in rules/a.yaml:4.");
    }

    @Test
    void everyShippedValueIsUsed() {
        RulesFolder.read(Path.of("rules"), faults);
        assertThat(faults.faults()).isEmpty();
        assertThat(faults.warnings()).isEmpty();
    }
}
