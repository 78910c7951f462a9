package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.demand.StretchMeasure;
import courseworthy.report.json.OutputSchema;
import courseworthy.sheet.TestSubject;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every condition that a sheet can ask, everything it can say, and every fact and expectation that a case can give, makes a difference: with
 * one value in the sheet its case holds, with another it fails.
 */
class SheetKeyUseTest {

    private static final String TASK = "    do: {what: Look, find: Seen, by: night before}\n    because: So.\n";
    private static final List<String> FIRMNESS = List.of("firm", "fair", "thin");

    @TempDir
    private Path folder;

    private final StringBuilder one = new StringBuilder("sheet: Mine\nauthor: me\nadvice:\n");
    private final StringBuilder other = new StringBuilder(one);
    private final StringBuilder cases = new StringBuilder("cases for: Mine\ncases:\n");
    private final Set<String> ids = new TreeSet<>();

    /** What a subject can be, in words: a middling value, and another. */
    private static String value(TestSubject subject, int which) {
        boolean quantity = subject.scale().kind() == MeasureScale.Kind.QUANTITY;
        long least = Math.max(0, subject.scale().least());
        long value = !quantity ? which : subject.most() - least < 40 ? least + which : least + 10 + 10L * which;
        return quantity ? subject.scale().resolution().text(value) : subject.text(value);
    }

    /** A row for one condition, which is otherwise in the other sheet, with a case in which it applies and one in which it does not. */
    private void row(String condition, String otherwise, String fact, String otherFact) {
        String id = "row-" + ids.size();
        ids.add(id);
        one.append("  - id: ").append(id).append("\n    when: {").append(condition).append("}\n").append(TASK);
        other.append("  - id: ").append(id).append("\n    when: {").append(otherwise).append("}\n").append(TASK);
        cases.append("  - rule: ").append(id).append("\n    fires:\n      as asked: {").append(fact).append("}\n    silent:\n      otherwise: {")
                .append(otherFact).append("}\n");
    }

    /** Topics that can be more than one thing. */
    private static List<Topic> choices() {
        return Topics.all().stream().filter(topic -> topic.kind() == Topic.Kind.QUANTITY || topic.options().size() > 1).toList();
    }

    private JsonNode tried(StringBuilder sheet) throws IOException {
        Files.writeString(folder.resolve("s.yaml"), sheet);
        Files.writeString(folder.resolve("s.cases.yaml"), cases);
        CommandRun ran = CommandRun.of("sheet", "test", folder.resolve("s.yaml").toString(), "--format", "json");
        assertThat(ran.err()).isEmpty();
        return OutputSchema.tree(ran.out()).get("failed");
    }

    @Test
    void everyConditionAndFactIsUsed() throws IOException {
        for (Measure measure : Measure.values()) {
            String a = measure.written() + ": " + value(TestSubject.of(measure), 0);
            String b = measure.written() + ": " + value(TestSubject.of(measure), 1);
            row(a, b, a, b);
        }
        for (Topic topic : choices()) {
            String a = "decided: {" + topic.name() + ": " + value(TestSubject.of(topic), 0) + "}";
            String b = "decided: {" + topic.name() + ": " + value(TestSubject.of(topic), 1) + "}";
            row(a, b, a, b);
        }
        for (StretchMeasure measure : StretchMeasure.values()) {
            String ground = measure.summed() ? "surface: sand, " : "";
            String a = ground + measure.written() + ": " + value(TestSubject.of(measure), 0);
            String b = ground + measure.written() + ": " + value(TestSubject.of(measure), 1);
            String length = measure == StretchMeasure.LENGTH ? "" : "length: 1.00 km, ";
            String factA = "stretches: [{" + length + a + "}]";
            String factB = "stretches: [{" + length + b + "}]";
            row("any stretch: {" + a + "}", "any stretch: {" + b + "}", factA, factB);
            row("no stretch: {" + a + "}", "no stretch: {" + b + "}", factB, factA);
            if (!measure.summed()) {
                row("share of course: {where: {" + a + "}, is: over 50 %}", "share of course: {where: {" + b + "}, is: over 50 %}", factA, factB);
                row("share of course: {where: {" + a + "}, is: over 50 %}", "share of course: {where: {" + a + "}, is: under 50 %}", factA, factB);
            }
        }
        row("rider: Ann", "rider: Bo", "rider: Ann", "rider: Bo");
        row("rider tag: juniors", "rider tag: masters", "rider tag: juniors", "rider tag: masters");
        row("date: 2026-05-09", "date: 2026-05-10", "date: 2026-05-09", "date: 2026-05-10");
        row("any of: [{laps: 1}]", "any of: [{laps: 2}]", "laps: 1", "laps: 2");
        row("none of: [{laps: 1}]", "none of: [{laps: 2}]", "laps: 2", "laps: 1");

        assertThat(tried(one)).isEmpty();
        assertThat(new TreeSet<>(tried(other).findValuesAsText("rule"))).isEqualTo(ids);
    }

    @Test
    void aCaseOfWhatMayChangeIsUsed() throws IOException {
        one.append("  - id: few\n    when: {laps: at most 2}\n").append(TASK);
        other.append("  - id: few\n    when: {laps: at most 1}\n").append(TASK);
        cases.append("  - rule: few\n    fires:\n      one: {laps: 1}\n    still fires:\n      two: {laps: 2}\n");
        assertThat(tried(one)).isEmpty();
        assertThat(tried(other).findValuesAsText("case")).containsExactly("two");
    }

    /** Said on several kinds of bike, since some topics are of some kinds only. */
    @Test
    void everySayingAndExpectationIsUsed() throws IOException {
        Set<String> left = new LinkedHashSet<>();
        choices().forEach(topic -> left.add(topic.name()));
        for (String kind : List.of("trail", "road", "cross-country full suspension")) {
            for (int steps = 1; steps >= -1 && !left.isEmpty(); steps--) {
                differ(kind, steps).forEach(left::remove);
            }
        }
        // Only one step is sold between most end gears: ShippedCasesTest turns it.
        left.remove("largest step");
        assertThat(left).isEmpty();
    }

    /** Topics on which what is expected comes about by the one sheet and not by the other. */
    private List<String> differ(String kind, int steps) throws IOException {
        List<String> heads = List.of("sheet: Mine\nauthor: me\nadvice:\n", "cases for: Mine\ncases:\n");
        one.setLength(0);
        other.setLength(0);
        cases.setLength(0);
        one.append(heads.get(0));
        other.append(heads.get(0));
        cases.append(heads.get(1));
        int next = 0;
        for (Topic topic : choices()) {
            boolean bike = topic.name().equals("bike");
            long step = topic.kind() == Topic.Kind.QUANTITY ? Math.max(1, topic.step(topic.standard())) * 2 : 1;
            long most = topic.kind() == Topic.Kind.QUANTITY ? topic.most() : topic.options().size() - 1;
            long a = bike ? topic.option(kind) : Math.max(topic.least(), Math.min(most, topic.standard() + steps * step));
            long b = a - step >= topic.least() ? a - step : a + step;
            // On which others hang.
            a = topic.name().equals("lights") ? most : a;
            String head = "  - id: say-" + next++ + "\n    say: {" + topic.name() + ": prefer ";
            String tail = "}\n    force: must\n    because: So.\n";
            one.append(head).append(topic.text(a)).append(tail);
            other.append(head).append(topic.text(bike && steps < 1 || topic.name().equals("lights") && steps < 1 ? a : b)).append(tail);
            cases.append("  - call: ").append(topic.name()).append("\n    measures: {bike at hand: ").append(kind).append("}\n    expect: {")
                    .append(topic.name()).append(": ").append(topic.text(a)).append("}\n");
        }
        List<String> failed = tried(one).findValuesAsText("case");
        List<String> then = new ArrayList<>(tried(other).findValuesAsText("case"));
        then.removeAll(failed);
        return then;
    }

    /** Of all words one holds. */
    @Test
    void everyExpectedFirmnessIsUsed() throws IOException {
        one.append("  - id: any\n    say: {plugs: prefer 3}\n    because: So.\n");
        for (Topic topic : Topics.all()) {
            for (String firmness : FIRMNESS) {
                cases.append("  - call: ").append(topic.name()).append("\n    measures: {bike at hand: trail}\n    firmness: {").append(topic.name())
                        .append(": ").append(firmness).append("}\n");
            }
        }
        List<String> failed = tried(one).findValuesAsText("case");
        for (Topic topic : Topics.all()) {
            assertThat(failed.stream().filter(topic.name()::equals).count()).as(topic.name()).isGreaterThanOrEqualTo(FIRMNESS.size() - 1L);
        }
    }
}
