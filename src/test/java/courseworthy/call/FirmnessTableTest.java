package courseworthy.call;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.call.Firmness.AgreementGrade;
import courseworthy.call.Firmness.EvidenceGrade;
import courseworthy.call.Firmness.Knowledge;
import courseworthy.call.Firmness.FirmnessLevel;
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
    private static final List<Foundation> FOUNDATIONS = new ArrayList<>();
    private static final List<Case> CASES = cases();

    private record Case(String rule, EvidenceGrade evidence, AgreementGrade agreement, Knowledge knowledge, String firmness) {
    }

    private record Foundation(String rule, FirmnessLevel itself, FirmnessLevel beneath, String firmness) {
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
        for (EvidenceGrade evidence : EvidenceGrade.values()) {
            for (AgreementGrade agreement : AgreementGrade.values()) {
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
            assertThat(Arrays.stream(EvidenceGrade.values()).map(EvidenceGrade::word)).containsAll(row.evidence());
            assertThat(Arrays.stream(AgreementGrade.values()).map(AgreementGrade::word)).containsAll(row.agreement());
            assertThat(Arrays.stream(Knowledge.values()).map(Knowledge::word)).containsAll(row.knowledge());
            assertThat(row.because()).endsWith(".");
        }
        assertThat(SHIPPED.grades().stream().map(Grade::id)).doesNotHaveDuplicates();
    }

    /** Every combination of how firm a decision is by itself and what it rests on has one row and one case, and comes out by it. */
    @Test
    void eachFoundationHasOneRowAndACase() {
        for (FirmnessLevel itself : FirmnessLevel.values()) {
            for (FirmnessLevel beneath : FirmnessLevel.values()) {
                assertThat(SHIPPED.foundations().stream().filter(row -> row.holds(itself, beneath))).as("%s on %s", itself, beneath).hasSize(1);
                assertThat(FOUNDATIONS.stream().filter(one -> one.itself == itself && one.beneath == beneath)).as("%s on %s", itself, beneath).singleElement()
                        .satisfies(one -> {
                            assertThat(SHIPPED.foundation(itself, beneath).id()).isEqualTo(one.rule);
                            assertThat(SHIPPED.foundation(itself, beneath).level().word()).isEqualTo(one.firmness);
                        });
            }
        }
        assertThat(SHIPPED.foundations().stream().map(FirmnessTable.Foundation::id)).doesNotHaveDuplicates();
        assertThat(SHIPPED.foundations()).allSatisfy(row -> assertThat(row.because()).endsWith("."));
    }

    /** The least firm of the two: nothing is firmer than what it rests on, nor than its own advice. */
    @Test
    void nothingIsFirmerThanWhatItRestsOn() {
        for (FirmnessLevel itself : FirmnessLevel.values()) {
            for (FirmnessLevel beneath : FirmnessLevel.values()) {
                assertThat(SHIPPED.foundation(itself, beneath).level()).isEqualTo(itself.compareTo(beneath) > 0 ? itself : beneath);
            }
        }
    }

    private static FirmnessLevel level(Case one) {
        return SHIPPED.grade(one.evidence, one.agreement, one.knowledge).level();
    }

    private static List<Case> cases() {
        String file = "rules/firmness/firmness.cases.yaml";
        Faults faults = new Faults();
        List<Case> out = new ArrayList<>();
        FieldReader all = new FieldReader(file, YamlReader.read(Path.of(file), file, faults), faults);
        foundations(all, faults);
        for (FieldReader rule : all.blocks("cases")) {
            String id = rule.line("rule", 100);
            for (Node.Entry each : rule.fields("is").block().entries()) {
                FieldReader fields = new FieldReader(file, (Node.Mapping) each.value(), faults);
                String firmness = fields.word("firmness", FirmnessTable.words());
                List<String> knowledge = fields.texts("under it");
                List<String> agreement = fields.texts("agreement");
                for (String evidence : fields.texts("evidence")) {
                    agreement.forEach(agreed -> knowledge.forEach(known -> out.add(new Case(id, one(EvidenceGrade.values(), evidence), one(AgreementGrade.values(), agreed),
                            one(Knowledge.values(), known), firmness))));
                }
                fields.done();
            }
            rule.done();
        }
        faults.throwIfAny();
        return out;
    }

    private static void foundations(FieldReader all, Faults faults) {
        for (FieldReader rule : all.blocks("foundations")) {
            String id = rule.line("rule", 100);
            for (Node.Entry each : rule.fields("is").block().entries()) {
                FieldReader fields = new FieldReader("rules/firmness/firmness.cases.yaml", (Node.Mapping) each.value(), faults);
                String firmness = fields.word("firmness", FirmnessTable.words());
                List<String> beneath = fields.texts("rests on");
                fields.texts("of itself").forEach(itself -> beneath.forEach(on -> FOUNDATIONS.add(
                        new Foundation(id, one(FirmnessLevel.values(), itself), one(FirmnessLevel.values(), on), firmness))));
                fields.done();
            }
            rule.done();
        }
    }

    private static <T extends Enum<T>> T one(T[] values, String word) {
        return Arrays.stream(values).filter(value -> value.name().equalsIgnoreCase(word)).findFirst().orElseThrow();
    }
}
