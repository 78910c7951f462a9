package courseworthy.call;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.demand.Measure;
import courseworthy.engine.RuleSet;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * A measure that is declared is computed: before or after decisions, on a shipped course with its event and a shipped rider, or, as far as
 * those do not write what it takes, on the example in which every key is written.
 */
class EveryMeasureTest {

    private static final RuleSet HOUSE = ShippedRuleSet.read();
    private static final Path EVERY_KEY = Path.of("src", "test", "resources", "courseworthy", "keys", "ridge");
    /** What no shipped rider or event writes. */
    private static final Set<Measure> ON_THE_EXAMPLE_ALONE = EnumSet.of(Measure.LOST_GROUP, Measure.BIKE_LEDGE_LIMIT, Measure.LEDGE_ABOVE_THE_MARK,
            Measure.BIKE_MASS_LIMIT, Measure.MASS_ABOVE_THE_MARK, Measure.LIGHTS_AT_HAND, Measure.POWER_METER_AT_HAND, Measure.TYRE_WIDTH_ALLOWED,
            Measure.MUDGUARDS_REQUIRED, Measure.OUTSIDE_HELP, Measure.RIDER_HEIGHT, Measure.SHOULDER_WIDTH, Measure.DROP_BAR_WIDTH_BY_THE_SHOULDERS,
            Measure.HAND_STRENGTH, Measure.PREFERENCE, Measure.RACING_AGE, Measure.DEVELOPMENT_ALLOWED, Measure.HARDEST_GEAR_ALLOWED);

    @Test
    void isComputedOnSomeShippedDay() {
        Set<Measure> never = neverComputed(ShippedDays.all());
        assertThat(never).isSubsetOf(ON_THE_EXAMPLE_ALONE);
    }

    @Test
    void isComputedWhereEveryKeyIsWritten() {
        ShippedDays day = ShippedDays.of(EVERY_KEY.resolve("course.yaml"), EVERY_KEY.resolve("event.yaml"), EVERY_KEY.resolve("rider.yaml"));
        assertThat(neverComputed(List.of(day))).doesNotContainAnyElementsOf(ON_THE_EXAMPLE_ALONE);
    }

    private static Set<Measure> neverComputed(List<ShippedDays> days) {
        Set<Measure> missing = EnumSet.allOf(Measure.class);
        for (ShippedDays day : days) {
            missing.removeAll(day.demands().values().keySet());
            if (missing.stream().anyMatch(Measure::derived)) {
                missing.removeAll(CallMaker.call(HOUSE, day.demands()).demands().values().keySet());
            }
        }
        return missing;
    }
}
