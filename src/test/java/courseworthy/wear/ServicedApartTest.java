package courseworthy.wear;

import static courseworthy.wear.ExampleWorkshop.START;
import static courseworthy.wear.ExampleWorkshop.with;
import static courseworthy.wear.ExampleWorkshop.withBike;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A headset or a bottom bracket that is listed by itself is serviced by itself, and no more with its bike or its crank (common practice, no source). */
class ServicedApartTest {

    private static final String HEADSET = "{name: h, kind: headset, on: b, mass: 90 g}";
    private static final String CRANK = "{name: c, kind: crank, on: b, mass: 600 g}";
    private static final String BRACKET = "{name: bb, kind: bottom bracket, on: b, mass: 90 g}";

    private static List<String> parts(UpkeepPlan plan, String job) {
        return plan.work().stream().filter(each -> each.job().equals(job)).map(ServiceWork::part).distinct().toList();
    }

    private static UpkeepPlan plan(String... parts) {
        return with(parts).ride(START, 400, "dry").weekly(7, "dry").plan(10);
    }

    @Test
    void aHeadsetTakesTheBearingsOverFromItsBike() {
        assertThat(parts(plan(CRANK), "headset bearings")).containsExactly("b");
        assertThat(parts(plan(HEADSET), "headset bearings")).containsExactly("h");
    }

    @Test
    void aBottomBracketTakesThemOverFromTheCrank() {
        assertThat(parts(plan(CRANK), "bottom bracket")).containsExactly("c");
        assertThat(parts(plan(CRANK, BRACKET), "bottom bracket")).containsExactly("bb");
    }

    @Test
    void oneThatLiesLooseTakesNothingOver() {
        assertThat(parts(plan(CRANK, BRACKET.replace("on: b, ", "")), "bottom bracket")).containsExactly("c");
        assertThat(parts(plan(HEADSET.replace("on: b, ", "")), "headset bearings")).containsExactly("b");
    }

    /** What the manufacturer states of the bike or the crank is of the bearings that are listed: once, and at that interval. */
    @Test
    void whatIsStatedOfTheBikeOrTheCrankGoesOverToWhatIsListed() {
        String stated = CRANK.replace("mass: 600 g", "mass: 600 g, intervals: [{job: bottom bracket, hours: 100 h}]");
        UpkeepPlan plan = plan(stated, BRACKET);
        assertThat(parts(plan, "bottom bracket")).containsExactly("bb");
        assertThat(plan.work()).filteredOn(each -> each.job().equals("bottom bracket")).first().extracting(ServiceWork::why).asString()
                .contains("the manufacturer states 100 h");
        assertThat(parts(plan(stated), "bottom bracket")).containsExactly("c");
    }

    @Test
    void whatIsStatedOfTheBikeIsNotCountedBesideItsHeadset() {
        UpkeepPlan plan = withBike("intervals: [{job: headset bearings, hours: 90 h}]", HEADSET).ride(START, 400, "dry").weekly(7, "dry").plan(10);
        assertThat(parts(plan, "headset bearings")).containsExactly("h");
        assertThat(plan.work()).filteredOn(each -> each.job().equals("headset bearings")).first().extracting(ServiceWork::why).asString()
                .contains("the manufacturer states 90 h");
    }

    /** What the listed part states of itself goes before what its bike states. */
    @Test
    void whatThePartStatesGoesFirst() {
        UpkeepPlan plan = withBike("intervals: [{job: headset bearings, hours: 90 h}]",
                HEADSET.replace("mass: 90 g", "mass: 90 g, intervals: [{job: headset bearings, hours: 120 h}]")).ride(START, 400, "dry").weekly(7, "dry").plan(10);
        assertThat(plan.work()).filteredOn(each -> each.job().equals("headset bearings")).first().extracting(ServiceWork::why).asString()
                .contains("the manufacturer states 120 h");
    }

    /** Work that a log has of the bike from before its headset was listed counts for the headset. */
    @Test
    void whatWasDoneToTheBikeWasDoneToItsHeadset() {
        UpkeepPlan plan = with(HEADSET).ride(START, 100, "dry").service(START, "b", "headset bearings").weekly(1, "dry").plan(10);
        assertThat(parts(plan, "headset bearings")).isEmpty();
        assertThat(parts(with(HEADSET).ride(START, 400, "dry").weekly(1, "dry").plan(10), "headset bearings")).containsExactly("h");
    }
}
