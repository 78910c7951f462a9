package courseworthy.worth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.call.Call;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.ride.Range;
import courseworthy.topic.Topics;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What tyres are pumped to, called by the shipped rules, against the gas law and arithmetic. */
class PressureSettingsTest {

    private static final String COURSE = "name: Lanes\nstart height: 400 m\nstretches:\n  - {length: 40 km, ascent: 400 m, descent: 400 m, surface: gravel, smoothness: intermediate}\n";
    private static final String RIDER = "name: Alex\nmass: 75 kg\npower: 250 W\nheld for: 1:00 h\nbike: {kind: gravel, mass: 9 kg}\n";
    private static final String DAY = "name: Day\nrole: race\ndate: 2026-06-20\nstart: 14:00\naim: time\nforecast: {low: 18 C, high: 30 C, going: dry}\n";
    /** Pressure of the air at 400 m in the standard atmosphere (ISO 2533:1975), Pa. */
    private static final double AIR = 96_611;

    @TempDir
    private Path folder;

    private Call call(String more) {
        return CallFixture.call(folder, COURSE, RIDER, DAY + more);
    }

    private static PressureSettings settings(Call call) {
        return PressureSettings.of(call, null);
    }

    /** Both wheels carry rider, bike and what is carried between them. */
    @Test
    void theWheelsCarryTheWhole() {
        Call call = call("");
        PressureSettings settings = settings(call);
        double whole = Measure.START_LINE_MASS.scale().resolution().base(call.demands().get(Measure.START_LINE_MASS).mid());
        assertThat(settings.front().load().mid() + settings.rear().load().mid()).isCloseTo(whole, within(1e-9));
        assertThat(settings.rear().load().mid()).isGreaterThan(settings.front().load().mid());
    }

    /** Pumped where it is 5 C for a warm start: absolute pressure goes with absolute temperature (Gay-Lussac's law), to a gauge's step. */
    @Test
    void whereItIsCoolerItIsPumpedToLess() {
        PressureSettings settings = settings(call("pumped at: {temperature: 5 C}\n"));
        TyreSetting rear = settings.rear();
        double start = settings.start().temperature();
        double pumped = (rear.start() + AIR) * (5 + 273.15) / (start + 273.15) - AIR;
        assertThat(rear.pump()).isCloseTo(pumped, within(5_100.0)).isLessThan(rear.start());
        assertThat(rear.capped()).isFalse();
        assertThat(settings(call("")).rear().pump()).isCloseTo(rear.start(), within(5_100.0));
    }

    /** At the hottest of the day the gauge shows more than at the start, by the same law. */
    @Test
    void theHottestPlaceShowsTheMost() {
        Call call = CallFixture.call(folder, COURSE, RIDER, DAY.replace("14:00", "07:00").replace("role: race", "role: race\nlaps: 4"));
        PressureSettings settings = settings(call);
        double hottest = Measure.HOTTEST_TEMPERATURE.scale().resolution().base(call.demands().get(Measure.HOTTEST_TEMPERATURE).mid());
        double start = settings.start().temperature();
        assertThat(hottest).isGreaterThan(start + 2);
        double most = (settings.rear().start() + AIR) * (hottest + 273.15) / (start + 273.15) - AIR;
        assertThat(settings.rear().most()).isBetween(most - 100, most + 4_000);
    }

    /** As uncertain as the reference about what is decided, inside the floor, to a gauge's step; the rim's part adds by its square. */
    @Test
    void whatIsWorthTryingIsAsWideAsTheReference() {
        Call call = call("");
        TyreSetting rear = settings(call).rear();
        Range reference = new Range(base(call, Measure.REAR_REFERENCE_PRESSURE, 0), base(call, Measure.REAR_REFERENCE_PRESSURE, 1), base(call, Measure.REAR_REFERENCE_PRESSURE, 2));
        double low = rear.start() * reference.low() / reference.mid();
        double high = rear.start() * reference.high() / reference.mid();
        assertThat(rear.worth().mid()).isEqualTo(rear.start());
        assertThat(rear.worth().low()).isBetween(Math.max(rear.floor(), 0.8 * low), Math.max(rear.floor(), low) + 5_100);
        assertThat(rear.worth().high()).isBetween(Math.min(high, rear.ceiling() == null ? high : rear.ceiling()) - 5_100, 1.25 * high);
    }

    private static double base(Call call, Measure measure, int end) {
        MeasureValue value = call.demands().get(measure);
        return measure.scale().resolution().base(end == 0 ? value.low() : end == 1 ? value.mid() : value.high());
    }

    /** On wet ground less, in the same tyre; where it is wet already there is nothing to turn to. */
    @Test
    void wetGroundAsksForLess() {
        TyreSetting dry = settings(call("")).rear();
        assertThat(dry.wet()).isNotNull().isLessThan(dry.start());
        TyreSetting wet = settings(CallFixture.call(folder, COURSE, RIDER, DAY.replace("going: dry", "going: wet"))).rear();
        assertThat(wet.wet()).isNull();
        String kept = PressureSettings.kept(call(""), Topics.REAR_TYRE_PRESSURE);
        assertThat(kept).isNotEmpty().isNotEqualTo(call("").on(Topics.REAR_TYRE_PRESSURE).text());
        assertThat(PressureSettings.wet(call(""))).isFalse();
    }
}
