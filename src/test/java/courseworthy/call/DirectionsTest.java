package courseworthy.call;

import courseworthy.demand.Measure;
import courseworthy.engine.RuleSet;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;

/**
 * Which way the shipped rules lean as one thing about course, rider or day changes and all else is held (common practice, no source):
 * never the wrong way, and the right way somewhere.
 */
class DirectionsTest {

    private static final int DAYS = 40;
    private static final RuleSet SHIPPED = ShippedRuleSet.read();

    @Test
    void rougherNeverAsksForLessTravelNarrowerTyresOrLighterCasing() {
        MeasureLadder ladder = ladder(12, (facts, rung) -> facts.with(
                Measure.ROUGHNESS, Math.min(45, facts.get(Measure.ROUGHNESS) / 4 + 4L * rung),
                Measure.WORST_ROUGHNESS, Math.min(50, facts.get(Measure.WORST_ROUGHNESS) / 4 + 4L * rung)));
        ladder.neverDown("fork travel", "rear travel", "front tyre width", "rear tyre width", "front tyre casing", "rear tyre casing");
    }

    @Test
    void aRougherWorstTenthAloneNeverAsksForLess() {
        MeasureLadder ladder = ladder(13, (facts, rung) -> facts.with(
                Measure.ROUGHNESS, Math.min(30, facts.get(Measure.ROUGHNESS)),
                Measure.WORST_ROUGHNESS, Math.min(50, Math.min(30, facts.get(Measure.ROUGHNESS)) + 2L * rung)));
        ladder.neverDown("fork travel", "rear travel", "front tyre width", "rear tyre width", "front tyre casing", "rear tyre casing");
    }

    @Test
    void steeperOrWeakerNeverAsksForAHarderEasiestGear() {
        MeasureLadder ladder = ladder(12, (facts, rung) -> {
            long steepest = 1600 - 100L * rung;
            return facts.with(Measure.RATIO_NEEDED_WHERE_IT_IS_STEEPEST, steepest,
                    Measure.RATIO_NEEDED_ON_THE_LAST_CLIMB,
                    steepest + facts.get(Measure.RATIO_NEEDED_ON_THE_LAST_CLIMB) % 200,
                    Measure.GEAR_RANGE_NEEDED, facts.get(Measure.RATIO_USEFUL_AT_SPEED) * 100 / steepest,
                    Measure.STEEPEST_100_M, 5 + 2L * rung);
        });
        ladder.neverUp("easiest gear");
    }

    @Test
    void mudNeverAsksForAFasterTread() {
        MeasureLadder ladder = ladder(15, (facts, rung) -> facts.with(
                Measure.MUD, 5L * rung, Measure.SOFT_SHARE, Math.max(facts.get(Measure.SOFT_SHARE), 5L * rung),
                Measure.GOING, 2));
        ladder.neverDown("front tyre tread", "rear tyre tread");
    }

    @Test
    void longerAndRemoterNeverAsksForLessWaterOrFewerSpares() {
        MeasureLadder ladder = ladder(14, (facts, rung) -> {
            long minutes = 45 + 60L * rung;
            return facts.with(Measure.DISTANCE, 180L + 180 * rung, Measure.HOURS, minutes, Measure.SLOW_HOURS, minutes * 115 / 100,
                    Measure.SUPPORT_GAP, 100L + 80 * rung, Measure.SUPPORT_GAP_HOURS, 6L + 6 * rung,
                    Measure.WATER_OVER_THE_HOTTEST_GAP, 3L + 4 * rung, Measure.WATER_AT_THE_START, 2L + 3 * rung);
        });
        ladder.neverDown("water", "water carrier", "plugs", "tubes", "inflation", "tools", "spares", "emergency kit");
    }

    @Test
    void remoterAloneNeverAsksForLessWaterOrFewerSpares() {
        MeasureLadder ladder = ladder(12, (facts, rung) -> facts.with(Measure.SUPPORT_GAP, 50L + 80 * rung,
                Measure.SUPPORT_GAP_HOURS, 3L + 6 * rung, Measure.WATER_OVER_THE_HOTTEST_GAP, 3L + 4 * rung, Measure.WATER_AT_THE_START, 2L + 3 * rung));
        ladder.neverDown("water", "water carrier", "plugs", "tubes", "tools", "spares", "emergency kit", "front tyre casing");
    }

    @Test
    void colderNeverAsksForLessClothing() {
        MeasureLadder ladder = ladder(18, (facts, rung) -> {
            long coldest = 26 - 2L * rung;
            return facts.with(Measure.COLDEST_TEMPERATURE, coldest, Measure.START_TEMPERATURE, coldest + 4,
                    Measure.HOTTEST_TEMPERATURE, coldest + 12);
        });
        ladder.neverDown("clothing", "gloves", "battery reserve");
    }

    @Test
    void laterNeverAsksForLessClothingOrLight() {
        MeasureLadder ladder = ladder(14, (facts, rung) -> facts.with(
                Measure.DARK_HOURS, Math.max(0, 6L * (rung - 6)), Measure.SUNLESS_HOURS, Math.max(0, 6L * (rung - 5)),
                Measure.DARK_SHARE, Math.max(0, 8L * (rung - 6)), Measure.DAYLIGHT_TO_SPARE, Math.max(0, 6L * (5 - rung))));
        ladder.neverDown("lights", "light run time", "clothing", "emergency kit");
    }

    private static MeasureLadder ladder(int rungs, BiFunction<Facts, Integer, Facts> rung) {
        return new MeasureLadder(SHIPPED, DAYS, rungs, (day, i) -> rung.apply(Facts.of(day), i).demands());
    }
}
