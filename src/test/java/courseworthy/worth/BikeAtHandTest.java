package courseworthy.worth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.call.Call;
import courseworthy.claim.Claim;
import courseworthy.claim.Verb;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.ShippedRules;
import courseworthy.topic.Topics;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The bike at hand beside the one that is called, called by the shipped rules. */
class BikeAtHandTest {

    private static final DroolsRules RULES = new DroolsRules(ShippedRules.rules(), ShippedRules.load());
    private static final String ROAD = "name: Lanes\nstretches:\n  - {length: 40 km, ascent: 400 m, descent: 400 m, surface: asphalt, smoothness: good}\n";
    private static final String TRAIL = "name: Rocks\nstretches:\n  - {length: 20 km, ascent: 800 m, descent: 800 m, surface: rock, smoothness: very_horrible, mtb:scale: 2}\n";
    private static final String RIDER = "name: Alex\nmass: 75 kg\npower: 250 W\nheld for: 1:00 h\nbike: {kind: %s, mass: 12 kg}\n";
    private static final String DAY = "name: Day\nrole: race\naim: time\ngroup share: 0 %\nforecast: {going: dry, wind: 0 m/s}\n";

    @TempDir
    private Path folder;

    private BikeAtHand atHand(String course, String rider) {
        return BikeAtHand.of(RULES, CallFixture.onTheBikeThatIsCalled(folder, course, rider, DAY));
    }

    /** Among rocks a road bike is slower than one with suspension at both ends. */
    @Test
    void anotherKindThanTheOneCalledCostsTime() {
        Call call = CallFixture.onTheBikeThatIsCalled(folder, TRAIL, RIDER.replace("%s", "road"), DAY);
        BikeAtHand atHand = BikeAtHand.of(RULES, call);
        assertThat(call.on(Topics.BIKE).text()).isEqualTo("cross-country full suspension");
        assertThat(atHand.kind()).isEqualTo("road");
        assertThat(atHand.called()).isEqualTo("cross-country full suspension");
        assertThat(atHand.possible()).isTrue();
        double apart = atHand.time().mid() - call.demands().estimated().estimate().total().mid();
        assertThat(apart).isPositive();
        assertThat(atHand.costs().mid()).as("cost against the difference of the two rides").isCloseTo(apart, within(0.05 * apart));
        assertThat(atHand.costs().low()).isBetween(0.0, atHand.costs().mid());
        assertThat(atHand.costs().high()).isGreaterThan(atHand.costs().mid());
    }

    @Test
    void theBikeThatIsCalledIsNotSetBesideItself() {
        assertThat(atHand(ROAD, RIDER.replace("%s", "road"))).isNull();
        assertThat(atHand(ROAD, "name: Alex\nmass: 75 kg\n")).isNull();
    }

    /** What was said against the kind at hand, and nothing that was said against others. */
    @Test
    void whatWasSaidAgainstItIsKept() {
        BikeAtHand road = atHand(TRAIL, RIDER.replace("%s", "road"));
        long kind = Topics.BIKE.options().indexOf("road");
        assertThat(road.against()).isNotEmpty().extracting(Claim::value).containsOnly(kind);
        assertThat(road.against()).extracting(Claim::verb).containsOnly(Verb.RULE_OUT);
    }
}
