package courseworthy.call;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.decision.Decision;
import courseworthy.demand.Demands;
import courseworthy.demand.DerivedMeasures;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.demand.MeasureValue;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.GeneratedSituations;
import courseworthy.engine.ShippedRules;
import courseworthy.sheet.MeasureRange;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A flip flips and nothing nearer does: against the whole call, made anew through the rule network for every value tried. */
class FlipFinderTest {

    /** For a longer run: every topic of every day, and so many generated days ({@code -Dcourseworthy.flips=60}). */
    private static final int LONG = Integer.getInteger("courseworthy.flips", 0);
    private static final DroolsRules SHIPPED = ShippedRuleSet.read();
    /** By the number of the day: several tests look at the same one, and the flips of all topics are searched for once. */
    private static final Map<Integer, TickByTick> SLOW = new HashMap<>();

    static List<ShippedDays> days() {
        return ShippedDays.all();
    }

    @ParameterizedTest
    @MethodSource("days")
    void appliedItFlipsAndNothingNearerDoes(ShippedDays day) {
        TickByTick slow = new TickByTick(SHIPPED, day.demands());
        SplittableRandom chance = new SplittableRandom(day.name().hashCode());
        int flips = 0;
        for (Topic topic : some(chance, LONG > 0 ? 1 : 20)) {
            for (Flip flip : slow.found(topic)) {
                flips++;
                flips(slow, topic, flip);
                nothingNearer(slow, topic, flip, chance);
            }
        }
        assertThat(flips).as("a comparison of nothing proves nothing").isPositive();
    }

    private static List<Topic> some(SplittableRandom chance, int oneIn) {
        int first = chance.nextInt(oneIn);
        List<Topic> out = new ArrayList<>();
        for (int i = first; i < Topics.all().size(); i += oneIn) {
            out.add(Topics.all().get(i));
        }
        return out;
    }

    private static void flips(TickByTick slow, Topic topic, Flip flip) {
        Decision then = slow.with(flip.measure(), flip.to()).on(topic);
        assertThat(then.status()).isEqualTo(flip.decision().status());
        assertThat(then.value()).isEqualTo(flip.decision().value());
        assertThat(then.text()).isEqualTo(flip.decision().text());
        assertThat(WhatIfCall.differ(then, slow.call().on(topic))).as(flip.toString()).isTrue();
        assertThat(flip.from()).isEqualTo(slow.call().demands().get(flip.measure()).mid());
    }

    private static void nothingNearer(TickByTick slow, Topic topic, Flip flip, SplittableRandom chance) {
        if (flip.way() == Flip.FlipDirection.OVER) {
            return;
        }
        long step = flip.way() == Flip.FlipDirection.UP ? 1 : -1;
        long between = Math.abs(flip.to() - flip.from()) - 1;
        for (long tried : new long[] {1, between, 1 + chance.nextLong(Math.max(1, between))}) {
            if (tried >= 1 && tried <= between) {
                Decision nearer = slow.with(flip.measure(), flip.from() + step * tried).on(topic);
                assertThat(WhatIfCall.differ(nearer, slow.call().on(topic))).as("%s at %s already", flip, tried).isFalse();
            }
        }
    }

    /** Every value near by, of every known measure, for every topic. */
    @Test
    void itFindsWhatEveryTickFinds() {
        int flips = 0;
        for (int seed = 0; seed < Math.max(2, LONG); seed++) {
            Demands demands = Facts.of(seed).demands();
            TickByTick slow = new TickByTick(SHIPPED, demands);
            for (Measure measure : demands.values().keySet()) {
                long now = demands.get(measure).mid();
                boolean words = measure.scale().kind() != MeasureScale.Kind.QUANTITY;
                long least = words ? 0 : Math.max(MeasureRange.least(measure), now - 8);
                long most = Math.min(MeasureRange.most(measure), words ? Long.MAX_VALUE : now + 8);
                flips += slow.agree(measure, least, most, Topics.all());
            }
        }
        assertThat(flips).isGreaterThan(50);
    }

    /** Every value a measure can have, from end to end, where claims come from it or others derive from it. */
    @ParameterizedTest
    @CsvSource({"RATIO_NEEDED_WHERE_IT_IS_STEEPEST, 350, 1700", "START_LINE_MASS, 60, 420", "DARK_HOURS, 0, 220", "HOURS, 0, 900",
            "WATER_OVER_THE_HOTTEST_GAP, 0, 120", "WORST_ROUGHNESS, 0, 50", "PAVED_SHARE, 0, 100", "RATIO_USEFUL_AT_SPEED, 1800, 5800"})
    void itFindsWhatEveryTickFindsFromEndToEnd(Measure measure, long least, long most) {
        int flips = 0;
        for (int seed = 101; seed < 102 + LONG; seed++) {
            TickByTick slow = SLOW.computeIfAbsent(seed, drawn -> new TickByTick(SHIPPED, Facts.of(drawn).demands()));
            flips += slow.agree(measure, least, most, Topics.all());
        }
        assertThat(flips).isPositive();
    }

    /** Rules made by chance: groups in groups, several layers, ranks that overrule each other, much that is unknown; each second topic of each. */
    @Test
    void itFindsWhatEveryTickFindsUnderGeneratedRules() {
        int flips = 0;
        for (int seed = 0; seed < Math.max(2, LONG); seed++) {
            GeneratedSituations generated = new GeneratedSituations(9_000 + seed);
            DroolsRules rules = new DroolsRules(generated.rows(60, 0), new ShippedRules(List.of(), ShippedRules.realPairs(), ShippedRules.load().joins()));
            Demands demands = generated.situation().demands();
            TickByTick slow = new TickByTick(rules, demands);
            int first = seed % 2;
            List<Topic> topics = LONG > 0 ? Topics.all() : IntStream.range(0, Topics.all().size()).filter(i -> i % 2 == first).mapToObj(Topics.all()::get).toList();
            for (Measure measure : demands.values().keySet()) {
                if (measure.layer() == 0) {
                    long most = Math.min(14, MeasureRange.most(measure));
                    flips += slow.agree(measure, Math.max(-8, MeasureRange.least(measure)), most, topics);
                }
            }
        }
        assertThat(flips).isGreaterThan(10);
    }

    @Test
    void aTargetIsReachedByTheNearestChangeThatBringsIt() {
        Demands demands = Facts.of(3).demands();
        TickByTick slow = new TickByTick(SHIPPED, demands);
        Topic topic = Topics.FRONT_TYRE_WIDTH;
        int reached = 0;
        for (long value = topic.least(); value <= topic.most(); value++) {
            long wanted = value;
            if (slow.call().on(topic).value() == value) {
                continue;
            }
            for (Flip flip : new FlipFinder(SHIPPED, slow.call(), topic, (done, of) -> { }).to(value)) {
                assertThat(slow.with(flip.measure(), flip.to()).on(topic).value()).isEqualTo(wanted);
                if (flip.way() == Flip.FlipDirection.UP) {
                    for (long nearer = flip.from() + 1; nearer < flip.to(); nearer++) {
                        assertThat(slow.with(flip.measure(), nearer).on(topic).value()).isNotEqualTo(wanted);
                    }
                }
                reached++;
            }
        }
        assertThat(reached).isPositive();
    }

    @Test
    void theSmallestComesFirstAndItsSizeIsAPartOfTheScale() {
        Demands demands = Facts.of(5).demands();
        for (Topic topic : Topics.all()) {
            List<Flip> flips = new TickByTick(SHIPPED, demands).found(topic);
            assertThat(flips).isSortedAccordingTo(java.util.Comparator.comparingDouble(Flip::size));
            assertThat(flips).allSatisfy(flip -> assertThat(flip.size()).isGreaterThan(0));
        }
    }

    /** What derives from decisions may read nothing but what it says it reads: the search follows no other measure tick by tick. */
    @Test
    void measuresThatDeriveReadOnlyWhatTheySay() {
        Call call = CallMaker.call(SHIPPED, Facts.of(8).demands());
        Map<Topic, courseworthy.topic.SettledTopic> settled = new java.util.HashMap<>();
        call.decisions().forEach(one -> settled.put(one.topic(), new courseworthy.topic.SettledTopic(one.topic(), one.value() != null,
                one.value() == null ? 0 : one.value())));
        for (int layer = 1; layer <= Topics.LAST_LAYER; layer++) {
            Map<Measure, MeasureValue> derived = DerivedMeasures.after(layer, call.demands(), settled);
            for (Measure measure : Measure.values()) {
                if (measure.layer() == 0 && !DerivedMeasures.read().contains(measure)) {
                    Demands other = call.demands().with(Map.of(measure, MeasureValue.exact(1)));
                    assertThat(DerivedMeasures.after(layer, other, settled)).as(measure.written()).isEqualTo(derived);
                } else if (measure.layer() == 0 && call.demands().known(measure)) {
                    Demands other = call.demands().with(Map.of(measure, MeasureValue.exact(call.demands().get(measure).mid() * 2 + 1)));
                    Map<Measure, MeasureValue> there = DerivedMeasures.after(layer, other, settled);
                    derived.forEach((each, value) -> {
                        if (!DerivedMeasures.measuresRead(each).contains(measure)) {
                            assertThat(there.get(each)).as(each + " with another " + measure.written()).isEqualTo(value);
                        }
                    });
                }
            }
            for (Topic topic : Topics.all()) {
                Map<Topic, courseworthy.topic.SettledTopic> without = new java.util.HashMap<>(settled);
                without.remove(topic);
                Map<Measure, MeasureValue> other = DerivedMeasures.after(layer, call.demands(), without);
                derived.forEach((measure, value) -> {
                    if (!DerivedMeasures.topicsRead(measure).contains(topic)) {
                        assertThat(other.get(measure)).as(measure + " without " + topic.name()).isEqualTo(value);
                    }
                });
            }
        }
    }
}
