package courseworthy.call;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.decision.Decision;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.engine.RuleSet;
import courseworthy.topic.Topics;
import java.nio.file.Path;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a race mechanic and a coach expect as one thing grows and all else is held: load, descents, wind, heat, rain, effort. Common practice,
 * no source, unless a source stands beside the check; the ladders of {@link DirectionsTest} hold ground, gears, water, spares and light.
 */
class WorkshopDirectionsTest {

    private static final int DAYS = 40;
    private static final int RACE = 1;
    private static final int YES = 1;
    private static final int NO = 0;
    private static final RuleSet SHIPPED = ShippedRuleSet.read();

    @TempDir
    private Path folder;

    /** From 60 to 130 kg at the start line. */
    @Test
    void aHeavierLoadNeverAsksForNarrowerTyresSmallerRotorsSlimmerForksOrThinnerPads() {
        ladder(15, (facts, rung) -> facts.with(Measure.START_LINE_MASS, 120L + 10 * rung, Measure.MASS_ABOVE_THE_MARK, 0L))
                .neverDown("front tyre width", "rear tyre width", "front rotor", "rear rotor", "fork chassis", "pad thickness");
    }

    @Test
    void aHeavierLoadNeverAsksForLighterCasings() {
        ladder(15, (facts, rung) -> facts.with(Measure.START_LINE_MASS, 120L + 10 * rung, Measure.MASS_ABOVE_THE_MARK, 0L, Measure.HOURS, 90,
                Measure.ROUGHNESS, 18, Measure.WORST_ROUGHNESS, 25, Measure.ROLE, RACE)).neverDown("front tyre casing", "rear tyre casing");
    }

    @Test
    void moreDescentNeverAsksForSmallerRotorsOrThinnerPads() {
        ladder(14, (facts, rung) -> facts.with(Measure.DESCENT, 30L * rung, Measure.DESCENT_PER_KM, 50L * rung))
                .neverDown("front rotor", "rear rotor", "pad thickness", "pad compound");
    }

    @Test
    void moreWindNeverAsksForDeeperRims() {
        ladder(12, (facts, rung) -> facts.with(Measure.WIND, 4L * rung)).neverUp("front rim depth", "rear rim depth");
    }

    @Test
    void moreWindNeverAsksForExtensions() {
        ladder(12, (facts, rung) -> facts.with(Measure.WIND, 4L * rung, Measure.PAVED_SHARE, 100, Measure.TRAIL_SHARE, 0, Measure.SOFT_SHARE, 0,
                Measure.SAND, 0, Measure.ROUGHNESS, 3, Measure.WORST_ROUGHNESS, 6, Measure.MTB_SCALE, 0, Measure.HARDEST_MTB_SCALE, 0,
                Measure.ROLE, RACE, Measure.AERO_EXTENSIONS_ALLOWED, YES, Measure.AERO_SHARE, 60, Measure.GROUP_SHARE, 0)).neverUp("aero extensions");
    }

    @Test
    void moreClimbingNeverAsksForDeeperRims() {
        ladder(14, (facts, rung) -> facts.with(Measure.CLIMBING_PER_KM, 40L * rung)).neverUp("front rim depth", "rear rim depth");
    }

    /** Intake rises with the length of the effort: 30 to 60 g/h up to two and a half hours, up to 90 beyond (Thomas, Erdman and Burke 2016). */
    @Test
    void longerNeverAsksForLessFoodAnHour() {
        ladder(20, (facts, rung) -> facts.with(Measure.HOURS, 20L + 20 * rung, Measure.SLOW_HOURS, 24L + 23 * rung)).neverDown("food");
    }

    @Test
    void morePowerNeverAsksForLessFood() {
        ladder(20, (facts, rung) -> facts.with(Measure.HOUR_POWER, 20L + 3 * rung)).neverDown("food");
    }

    @Test
    void wetterNeverAsksForLessClothingThinnerPadsOrMorePressure() {
        MeasureLadder wetter = ladder(3, (facts, rung) -> facts.with(Measure.GOING, rung));
        wetter.neverDown("clothing", "pad thickness");
        wetter.sameSettled("front tyre width", "front tyre casing").neverUp("front tyre pressure");
    }

    @Test
    void moreSandNeverAsksForMorePressureInTheSameTyre() {
        MeasureLadder sandier = ladder(10, (facts, rung) -> facts.with(Measure.SAND, 6L * rung, Measure.SOFT_SHARE, Math.max(60, facts.get(Measure.SOFT_SHARE)),
                Measure.MUD, 0L));
        sandier.sameSettled("front tyre width", "front tyre casing").neverUp("front tyre pressure");
        sandier.sameSettled("rear tyre width", "rear tyre casing", "rear insert").neverUp("rear tyre pressure");
    }

    @Test
    void harderTrailsNeverAskForLessTravel() {
        ladder(12, (facts, rung) -> facts.with(Measure.HARDEST_MTB_SCALE, 4L * rung, Measure.LEDGE_HEIGHT, 0L))
                .neverDown("fork travel", "rear travel", "fork chassis");
    }

    @Test
    void hotterNeverAsksForLessWater() {
        new MeasureLadder(SHIPPED, 20, 8, (day, rung) -> scene(day, 4 + 4 * rung)).neverDown("water");
    }

    private Demands scene(int day, int low) {
        Scene scene = Scene.of(day);
        scene.low = low;
        scene.high = low + 8;
        return scene.demands(folder);
    }

    /** The rear wheel bears more of the load on every kind of bike, so its tyre is never the softer (Heine with Berto: pressure goes with load). */
    @Test
    void theRearIsNeverSofterThanTheFront() {
        for (int day = 0; day < 200; day++) {
            Call call = CallMaker.call(SHIPPED, Facts.of(day).demands());
            Decision front = call.on(Topics.FRONT_TYRE_PRESSURE);
            Decision rear = call.on(Topics.REAR_TYRE_PRESSURE);
            assertThat(rear.value()).as("day %s: %s, %s", day, front, rear).isGreaterThanOrEqualTo(front.value());
        }
    }

    /** Plugs mend tyres with sealant; a rider on tubes has no use for one. */
    @Test
    void nobodyCarriesPlugsForTubes() {
        int tubes = 0;
        for (int day = 0; day < 200; day++) {
            Call call = CallMaker.call(SHIPPED, Facts.of(day).with(Measure.TUBELESS_READY, NO, Measure.HOURS, 300 + 5 * day).demands());
            if (call.on(Topics.REAR_SEALANT).text().equals("tube") && call.on(Topics.FRONT_SEALANT).text().equals("tube")) {
                tubes++;
                assertThat(call.on(Topics.PLUGS).value()).as("day %s", day).isZero();
                assertThat(call.on(Topics.TUBES).value()).as("day %s", day).isPositive();
            }
        }
        assertThat(tubes).isGreaterThan(100);
    }

    private static MeasureLadder ladder(int rungs, BiFunction<Facts, Integer, Facts> rung) {
        return new MeasureLadder(SHIPPED, DAYS, rungs, (day, i) -> rung.apply(Facts.of(day), i).demands());
    }
}
