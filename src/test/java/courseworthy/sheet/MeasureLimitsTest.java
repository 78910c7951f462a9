package courseworthy.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.demand.StretchMeasure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every quantity has limits, so that nonsense is met wherever a measure is written. */
class MeasureLimitsTest {

    @ParameterizedTest
    @EnumSource(Measure.class)
    void everyQuantityHasLimits(Measure measure) {
        limited(TestSubject.of(measure));
    }

    @ParameterizedTest
    @EnumSource(StretchMeasure.class)
    void everyQuantityOfAStretchHasLimits(StretchMeasure measure) {
        limited(TestSubject.of(measure));
    }

    private static void limited(TestSubject subject) {
        if (subject.scale().kind() == MeasureScale.Kind.QUANTITY) {
            assertThat(MeasureLimits.limits(subject)).as(subject.written()).isNotNull();
        }
        assertThat(MeasureLimits.least(subject)).isLessThan(MeasureLimits.most(subject));
        assertThat(MeasureLimits.most(subject)).isLessThan(Long.MAX_VALUE);
    }

    /** Heaviest rider that a rider's file takes, 200 kg; widest tyre that an event may allow, 130 mm; roughness to 5. */
    @Test
    void theyAreThoseOfTheReaders() {
        assertThat(TestSubject.of(Measure.RIDER_MASS).text(MeasureLimits.most(TestSubject.of(Measure.RIDER_MASS)))).isEqualTo("200.0 kg");
        assertThat(MeasureLimits.most(TestSubject.of(Measure.TYRE_WIDTH_ALLOWED))).isEqualTo(130);
        assertThat(MeasureLimits.most(TestSubject.of(Measure.ROUGHNESS))).isEqualTo(50);
        assertThat(MeasureLimits.least(TestSubject.of(StretchMeasure.GRADIENT))).isEqualTo(-200);
    }
}
