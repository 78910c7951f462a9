package courseworthy.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.demand.Demands;
import courseworthy.demand.Occasion;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What may be wrong in a condition: each slip is tried once, and the case that it names is the one that tells it from the condition as written. */
class ConditionMutantsTest {

    private static List<ConditionMutants.ConditionMutant> mutants(String when) {
        return ConditionMutants.of(SheetText.rowWhen(when).condition());
    }

    private static List<String> whats(String when) {
        return mutants(when).stream().map(ConditionMutants.ConditionMutant::what).toList();
    }

    /** The mutant of a name, whose case is as named, and which a situation tells from the condition as written. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{hours: over 4:00 h} | hours from 4:01 h moved to 4:00 h | a silent case with hours 4:00 h | hours: 4:00 h | FALSE",
        "{hours: over 4:00 h} | hours from 4:01 h moved to 4:02 h | a firing case with hours 4:01 h | hours: 4:01 h | TRUE",
        "{hours: at most 4:00 h} | hours up to 4:00 h moved to 3:59 h | a firing case with hours 4:00 h | hours: 4:00 h | TRUE",
        "{hours: at most 4:00 h} | hours up to 4:00 h moved to 4:01 h | a silent case with hours 4:01 h | hours: 4:01 h | FALSE",
        "{hours: over 4:00 h} | '\"hours over 4:00 h\" dropped' | 'a silent case in which \"hours over 4:00 h\" fails' | hours: 3:00 h | FALSE",
        "{decided: {gloves: [long, winter]}} | decided gloves long taken away | a firing case with decided gloves long | 'decided: {gloves: long}' | TRUE",
        "{decided: {pedals: flat}} | decided pedals flat changed to light clipless | a firing case with decided pedals flat | 'decided: {pedals: flat}' | TRUE",
        "{decided: {pedals: light clipless}} | decided pedals light clipless changed to flat | a firing case with decided pedals light clipless | 'decided: {pedals: light clipless}' | TRUE",
        "{hours: over 4:00 h, roughness: at least 2.3} | '\"hours over 4:00 h\" dropped' | 'a case in which \"hours over 4:00 h\" fails, and nothing else does' | '{hours: 3:00 h, roughness: 2.4}' | FALSE",
        "{any of: [{hours: over 4:00 h}, {roughness: at least 2.3}]} | '\"roughness at least 2.3\" dropped' | 'a case in which \"roughness at least 2.3\" alone holds of its list, in a firing case' | '{hours: 3:00 h, roughness: 2.4}' | TRUE",
        "{none of: [{hours: over 4:00 h}, {roughness: at least 2.3}]} | '\"roughness at least 2.3\" dropped' | 'a case in which \"roughness at least 2.3\" alone holds of its list, in a silent case' | '{hours: 3:00 h, roughness: 2.4}' | FALSE"})
    void aCaseThatIsLackingTellsTheSlip(String when, String what, String lacking, String facts, Truth asWritten) {
        ConditionMutants.ConditionMutant mutant = mutants(when).stream().filter(each -> each.what().equals(what)).findFirst()
                .orElseThrow(() -> new AssertionError(whats(when)));
        assertThat(mutant.lacking()).isEqualTo(lacking);
        assertThat(ConditionTrace.truth(SheetText.rowWhen(when), SheetText.situation(facts).after(7))).isEqualTo(asWritten);
        assertThat(mutant.condition().on(SheetText.situation(facts).after(7))).isEqualTo(asWritten == Truth.TRUE ? Truth.FALSE : Truth.TRUE);
    }

    @Test
    void eachSlipIsTriedOnce() {
        assertThat(whats("{hours: between 4:00 h and 5:00 h}")).containsExactly("hours from 4:00 h moved to 3:59 h", "hours from 4:00 h moved to 4:01 h",
                "hours up to 5:00 h moved to 4:59 h", "hours up to 5:00 h moved to 5:01 h", "\"hours between 4:00 h and 5:00 h\" dropped");
        assertThat(whats("{decided: {gloves: [long, winter]}}")).containsExactly("decided gloves long taken away", "decided gloves winter taken away",
                "\"decided gloves one of [long, winter]\" dropped");
        assertThat(whats("{any of: [{hours: over 4:00 h, roughness: at least 2.3}, {decided: {gloves: winter}}]}")).contains("\"hours over 4:00 h and roughness at least 2.3\" dropped",
                "\"hours over 4:00 h\" dropped", "\"roughness at least 2.3\" dropped", "\"decided gloves winter\" dropped").doesNotHaveDuplicates();
    }

    /** A level below the lowest word, or above the highest, changes nothing. */
    @Test
    void nothingMovesBeyondAllWords() {
        assertThat(whats("{decided: {gloves: at least long}}")).containsExactly("decided gloves from long moved to short", "decided gloves from long moved to winter",
                "\"decided gloves at least long\" dropped");
        assertThat(whats("{decided: {gloves: at least winter}}")).contains("decided gloves from winter moved to long").doesNotContain("decided gloves from winter moved to beyond all words");
    }

    @Test
    void testsOfStretchesAreDroppedOneByOne() {
        assertThat(mutants("{any stretch: {sharp stones: yes, length: over 1 km}}")).extracting(ConditionMutants.ConditionMutant::what)
                .contains("a stretch's sharp stones yes changed to no", "\"sharp stones yes\" of stretches dropped", "\"length over 1 km\" of stretches dropped");
        assertThat(mutants("{any stretch: {sharp stones: yes, length: over 1 km}}")).extracting(ConditionMutants.ConditionMutant::lacking)
                .contains("a case in which \"length over 1 km\" of stretches fails, and nothing else does");
        assertThat(whats("{no stretch: {sharp stones: yes}}")).containsExactly("a stretch's sharp stones yes changed to no", "\"no stretch sharp stones yes\" dropped");
        assertThat(whats("{share of course: {where: {roots: yes, sharp stones: yes}, is: over 15 %}}")).contains("\"roots yes\" of stretches dropped", "\"sharp stones yes\" of stretches dropped");
    }

    @Test
    void ofDaysAndRidersEachSlip() {
        assertThat(whats("{rider: [Ida, Kim]}")).contains("rider Ida taken away", "rider Kim taken away");
        assertThat(whats("{rider tag: juniors}")).contains("rider tag juniors taken away");
        assertThat(whats("{date: between 2026-11-01 and 2027-02-28}")).containsExactly("\"date between 2026-11-01 and 2027-02-28\" dropped", "date from 2026-11-01 moved to 2026-10-31",
                "date from 2026-11-01 moved to 2026-11-02", "date up to 2027-02-28 moved to 2027-03-01", "date up to 2027-02-28 moved to 2027-02-27");
        assertThat(whats("{date: between 11-01 and 02-29}")).containsExactly("\"date between 11-01 and 02-29\" dropped", "date from 11-01 moved to 10-31", "date from 11-01 moved to 11-02",
                "date up to 02-29 moved to 03-01", "date up to 02-29 moved to 02-28");
    }

    @ParameterizedTest
    @CsvSource({"date: 2026-05-09, 2026-05-09, 2026-05-08, 2026-05-10", "date: between 04-01 and 04-30, 2026-04-01, 2026-03-31, 2026-05-01",
        "date: between 11-01 and 02-28, 2026-11-01, 2026-10-31, 2026-03-01"})
    void aSlipOfADayIsOneDay(String when, String first, String before, String after) {
        List<ConditionMutants.ConditionMutant> all = mutants("{" + when + "}").stream().filter(each -> each.what().contains(" moved to ")).toList();
        assertThat(all).hasSize(4);
        assertThat(all.get(0).condition().on(day(before))).isEqualTo(Truth.TRUE);
        assertThat(all.get(0).lacking()).startsWith("a silent case with date ").endsWith(before.substring(when.contains("2026") ? 0 : 5));
        assertThat(all.get(1).condition().on(day(first))).isEqualTo(Truth.FALSE);
        assertThat(all.get(1).lacking()).startsWith("a firing case with date ").endsWith(first.substring(when.contains("2026") ? 0 : 5));
        assertThat(all.get(2).condition().on(day(after))).isEqualTo(Truth.TRUE);
        assertThat(all.get(2).lacking()).startsWith("a silent case with date ").endsWith(after.substring(when.contains("2026") ? 0 : 5));
        assertThat(all.get(3).lacking()).startsWith("a firing case with date ");
    }

    private static Stage day(String date) {
        return new Stage(0, new Demands(Map.of(), List.of(), List.of(), null,
                new Occasion("Kim", List.of(), LocalDate.parse(date))), Map.of());
    }
}
