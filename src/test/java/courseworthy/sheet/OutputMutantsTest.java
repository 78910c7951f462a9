package courseworthy.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What may be wrong in what a row gives: each kind of wrong value, verb and time is tried, and none twice. */
class OutputMutantsTest {

    private static List<String> whats(String row) {
        return OutputMutants.of(SheetText.row(row)).stream().map(OutputMutants.OutputMutant::what).toList();
    }

    @Test
    void aQuantityMovesByOneStepOfItsTopicEachWay() {
        assertThat(whats("say: {rebound: at least 60 %}")).containsExactly("\"rebound: at least 60 %\" dropped",
                "\"rebound: at least 60 %\" moved to 55 %", "\"rebound: at least 60 %\" moved to 65 %",
                "\"rebound: at least 60 %\" changed to prefer", "\"rebound: at least 60 %\" changed to at most");
    }

    @Test
    void aPressureMovesByTheStepThatItsHeightHas() {
        assertThat(whats("say: {rear tyre pressure: prefer 6.00 bar}")).contains("\"rear tyre pressure: prefer 6.00 bar\" moved to 5.9 bar");
    }

    @Test
    void nothingMovesBeyondWhatATopicCanBe() {
        assertThat(whats("say: {plugs: at least 0}")).doesNotContain("\"plugs: at least 0\" moved to -1").contains("\"plugs: at least 0\" moved to 1");
        assertThat(whats("say: {gloves: at least winter}")).containsExactly("\"gloves: at least winter\" dropped",
                "\"gloves: at least winter\" moved to long", "\"gloves: at least winter\" changed to prefer",
                "\"gloves: at least winter\" changed to at most", "\"gloves: at least winter\" changed to avoid",
                "\"gloves: at least winter\" changed to rule out");
    }

    @Test
    void optionsWithoutOrderAreExchangedAndHaveNoBounds() {
        assertThat(whats("say: {pedals: avoid light clipless}")).containsExactly("\"pedals: avoid light clipless\" dropped",
                "\"pedals: avoid light clipless\" moved to solid clipless", "\"pedals: avoid light clipless\" moved to flat",
                "\"pedals: avoid light clipless\" changed to prefer", "\"pedals: avoid light clipless\" changed to rule out");
    }

    @Test
    void aFactorMovesByATwentieth() {
        assertThat(whats("say: {hardest gear: prefer 0.9 x ratio useful at speed}")).contains(
                "\"hardest gear: prefer 0.9 x ratio useful at speed\" moved to 0.855 x ratio useful at speed",
                "\"hardest gear: prefer 0.9 x ratio useful at speed\" moved to 0.945 x ratio useful at speed");
    }

    @Test
    void anOptionThatFollowsAMeasureIsFixedAtEachOption() {
        assertThat(whats("say: {bike: prefer bike at hand}")).contains("\"bike: prefer bike at hand\" moved to road",
                "\"bike: prefer bike at hand\" moved to trail");
    }

    @Test
    void anItemMovesInTimeAndLosesWhatBearsOnItsPlace() {
        assertThat(whats("do: {what: w, find: f, by: night before, needs: 6:00 h, critical: yes, after: [y, z]}")).containsExactly(
                "by night before moved to two days before", "by night before moved to race morning", "needs 6:00 h moved to 5:00 h",
                "needs 6:00 h moved to 7:00 h", "critical dropped", "after shipped/y dropped", "after shipped/z dropped");
        assertThat(whats("do: {what: w, find: f, by: week before}")).containsExactly("by week before moved to two days before",
                "needs 0:00 h moved to 1:00 h", "critical added");
    }
}
