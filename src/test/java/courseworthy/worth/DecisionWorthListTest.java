package courseworthy.worth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.claim.Rank;
import courseworthy.claim.Verb;
import courseworthy.demand.Demands;
import courseworthy.ride.Range;
import courseworthy.topic.Topics;
import courseworthy.worth.DecisionWorth.UnknownReason;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All decisions of a call by the time that hangs on them, for calls written by hand. */
class DecisionWorthListTest {

    private static final String COURSE = "name: Lanes\nstretches:\n  - {length: 40 km, ascent: 400 m, descent: 400 m, surface: fine_gravel, smoothness: intermediate}\n";
    private static final String RIDER = "name: Alex\nmass: 75 kg\npower: 250 W\nheld for: 1:00 h\nbike: {kind: gravel, mass: 9 kg}\n";
    private static final String ALONE = "name: Alone\nrole: race\naim: time\ngroup share: 0 %\nforecast: {going: dry, wind: 0 m/s}\n";

    @TempDir
    private static Path folder;
    private static Demands demands;
    private static Sensitivity sensitivity;

    @BeforeAll
    static void ride() {
        demands = RideFixture.demands(folder, COURSE, RIDER, ALONE);
        sensitivity = Sensitivity.of(demands);
    }

    private static List<DecisionWorth> all(HandMadeCall call) {
        return new WorthCalculator(call.call(), sensitivity).all();
    }

    private static HandMadeCall call() {
        return new HandMadeCall(demands);
    }

    private static DecisionWorth on(HandMadeCall call, String topic) {
        return all(call).stream().filter(each -> each.decision().topic() == Topics.of(topic)).findFirst().orElseThrow();
    }

    @Test
    void thoseWithATimeStandFirstTheLargestSavingAtTheTop() {
        List<DecisionWorth> all = all(call());
        int known = (int) all.stream().filter(each -> each.best() != null).count();
        assertThat(known).isGreaterThan(8);
        assertThat(all.subList(0, known)).allMatch(each -> each.best() != null && each.unknownReason() == null);
        assertThat(all.subList(0, known)).isSortedAccordingTo((one, other) -> Double.compare(other.saved().mid(), one.saved().mid()));
        assertThat(all.subList(known, all.size())).allMatch(each -> each.best() == null && each.saved() == null && each.unknownReason() != null && each.others().isEmpty());
    }

    /** Of two ends that are decided alike one line stands, the front's; of two that are not, both. */
    @Test
    void endsThatAreAlikeAreOne() {
        assertThat(all(call().bothEnds("tyre width", 40)).stream().filter(each -> each.decision().topic() == Topics.FRONT_TYRE_WIDTH)).singleElement().matches(DecisionWorth::both);
        assertThat(all(call().bothEnds("tyre width", 40)).stream().filter(each -> each.decision().topic() == Topics.REAR_TYRE_WIDTH)).isEmpty();
        HandMadeCall apart = call().on("front tyre width", 40).on("rear tyre width", 38);
        assertThat(on(apart, "front tyre width").both()).isFalse();
        assertThat(on(apart, "rear tyre width").both()).isFalse();
    }

    @Test
    void theBestAlternativeIsTheOneThatSavesMost() {
        DecisionWorth casing = on(call().bothEnds("tyre casing", 1), "front tyre casing");
        assertThat(casing.best().value()).isEqualTo("light front and rear");
        assertThat(casing.others()).extracting(Alternative::value).containsExactly("heavy front and rear");
        assertThat(casing.saved()).isEqualTo(casing.best().saved());
        assertThat(casing.saved().mid()).isGreaterThan(casing.others().get(0).saved().mid());
    }

    @Test
    void whyNoTimeIsKnown() {
        assertThat(on(call().without("rear travel"), "rear travel").unknownReason()).isEqualTo(UnknownReason.DOES_NOT_APPLY);
        assertThat(on(call(), "easiest gear").unknownReason()).isEqualTo(UnknownReason.GEARS);
        assertThat(on(call(), "gloves").unknownReason()).isEqualTo(UnknownReason.WEATHER);
        HandMadeCall bound = call().front("tyre casing", 0).on("rear tyre casing", 1).taken("rear tyre casing", Rank.LIMIT, "shipped/no", Verb.RULE_OUT, 0)
                .taken("rear tyre casing", Rank.LIMIT, "shipped/no", Verb.RULE_OUT, 2);
        assertThat(on(bound, "rear tyre casing").unknownReason()).isEqualTo(UnknownReason.NO_OTHER_VALUE);
        Demands unridden = new Demands(demands.values(), demands.stretches(), demands.assumed(), null, demands.occasion());
        assertThat(new WorthCalculator(new HandMadeCall(unridden).call(), null).all()).allMatch(each -> each.unknownReason() == UnknownReason.NO_RIDE);
    }

    /** Against none, fitted extensions; against fitted, none: the same time the other way round, and the mass with its sign. */
    @Test
    void extensionsStandAgainstNone() {
        Extensions extensions = new WorthCalculator(call().call(), sensitivity).extensions();
        DecisionWorth none = on(call().on("aero extensions", Topics.AERO_EXTENSIONS.options().indexOf("none")), "aero extensions");
        DecisionWorth fitted = on(call().on("aero extensions", Topics.AERO_EXTENSIONS.options().indexOf("fitted")), "aero extensions");
        assertThat(none.best().value()).isEqualTo("fitted");
        assertThat(none.saved()).isEqualTo(extensions.saved());
        assertThat(none.best().effect().mass()).isEqualTo(extensions.mass());
        assertThat(fitted.best().value()).isEqualTo("none");
        assertThat(fitted.saved()).isEqualTo(new Range(-extensions.saved().high(), -extensions.saved().mid(), -extensions.saved().low()));
        assertThat(fitted.best().effect().mass().mid()).isCloseTo(-extensions.mass().mid(), within(1e-9));
    }

    /** The largest is what most hangs on, whichever way, of those of which it is sure which is faster. */
    @Test
    void theLargestIsSureAndTheFarthestFromNothing() {
        DecisionWorth small = worth(5, 10, 15);
        DecisionWorth large = worth(-60, -40, -20);
        DecisionWorth open = worth(-10, 90, 190);
        assertThat(DecisionWorth.largest(List.of(small, open, large))).isSameAs(large);
        assertThat(DecisionWorth.largest(List.of(large, small))).isSameAs(large);
        assertThat(DecisionWorth.largest(List.of(large, worth(20, 40, 60)))).isSameAs(large);
        assertThat(DecisionWorth.largest(List.of(open))).isNull();
        assertThat(DecisionWorth.largest(List.of(on(call(), "easiest gear")))).isNull();
        assertThat(open.tooClose()).isTrue();
        assertThat(small.tooClose()).isFalse();
        assertThat(large.tooClose()).isFalse();
        assertThat(worth(0, 5, 10).tooClose()).isFalse();
        assertThat(worth(-10, -5, 0).tooClose()).isFalse();
        assertThat(on(call(), "easiest gear").tooClose()).isFalse();
    }

    private static DecisionWorth worth(double low, double mid, double high) {
        Alternative alternative = new Alternative("light", Effect.NONE, new Range(low, mid, high), List.of());
        return new DecisionWorth(call().call().on(Topics.FRONT_TYRE_CASING), false, alternative, List.of(), null);
    }
}
