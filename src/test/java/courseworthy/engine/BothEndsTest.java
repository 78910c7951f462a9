package courseworthy.engine;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.claim.Rank;
import courseworthy.claim.Verb;
import courseworthy.demand.Measure;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.sheet.Row;
import courseworthy.sheet.RulesFolder;
import courseworthy.sheet.Saying;
import courseworthy.sheet.Sheet;
import courseworthy.sheet.SheetReader;
import courseworthy.sheet.Situation;
import courseworthy.sheet.SituationReader;
import courseworthy.sheet.ValueTestReader;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import courseworthy.topic.BothEnds;
import courseworthy.topic.Topics;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a row, or the facts of a case, says of the front and of the rear at once. */
class BothEndsTest {

    private final Faults faults = new Faults();

    private Sheet sheet(String when, String say) {
        String text = "sheet: One\nauthor: me\nadvice:\n  - id: a-row\n    when: " + when + "\n    say: " + say + "\n    because: So it is.\n";
        return SheetReader.decode(YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "s.yaml", faults), "s.yaml", Rank.COACH, 0, faults);
    }

    private List<String> faultsOf(String when, String say) {
        sheet(when, say);
        return faults.faults().stream().map(Fault::text).toList();
    }

    @Test
    void oneRowSpeaksOnBothTopics() {
        List<Row> rows = sheet("{role: race}", "{front and rear tyre width: [at least 40 mm, prefer 45 mm]}").rows();
        assertThat(faults.faults()).isEmpty();
        assertThat(rows).hasSize(1);
        assertThat(rows.get(0).sayings()).containsExactly(
                new Saying(Topics.FRONT_TYRE_WIDTH, Verb.AT_LEAST, new Saying.Literal(40), "40 mm"),
                new Saying(Topics.FRONT_TYRE_WIDTH, Verb.PREFER, new Saying.Literal(45), "45 mm"),
                new Saying(Topics.REAR_TYRE_WIDTH, Verb.AT_LEAST, new Saying.Literal(40), "40 mm"),
                new Saying(Topics.REAR_TYRE_WIDTH, Verb.PREFER, new Saying.Literal(45), "45 mm"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{front and rear tyre pressure: at most 1.1 x front and rear reference pressure} | FRONT_REFERENCE_PRESSURE | REAR_REFERENCE_PRESSURE | 1.1",
        "{front and rear tyre width: at least narrowest front and rear tyre} | NARROWEST_FRONT_TYRE | NARROWEST_REAR_TYRE | 1",
        "{front and rear tyre width: at most tyre clearance} | TYRE_CLEARANCE | TYRE_CLEARANCE | 1"})
    void eachEndTakesTheMeasureOfItsOwn(String say, Measure front, Measure rear, String factor) {
        List<Saying> sayings = sheet("{role: race}", say).rows().get(0).sayings();
        assertThat(faults.faults()).isEmpty();
        assertThat(sayings).extracting(Saying::source)
                .containsExactly(new Saying.Times(new BigDecimal(factor), front), new Saying.Times(new BigDecimal(factor), rear));
    }

    @Test
    void whatIsWrongIsToldOnceAndByTheNameThatIsWritten() {
        assertThat(faultsOf("{role: race}", "{front and rear tyre width: prefer 45}")).containsExactly(
                "s.yaml:6: front and rear tyre width: found \"45\", expected a length with its unit, such as 84 km, 52 mi, 1900 m, 6200 ft, 57 mm or "
                        + "2.25 in\n    Add the unit, one of: km, mi, m, ft, cm, mm, in.");
    }

    @Test
    void whatHasNoTwoEndsHasNoSuchName() {
        assertThat(faultsOf("{role: race}", "{front and rear travel: prefer 120 mm}")).hasSize(1).first().asString()
                .startsWith("s.yaml:6: say: found \"front and rear travel\", expected a topic");
    }

    @Test
    void oneEndMayNotBeGivenTheSameVerbAgain() {
        assertThat(faultsOf("{role: race}", "{front and rear tyre casing: at least reinforced, rear tyre casing: at least heavy}")).containsExactly(
                "s.yaml:6: rear tyre casing: found \"at least\" a second time, expected each of at least, at most and prefer once");
    }

    @Test
    void aTestOfBothEndsIsRefusedSinceEitherMayBeMeant() {
        assertThat(faultsOf("{decided: {front and rear tyre width: under 30 mm}}", "{lubricant: prefer wet}")).containsExactly(
                "s.yaml:5: decided: found \"front and rear tyre width\", expected a topic\n"
                        + "    Write \"front tyre width\" and \"rear tyre width\" on a line each where both must hold, or in a set each under \"any of:\" "
                        + "where one is enough.");
    }

    @Test
    void aTextNamesEachEnd() {
        String text = "sheet: One\nauthor: me\nadvice:\n  - id: a-row\n    do: {what: \"Pump to {front and rear tyre pressure}\", find: So, by: night before}\n"
                + "    because: So it is.\n";
        SheetReader.decode(YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "s.yaml", faults), "s.yaml", Rank.COACH, 0, faults);
        assertThat(faults.faults()).extracting(Fault::text).containsExactly(
                "s.yaml:5: what: found \"{front and rear tyre pressure}\", expected a topic in braces\n"
                        + "    Name each end, as in \"{front tyre pressure}\" and \"{rear tyre pressure}\".");
    }

    @Test
    void factsMayNameBothEnds() {
        Node.Mapping tree = YamlReader.read("decided: {front and rear tyre width: 45 mm}\n".getBytes(StandardCharsets.UTF_8), "s.yaml", faults);
        Situation facts = new SituationReader("s.yaml", faults).changed(Situation.NONE, "facts", tree);
        assertThat(faults.faults()).isEmpty();
        assertThat(facts.settled().get(Topics.FRONT_TYRE_WIDTH).value()).isEqualTo(45);
        assertThat(facts.settled().get(Topics.REAR_TYRE_WIDTH).value()).isEqualTo(45);
    }

    /** What is the same at both ends is written once. */
    @Test
    void noShippedRowSaysTheSameOfEachEnd() {
        List<String> twins = new ArrayList<>();
        RulesFolder.trees(Path.of("rules"), faults).forEach((file, tree) -> {
            for (Node row : tree.get("advice") instanceof Node.Sequence rows ? rows.items() : List.<Node>of()) {
                if (row instanceof Node.Mapping block && block.get("say") instanceof Node.Mapping say) {
                    twins(file, say, twins);
                }
            }
        });
        assertThat(twins).isEmpty();
    }

    private static void twins(String file, Node.Mapping say, List<String> out) {
        for (String both : BothEnds.pairs()) {
            String front = both.replace(BothEnds.WORDS, "front");
            String rear = both.replace(BothEnds.WORDS, "rear");
            if (say.get(front) != null && say.get(rear) != null
                    && ValueTestReader.written(say.get(front)).replace("front", "rear").equals(ValueTestReader.written(say.get(rear)))) {
                out.add(file + ":" + say.line() + ": " + both);
            }
        }
    }
}
