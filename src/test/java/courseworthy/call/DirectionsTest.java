package courseworthy.call;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Status;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.problem.Faults;
import courseworthy.rulebase.PlainRules;
import courseworthy.rulebase.Rulebook;
import courseworthy.rulebase.Rules;
import courseworthy.rulebase.RulesFolder;
import courseworthy.rulebase.Sheet;
import courseworthy.topic.Topics;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;

/**
 * Which way the shipped rules lean as one thing about course, rider or day changes and all else is held (common practice, no source):
 * never the wrong way, and the right way somewhere.
 */
class DirectionsTest {

    private static final int DAYS = 60;
    private static final Rules HOUSE = house();

    @Test
    void rougherNeverAsksForLessTravelNarrowerTyresOrLighterCasing() {
        Ladder ladder = new Ladder((facts, rung) -> facts.with(
                Measure.ROUGHNESS, Math.min(45, facts.get(Measure.ROUGHNESS) / 4 + 4L * rung),
                Measure.WORST_ROUGHNESS, Math.min(50, facts.get(Measure.WORST_ROUGHNESS) / 4 + 4L * rung)), 12);
        ladder.climb();
        ladder.neverDown("fork travel", "rear travel", "front tyre width", "rear tyre width", "front tyre casing", "rear tyre casing");
    }

    @Test
    void aRougherWorstTenthAloneNeverAsksForLess() {
        Ladder ladder = new Ladder((facts, rung) -> facts.with(
                Measure.ROUGHNESS, Math.min(30, facts.get(Measure.ROUGHNESS)),
                Measure.WORST_ROUGHNESS, Math.min(50, Math.min(30, facts.get(Measure.ROUGHNESS)) + 2L * rung)), 13);
        ladder.climb();
        ladder.neverDown("fork travel", "rear travel", "front tyre width", "rear tyre width", "front tyre casing", "rear tyre casing");
    }

    @Test
    void steeperOrWeakerNeverAsksForAHarderEasiestGear() {
        Ladder ladder = new Ladder((facts, rung) -> {
            long steepest = 1600 - 100L * rung;
            return facts.with(Measure.RATIO_NEEDED_WHERE_IT_IS_STEEPEST, steepest,
                    Measure.RATIO_NEEDED_ON_THE_LAST_CLIMB,
                    steepest + facts.get(Measure.RATIO_NEEDED_ON_THE_LAST_CLIMB) % 200,
                    Measure.GEAR_RANGE_NEEDED, facts.get(Measure.RATIO_USEFUL_AT_SPEED) * 100 / steepest,
                    Measure.STEEPEST_100_M, 5 + 2L * rung);
        }, 12);
        ladder.climb();
        ladder.neverUp("easiest gear");
    }

    @Test
    void mudNeverAsksForAFasterTread() {
        Ladder ladder = new Ladder((facts, rung) -> facts.with(
                Measure.MUD, 5L * rung, Measure.SOFT_SHARE, Math.max(facts.get(Measure.SOFT_SHARE), 5L * rung),
                Measure.GROUND, 2), 15);
        ladder.climb();
        ladder.neverDown("front tyre tread", "rear tyre tread");
    }

    @Test
    void longerAndRemoterNeverAsksForLessWaterOrFewerSpares() {
        Ladder ladder = new Ladder((facts, rung) -> {
            long minutes = 45 + 60L * rung;
            return facts.with(Measure.DISTANCE, 180L + 180 * rung, Measure.HOURS, minutes, Measure.SLOW_HOURS, minutes * 115 / 100,
                    Measure.SUPPORT_GAP, 100L + 80 * rung, Measure.SUPPORT_GAP_HOURS, 6L + 6 * rung,
                    Measure.WATER_OVER_THE_HOTTEST_GAP, 3L + 4 * rung);
        }, 14);
        ladder.climb();
        ladder.neverDown("water", "water carrier", "plugs", "tube", "inflation", "tools", "spares", "emergency kit");
    }

    @Test
    void remoterAloneNeverAsksForLessWaterOrFewerSpares() {
        Ladder ladder = new Ladder((facts, rung) -> facts.with(Measure.SUPPORT_GAP, 50L + 80 * rung,
                Measure.SUPPORT_GAP_HOURS, 3L + 6 * rung, Measure.WATER_OVER_THE_HOTTEST_GAP, 3L + 4 * rung), 12);
        ladder.climb();
        ladder.neverDown("water", "water carrier", "plugs", "tube", "tools", "spares", "emergency kit", "front tyre casing");
    }

    @Test
    void colderNeverAsksForLessClothing() {
        Ladder ladder = new Ladder((facts, rung) -> {
            long coldest = 26 - 2L * rung;
            return facts.with(Measure.COLDEST_TEMPERATURE, coldest, Measure.START_TEMPERATURE, coldest + 4,
                    Measure.HOTTEST_TEMPERATURE, coldest + 12);
        }, 18);
        ladder.climb();
        ladder.neverDown("clothing", "gloves", "battery reserve");
        ladder.changes("clothing", "gloves");
    }

    @Test
    void laterNeverAsksForLessClothingOrLight() {
        Ladder ladder = new Ladder((facts, rung) -> facts.with(
                Measure.DARK_HOURS, Math.max(0, 6L * (rung - 5)), Measure.DAYLIGHT_TO_SPARE, Math.max(0, 6L * (5 - rung))), 14);
        ladder.climb();
        ladder.neverDown("lights", "light run time", "clothing", "emergency kit");
        ladder.changes("lights", "light run time", "clothing");
    }

    private static Rules house() {
        Faults faults = new Faults();
        List<Sheet> sheets = RulesFolder.read(Path.of("rules"), faults);
        Rulebook rulebook = Rulebook.of(sheets, List.of(), List.of(), faults);
        faults.throwIfAny();
        return new PlainRules(rulebook.rows());
    }

    /** One thing changed rung by rung on many days, all else held. */
    private static final class Ladder {

        private final BiFunction<Facts, Integer, Facts> rung;
        private final int rungs;
        private final List<List<Call>> days = new ArrayList<>();

        Ladder(BiFunction<Facts, Integer, Facts> rung, int rungs) {
            this.rung = rung;
            this.rungs = rungs;
        }

        void climb() {
            for (int seed = 0; seed < DAYS; seed++) {
                List<Call> calls = new ArrayList<>();
                for (int i = 0; i < rungs; i++) {
                    Demands demands = rung.apply(Facts.of(seed), i).demands();
                    calls.add(Calling.call(HOUSE, demands));
                }
                days.add(calls);
            }
        }

        void neverDown(String... topics) {
            check(topics, 1);
        }

        void neverUp(String... topics) {
            check(topics, -1);
        }

        private void check(String[] topics, int sign) {
            Map<String, String> wrong = new LinkedHashMap<>();
            for (String topic : topics) {
                for (int day = 0; day < days.size(); day++) {
                    for (int i = 1; i < rungs; i++) {
                        Decision before = days.get(day).get(i - 1).on(Topics.of(topic));
                        Decision after = days.get(day).get(i).on(Topics.of(topic));
                        if (sign * Long.compare(worth(after), worth(before)) < 0) {
                            wrong.putIfAbsent(topic, "day " + day + ", rung " + i + ": " + told(days.get(day).get(i - 1), topic)
                                    + "\n  then " + told(days.get(day).get(i), topic) + "\n  on "
                                    + rung.apply(Facts.of(day), i).demands().values());
                        }
                    }
                }
            }
            assertThat(wrong.values()).as(String.join("\n", wrong.values())).isEmpty();
            changes(topics);
        }

        void changes(String... topics) {
            for (String topic : topics) {
                assertThat(days).as(topic).anyMatch(
                        calls -> calls.stream().map(call -> worth(call.on(Topics.of(topic)))).distinct().count() > 1);
            }
        }

        private static String told(Call call, String topic) {
            Decision decision = call.on(Topics.of(topic));
            return call.on(Topics.of("bike")).text() + ": " + topic + " " + decision.text() + " for "
                    + decision.taken().stream().map(claim -> claim.author().rule() + " " + claim.verb().word() + " " + claim.written()).toList()
                    + " against " + decision.lost().stream().map(lost -> lost.claim().author().rule() + " " + lost.how().words()).toList();
        }
    }

    /** What does not apply counts as least: a bike without a fork has no travel. */
    private static long worth(Decision decision) {
        assertThat(decision.status()).as("%s", decision).isNotEqualTo(Status.NONE_POSSIBLE);
        return decision.status() == Status.SETTLED ? decision.value() : Long.MIN_VALUE;
    }
}
