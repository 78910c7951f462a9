package courseworthy.rulebase;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.demand.Measure;
import courseworthy.demand.Scale;
import courseworthy.demand.StretchMeasure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every quantity has limits, so that nonsense is met wherever a measure is written. */
class LimitsTest {

    @ParameterizedTest
    @EnumSource(Measure.class)
    void everyQuantityHasLimits(Measure measure) {
        limited(Subject.of(measure));
    }

    @ParameterizedTest
    @EnumSource(StretchMeasure.class)
    void everyQuantityOfAStretchHasLimits(StretchMeasure measure) {
        limited(Subject.of(measure));
    }

    private static void limited(Subject subject) {
        if (subject.scale().kind() == Scale.Kind.QUANTITY) {
            assertThat(Limits.limits(subject)).as(subject.written()).isNotNull();
        }
        assertThat(Limits.least(subject)).isLessThan(Limits.most(subject));
        assertThat(Limits.most(subject)).isLessThan(Long.MAX_VALUE);
    }

    /** Heaviest rider that a rider's file takes, 200 kg; widest tyre that an event may allow, 130 mm; roughness to 5. */
    @Test
    void theyAreThoseOfTheReaders() {
        assertThat(Subject.of(Measure.RIDER_MASS).text(Limits.most(Subject.of(Measure.RIDER_MASS)))).isEqualTo("200.0 kg");
        assertThat(Limits.most(Subject.of(Measure.TYRE_WIDTH_ALLOWED))).isEqualTo(130);
        assertThat(Limits.most(Subject.of(Measure.ROUGHNESS))).isEqualTo(50);
        assertThat(Limits.least(Subject.of(StretchMeasure.GRADIENT))).isEqualTo(-200);
    }
}
