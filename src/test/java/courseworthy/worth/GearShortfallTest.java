package courseworthy.worth;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.GeneratedRequest;
import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.demand.Survey;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.ShippedRules;
import courseworthy.rider.Bike;
import courseworthy.topic.Topics;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Gears that are harder than the legs need. */
class GearShortfallTest {

    private static final DroolsRules RULES = new DroolsRules(ShippedRules.rules(), ShippedRules.load());

    @TempDir
    private Path folder;

    /** A smooth gravel road to the top of a steep hill, under a rider of some watts. */
    private GearShortfall on(double gradient, double watts, String bike) {
        GeneratedRequest request = GeneratedRequest.nth(1);
        request.stretches.subList(1, request.stretches.size()).clear();
        GeneratedRequest.Stretch hill = request.stretches.get(0);
        hill.km = 6;
        hill.rise = 6000 * gradient;
        hill.drop = 0;
        hill.surface = "gravel";
        hill.smoothness = 2;
        hill.grade = null;
        hill.highestDrop = 0;
        request.laps = 1;
        request.mass = 80.0;
        request.watts = watts;
        request.cadence = 60;
        request.role = "race";
        request.water = null;
        request.eventBike = null;
        request.riderBike = new GeneratedRequest.BikeBlock();
        request.riderBike.kind = bike;
        GeneratedRequest.Read read = request.read(folder);
        Call call = CallMaker.call(RULES, read.demands());
        assertThat(call.on(Topics.BIKE).text()).isEqualTo(bike);
        return GearShortfall.of(call, ShippedRules.realPairs(), kind -> Survey.of(read.course(), read.rider(), read.event(), Bike.of(kind)));
    }

    /** 36 with 52 is the easiest on gravel bikes by the table of real pairs, 30 with 52 on hardtails. */
    @Test
    void whatNoPairReachesIsToldWithWhatItCostsAndWhoHasIt() {
        GearShortfall shortfall = on(0.15, 180, "gravel");
        assertThat(shortfall).isNotNull();
        assertThat(shortfall.made()).isFalse();
        assertThat(shortfall.needed()).isLessThan(36.0 / 52);
        assertThat(shortfall.easiest()).isEqualTo(36.0 / 52);
        assertThat(shortfall.gear()).contains("36x52");
        assertThat(shortfall.cost().cadence().mid()).isLessThan(shortfall.cost().lowest());
        assertThat(shortfall.cost().onFoot() + shortfall.cost().slower()).isPositive();
        assertThat(shortfall.others()).isNotEmpty().allSatisfy(other -> {
            assertThat(other.bike()).isNotIn("gravel", "road");
            assertThat(other.easiest()).isLessThan(36.0 / 52);
        });
    }

    /** A hardtail's 30 with 52 is easier than 36 with 52. */
    @Test
    void kindsOfBikeThatHaveTheGearAreNamed() {
        assertThat(on(0.11, 190, "gravel").others()).isNotEmpty().allMatch(GearShortfall.Other::reaches);
        assertThat(on(0.16, 170, "gravel").others()).isNotEmpty();
    }

    @Test
    void steeperCostsMoreTime() {
        GearShortfall steep = on(0.10, 180, "gravel");
        GearShortfall steeper = on(0.15, 180, "gravel");
        assertThat(steeper.cost().onFoot() + steeper.cost().slower()).isGreaterThan(steep.cost().onFoot() + steep.cost().slower());
    }

    @Test
    void gearsThatAreEasyEnoughAreNotTold() {
        assertThat(on(0.03, 300, "gravel")).isNull();
    }
}
