package courseworthy.course.ground;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.course.GroundPairs;
import courseworthy.course.GroundReader;
import courseworthy.course.Smoothness;
import courseworthy.course.Surface;
import courseworthy.problem.Faults;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The table that infers ground, against the cases beside it: each row where it fires and where it is silent, and no value without a case. */
class GroundRulesTest {

    private static final GroundRules SHIPPED = GroundRules.shipped();

    private record Case(String rule, String name, boolean fires, Map<String, String> tags, Map<String, String> is, List<Map<String, String>> mayBe) {
    }

    @Test
    void everyRowHoldsAgainstItsCases() {
        assertThat(failures(SHIPPED.rules())).isEmpty();
    }

    @Test
    void everyRowFiresInACaseAndIsSilentInAnother() {
        for (GroundRule rule : SHIPPED.rules()) {
            assertThat(cases().stream().filter(each -> each.rule.equals(rule.id())).map(Case::fires)).as(rule.id()).contains(true, false);
        }
        assertThat(SHIPPED.rules().stream().map(GroundRule::id)).doesNotHaveDuplicates().containsAll(cases().stream().map(Case::rule).toList());
    }

    @Test
    void everyRowSaysWhyAndWhereItIsFrom() {
        for (GroundRule rule : SHIPPED.rules()) {
            assertThat(rule.because()).as(rule.id()).endsWith(".");
            assertThat(rule.published()).as(rule.id()).isEqualTo(!rule.source().isEmpty());
            assertThat(rule.gives().isEmpty() && rule.mayBe().isEmpty()).as(rule.id()).isFalse();
        }
    }

    @Test
    void aConditionDroppedIsNoticed() {
        for (GroundRule rule : SHIPPED.rules()) {
            for (String key : rule.when().keySet()) {
                Map<String, List<String>> when = new LinkedHashMap<>(rule.when());
                when.remove(key);
                assertThat(failures(with(rule, when, rule.gives(), rule.mayBe()))).as(rule.id() + " without " + key).isNotEmpty();
            }
        }
    }

    @Test
    void aValueMovedIsNoticed() {
        for (GroundRule rule : SHIPPED.rules()) {
            rule.gives().forEach((key, value) -> {
                Map<String, String> gives = new LinkedHashMap<>(rule.gives());
                gives.put(key, moved(key, value));
                assertThat(failures(with(rule, rule.when(), gives, rule.mayBe()))).as(rule.id() + " " + key).isNotEmpty();
            });
            for (int i = 0; i < rule.mayBe().size(); i++) {
                List<Map<String, String>> mayBe = new ArrayList<>(rule.mayBe());
                Map<String, String> other = new LinkedHashMap<>(mayBe.get(i));
                other.replaceAll(GroundRulesTest::moved);
                mayBe.set(i, other);
                assertThat(failures(with(rule, rule.when(), rule.gives(), mayBe))).as(rule.id() + " may be " + i).isNotEmpty();
            }
        }
    }

    private static String moved(String key, String value) {
        List<String> values = switch (key) {
            case "surface" -> Surface.tags();
            case "smoothness" -> Smoothness.tags();
            case "tracktype" -> GroundReader.TRACKTYPES;
            default -> List.of("0", "1", "2", "3", "4", "5", "6");
        };
        int at = values.indexOf(value);
        return values.get(at > 0 ? at - 1 : 1);
    }

    private static List<GroundRule> with(GroundRule rule, Map<String, List<String>> when, Map<String, String> gives, List<Map<String, String>> mayBe) {
        List<GroundRule> out = new ArrayList<>(SHIPPED.rules());
        out.set(out.indexOf(rule), new GroundRule(rule.id(), when, gives, mayBe, rule.published(), rule.source(), rule.because(), rule.file(), rule.line()));
        return out;
    }

    /** What does not come out as the cases say. */
    private static List<String> failures(List<GroundRule> rules) {
        TagInterpreter interpreter = new TagInterpreter(new GroundRules(rules, SHIPPED.spellings()));
        List<String> out = new ArrayList<>();
        for (Case each : cases()) {
            InferredGround said = interpreter.of(each.tags).inferred().stream().filter(one -> one.rule().equals(each.rule)).findFirst().orElse(null);
            boolean right = each.fires ? said != null && said.gives().equals(each.is) && said.mayBe().equals(each.mayBe) : said == null;
            if (!right) {
                out.add(each.rule + ", " + each.name + ": " + said);
            }
        }
        return out;
    }

    private static List<Case> cases() {
        List<Case> out = new ArrayList<>();
        for (String file : List.of("rules/ground/surface.cases.yaml", "rules/ground/technical.cases.yaml")) {
            Faults faults = new Faults();
            FieldReader top = new FieldReader(file, YamlReader.read(Path.of(file), file, faults), faults);
            for (FieldReader rule : top.blocks("cases")) {
                String id = rule.line("rule", 100);
                for (String kind : List.of("fires", "silent")) {
                    for (Node.Entry each : rule.fields(kind).block().entries()) {
                        out.add(read(id, kind.equals("fires"), each, file, faults));
                    }
                }
                rule.done();
            }
            faults.throwIfAny();
        }
        return out;
    }

    private static Case read(String rule, boolean fires, Node.Entry entry, String file, Faults faults) {
        Node.Mapping block = (Node.Mapping) entry.value();
        Map<String, String> tags = new LinkedHashMap<>();
        Map<String, String> is = new LinkedHashMap<>();
        for (Node.Entry each : block.entries()) {
            if (each.value() instanceof Node.Scalar scalar) {
                tags.put(each.key().text(), scalar.text());
            } else if (each.value() instanceof Node.Mapping values) {
                values.entries().forEach(one -> is.put(one.key().text(), ((Node.Scalar) one.value()).text()));
            }
        }
        List<Map<String, String>> mayBe = new ArrayList<>();
        for (String pairs : new FieldReader(file, block, faults).texts("may be")) {
            mayBe.add(GroundPairs.read(pairs, file, block.line(), "may be", faults));
        }
        return new Case(rule, entry.key().text(), fires, tags, is, mayBe);
    }
}
