package courseworthy.worth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.call.Call;
import courseworthy.demand.Demands;
import courseworthy.topic.Topics;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What changes between two calls written by hand, and when work on it has to begin. Times are those of a practised hand (common practice, no source). */
class PlanBTest {

    private static final double MIN = 60;

    @TempDir
    private static Path folder;
    private static Demands demands;
    private static Demands written;
    private static Demands wet;

    @BeforeAll
    static void aDay() {
        String course = "name: Lanes\nstretches: [{length: 10 km, ascent: 0 m, descent: 0 m, surface: asphalt}]\n";
        String rider = "name: Alex\nmass: 75 kg\npower: 250 W\nheld for: 1:00 h\nbike: {kind: cross-country full suspension}\n";
        demands = RideFixture.demands(folder, course, rider, "name: Day\nforecast: {going: dry}\n");
        written = RideFixture.demands(folder, course, rider, "name: Day\nforecast: {going: dry}\ntime to change: {tyres: 20 min, brakes: 90 min}\n");
        wet = RideFixture.demands(folder, course, rider, "name: Day\nforecast: {going: wet}\n");
    }

    private static HandMadeCall call() {
        return new HandMadeCall(demands);
    }

    /**
     * Minutes of work and hours of waiting by what is changed. A bike stands in the line-up 20 min before the start. What stops, steers, drops or
     * springs is ridden in by daylight the day before, and air has a night to show itself in a brake: 12 h; lubricant sets overnight: 8 h; a
     * battery charges for 2 h.
     */
    @ParameterizedTest
    @CsvSource({"bike, 0, bike, 60, 0", "front rotor, 180, brakes, 60, 12", "fork travel, 120, fork and rear travel, 180, 12", "easiest gear, 800, gears, 45, 12",
        "lubricant, 1, upkeep, 30, 8", "bar width, 460, cockpit, 30, 12", "seatpost, 1, seatpost, 20, 12", "pedals, 2, contact points, 20, 0",
        "front rim depth, 1, wheels, 15, 0", "front tyre pressure, 50, pressure, 5, 0", "battery reserve, 50, electronics, 120, 0",
        "rebound, 60, suspension settings, 10, 0", "gloves, 2, clothing, 10, 0", "lights, 2, lights, 10, 0", "plugs, 5, carry, 10, 0"})
    void aChangeTakesItsTime(String topic, long value, String change, double minutes, double hours) {
        PlanB plan = PlanB.of("rain", call().call(), call().on(topic, value).call());
        assertThat(plan.lines()).hasSize(1);
        PlanB.PlanBLine line = plan.lines().get(0);
        assertThat(line.topic()).isEqualTo(topic);
        assertThat(line.change().word()).isEqualTo(change);
        assertThat(line.written()).isFalse();
        assertThat(line.takes()).isEqualTo(minutes * MIN + hours * 3600);
        if (hours > 0) {
            assertThat(line.waits()).isEqualTo(hours * 3600);
        }
        assertThat(line.latest()).isCloseTo(-20 * MIN - minutes * MIN - hours * 3600, within(1e-6));
        assertThat(plan.workStarts()).isEqualTo(line.latest());
        assertThat(plan.turns()).isEqualTo("rain");
    }

    /** With sealant a tyre wants a night to find its leaks, 12 h; with a tube it is ready at once. */
    @ParameterizedTest
    @CsvSource({"0, 45", "1, 765"})
    void aTyreWithSealantWantsANight(long sealant, double minutes) {
        Call first = call().on("rear sealant", sealant).call();
        Call second = call().on("rear sealant", sealant).on("rear tyre tread", 4).call();
        assertThat(PlanB.of("rain", first, second).lines().get(0).takes()).isEqualTo(minutes * MIN);
    }

    /**
     * Tyres with tubes (45 min), brakes (60 min, then 12 h) and a bar (30 min, then 12 h) by one pair of hands, by hand from the back: tyres last,
     * 65 min before the start; the bar done by 12 h 20 min, begun 12 h 50 min before; the brakes before that, 13 h 50 min.
     */
    @Test
    void whatWaitsLongestIsBegunFirst() {
        Call first = call().on("rear sealant", 0).call();
        Call second = call().on("rear sealant", 0).bothEnds("tyre tread", 4).on("front rotor", 180).on("bar width", 460).call();
        PlanB plan = PlanB.of("rain", first, second);
        Map<String, Double> latest = new HashMap<>();
        plan.lines().forEach(line -> latest.put(line.topic(), line.latest() / MIN));
        assertThat(latest.get("front tyre tread")).isCloseTo(-65, within(1e-9));
        assertThat(latest.get("rear tyre tread")).isCloseTo(-65, within(1e-9));
        assertThat(latest.get("bar width")).isCloseTo(-770, within(1e-9));
        assertThat(latest.get("front rotor")).isCloseTo(-830, within(1e-9));
        assertThat(plan.workStarts() / MIN).isCloseTo(-830, within(1e-9));
        assertThat(PlanB.of("rain", first, first).workStarts()).isNull();
    }

    /** What the event writes is all work: 20 min of tyres, sealant or not, beside 90 min of brakes before them. */
    @Test
    void writtenTimesAreAllWork() {
        Call first = new HandMadeCall(written).call();
        Call second = new HandMadeCall(written).on("rear tyre tread", 4).on("front rotor", 180).call();
        PlanB plan = PlanB.of("rain", first, second);
        assertThat(plan.lines()).allMatch(PlanB.PlanBLine::written).extracting(line -> line.takes() / MIN).containsExactlyInAnyOrder(20.0, 90.0);
        assertThat(plan.workStarts() / MIN).isCloseTo(-130, within(1e-9));
    }

    /** Steps of a wide cassette are about 10 %: half of one, 5 % of 0.680, is 0.034 (common practice, no source). */
    @ParameterizedTest
    @CsvSource({"646, true", "647, false", "713, false", "715, true"})
    void nobodyChangesACassetteForLessThanHalfAStep(long ratio, boolean told) {
        assertThat(PlanB.of("rain", call().call(), call().on("easiest gear", ratio).call()).lines()).hasSize(told ? 1 : 0);
    }

    /** A second chainring is another gear however it is counted, and a gear that is not called any more is told. */
    @Test
    void ringsAndMissingGearsAreTold() {
        assertThat(PlanB.of("rain", call().call(), call().on("chainrings", 1).call()).lines()).hasSize(1);
        assertThat(PlanB.of("rain", call().call(), call().without("hardest gear").call()).lines()).hasSize(1);
    }

    @Test
    void aPressureBelongsToItsTyre() {
        Call first = call().call();
        String wider = line(first, call().on("front tyre width", 45).on("front tyre pressure", 36).call());
        assertThat(wider).isEqualTo("1.80 bar (26 psi) in the 45 mm tyre");
        assertThat(line(first, call().on("front tyre casing", 2).call())).isEqualTo("2.00 bar (29 psi) in the other tyre");
        assertThat(line(first, call().on("front tyre pressure", 36).call())).isEqualTo("1.80 bar (26 psi)");
    }

    private static String line(Call first, Call second) {
        return PlanB.of("rain", first, second).lines().stream().filter(line -> line.topic().equals("front tyre pressure")).findFirst().orElseThrow().second();
    }

    @Test
    void theWetCallIsKeptForItsPressures() {
        Call dry = call().call();
        Call rain = new HandMadeCall(wet).call();
        assertThat(PlanB.of("rain", dry, rain).wet()).isSameAs(rain);
        assertThat(PlanB.of("cold", dry, dry).wet()).isNull();
        assertThat(PlanB.of("rain", dry, rain).time()).isEqualTo(wet.estimated().estimate().total());
    }

    /** A new chain has a week to show its faults, so it is no work for the day on which a forecast turns; an old one kept is none at all. */
    @Test
    void whatNeedsAWeekIsTooLateWhenTheForecastTurns() {
        PlanB plan = PlanB.of("rain", call().call(), call().on("chain", 1).on("lubricant", 1).call());
        assertThat(plan.lines()).extracting(PlanB.PlanBLine::topic).containsExactly("lubricant");
        assertThat(plan.tooLate()).containsExactly(new PlanB.MissingItem("chain", "new a week before", "keep if within its wear limit"));
        PlanB other = PlanB.of("sun", call().on("chain", 1).call(), call().call());
        assertThat(other.tooLate()).isEmpty();
        assertThat(other.lines()).extracting(PlanB.PlanBLine::topic).containsExactly("chain");
    }

    /** The gear that a build has is named by its teeth, as everywhere. */
    @Test
    void whatIsLackingIsInTheWordsOfTheBuild() {
        PlanB plan = PlanB.of("rain", call().call(), call().on("rear tyre tread", 5).call(), call().on("rear tyre tread", 1).call(),
                call().on("rear tyre tread", 1).call(), Set.of(Topics.of("rear tyre tread")));
        assertThat(plan.inWordsOf(Map.of("rear tyre tread", "nearly slick")).lacking())
                .containsExactly(new PlanB.MissingItem("rear tyre tread", "mud", "nearly slick"));
        assertThat(plan.inWordsOf(Map.of()).lacking()).isEqualTo(plan.lacking());
    }

    /** Mud tread is wanted and the workshop has none: the build keeps its tread. A gear that the build has is no lack. */
    @Test
    void whatNoPartCanChangeIsLacking() {
        Call first = call().call();
        Call second = call().on("rear tyre tread", 5).on("gloves", 2).on("front tyre tread", 5).call();
        Call mounted = call().on("rear tyre tread", 1).call();
        Call remounted = call().on("rear tyre tread", 1).on("gloves", 2).on("front tyre tread", 5).call();
        PlanB plan = PlanB.of("rain", first, second, mounted, remounted, Set.of(Topics.of("rear tyre tread"), Topics.of("front tyre tread"), Topics.of("rear insert")));
        assertThat(plan.lacking()).containsExactly(new PlanB.MissingItem("rear tyre tread", "mud", "file"));
        assertThat(plan.lines()).extracting(PlanB.PlanBLine::topic).containsExactly("front tyre tread", "gloves");
        assertThat(PlanB.of("rain", first, second, mounted, remounted, Set.of(Topics.of("front tyre tread"))).lacking()).isEmpty();
    }
}
