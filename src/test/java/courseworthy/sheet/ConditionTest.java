package courseworthy.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import courseworthy.claim.TestedFact;
import courseworthy.demand.StretchMeasure;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Conditions as they are written, on situations as they are written: what holds, what is told of it, and what is wanting. */
class ConditionTest {

    private static final String STONES = "{any stretch: {sharp stones: yes, length: over 1 km}}";
    private static final String ROOTS = "{share of course: {where: {roots: yes}, is: over 15 %}}";
    private static final String SOME = "{any of: [{hours: over 4:00 h}, {roughness: at least 2.3}]}";
    private static final String NONE = "{none of: [{hours: over 4:00 h}, {roughness: at least 2.3}]}";

    private static Stage stage(String facts) {
        return SheetText.situation(facts).after(7);
    }

    private static Truth truth(String when, String facts) {
        return ConditionTrace.truth(SheetText.rowWhen(when), stage(facts));
    }

    private static List<String> traced(String when, String facts) {
        return ConditionTrace.of(SheetText.rowWhen(when), stage(facts)).stream()
                .map(line -> "  ".repeat(line.depth()) + line.what() + " | " + line.value() + " | " + line.asked() + " | " + line.truth() + " | " + line.off()).toList();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{hours: over 4:00 h} | hours: 4:00 h | FALSE", "{hours: over 4:00 h} | hours: 4:01 h | TRUE", "{hours: over 4:00 h} | roughness: 2 | UNKNOWN",
        "{hours: at least 4:00 h} | hours: 4:00 h | TRUE", "{hours: under 4:00 h} | hours: 4:00 h | FALSE", "{hours: at most 4:00 h} | hours: 4:00 h | TRUE",
        "{roughness: between 2 and 3} | roughness: 2 | TRUE", "{roughness: between 2 and 3} | roughness: 3.1 | FALSE",
        "{decided: {gloves: winter}} | 'decided: {gloves: winter}' | TRUE", "{decided: {gloves: winter}} | 'decided: {gloves: long}' | FALSE",
        "{decided: {gloves: at least long}} | 'decided: {gloves: winter}' | TRUE", "{decided: {gloves: winter}} | hours: 1:00 h | UNKNOWN",
        "{hours: over 4:00 h, roughness: at least 2.3} | hours: 5:00 h | UNKNOWN", "{hours: over 4:00 h, roughness: at least 2.3} | hours: 3:00 h | FALSE"})
    void singleTests(String when, String facts, Truth expected) {
        assertThat(truth(when, facts)).isEqualTo(expected);
    }

    @Test
    void groups() {
        assertThat(truth(SOME, "hours: 5:00 h")).isEqualTo(Truth.TRUE);
        assertThat(truth(SOME, "hours: 3:00 h")).isEqualTo(Truth.UNKNOWN);
        assertThat(truth(SOME, "{hours: 3:00 h, roughness: 2.0}")).isEqualTo(Truth.FALSE);
        assertThat(truth(NONE, "hours: 5:00 h")).isEqualTo(Truth.FALSE);
        assertThat(truth(NONE, "hours: 3:00 h")).isEqualTo(Truth.UNKNOWN);
        assertThat(truth(NONE, "{hours: 3:00 h, roughness: 2.0}")).isEqualTo(Truth.TRUE);
    }

    /** 1.2 km of stones in two neighbouring stretches are a piece of over 1 km; of 3 km with 0.5 km of roots 17 %, to the nearest whole per cent. */
    @Test
    void stretchesAndShares() {
        assertThat(truth(STONES, "stretches: [{length: 0.6 km, sharp stones: yes}, {length: 0.6 km, sharp stones: yes}, {length: 5 km, sharp stones: no}]")).isEqualTo(Truth.TRUE);
        assertThat(truth(STONES, "stretches: [{length: 0.9 km, sharp stones: yes}, {length: 5 km, sharp stones: no}]")).isEqualTo(Truth.FALSE);
        assertThat(truth(STONES, "stretches: [{length: 0.9 km, sharp stones: yes}, {length: 5 km}]")).isEqualTo(Truth.UNKNOWN);
        assertThat(truth(STONES, "hours: 1:00 h")).isEqualTo(Truth.UNKNOWN);
        assertThat(truth(ROOTS, "stretches: [{length: 0.5 km, roots: yes}, {length: 2.5 km, roots: no}]")).isEqualTo(Truth.TRUE);
        assertThat(truth(ROOTS, "stretches: [{length: 0.45 km, roots: yes}, {length: 2.55 km, roots: no}]")).isEqualTo(Truth.FALSE);
        assertThat(truth(ROOTS, "stretches: [{length: 0.4 km, roots: yes}, {length: 0.4 km}, {length: 2.2 km, roots: no}]")).isEqualTo(Truth.UNKNOWN);
        assertThat(truth(ROOTS, "hours: 1:00 h")).isEqualTo(Truth.UNKNOWN);
    }

    /** Whoever asks why a row keeps silent sees each line, what was found and how far it is off. */
    @Test
    void linesAreTraced() {
        assertThat(traced("{hours: over 4:00 h}", "hours: 3:30 h")).containsExactly("hours | 3:30 h | over 4:00 h | FALSE | short by 0:31 h");
        assertThat(traced("{hours: over 4:00 h}", "hours: 4:30 h")).containsExactly("hours | 4:30 h | over 4:00 h | TRUE | ");
        assertThat(traced("{hours: at most 4:00 h}", "hours: 4:30 h")).containsExactly("hours | 4:30 h | at most 4:00 h | FALSE | over by 0:30 h");
        assertThat(traced("{hours: over 4:00 h}", "{}")).containsExactly("hours | unknown | over 4:00 h | UNKNOWN | ");
        assertThat(traced("{decided: {gloves: winter}}", "decided: {gloves: short}")).hasSize(1).first().asString().startsWith("decided: gloves | short | winter | FALSE | ");
        assertThat(traced("{decided: {gloves: at least winter}}", "decided: {gloves: short}")).containsExactly("decided: gloves | short | at least winter | FALSE | short by 2 steps");
        assertThat(traced("{decided: {gloves: at least winter}}", "decided: {gloves: long}")).containsExactly("decided: gloves | long | at least winter | FALSE | short by 1 step");
        assertThat(traced("{decided: {gloves: winter}}", "{}")).containsExactly("decided: gloves | no answer | winter | UNKNOWN | ");
        assertThat(traced(SOME, "hours: 5:00 h")).containsExactly("any of |  |  | TRUE | ", "  hours | 5:00 h | over 4:00 h | TRUE | ",
                "  roughness | unknown | at least 2.3 | UNKNOWN | ");
        assertThat(traced(NONE, "hours: 5:00 h").get(0)).isEqualTo("none of |  |  | FALSE | ");
    }

    @Test
    void stretchesAreTraced() {
        String stones = "sharp stones yes, length over 1 km";
        assertThat(traced(STONES, "stretches: [{length: 0.6 km, sharp stones: yes}, {length: 5 km, sharp stones: no}]"))
                .containsExactly("any stretch | longest such 0.60 km | " + stones + " | FALSE | short by 0.41 km");
        assertThat(traced(STONES, "stretches: [{length: 5 km, sharp stones: no}]")).containsExactly("any stretch | none such | " + stones + " | FALSE | ");
        assertThat(traced(STONES, "{}")).containsExactly("any stretch | unknown | " + stones + " | UNKNOWN | ");
        assertThat(traced(STONES.replace("any", "no"), "stretches: [{length: 2 km, sharp stones: yes}]"))
                .containsExactly("no stretch | longest such 2.00 km | " + stones + " | FALSE | ");
        assertThat(traced(ROOTS, "stretches: [{length: 0.3 km, roots: yes}, {length: 2.7 km, roots: no}]"))
                .containsExactly("share of course: roots yes | 10 % | over 15 % | FALSE | short by 6 %");
        assertThat(traced(ROOTS, "stretches: [{length: 0.3 km, roots: yes}, {length: 0.6 km}, {length: 2.1 km, roots: no}]"))
                .containsExactly("share of course: roots yes | 10 % to 30 % | over 15 % | UNKNOWN | ");
        assertThat(traced(ROOTS.replace("over", "under"), "stretches: [{length: 1 km, roots: yes}, {length: 1 km, roots: no}]"))
                .containsExactly("share of course: roots yes | 50 % | under 15 % | FALSE | over by 36 %");
    }

    private static List<String> grounds(String when, String facts, boolean truth) {
        Row row = SheetText.rowWhen(when);
        List<TestedFact> out = new ArrayList<>();
        row.condition().grounds(stage(facts), truth, row.condition(), out);
        return out.stream().map(fact -> fact.measure() + " " + fact.value() + (fact.met() ? " met" : " not met") + (fact.near() ? " near" : "")).toList();
    }

    /** Of what holds, what makes it hold; of what does not, what stands against it. */
    @Test
    void groundsAreWhatDecides() {
        assertThat(grounds("{hours: over 4:00 h, roughness: at least 2}", "{hours: 5:00 h, roughness: 2.5}", true)).containsExactly("hours 5:00 h met", "roughness rough (2.5) met");
        assertThat(grounds("{hours: over 4:00 h, roughness: at least 2}", "{hours: 3:00 h, roughness: 2.5}", false)).containsExactly("hours 3:00 h not met");
        assertThat(grounds(SOME, "{hours: 5:00 h, roughness: 1}", true)).containsExactly("hours 5:00 h met");
        assertThat(grounds(NONE, "{hours: 5:00 h, roughness: 1}", false)).containsExactly("hours 5:00 h met");
        assertThat(grounds(NONE, "{hours: 3:00 h, roughness: 1}", true)).hasSize(2).allMatch(each -> each.endsWith("not met"));
        assertThat(grounds("{decided: {gloves: winter}}", "decided: {gloves: winter}", true)).containsExactly("decided: gloves winter met");
        assertThat(grounds(STONES, "stretches: [{length: 2 km, sharp stones: yes}]", true)).containsExactly("any stretch: sharp stones, length 2.00 km met");
        assertThat(grounds(STONES, "stretches: [{length: 2 km, sharp stones: no}]", false)).containsExactly("any stretch: sharp stones, length none not met");
        assertThat(grounds(ROOTS, "stretches: [{length: 1 km, roots: yes}, {length: 1 km, roots: no}]", true)).containsExactly("share of course: roots yes 50 % met");
        assertThat(grounds("{hours: over 4:00 h}", "{}", true)).isEmpty();
    }

    private static Set<String> wanting(String when, String facts) {
        Set<String> out = new TreeSet<>();
        SheetText.rowWhen(when).condition().wanting(stage(facts), out);
        return out;
    }

    @Test
    void whatIsWantingIsNamed() {
        assertThat(wanting("{hours: over 4:00 h, roughness: at least 2}", "hours: 5:00 h")).containsExactly("roughness");
        assertThat(wanting(SOME, "{}")).containsExactly("hours", "roughness");
        assertThat(wanting("{decided: {gloves: winter}}", "{}")).isEmpty();
        assertThat(wanting(STONES, "{}")).containsExactly("length", "sharp stones");
        assertThat(wanting(STONES, "stretches: [{length: 2 km}]")).containsExactly("sharp stones");
        assertThat(wanting(ROOTS, "stretches: [{length: 1 km}, {length: 1 km, roots: no}]")).containsExactly("roots");
    }

    /** What could still turn out so if more were known; a topic that does not apply stays as it is. */
    @Test
    void whatCouldBe() {
        assertThat(could("{hours: over 4:00 h}", "{}")).containsExactly(true, true);
        assertThat(could("{hours: over 4:00 h}", "hours: 5:00 h")).containsExactly(true, false);
        assertThat(could("{hours: over 4:00 h}", "hours: 3:00 h")).containsExactly(false, true);
        assertThat(could("{hours: over 4:00 h, roughness: at least 2}", "hours: 3:00 h")).containsExactly(false, true);
        assertThat(could("{hours: over 4:00 h, roughness: at least 2}", "hours: 5:00 h")).containsExactly(true, true);
        assertThat(could(SOME, "hours: 3:00 h")).containsExactly(true, true);
        assertThat(could(SOME, "hours: 5:00 h")).containsExactly(true, false);
        assertThat(could(NONE, "hours: 5:00 h")).containsExactly(false, true);
        assertThat(could(NONE, "{hours: 3:00 h, roughness: 1}")).containsExactly(true, false);
        assertThat(could("{decided: {gloves: winter}}", "{}")).containsExactly(false, false);
        assertThat(could(STONES, "{}")).containsExactly(true, true);
        assertThat(could(ROOTS, "stretches: [{length: 1 km, roots: yes}]")).containsExactly(true, false);
    }

    private static Boolean[] could(String when, String facts) {
        return new Boolean[] {SheetText.rowWhen(when).condition().could(stage(facts), true), SheetText.rowWhen(when).condition().could(stage(facts), false)};
    }

    /** Where a test turns, and the same condition with that moved. */
    @Test
    void thresholdsMove() {
        Row row = SheetText.rowWhen("{hours: over 4:00 h, roughness: between 2 and 3}");
        assertThat(row.condition().thresholds()).extracting(Threshold::tick, Threshold::lower).containsExactly(tuple(241L, true),
                tuple(20L, true), tuple(30L, false));
        Condition moved = row.condition().withThreshold(2, 31);
        assertThat(row.condition().on(stage("{hours: 5:00 h, roughness: 3.1}"))).isEqualTo(Truth.FALSE);
        assertThat(moved.on(stage("{hours: 5:00 h, roughness: 3.1}"))).isEqualTo(Truth.TRUE);
        assertThat(moved.canonical()).isNotEqualTo(row.condition().canonical());
        assertThat(row.condition().withThreshold(0, 242).on(stage("{hours: 4:01 h, roughness: 3}"))).isEqualTo(Truth.FALSE);
        assertThat(SheetText.rowWhen("{roughness: between 2 and 3, hours: over 4:00 h}").condition().canonical()).isEqualTo(row.condition().canonical());
    }

    /** A row waits for the layer of every topic it tests: gloves are settled in the fifth. */
    @Test
    void aRowWaitsForWhatItTests() {
        assertThat(SheetText.rowWhen("{hours: over 4:00 h}").condition().layer()).isZero();
        assertThat(SheetText.rowWhen("{decided: {gloves: winter}}").condition().layer()).isEqualTo(5);
        assertThat(SheetText.rowWhen("{any of: [{decided: {gloves: winter}}, {decided: {bike: road}}]}").condition().layer()).isEqualTo(5);
    }

    /** Written and read again, a situation is the same. */
    @Test
    void situationsAreWrittenAsTheyAreRead() {
        String facts = "rider: 'O''Hara'\nrider tag: ['under 15', 'beginner']\ndate: 2026-06-20\nhours: 4:30 h\nroughness: 2.4\ndecided:\n  gloves: winter\n"
                + "stretches:\n  - {length: 0.60 km, sharp stones: yes}\n  - {length: 5.00 km, roots: no}\n";
        Situation read = SheetText.situation(facts);
        Situation again = SheetText.situation(SituationWriter.of(read));
        assertThat(again.measures()).isEqualTo(read.measures());
        assertThat(again.settled()).isEqualTo(read.settled());
        assertThat(again.occasion()).isEqualTo(read.occasion());
        assertThat(again.stretches()).hasSize(2);
        for (StretchMeasure measure : StretchMeasure.values()) {
            assertThat(again.stretches()).extracting(each -> each.get(measure)).containsExactlyElementsOf(read.stretches().stream().map(each -> each.get(measure)).toList());
        }
        assertThat(SituationWriter.of(read)).contains("rider: 'O''Hara'", "rider tag: ['under 15', 'beginner']", "date: 2026-06-20", "hours: 4:30 h", "roughness: 2.4",
                "decided:\n  gloves: winter\n");
        assertThat(SituationWriter.of(Situation.NONE)).isEmpty();
        assertThat(SituationWriter.of(SheetText.situation("rider tag: beginner"))).isEqualTo("rider tag: 'beginner'\n");
    }
}
