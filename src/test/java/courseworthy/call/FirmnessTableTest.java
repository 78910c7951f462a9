package courseworthy.call;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.call.Firmness.Agreement;
import courseworthy.call.Firmness.Evidence;
import courseworthy.call.Firmness.Knowledge;
import courseworthy.call.Firmness.Level;
import courseworthy.call.FirmnessTable.Grade;
import courseworthy.problem.Faults;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The table of how firm a decision is, against the cases beside it: no word in it without a case, and every combination has one row. */
class FirmnessTableTest {

    private static final FirmnessTable SHIPPED = FirmnessTable.shipped();
    private static final List<Case> CASES = cases();

    private record Case(String rule, Evidence evidence, Agreement agreement, Knowledge knowledge, String firmness) {
    }

    @Test
    void everyCaseComesOutByItsRow() {
        assertThat(CASES).isNotEmpty().allSatisfy(each -> {
            Grade grade = SHIPPED.grade(each.evidence, each.agreement, each.knowledge);
            assertThat(grade.id()).isEqualTo(each.rule);
            assertThat(grade.level().word()).isEqualTo(each.firmness);
        });
    }

    @Test
    void eachCombinationHasOneRowAndACase() {
        for (Evidence evidence : Evidence.values()) {
            for (Agreement agreement : Agreement.values()) {
                for (Knowledge knowledge : Knowledge.values()) {
                    assertThat(SHIPPED.grades().stream().filter(row -> row.holds(evidence, agreement, knowledge))).as("%s %s %s", evidence, agreement, knowledge).hasSize(1);
                    assertThat(CASES.stream().filter(one -> one.evidence == evidence && one.agreement == agreement && one.knowledge == knowledge))
                            .as("%s %s %s", evidence, agreement, knowledge).hasSize(1);
                }
            }
        }
    }

    /** Better evidence, more agreement and better knowledge never make a decision less firm. */
    @Test
    void moreNeverMakesLessFirm() {
        for (Case one : CASES) {
            for (Case other : CASES) {
                boolean noBetter = one.evidence.compareTo(other.evidence) <= 0 && one.agreement.compareTo(other.agreement) <= 0
                        && one.knowledge.compareTo(other.knowledge) <= 0;
                assertThat(!noBetter || level(one).compareTo(level(other)) <= 0).as("%s and %s", one, other).isTrue();
            }
        }
    }

    @Test
    void wordsAreKnownAndReasonsAreSentences() {
        for (Grade row : SHIPPED.grades()) {
            assertThat(Arrays.stream(Evidence.values()).map(Evidence::word)).containsAll(row.evidence());
            assertThat(Arrays.stream(Agreement.values()).map(Agreement::word)).containsAll(row.agreement());
            assertThat(Arrays.stream(Knowledge.values()).map(Knowledge::word)).containsAll(row.knowledge());
            assertThat(row.because()).endsWith(".");
        }
        assertThat(SHIPPED.grades().stream().map(Grade::id)).doesNotHaveDuplicates();
    }

    private static Level level(Case one) {
        return SHIPPED.grade(one.evidence, one.agreement, one.knowledge).level();
    }

    private static List<Case> cases() {
        String file = "rules/firmness/firmness.cases.yaml";
        Faults faults = new Faults();
        List<Case> out = new ArrayList<>();
        for (FieldReader rule : new FieldReader(file, YamlReader.read(Path.of(file), file, faults), faults).blocks("cases")) {
            String id = rule.line("rule", 100);
            for (Node.Entry each : rule.fields("is").block().entries()) {
                FieldReader fields = new FieldReader(file, (Node.Mapping) each.value(), faults);
                String firmness = fields.word("firmness", FirmnessTable.words());
                List<String> knowledge = fields.texts("under it");
                List<String> agreement = fields.texts("agreement");
                for (String evidence : fields.texts("evidence")) {
                    agreement.forEach(agreed -> knowledge.forEach(known -> out.add(new Case(id, one(Evidence.values(), evidence), one(Agreement.values(), agreed),
                            one(Knowledge.values(), known), firmness))));
                }
                fields.done();
            }
            rule.done();
        }
        faults.throwIfAny();
        return out;
    }

    private static <T extends Enum<T>> T one(T[] values, String word) {
        return Arrays.stream(values).filter(value -> value.name().equalsIgnoreCase(word)).findFirst().orElseThrow();
    }
}
