package courseworthy.call;

import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.engine.RuleSet;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The directions of {@link DirectionsTest} once more, from generated courses, riders and days through reading and survey, so that
 * whatever hangs on the one thing that changes (speed, hours, water ...) changes with it (common practice, no source).
 */
class CourseDirectionsTest {

    private static final RuleSet SHIPPED = ShippedRuleSet.read();
    private static final int DAYS = 25;

    @TempDir
    private Path folder;

    @Test
    void rougherNeverAsksForLessTravelNarrowerTyresOrLighterCasing() {
        ladder(7, (scene, rung) -> scene.parts.forEach(part -> {
            part.smoothness = Math.min(6, part.smoothness / 3 + rung);
            part.grade = Math.max(0, rung - 3);
        })).neverDown("fork travel", "rear travel", "front tyre width", "rear tyre width", "front tyre casing", "rear tyre casing");
    }

    @Test
    void heavierNeverAsksForLowerPressureInTheSameTyre() {
        MeasureLadder heavier = ladder(7, (scene, rung) -> scene.mass = 48 + 10 * rung);
        heavier.sameSettled("front tyre width", "front tyre casing", "front insert").neverDown("front tyre pressure");
        heavier.sameSettled("rear tyre width", "rear tyre casing", "rear insert").neverDown("rear tyre pressure");
    }

    @Test
    void weakerNeverAsksForAHarderEasiestGear() {
        ladder(8, (scene, rung) -> scene.watts = 400 - 40 * rung).neverUp("easiest gear");
    }

    /** Slopes from next to nothing to steep, many alike, so that climbs appear, join and part on the way up the ladder. */
    @Test
    void steeperNeverAsksForAHarderEasiestGear() {
        ladder(8, (scene, rung) -> {
            for (Scene.Part part : scene.parts) {
                part.rise = part.rise * (4 + rung) / 4;
                part.drop = part.drop * (4 + rung) / 4;
            }
        }).neverUp("easiest gear");
    }

    @Test
    void mudNeverAsksForAFasterTread() {
        ladder(8, (scene, rung) -> {
            scene.ground = "wet";
            for (int i = 0; i < scene.parts.size(); i++) {
                scene.parts.get(i).mud = i < rung;
            }
        }).neverDown("front tyre tread", "rear tyre tread");
    }

    @Test
    void longerNeverAsksForLessWaterOrFewerSpares() {
        ladder(5, (scene, rung) -> {
            scene.water.clear();
            scene.laps = 1;
            scene.parts.forEach(part -> {
                part.km = part.km * Math.pow(2, rung - 1);
                part.rise = part.rise * Math.pow(2, rung - 1);
                part.drop = part.drop * Math.pow(2, rung - 1);
            });
        }).neverDown("water", "water carrier", "plugs", "tubes", "tools", "spares", "emergency kit");
    }

    @Test
    void remoterNeverAsksForLessWaterOrFewerSpares() {
        holding(List.of(Measure.HOURS, Measure.SLOW_HOURS, Measure.DARK_HOURS, Measure.DARK_SHARE, Measure.SUNLESS_HOURS,
                Measure.DAYLIGHT_TO_SPARE), 4, (scene, rung) -> {
            for (int i = 0; i < rung; i++) {
                for (int at = scene.water.size() - 1; at >= 0; at -= 2) {
                    scene.water.remove(at);
                }
            }
        }).neverDown("water", "water carrier", "plugs", "tubes", "tools", "spares", "emergency kit");
    }

    @Test
    void colderNeverAsksForLessClothing() {
        ladder(9, (scene, rung) -> {
            scene.low = 24 - 3 * rung;
            scene.high = 32 - 3 * rung;
        }).neverDown("clothing", "gloves");
    }

    @Test
    void laterNeverAsksForLessClothingOrLight() {
        holding(List.of(Measure.START_TEMPERATURE, Measure.SUMMIT_TEMPERATURE, Measure.COLDEST_TEMPERATURE,
                Measure.HOTTEST_TEMPERATURE), 7, (scene, rung) -> scene.start = 7 + 2 * rung)
                .neverDown("lights", "light run time", "clothing");
    }

    private MeasureLadder ladder(int rungs, BiConsumer<Scene, Integer> change) {
        return holding(List.of(), rungs, change);
    }

    /** Some measures stay as they are on the first rung, though the one thing would change them. */
    private MeasureLadder holding(List<Measure> held, int rungs, BiConsumer<Scene, Integer> change) {
        return new MeasureLadder(SHIPPED, DAYS, rungs, (day, rung) -> {
            Demands demands = demands(day, rung, change);
            if (held.isEmpty() || rung == 0) {
                return demands;
            }
            Map<Measure, MeasureValue> first = new EnumMap<>(demands(day, 0, change).values());
            first.keySet().retainAll(held);
            return demands.with(first);
        });
    }

    private Demands demands(int day, int rung, BiConsumer<Scene, Integer> change) {
        Scene scene = Scene.of(day);
        change.accept(scene, rung);
        return scene.demands(folder);
    }
}
