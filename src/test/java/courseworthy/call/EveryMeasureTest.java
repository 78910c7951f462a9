package courseworthy.call;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.demand.Measure;
import courseworthy.engine.RuleSet;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A measure that is declared is computed: on some shipped course with its event, for some shipped rider, before or after decisions. */
class EveryMeasureTest {

    private static final RuleSet HOUSE = ShippedRuleSet.read();

    @Test
    void isComputedOnSomeShippedDay() {
        Set<Measure> missing = EnumSet.allOf(Measure.class);
        for (ShippedDays day : ShippedDays.all()) {
            missing.removeAll(day.demands().values().keySet());
            if (missing.stream().anyMatch(Measure::derived)) {
                missing.removeAll(CallMaker.call(HOUSE, day.demands()).demands().values().keySet());
            }
        }
        assertThat(missing).isEmpty();
    }
}
