package courseworthy.worth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.call.Call;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.topic.Topics;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Water to carry, whole calls: one figure for the start, enough for the heat, a carrier that holds it. */
class WaterTest {

    private static final String COURSE = """
            name: Dry Plateau
            start height: 200 m
            latitude: 40 deg
            longitude: 20 deg
            stretches:
              - {length: 100 km, ascent: 600 m, descent: 600 m, surface: compacted, smoothness: good}
            """;
    private static final String RIDER = "name: Alex\nmass: 70 kg\npower: 215 W\nheld for: 1:00 h\nbike: {kind: gravel, mass: 9 kg}\n";

    @TempDir
    private Path folder;

    private Call call(String rider, double low, double high, String support) {
        return CallFixture.call(folder, COURSE, rider, "name: A Day\nrole: race\ndate: 2026-07-20\nstart: 09:00\nutc offset: +02:00\naim: time\n"
                + "group share: 0 %\nforecast: {low: " + low + " C, high: " + high + " C, going: dry}\nsupport: " + support + "\n");
    }

    private static double litres(Call call, Measure measure) {
        MeasureValue value = call.demands().get(measure);
        return measure.scale().resolution().shown(value.mid());
    }

    private static double water(Call call) {
        return Topics.WATER.resolution().base(call.on(Topics.WATER).value());
    }

    private static String carrier(Call call) {
        return call.on(Topics.WATER_CARRIER).text();
    }

    /** 55 km between taps at 38 C: 3 to 5 L for 70 kg (common practice, no source), whether the gap is the first or the last. */
    @ParameterizedTest
    @CsvSource({"55, 38", "45, 38", "55, 24", "45, 24"})
    void aHotDayBetweenFarTaps(int tap, double low) {
        Call call = call(RIDER, low, 38, "[{at: " + tap + " km, water: yes}]");
        assertThat(litres(call, Measure.WATER_OVER_THE_HOTTEST_GAP)).isBetween(3.0, 5.0);
        assertThat(carrier(call)).isEqualTo("bottles and a pack");
    }

    @Test
    void neverLessWithHeatSweatOrDistance() {
        List<Double> heat = new ArrayList<>();
        for (int high = 4; high <= 44; high += 4) {
            Call call = call(RIDER, high - 10, high, "[{at: 40 km, water: yes}]");
            heat.add(litres(call, Measure.WATER_OVER_THE_HOTTEST_GAP));
            assertThat(water(call)).isGreaterThanOrEqualTo(litres(call, Measure.WATER_AT_THE_START) - 1e-9);
        }
        assertThat(heat).isSorted();
        assertThat(heat.get(9)).as("44 C over 36 C").isGreaterThan(heat.get(8));
        List<Double> gap = new ArrayList<>();
        for (int tap = 10; tap <= 90; tap += 20) {
            gap.add(water(call(RIDER, 20, 32, "[{at: " + tap + " km, water: yes}]")));
        }
        assertThat(gap).isSorted();
        List<Double> sweat = new ArrayList<>();
        for (String rate : List.of("0.5", "1.0", "1.5", "2.0", "2.5")) {
            sweat.add(water(call(RIDER + "sweat rate: " + rate + " L\n", 20, 32, "[{at: 40 km, water: yes}]")));
        }
        assertThat(sweat).isSorted();
        assertThat(sweat.get(4)).isGreaterThan(sweat.get(0) + 1);
    }

    /** One figure for the start: the decision, the plan's first gap, and no less than what the way to the first tap asks for. */
    @Test
    void theStartHasOneFigure() {
        for (String support : List.of("[{at: 5 km, water: yes}, {at: 70 km, water: yes}]", "none", "[{at: 60 km, water: yes}]")) {
            Call call = call(RIDER, 18, 34, support);
            DayPlan plan = DayPlan.of(call);
            assertThat(plan.fluids().gaps().get(0).carry().mid()).isCloseTo(water(call), within(1e-9));
        }
    }

    /** A short way to the first tap and a long dry one after it: little from the start, yet a carrier for what is filled there. */
    @Test
    void theCarrierHoldsWhatTheLongestGapAsksFor() {
        Call call = call(RIDER, 18, 34, "[{at: 5 km, water: yes}, {at: 70 km, water: yes}]");
        assertThat(water(call)).isLessThanOrEqualTo(0.8);
        assertThat(litres(call, Measure.WATER_OVER_THE_HOTTEST_GAP)).isGreaterThan(1.7);
        assertThat(carrier(call)).isEqualTo("bottles and a pack");
        assertThat(carrier(call(RIDER, 2, 9, "[{at: 20 km, water: yes}, {at: 40 km, water: yes}, {at: 60 km, water: yes}, {at: 80 km, water: yes}]")))
                .isEqualTo("one bottle");
    }

    /** No cap hides what is asked for: without a tap on a day of 42 C it is more than a bike carries, and that is what stands there. */
    @Test
    void whatCannotBeCarriedIsNotMadeLess() {
        Call call = call(RIDER, 28, 42, "none");
        assertThat(water(call)).isGreaterThan(4.7);
        assertThat(water(call)).isCloseTo(litres(call, Measure.WATER_AT_THE_START), within(1e-9));
    }

    /** Where nothing is written of taps, heat still counts: more than a litre for the first two hours of a hot day, more the hotter it is. */
    @Test
    void unknownTapsDoNotMeanABottle() {
        double before = 0;
        for (int high = 10; high <= 40; high += 10) {
            Call call = CallFixture.call(folder, COURSE, RIDER, "name: A Day\nrole: race\ndate: 2026-07-20\nstart: 09:00\nforecast: {low: " + (high - 10)
                    + " C, high: " + high + " C}\n");
            assertThat(call.demands().known(Measure.WATER_OVER_THE_HOTTEST_GAP)).isFalse();
            assertThat(DayPlan.of(call).fluids().gaps()).isEmpty();
            assertThat(water(call)).isGreaterThanOrEqualTo(before);
            before = water(call);
        }
        assertThat(before).isBetween(1.5, 3.5);
    }

    /** Two litres more at the start are two kilograms more on its line (arithmetic), to the half kilogram of the measure. */
    @Test
    void massAtTheStartCountsTheWaterThere() {
        Call little = call(RIDER, 18, 34, "[{at: 5 km, water: yes}]");
        Call much = call(RIDER, 18, 34, "[{at: 70 km, water: yes}]");
        double more = litres(much, Measure.WATER_AT_THE_START) - litres(little, Measure.WATER_AT_THE_START);
        assertThat(litres(much, Measure.START_LINE_MASS) - litres(little, Measure.START_LINE_MASS)).isCloseTo(more, within(0.55));
    }

    /** What is drunk and what is lost make up what is sweated. */
    @Test
    void drunkAndLostAddUpToSweat() {
        DayPlan plan = DayPlan.of(call(RIDER, 24, 38, "[{at: 55 km, water: yes}]"));
        double sweat = plan.hours().stream().mapToDouble(hour -> hour.sweat().mid()).sum();
        assertThat(plan.fluids().drink().mid() + plan.fluids().loss().mid()).isCloseTo(sweat, within(1e-9));
        assertThat(plan.fluids().lossShare().mid()).isCloseTo(plan.fluids().loss().mid() / 70, within(1e-9));
    }
}
