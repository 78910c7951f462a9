package courseworthy.worth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.demand.Demands;
import courseworthy.demand.EstimatedRide.Kind;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.GearPairs;
import courseworthy.engine.ShippedRules;
import courseworthy.ride.Range;
import courseworthy.ride.RideTrace;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.worth.SetUp.SetUpDifference;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Set-ups that a rider asks for, beside the one that is called. */
class SetUpComparisonTest {

    private static final DroolsRules RULES = new DroolsRules(ShippedRules.rules(), ShippedRules.load());
    private static final String COURSE = "name: Farm Roads\nstretches:\n  - {length: 30 km, ascent: 400 m, descent: 400 m, surface: fine_gravel, smoothness: intermediate}\n"
            + "  - {length: 2 km, ascent: 0 m, descent: 0 m, surface: sand}\n";
    private static final String DAY = "name: Alone\nrole: race\naim: time\ngroup share: 0 %\nforecast: {going: dry, wind: 0 m/s, low: 12 C, high: 20 C}\nrules: {aero extensions: allowed}\n";

    @TempDir
    private static Path folder;
    private static Call call;
    private static SetUpComparison comparison;

    private static Demands on(String kind) {
        return RideFixture.demands(folder, COURSE, "name: Alex\nmass: 75 kg\npower: 250 W\nheld for: 1:00 h\ntube stop: 8 min\nbike: {kind: " + kind + ", tyre clearance: 50 mm}\n", DAY);
    }

    @BeforeAll
    static void called() {
        call = CallMaker.call(RULES, on("gravel"));
        comparison = new SetUpComparison(RULES, call, SetUpComparisonTest::on);
        assertThat(call.on(Topics.of("bike")).text()).isEqualTo("gravel");
    }

    private static SetUp of(Object... values) {
        Map<Topic, Long> asked = new LinkedHashMap<>();
        for (int i = 0; i < values.length; i += 2) {
            asked.put(Topics.of((String) values[i]), ((Number) values[i + 1]).longValue());
        }
        return comparison.of("mine", asked);
    }

    private static long decided(String topic) {
        return call.on(Topics.of(topic)).value();
    }

    @Test
    void theRecommendedIsTheRideItself() {
        SetUp recommended = comparison.recommended();
        RideTrace trace = call.demands().estimated().estimate().trace();
        assertThat(recommended.riding()).isEqualTo(trace.total());
        double work = 0;
        for (int at = 0; at < trace.size(); at++) {
            work += trace.power(at) * trace.seconds(at);
        }
        assertThat(recommended.work()).isCloseTo(work, within(1e-3));
        assertThat(recommended.returned()).isEqualTo(Range.exact(0));
        assertThat(recommended.gears().steepest().kind()).isEqualTo(Kind.HUNDRED);
        assertThat(recommended.asAsked()).isTrue();
        assertThat(recommended.refusedBike()).isNull();
    }

    @Test
    void whatIsRecommendedAnywayChangesNothing() {
        SetUp same = of("rear tyre casing", decided("rear tyre casing"), "tubes", decided("tubes"));
        assertThat(same.changes()).isEmpty();
        assertThat(same.refused()).isEmpty();
        assertThat(same.returned()).isEqualTo(Range.exact(0));
        assertThat(same.riding()).isEqualTo(comparison.recommended().riding());
        assertThat(same.breakEven()).isNull();
        assertThat(same.gears().topSpeed()).isEqualTo(comparison.recommended().gears().topSpeed());
    }

    /** A tube more is 140 g (common practice, no source), and costs what 140 g of a kilogram does; work goes with the time at one power. */
    @Test
    void aTubeMoreCostsItsMass() {
        SetUp heavier = of("tubes", decided("tubes") + 1);
        assertThat(heavier.effect().mass().mid()).isCloseTo(0.14, within(1e-9));
        double costs = 0.14 * Sensitivity.of(call.demands()).perKilogram().mid();
        assertThat(heavier.returned().mid()).isCloseTo(-costs, within(1e-6));
        assertThat(heavier.riding()).isCloseTo(comparison.recommended().riding() + costs, within(1e-6));
        assertThat(heavier.work() / heavier.riding()).isCloseTo(comparison.recommended().work() / comparison.recommended().riding(), within(1e-6));
        assertThat(heavier.breakEven()).isNull();
        assertThat(heavier.changes()).first().satisfies(change -> {
            assertThat(change.topic().name()).isEqualTo("tubes");
            assertThat(change.asked()).isTrue();
        });
    }

    /** Both ends of a pair are one make: their ends add up; what is asked for stands before what follows. */
    @Test
    void bothTyresAreOfOneMake() {
        long casing = decided("rear tyre casing") == 2 ? 1 : 2;
        SetUp both = of("front tyre casing", casing, "rear tyre casing", casing);
        Effect front = PartEffects.between(Topics.of("front tyre casing"), decided("front tyre casing"), both.refused().isEmpty() ? casing : decided("front tyre casing"));
        Effect rear = PartEffects.between(Topics.of("rear tyre casing"), decided("rear tyre casing"), casing);
        Effect expected = front.alike(rear);
        assertThat(both.effect().rolling().mid()).isCloseTo(expected.rolling().mid(), within(1e-9));
        assertThat(both.changes()).extracting(SetUpDifference::asked).startsWith(true);
        List<Boolean> asked = both.changes().stream().map(SetUpDifference::asked).toList();
        assertThat(asked.lastIndexOf(true)).isLessThan(asked.contains(false) ? asked.indexOf(false) : asked.size());
        assertThat(both.breakEven()).isNotNull();
        boolean faster = both.returned().mid() > 0;
        assertThat(both.breakEven().faster()).isEqualTo(faster ? "mine" : "recommended");
        assertThat(both.breakEven().safer()).isEqualTo(faster ? "recommended" : "mine");
        assertThat(both.breakEven().cost()).isEqualTo(Range.exact(8 * 60));
    }

    /** Wider tyres that roll faster bring no stop that their time has to pay for; narrower ones that do, may. */
    @Test
    void onlyTheFrailerHasToPayForItsStops() {
        long width = Math.min(decided("front tyre width"), decided("rear tyre width"));
        SetUp narrow = of("front tyre width", width - 3, "rear tyre width", width - 3);
        assertThat(narrow.breakEven() == null).isEqualTo(narrow.returned().mid() <= 0);
        SetUp wide = of("front tyre width", width + 3, "rear tyre width", width + 3);
        assertThat(wide.breakEven() == null).isEqualTo(wide.returned().mid() >= 0);
        assertThat(List.of(narrow, wide)).extracting(SetUp::breakEven).containsNull();
    }

    /** What is at one end alone counts once: 10 mm of rear travel are 30 g (common practice, no source). */
    @Test
    void rearTravelCountsOnce() {
        String trails = "name: Roots\nstretches:\n  - {length: 30 km, ascent: 900 m, descent: 900 m, surface: ground, smoothness: very_horrible, mtb:scale: 2}\n";
        Demands rough = RideFixture.demands(folder, trails, "name: Alex\nmass: 75 kg\npower: 250 W\nheld for: 1:00 h\nbike: {kind: trail}\n", DAY);
        Call full = CallMaker.call(RULES, rough);
        long travel = full.on(Topics.REAR_TRAVEL).value();
        SetUp shorter = new SetUpComparison(RULES, full, kind -> rough).of("mine", Map.of(Topics.REAR_TRAVEL, travel - 10));
        assertThat(shorter.changes()).extracting(SetUpDifference::topic).containsExactly(Topics.REAR_TRAVEL);
        assertThat(shorter.effect().mass().mid()).isCloseTo(-0.03, within(1e-9));
    }

    /** A narrower tyre may sink deeper in the sand: up to the time of it again, at the low end alone. */
    @Test
    void aNarrowerTyreMaySinkInSand() {
        long width = Math.min(decided("front tyre width"), decided("rear tyre width"));
        SetUp narrow = of("front tyre width", width - 3, "rear tyre width", width - 3);
        assertThat(narrow.refused()).isEmpty();
        double sand = Sinkage.secondsInSand(call.demands());
        RideTrace trace = call.demands().estimated().estimate().trace();
        double last = trace.total() - trace.arrivalAt(30_000);
        assertThat(sand).isCloseTo(last, within(0.02 * last));
        Range parts = Sensitivity.of(call.demands()).saved(narrow.effect());
        assertThat(narrow.returned().low()).isLessThan(parts.low() - 0.9 * sand);
        SetUp wide = of("front tyre width", width + 3);
        assertThat(wide.returned().low()).isGreaterThan(Sensitivity.of(call.demands()).saved(wide.effect()).low() - 0.5 * sand);
    }

    /** Beyond what the frame clears nothing is fitted: the rule that stands against it is named. */
    @Test
    void whatCannotBeIsRefusedByItsRule() {
        SetUp wide = of("rear tyre width", 60);
        assertThat(wide.asAsked()).isFalse();
        assertThat(wide.refused()).singleElement().satisfies(refusal -> {
            assertThat(refusal.topic().name()).isEqualTo("rear tyre width");
            assertThat(refusal.asked()).isEqualTo("60 mm");
            assertThat(refusal.by()).isNotEmpty().noneMatch(rule -> rule.startsWith("set-up/"));
        });
    }

    /** The model does not ride bars and pressures: they are told as not counted. */
    @Test
    void whatIsNotRiddenIsNotCounted() {
        SetUp narrow = of("bar width", decided("bar width") - 20, "front tyre pressure", decided("front tyre pressure") + 1);
        assertThat(narrow.uncounted()).contains("bar width", "front tyre pressure");
        assertThat(of("tubes", decided("tubes") + 1).uncounted()).isEmpty();
    }

    /** Extensions on or off return what they return, one way or the other. */
    @Test
    void extensionsCount() {
        boolean fitted = call.on(Topics.of("aero extensions")).text().equals("fitted");
        SetUp other = of("aero extensions", fitted ? 0 : 1);
        Range saved = new WorthCalculator(call, Sensitivity.of(call.demands())).extensions().saved();
        assertThat(other.returned().mid()).isCloseTo(fitted ? -saved.mid() : saved.mid(), within(1e-6));
        assertThat(other.returned().high()).isCloseTo(fitted ? -saved.low() : saved.high(), within(1e-6));
    }

    /** A much easier top gear spins out: the time lost is the difference of what each gear loses. */
    @Test
    void anEasierTopGearSpinsOut() {
        GearPairs.Drive least = ShippedRules.realPairs().drives().stream().filter(each -> each.bike().equals("gravel") && each.chainrings().equals("one"))
                .min(Comparator.comparingLong(GearPairs.Drive::hardest)).orElseThrow();
        SetUp easy = of("chainrings", 0, "easiest gear", least.easiest(), "hardest gear", least.hardest(), "largest step", least.step());
        assertThat(easy.refused()).isEmpty();
        assertThat(least.hardest()).isLessThan(decided("hardest gear"));
        assertThat(easy.gears().topSpeed().mid() / comparison.recommended().gears().topSpeed().mid()).isCloseTo((double) least.hardest() / decided("hardest gear"), within(1e-6));
        CadenceAnalysis analysis = GearChoice.turning(call);
        double lost = analysis.costOfSpinning(least.hardest() / 1000.0, 0).mid() - analysis.costOfSpinning(decided("hardest gear") / 1000.0, 0).mid();
        double parts = Sensitivity.of(call.demands()).saved(easy.effect()).mid();
        assertThat(easy.returned().mid()).isCloseTo(parts - lost, within(1e-3));
    }

    /** On another kind of bike the whole ride is ridden anew. */
    @Test
    void anotherBikeIsRiddenAnew() {
        SetUp trail = of("bike", 4);
        assertThat(trail.refused()).isEmpty();
        assertThat(trail.riding()).isEqualTo(on("trail").estimated().estimate().trace().total());
        assertThat(trail.riding()).isGreaterThan(comparison.recommended().riding());
        assertThat(trail.returned().mid()).isNegative();
        assertThat(trail.effect()).isEqualTo(Effect.NONE);
        assertThat(trail.breakEven()).isNull();
        assertThat(trail.changes()).first().extracting(change -> change.topic().name()).isEqualTo("bike");
        double work = 0;
        RideTrace trace = on("trail").estimated().estimate().trace();
        for (int at = 0; at < trace.size(); at++) {
            work += trace.power(at) * trace.seconds(at);
        }
        assertThat(trail.work()).isCloseTo(work, within(1e-3));
    }
}
