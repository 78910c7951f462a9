package courseworthy.call;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.decision.Decision;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.demand.MeasureValue;
import courseworthy.engine.DroolsRules;
import courseworthy.sheet.RuleInputs;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Close decisions against whole calls with the measure on the other side of the threshold. */
class CloseThresholdFinderTest {

    private static final DroolsRules SHIPPED = ShippedRuleSet.read();
    private static final Set<Measure> FORECAST = Set.of(Measure.START_TEMPERATURE, Measure.SUMMIT_TEMPERATURE, Measure.COLDEST_TEMPERATURE,
            Measure.HOTTEST_TEMPERATURE, Measure.NIGHT_TEMPERATURE, Measure.WIND);

    private static final Topic BIKE = Topics.BIKE;

    static List<ShippedDays> days() {
        return ShippedDays.all();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("days")
    void onTheOtherSideTheWholeCallDecidesOtherwise(ShippedDays day) {
        Call call = CallMaker.call(SHIPPED, day.demands());
        for (CloseThreshold margin : CloseThresholdFinder.of(SHIPPED, call)) {
            Topic topic = margin.decision().topic();
            MeasureValue value = day.demands().get(margin.measure());
            assertThat(value.mid()).isEqualTo(margin.from());
            assertThat(itself(margin.measure(), topic)).isFalse();
            if (!FORECAST.contains(margin.measure())) {
                // In its range, or the very next step to which it is rounded.
                assertThat(margin.threshold()).isBetween(Math.min(value.low(), value.mid() - 1), Math.max(value.high(), value.mid() + 1));
            }
            if (topic.kind() == Topic.Kind.QUANTITY && margin.otherwise().value() != null) {
                assertThat(Math.abs(margin.otherwise().value() - margin.decision().value())).as("%s", margin).isGreaterThanOrEqualTo(topic.notch());
            }
            assertThat(margin.decision()).isEqualTo(call.on(topic));
            assertThat(topic == BIKE || Objects.equals(at(day.demands(), margin.measure(), margin.threshold(), BIKE), call.on(BIKE).value()))
                    .as("%s is on the bike that is called", margin).isTrue();
            assertThat(at(day.demands(), margin.measure(), margin.threshold(), topic)).as("%s", margin).isEqualTo(margin.otherwise().value())
                    .isNotEqualTo(call.on(topic).value());
        }
    }

    /** No threshold within a range is passed over: of every fifth day each is tried by two whole calls. */
    @Test
    void everyThresholdInARangeIsTried() {
        List<ShippedDays> days = days();
        for (int i = 0; i < days.size(); i += 5) {
            Demands demands = days.get(i).demands();
            Call call = CallMaker.call(SHIPPED, demands);
            Set<String> close = CloseThresholdFinder.of(SHIPPED, call).stream().map(margin -> margin.decision().topic().name()).collect(Collectors.toSet());
            for (Map.Entry<Measure, MeasureValue> each : demands.values().entrySet()) {
                if (each.getKey().layer() == 0 && each.getKey().scale().kind() == MeasureScale.Kind.QUANTITY) {
                    assertThat(close).as("%s %s", days.get(i), each.getKey()).containsAll(turned(call, each.getKey(), each.getValue()));
                }
            }
        }
    }

    /** A degree decides on long sleeves, and no forecast is good to a degree. */
    @Test
    void aDegreeBesideAThresholdIsClose() {
        Demands demands = days().get(0).demands().with(Map.of(Measure.COLDEST_TEMPERATURE, MeasureValue.exact(8), Measure.GOING, MeasureValue.exact(0)));
        assertThat(CloseThresholdFinder.of(SHIPPED, CallMaker.call(SHIPPED, demands))).anySatisfy(margin -> {
            assertThat(margin.decision().topic().name()).isEqualTo("clothing");
            assertThat(margin.measure()).isEqualTo(Measure.COLDEST_TEMPERATURE);
            assertThat(margin.threshold()).isEqualTo(7);
            assertThat(margin.otherwise().text()).isEqualTo("long sleeves and a shell");
        });
    }

    private static Set<String> turned(Call call, Measure measure, MeasureValue value) {
        SortedSet<Long> turns = new TreeSet<>();
        SHIPPED.rows().forEach(row -> RuleInputs.turns(row, measure, turns));
        Set<String> out = new TreeSet<>();
        for (long turn : turns.subSet(value.low() + 1, value.high() + 1)) {
            Call below = CallMaker.call(SHIPPED, call.demands().with(Map.of(measure, MeasureValue.exact(turn - 1))));
            Call above = CallMaker.call(SHIPPED, call.demands().with(Map.of(measure, MeasureValue.exact(turn))));
            Call beyond = turn > value.mid() ? above : below;
            boolean anotherBike = !beyond.on(BIKE).value().equals(call.on(BIKE).value());
            for (Decision decision : anotherBike ? List.of(call.on(BIKE)) : call.decisions()) {
                Long then = beyond.on(decision.topic()).value();
                boolean differs = !Objects.equals(below.on(decision.topic()).value(), above.on(decision.topic()).value());
                if (decision.value() != null && !itself(measure, decision.topic()) && differs && another(decision, then)) {
                    out.add(decision.topic().name());
                }
            }
        }
        return out;
    }

    /** Whether a value is another one by a notch of its topic, or there is none any more. */
    private static boolean another(Decision decision, Long then) {
        return then == null || (decision.topic().kind() == Topic.Kind.QUANTITY ? Math.abs(then - decision.value()) >= decision.topic().notch()
                : !then.equals(decision.value()));
    }

    /** That the water at the start is close to the water at the start helps nobody. */
    private static boolean itself(Measure measure, Topic topic) {
        return measure == Measure.WATER_AT_THE_START && topic.name().equals("water");
    }

    private static Long at(Demands demands, Measure measure, long value, Topic topic) {
        return CallMaker.call(SHIPPED, demands.with(Map.of(measure, MeasureValue.exact(value)))).on(topic).value();
    }
}
