package courseworthy.worth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.call.Call;
import courseworthy.ride.Walking;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.worth.PitPlan.PitChoice;
import courseworthy.worth.PitPlan.Kind;
import courseworthy.worth.PitPlan.PitPassage;
import courseworthy.worth.PitPlan.PitStop;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pits of a race of six laps of 5 km, whole calls. */
class PitPlannerTest {

    private static final String COURSE = """
            name: Clay Heath
            start height: 200 m
            latitude: 46 deg
            longitude: 7 deg
            stretches:
              - {length: 3 km, ascent: 70 m, descent: 40 m, surface: ground, smoothness: very_bad, mtb:scale: 1, mud when wet: yes}
              - {length: 2 km, ascent: 10 m, descent: 40 m, surface: ground, smoothness: very_bad, mtb:scale: 1, mud when wet: yes}
            """;
    private static final String RIDER = "name: Alex\nmass: 70 kg\npower: 260 W\nheld for: 1:00 h\nplug stop: 3 min\n"
            + "bike: {kind: cross-country full suspension, mass: 11 kg, rim inner width: 28 mm}\n";

    @TempDir
    private Path folder;

    private Call call(String more) {
        return CallFixture.call(folder, COURSE, RIDER, "name: A Day\nrole: race\ndate: 2026-07-12\nstart: 13:00\nutc offset: +02:00\naim: podium\nlaps: 6\n"
                + "group share: 0 %\nsupport: none\n" + more);
    }

    private static PitPlan plan(Call call, Call wet) {
        return PitPlanner.of(call, DayPlan.of(call), wet);
    }

    private static PitPlan dry(Call call) {
        return plan(call, null);
    }

    private static List<PitPassage> all(PitPlan plan) {
        List<PitPassage> out = new ArrayList<>();
        plan.pits().forEach(stop -> out.addAll(stop.passages()));
        out.sort(Comparator.comparingDouble(PitPassage::at));
        return out;
    }

    private static final String HOT = "forecast: {low: 22 C, high: 34 C, going: dry}\n";
    private static final String TWO = "pits:\n  - {at: 0 km, helper: yes, bottles: yes, wheels: yes, bike: yes}\n  - {at: 3 km, bottles: yes}\n";

    /** Each pit is passed once a lap, but not at the start, which is no passage, nor at the finish. */
    @Test
    void everyPassageIsListedAtItsDistance() {
        PitPlan plan = dry(call(HOT + TWO));
        assertThat(plan.pits()).hasSize(2);
        assertThat(plan.pits().get(0).passages()).extracting(PitPassage::at).containsExactly(5000.0, 10_000.0, 15_000.0, 20_000.0, 25_000.0);
        assertThat(plan.pits().get(1).passages()).extracting(PitPassage::lap).containsExactly(1, 2, 3, 4, 5, 6);
        assertThat(all(plan)).extracting(each -> each.after().mid()).isSorted();
    }

    /** With a bottle of half a litre at a time what is drunk over the day is there when it is wanted, and no bottle comes too early. */
    @Test
    void bottlesLastFromOneToTheNext() {
        Call call = call(HOT + TWO);
        DayPlan day = DayPlan.of(call);
        double rate = day.fluids().drink().mid() / call.demands().estimated().estimate().total().mid();
        double left = Math.max(0.5, day.fluids().gaps().get(0).carry().mid());
        double before = 0;
        int bottles = 0;
        for (PitPassage each : all(dry(call))) {
            left -= rate * (each.after().mid() - before);
            assertThat(left).as("left at %.0f m", each.at()).isGreaterThan(-1e-9);
            left = each.bottle() ? 0.5 : left;
            bottles += each.bottle() ? 1 : 0;
            before = each.after().mid();
        }
        assertThat(left).isGreaterThanOrEqualTo(rate * (call.demands().estimated().estimate().total().mid() - before) - 1e-9);
        assertThat(bottles).isBetween(1, (int) Math.ceil(day.fluids().drink().mid() / 0.5) + 1);
    }

    @Test
    void hotterDaysTakeNoFewerBottles() {
        long cool = dry(call("forecast: {low: 6 C, high: 10 C, going: dry}\n" + TWO)).pits().stream().mapToLong(PitStop::bottles).sum();
        long hot = dry(call(HOT + TWO)).pits().stream().mapToLong(PitStop::bottles).sum();
        assertThat(hot).isGreaterThan(cool);
    }

    @Test
    void whereNoBottleMayBeTakenNoneIs() {
        PitPlan plan = dry(call(HOT + "pits: [{at: 0 km, wheels: yes}]\n"));
        assertThat(plan.pits().get(0).bottles()).isZero();
    }

    /** From just behind the one pit with wheels it is a whole lap; from two it is the longer piece between them. 5 km at 0.95 m/s are 88 min. */
    @Test
    void theFurthestWayOnFootIsRoundTheLap() {
        assertThat(dry(call(HOT + TWO)).onFoot().metres()).isCloseTo(5000, within(1.0));
        assertThat(dry(call(HOT + TWO)).onFoot().seconds().mid() / 60).isCloseTo(5000 / Walking.SPEED.mid() / 60, within(0.1)).isCloseTo(88, within(1.0));
        assertThat(dry(call(HOT + TWO)).onFoot().plug().mid()).isEqualTo(180);
        PitPlan two = dry(call(HOT + "pits: [{at: 0 km, wheels: yes}, {at: 3 km, wheels: yes}]\n"));
        assertThat(two.onFoot().metres()).isCloseTo(3000, within(1.0));
        assertThat(dry(call(HOT + "pits: [{at: 0 km, bottles: yes}]\n")).onFoot()).isNull();
    }

    /** A change of both wheels alone takes longer than with help, and one of bikes the least (common practice, no source). */
    @Test
    void choicesAreThoseThatMayWaitThere() {
        List<PitChoice> helped = dry(call(HOT + TWO)).choices();
        assertThat(helped).extracting(PitChoice::kind).containsExactly(Kind.SPARE_WHEELS, Kind.SECOND_BIKE);
        List<PitChoice> alone = dry(call(HOT + "pits: [{at: 0 km, wheels: yes}]\n")).choices();
        assertThat(alone).extracting(PitChoice::kind).containsExactly(Kind.SPARE_WHEELS);
        assertThat(alone.get(0).exchange().mid()).isBetween(100.0, 180.0).isGreaterThan(helped.get(0).exchange().mid());
        assertThat(helped.get(0).exchange().mid()).isBetween(60.0, 100.0);
        assertThat(helped.get(1).exchange().mid()).isBetween(8.0, 20.0);
        assertThat(alone.get(0).work() / 60).isBetween(20.0, 40.0);
        assertThat(helped.get(1).work() / 3600).isBetween(1.5, 2.5);
        assertThat(alone.get(0).laps()).isEqualTo(5);
        assertThat(alone.get(0).pays().mid() * 5).isCloseTo(alone.get(0).exchange().mid(), within(1e-9));
    }

    /** Wheels for the wet are told where the wet asks for other tyres: on ground that turns to mud. */
    @Test
    void wheelsForTheWetHaveTheTyresOfTheWet() {
        Call dry = call(HOT + TWO);
        Call wet = call("forecast: {low: 8 C, high: 12 C, going: wet}\n" + TWO);
        PitPlan plan = plan(dry, wet);
        assertThat(plan.choices()).extracting(PitChoice::kind).containsExactly(Kind.SPARE_WHEELS, Kind.WET_WHEELS, Kind.SECOND_BIKE);
        assertThat(plan.wetTyres()).anyMatch(each -> each.startsWith("front tyre tread"));
        assertThat(plan.choices().get(1).work()).isGreaterThan(plan.choices().get(0).work());
        assertThat(plan(dry, dry).choices()).extracting(PitChoice::kind).containsExactly(Kind.SPARE_WHEELS, Kind.SECOND_BIKE);
    }

    private static final String WET = "forecast: {low: 8 C, high: 12 C, going: wet}\n";

    /** What tyres for the wet lose by rolling is the sum of what their width and tread lose one by one; what the wet takes is what dry pace gives back. */
    @Test
    void tyresForTheWetAreWeighedByTheRide() {
        Call dry = call(HOT + TWO);
        Call wet = call(WET + TWO);
        PitWorth.Wet worth = plan(dry, wet).choices().get(1).worth().wet();
        WorthCalculator worths = new WorthCalculator(wet, Sensitivity.of(wet.demands()));
        double sum = 0;
        for (Topic topic : List.of(Topics.FRONT_TYRE_WIDTH, Topics.REAR_TYRE_WIDTH, Topics.FRONT_TYRE_CASING, Topics.REAR_TYRE_CASING, Topics.FRONT_TYRE_TREAD, Topics.REAR_TYRE_TREAD)) {
            sum += worths.returned(topic, dry.on(topic).value(), wet.on(topic).value()).mid();
        }
        assertThat(worth.rolling().mid() * 6).isCloseTo(sum, within(0.02 * Math.abs(sum))).isNegative();
        double apart = wet.demands().estimated().estimate().riding().mid() - call(WET.replace("wet", "dry") + TWO).demands().estimated().estimate().riding().mid();
        assertThat(worth.lost().mid() * 6).as("less than all that the wet costs, rolling included").isPositive().isLessThan(apart);
    }

    /** Lap by lap: while enough laps are left a change can pay, were all that the wet takes given back, and after that it cannot. */
    @Test
    void aChangeCanPayUntilTheLastLapThatIsNamed() {
        String hilly = COURSE.substring(0, COURSE.indexOf("  - ")) + "  - {length: 1.5 km, ascent: 180 m, descent: 0 m, surface: gravel, smoothness: bad}\n"
                + "  - {length: 3.5 km, ascent: 0 m, descent: 180 m, surface: ground, smoothness: bad, mtb:scale: 2, roots: yes, turns per km: 25}\n";
        String day = "name: A Day\nrole: race\naim: podium\nlaps: 6\n" + TWO;
        PitPlan plan = plan(CallFixture.call(folder, hilly, RIDER, day + HOT), CallFixture.call(folder, hilly, RIDER, day + WET));
        int can = 0;
        for (PitChoice each : plan.choices()) {
            PitWorth.Wet wet = each.worth().wet();
            for (int lap = 1; wet != null && lap < 6; lap++) {
                boolean pays = (6 - lap) * (wet.rolling().mid() + wet.lost().mid()) >= each.exchange().mid();
                assertThat(pays).as("%s after lap %d", each.kind(), lap).isEqualTo(lap <= wet.lastLap());
                can += pays ? 1 : 0;
            }
            if (wet != null && wet.share() <= 1) {
                assertThat(5 * (wet.rolling().mid() + wet.share() * wet.lost().mid())).isCloseTo(each.exchange().mid(), within(0.01));
            }
        }
        assertThat(can).isPositive();
        assertThat(plan.choices().get(2).worth().wet().lastLap()).as("bikes are exchanged faster than wheels").isGreaterThanOrEqualTo(plan.choices().get(1).worth().wet().lastLap());
    }

    /** 8 min for a tube and 80 s for two wheels with help leave 400 s, 380 m at 0.95 m/s on foot (common practice, no source). */
    @Test
    void wheelsAreQuickerThanATubeNearThePit() {
        List<PitChoice> choices = dry(call(HOT + TWO)).choices();
        assertThat(choices.get(0).worth().repair().tube().mid()).isEqualTo(480);
        assertThat(choices.get(0).worth().repair().saved()).isEqualTo(400);
        assertThat(choices.get(0).worth().repair().within()).isCloseTo(380, within(4.0));
    }

    /** A kilogram of mud costs what a kilogram costs; a muddy bike is washed in 3 to 8 min (common practice, no source). */
    @Test
    void aCleanBikeIsWorthItsMud() {
        Call call = call(HOT + TWO);
        PitChoice bike = dry(call).choices().get(1);
        double perLap = Sensitivity.of(call.demands()).perKilogram().mid() / 6;
        assertThat(bike.worth().perMud().mid()).isCloseTo(perLap, within(1e-9));
        assertThat(bike.worth().payingMass(bike.exchange(), 1)).isCloseTo(bike.exchange().mid() / perLap, within(1e-9));
        assertThat(bike.worth().payingMass(bike.exchange(), 5) * 5).isCloseTo(bike.worth().payingMass(bike.exchange(), 1), within(1e-9));
        assertThat(bike.worth().washing().mid() / 60).isBetween(3.0, 8.0);
        assertThat(bike.worth().lap().mid() * 6).isCloseTo(call.demands().estimated().estimate().riding().mid(), within(1e-6));
        assertThat(bike.worth().wet()).isNull();
        assertThat(bike.worth().isWashedEveryLap()).isEqualTo(bike.worth().lap().mid() > 300).isTrue();
    }

    /** Only what is smooth, level and slow is easy to drink on (common practice, no source): the road by the start, not the rough rest of the lap. */
    @Test
    void itIsEasiestToDrinkOnSmoothLevelGround() {
        String road = COURSE.replace("stretches:\n", "stretches:\n  - {length: 0.6 km, ascent: 3 m, descent: 2 m, surface: grass, smoothness: intermediate, mtb:scale: 0}\n");
        Call call = CallFixture.call(folder, road, RIDER, "name: A Day\nrole: race\nlaps: 6\n" + HOT + TWO);
        assertThat(dry(call).easy()).hasSize(1).allSatisfy(each -> {
            assertThat(each.from()).isLessThan(400);
            assertThat(each.to()).isLessThan(650);
        });
        assertThat(dry(call(HOT + TWO)).easy()).isEmpty();
    }

    @Test
    void withoutPitsThereIsNoPlan() {
        assertThat(dry(call(HOT))).isEqualTo(PitPlan.NONE);
    }
}
