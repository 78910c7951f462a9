package courseworthy.worth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.call.Call;
import courseworthy.demand.Measure;
import courseworthy.event.Event;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.topic.Work;
import courseworthy.units.PressureSteps;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is set and what changes if the forecast turns. */
class DayOutlookTest {

    private static final String GRAVEL = "name: Farm Roads\nstart height: 300 m\nstretches:\n"
            + "  - {length: 60 km, ascent: 500 m, descent: 500 m, surface: fine_gravel, smoothness: intermediate}\n";
    private static final String ROAD = "name: Lanes\nstretches:\n  - {length: 60 km, ascent: 500 m, descent: 500 m, surface: asphalt, smoothness: excellent}\n";
    private static final String TRAIL = "name: Woods\nstretches:\n"
            + "  - {length: 40 km, ascent: 900 m, descent: 900 m, surface: ground, smoothness: horrible, mtb:scale: 2}\n";
    private static final String RIDER = "name: Alex\nmass: 75 kg\npower: 250 W\nheld for: 1:00 h\nbike: {kind: %s, %s}\n";
    private static final String DAY = "name: A Day\nrole: race\nstart: 08:00\naim: time\nforecast: {low: 10 C, high: 20 C, going: dry}\n";
    private static final double BAR = 1e5;

    @TempDir
    private Path folder;

    private static DayOutlook outlook(Call call) {
        return DayOutlook.of(call, List.of(), null);
    }

    private static String rider(String kind, String bike) {
        return RIDER.replaceFirst("%s", kind).replaceFirst("%s", bike);
    }

    /** At 0 °C a filling made at 20 °C shows 2.0 bar where the gauge showed 2.22 (gas law, by hand). */
    @Test
    void theGaugeIsReadWhereItIsPumped() {
        String cold = DAY.replace("low: 10 C, high: 20 C", "low: 0 C, high: 0 C");
        TyreSetting same = outlook(CallFixture.call(folder, GRAVEL, rider("gravel", "mass: 9 kg"), cold)).pressures().rear();
        DayOutlook elsewhere = outlook(CallFixture.call(folder, GRAVEL, rider("gravel", "mass: 9 kg"), cold + "pumped at: {temperature: 20 C}\n"));
        TyreSetting warm = elsewhere.pressures().rear();
        assertThat(same.pump()).isCloseTo(same.start(), within(1.0));
        assertThat(elsewhere.pressures().pumpedKnown()).isTrue();
        double air = 97_773;
        assertThat(warm.pump()).isCloseTo((warm.start() + air) * 293.15 / 273.15 - air, within(PressureSteps.step(warm.start()) / 2 + 100));
        assertThat(warm.start()).isEqualTo(same.start());
    }

    /** Never over the lower marked pressure nor, without hooks, over 5 bar (ISO 4210-1, 2.27; ETRTO), wherever it is pumped. */
    @ParameterizedTest
    @CsvSource({"'marked tyre pressure: 2.0 bar, marked rim pressure: 1.9 bar', 1.9", "'marked tyre pressure: 6 bar, marked rim pressure: 6 bar, hookless: yes', 5",
        "'hookless: yes', 5"})
    void noLimitIsEverExceeded(String bike, double most) {
        for (String course : most < 2 ? List.of(GRAVEL) : List.of(GRAVEL, ROAD)) {
            for (String at : List.of("", "pumped at: {temperature: 40 C, height: 0 m}\n", "pumped at: {temperature: 20 C, height: 2500 m}\n")) {
                PressureSettings pressures = outlook(CallFixture.call(folder, course, rider(course == ROAD ? "road" : "gravel", bike), DAY + at)).pressures();
                for (TyreSetting tyre : List.of(pressures.front(), pressures.rear())) {
                    assertThat(tyre.ceiling()).isLessThanOrEqualTo(most * BAR + 1);
                    assertThat(tyre.start()).isLessThanOrEqualTo(tyre.ceiling() + 1);
                    assertThat(tyre.pump()).isLessThanOrEqualTo(tyre.ceiling() + 1);
                    assertThat(tyre.worth().high()).isLessThanOrEqualTo(tyre.ceiling() + 1);
                    assertThat(tyre.psi(tyre.pump()) * 6894.757293168).isLessThanOrEqualTo(tyre.ceiling() + 1);
                    assertThat(tyre.worth().low()).isGreaterThanOrEqualTo(Math.min(tyre.start(), tyre.floor()) - 1);
                }
            }
        }
    }

    /** Narrow tyres on a marking below their floor: no pressure is told rather than one that is over the limit. */
    @Test
    void noPressureIsToldWhereNoneIsSafe() {
        PressureSettings pressures = outlook(CallFixture.call(folder, ROAD, rider("road", "marked tyre pressure: 1.9 bar, marked rim pressure: 1.9 bar, tyre clearance: 28 mm"), DAY))
                .pressures();
        assertThat(pressures.front()).isNull();
        assertThat(pressures.rear()).isNull();
    }

    /**
     * A filling at the limit on a cool morning is over it in the heat of the day, by the gas law. The heat is that of the hottest hour ridden,
     * some degrees short of the day's high.
     */
    @Test
    void whatHeatMakesOfItIsTold() {
        String bike = rider("gravel", "marked tyre pressure: 1.9 bar, marked rim pressure: 1.9 bar, tyre clearance: 40 mm");
        Call call = CallFixture.call(folder, GRAVEL, bike, DAY.replace("high: 20 C", "high: 30 C"));
        TyreSetting tyre = outlook(call).pressures().rear();
        double hottest = Measure.HOTTEST_TEMPERATURE.scale().resolution().shown(call.demands().get(Measure.HOTTEST_TEMPERATURE).mid());
        double start = Measure.START_TEMPERATURE.scale().resolution().shown(call.demands().get(Measure.START_TEMPERATURE).mid());
        assertThat(hottest).isBetween(start + 4, 30.0);
        assertThat(tyre.start()).isCloseTo(1.9 * BAR, within(1.0));
        assertThat(tyre.most()).isCloseTo((1.9 * BAR + 97_773) * (273.15 + hottest) / (273.15 + start) - 97_773, within(0.03 * BAR));
        assertThat(tyre.most()).isGreaterThan(tyre.ceiling());
    }

    /** In deep mud a narrower tyre goes on: its pressure is told as its own, beside what the tyre that is on would be given, no more than dry. */
    @Test
    void aPressureInAnotherTyreNamesTheTyre() {
        String mud = TRAIL.replace("mtb:scale: 2}", "mtb:scale: 2, mud when wet: yes}");
        Call dry = CallFixture.call(folder, mud, rider("cross-country hardtail", "mass: 11 kg"), DAY);
        Call wet = CallFixture.call(folder, mud, rider("cross-country hardtail", "mass: 11 kg"), DAY.replace("going: dry", "going: wet"));
        Topic pressure = Topics.FRONT_TYRE_PRESSURE;
        String narrow = wet.on(Topics.FRONT_TYRE_WIDTH).text();
        assertThat(narrow).isNotEqualTo(dry.on(Topics.FRONT_TYRE_WIDTH).text());
        PlanB.PlanBLine line = PlanB.of("wet", dry, wet).lines().stream().filter(each -> each.topic().equals(pressure.name())).findFirst().orElseThrow();
        assertThat(line.second()).startsWith(wet.on(pressure).text() + " in the " + narrow + " tyre, or ").endsWith(" in the one you have");
        assertThat(PressureSettings.kept(dry, pressure)).isNotEqualTo(dry.on(pressure).text());
    }

    /** What to do if it turns wet is what the call for a wet day says, the shipped rules deciding both. */
    @ParameterizedTest
    @CsvSource({"gravel", "road"})
    void wetPressureIsThatOfAWetDay(String kind) {
        String course = kind.equals("road") ? ROAD : GRAVEL;
        TyreSetting tyre = outlook(CallFixture.call(folder, course, rider(kind, "mass: 9 kg"), DAY)).pressures().rear();
        Call wet = CallFixture.call(folder, course, rider(kind, "mass: 9 kg"), DAY.replace("going: dry", "going: wet"));
        Long pressure = wet.on(Topics.REAR_TYRE_PRESSURE).value();
        assertThat(tyre.wet()).isNotNull();
        assertThat(tyre.wet()).isCloseTo(Topics.REAR_TYRE_PRESSURE.resolution().base(pressure), within(1.0));
        assertThat(outlook(wet).pressures().rear().wet()).isNull();
    }

    /** A quarter of 120 mm is 30 mm; half of a shock's 45 mm stroke is what half of the travel is on an even linkage (arithmetic). */
    @Test
    void sagIsAShareOfTheTravel() {
        assertThat(new SuspensionSettings.Sag(0.25, 0.120, null).sunk()).isCloseTo(0.030, within(1e-12));
        assertThat(new SuspensionSettings.Sag(0.25, 0.120, null).atTheShock()).isNull();
        assertThat(new SuspensionSettings.Sag(0.30, 0.120, 0.045).atTheShock()).isCloseTo(0.0135, within(1e-12));
    }

    @Test
    void clicksAreCountedFromClosed() {
        assertThat(new SuspensionSettings.Dial(0.5, 12).clicks()).isEqualTo(6);
        assertThat(new SuspensionSettings.Dial(0.85, 15).clicks()).isEqualTo(13);
        assertThat(new SuspensionSettings.Dial(0, 15).clicks()).isZero();
        assertThat(new SuspensionSettings.Dial(1, 15).clicks()).isEqualTo(15);
        assertThat(new SuspensionSettings.Dial(0.5, null).clicks()).isNull();
    }

    /** Who writes the number of clicks is told a number of clicks, inside the range. */
    @Test
    void aMechanicIsToldWhatToSet() {
        SuspensionSettings set = outlook(CallFixture.call(folder, TRAIL, rider("cross-country full suspension",
                "rebound clicks: 14, compression clicks: 10, shock rebound clicks: 8, shock stroke: 45 mm"), DAY)).suspension();
        Call call = CallFixture.call(folder, TRAIL, rider("cross-country full suspension", "mass: 11 kg"), DAY);
        double share = Topics.REBOUND.resolution().base(call.on(Topics.REBOUND).value());
        assertThat(set.rebound().clicks()).isEqualTo((int) Math.round(14 * share));
        assertThat(set.compression().clicks()).isBetween(0, 10);
        assertThat(set.shockRebound().clicks()).isBetween(0, 8);
        assertThat(set.shockCompression().clicks()).isNull();
        assertThat(set.rear().atTheShock()).isCloseTo(set.rear().share() * 0.045, within(1e-9));
        assertThat(set.front().sunk()).isLessThan(set.front().travel() / 2);
        assertThat(outlook(CallFixture.call(folder, ROAD, rider("road", "mass: 8 kg"), DAY)).suspension()).isNull();
    }

    @Test
    void onlyWhatDiffersIsTold() {
        Event day = CallFixture.day(folder, DAY);
        Call dry = CallFixture.call(folder, TRAIL, rider("cross-country hardtail", "mass: 11 kg"), day);
        assertThat(PlanB.of("the same", dry, dry).lines()).isEmpty();
        Call wet = CallFixture.call(folder, TRAIL, rider("cross-country hardtail", "mass: 11 kg"),
                day.with(Event.Forecast.builder().low(4.0).high(9.0).going("wet").build()));
        PlanB other = PlanB.of("wet, 4 to 9 C", dry, wet);
        assertThat(other.lines()).isNotEmpty().allSatisfy(line -> {
            assertThat(line.first()).isEqualTo(dry.on(Topics.of(line.topic())).phrase()).isNotEqualTo(line.second());
            assertThat(line.second()).isEqualTo(wet.on(Topics.of(line.topic())).phrase());
            assertThat(line.written()).isFalse();
            assertThat(line.latest()).isLessThanOrEqualTo(-PlanB.LINED_UP - line.takes() + 1e-9);
        });
        long differing = dry.decisions().stream().filter(decision -> !decision.text().equals(wet.on(decision.topic()).text())).count();
        assertThat(other.lines()).hasSize((int) differing);
        assertThat(other.wet()).isSameAs(wet);
    }

    /** A time that is written counts for what it is written for. */
    @Test
    void writtenTimesGoBeforeEstimates() {
        Event day = CallFixture.day(folder, DAY + "time to change: {clothing: 25 min}\n");
        Call dry = CallFixture.call(folder, TRAIL, rider("cross-country hardtail", "mass: 11 kg"), day);
        Call cold = CallFixture.call(folder, TRAIL, rider("cross-country hardtail", "mass: 11 kg"),
                day.with(Event.Forecast.builder().low(-4.0).high(2.0).going("wet").build()));
        PlanB.PlanBLine clothing = PlanB.of("cold", dry, cold).lines().stream().filter(line -> line.topic().equals("clothing")).findFirst().orElseThrow();
        assertThat(clothing.written()).isTrue();
        assertThat(clothing.takes()).isEqualTo(1500);
        assertThat(clothing.latest()).isLessThanOrEqualTo(-1500 - PlanB.LINED_UP);
    }

    /** Every change takes 7 min here: the first of n begins 7 n min before the line-up, and no two are begun at once. */
    @Test
    void onePairOfHandsMakesOneChangeAfterAnother() {
        String each = Work.words().stream().map(change -> change + ": 7 min").collect(Collectors.joining(", "));
        Event day = CallFixture.day(folder, DAY + "time to change: {" + each + "}\n");
        Call dry = CallFixture.call(folder, TRAIL, rider("cross-country hardtail", "mass: 11 kg"), day);
        Call cold = CallFixture.call(folder, TRAIL, rider("cross-country hardtail", "mass: 11 kg"),
                day.with(Event.Forecast.builder().low(-4.0).high(2.0).going("wet").build()));
        Map<String, Double> begun = new TreeMap<>();
        PlanB.of("cold", dry, cold).lines().forEach(line -> begun.put(line.change().word(), line.latest()));
        assertThat(begun.size()).isGreaterThan(2);
        List<Double> inOrder = begun.values().stream().sorted(Comparator.reverseOrder()).toList();
        for (int i = 0; i < inOrder.size(); i++) {
            assertThat(inOrder.get(i)).isCloseTo(-PlanB.LINED_UP - 7 * 60 * (i + 1), within(1e-9));
        }
    }

    /** The lubricant sets for eight hours, in which all the rest is done: nothing of it makes that begin earlier. */
    @Test
    void waitsRunBesideTheWork() {
        Event day = CallFixture.day(folder, DAY + "time to change: {clothing: 10 min, carry: 10 min, brakes: 60 min}\n");
        Call dry = CallFixture.call(folder, TRAIL, rider("cross-country hardtail", "mass: 11 kg"), day);
        Call wet = CallFixture.call(folder, TRAIL, rider("cross-country hardtail", "mass: 11 kg"),
                day.with(Event.Forecast.builder().low(4.0).high(9.0).going("wet").build()));
        PlanB.PlanBLine lubricant = PlanB.of("wet", dry, wet).lines().stream().filter(line -> line.topic().equals("lubricant")).findFirst().orElseThrow();
        assertThat(lubricant.takes()).isEqualTo(8.5 * 3600);
        assertThat(lubricant.latest()).isCloseTo(-PlanB.LINED_UP - 8.5 * 3600, within(1e-9));
    }
}
