package courseworthy.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.demand.Measure;
import courseworthy.topic.Topics;
import java.util.SortedSet;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What a row gives where it applies, and what it reads for that. */
class RowOutputTest {

    @Test
    void whatIsSaidStandsInOrderOfTheAlphabet() {
        RowOutput output = RowOutput.of(SheetText.row("say: {plugs: prefer 2, gloves: [at least long, prefer winter]}"), Situation.NONE);
        assertThat(output.says()).containsExactly("gloves: at least long", "gloves: prefer winter", "plugs: prefer 2");
        assertThat(output.does()).isEmpty();
        assertThat(output.written()).isEqualTo("says: {gloves: [at least long, prefer winter], plugs: prefer 2}");
    }

    @Test
    void whatAnItemHasStandsBesideIt() {
        RowOutput output = RowOutput.of(SheetText.row("do: {what: w, find: f, by: night before, needs: 6:30 h, critical: yes, after: [z, y]}"), Situation.NONE);
        assertThat(output.says()).isEmpty();
        assertThat(output.does()).containsExactly("after: y", "after: z", "by: night before", "critical: yes", "needs: 6:30 h");
        assertThat(output.written()).isEqualTo("does: {after: [y, z], by: night before, critical: yes, needs: 6:30 h}");
        assertThat(RowOutput.of(SheetText.row("do: {what: w, find: f, by: week before}"), Situation.NONE).does()).containsExactly("by: week before");
        assertThat(RowOutput.of(SheetText.row("say: {plugs: prefer 2}, do: {what: w, find: f, by: week before}"), Situation.NONE).written())
                .isEqualTo("says: {plugs: prefer 2}, does: {by: week before}");
    }

    /** 0.9 of 3.0 is 2.7. */
    @Test
    void aValueFromAMeasureIsAsTheSituationHasIt() {
        Row row = SheetText.row("say: {hardest gear: prefer 0.9 x ratio useful at speed, plugs: prefer 2}");
        Situation known = SheetText.situation("ratio useful at speed: 3.0");
        assertThat(RowOutput.of(row, known).says()).containsExactly("hardest gear: prefer 2.700", "plugs: prefer 2");
        assertThat(RowOutput.unknown(row, known)).isEmpty();
        assertThat(RowOutput.of(row, Situation.NONE).says()).containsExactly("plugs: prefer 2");
        assertThat(RowOutput.unknown(row, Situation.NONE)).containsExactly("ratio useful at speed");
        assertThat(RowOutput.unknown(SheetText.row("say: {hardest gear: [prefer 0.9 x ratio useful at speed, at most 1.1 x ratio useful at speed]}"), Situation.NONE))
                .containsExactly("ratio useful at speed");
    }

    @Test
    void whatARowReads() {
        Row row = SheetText.row("when: {hours: over 4:00 h, decided: {chainrings: one}, any stretch: {roots: yes}}, say: {hardest gear: prefer 0.9 x ratio useful at speed}");
        assertThat(RuleInputs.measures(row)).containsExactlyInAnyOrder(Measure.HOURS, Measure.RATIO_USEFUL_AT_SPEED);
        assertThat(RuleInputs.worths(row)).containsExactly(Measure.RATIO_USEFUL_AT_SPEED);
        assertThat(RuleInputs.topics(row)).containsExactly(Topics.CHAINRINGS);
        Row plain = SheetText.row("say: {plugs: prefer 2}");
        assertThat(RuleInputs.measures(plain)).isEmpty();
        assertThat(RuleInputs.topics(plain)).isEmpty();
    }

    /** Where a test's truth changes: at its lower end and just above its upper; at each option and just above it. */
    @Test
    void whereItsTestsTurn() {
        assertThat(turns("{hours: between 4:00 h and 5:00 h}", Measure.HOURS)).containsExactly(240L, 301L);
        assertThat(turns("{hours: over 4:00 h}", Measure.HOURS)).containsExactly(241L);
        assertThat(turns("{hours: at most 4:00 h}", Measure.HOURS)).containsExactly(241L);
        assertThat(turns("{hours: over 4:00 h}", Measure.ROUGHNESS)).isEmpty();
        assertThat(turns("{decided: {gloves: winter}}", Measure.HOURS)).isEmpty();
        assertThat(turns("{skill: [novice, expert]}", Measure.SKILL)).containsExactly(0L, 1L, 3L, 4L);
    }

    private static SortedSet<Long> turns(String when, Measure measure) {
        SortedSet<Long> out = new TreeSet<>();
        RuleInputs.turns(SheetText.row("when: " + when + ", say: {plugs: prefer 2}"), measure, out);
        return out;
    }

    /** Nobody rides below -50 C; a share has two ends, a time only the lower, and the single-trail scale runs from S0 to S5 (its published definition). */
    @Test
    void whatAMeasureCanBe() {
        assertThat(MeasureRange.least(Measure.HOURS)).isZero();
        assertThat(MeasureRange.most(Measure.HOURS)).isEqualTo(Long.MAX_VALUE);
        assertThat(MeasureRange.least(Measure.PAVED_SHARE)).isZero();
        assertThat(MeasureRange.most(Measure.PAVED_SHARE)).isEqualTo(Measure.PAVED_SHARE.scale().resolution().ticks(1));
        assertThat(MeasureRange.most(Measure.HARDEST_MTB_SCALE)).isEqualTo(Measure.HARDEST_MTB_SCALE.scale().most()).isLessThan(Long.MAX_VALUE);
        assertThat(MeasureRange.most(Measure.MTB_SCALE)).isEqualTo(Measure.MTB_SCALE.scale().most()).isLessThan(Long.MAX_VALUE);
        assertThat(MeasureRange.least(Measure.COLDEST_TEMPERATURE)).isEqualTo(-50);
        assertThat(MeasureRange.most(Measure.SKILL)).isEqualTo(Measure.SKILL.scale().most());
    }
}
