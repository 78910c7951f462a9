package courseworthy.render.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class AxisTicksTest {

    @Test
    void heightsAreMarkedInStepsOfOneTwoOrFive() {
        assertThat(AxisTicks.around(420, 1322, 6).values()).containsExactly(400.0, 600.0, 800.0, 1000.0, 1200.0, 1400.0);
        assertThat(AxisTicks.around(-13, 84, 6).values()).containsExactly(-50.0, 0.0, 50.0, 100.0);
    }

    @Test
    void kilometresBeginAtTheStart() {
        assertThat(AxisTicks.within(0, 62, 12).values()).containsExactly(0.0, 10.0, 20.0, 30.0, 40.0, 50.0, 60.0);
        assertThat(AxisTicks.within(0, 0.8, 6)).isEqualTo(new AxisTicks(java.util.List.of(0.0, 0.2, 0.4, 0.6, 0.8), 1));
    }

    @Test
    void aLogarithmicAxisHasNoZero() {
        assertThat(AxisTicks.logarithmic(1, 28, 10).values()).containsExactly(1.0, 2.0, 3.0, 5.0, 7.0, 10.0, 20.0);
        assertThat(AxisTicks.logarithmic(1, 28, 6).values()).containsExactly(1.0, 2.0, 5.0, 10.0, 20.0);
        assertThatThrownBy(() -> AxisTicks.logarithmic(0, 28, 6)).isInstanceOf(IllegalArgumentException.class);
    }

    @Property(seed = "20261129")
    void thereAreNeverMoreThanAsked(@ForAll @DoubleRange(min = -5000, max = 9000) double low, @ForAll @DoubleRange(max = 9000) double span,
            @ForAll @IntRange(min = 3, max = 12) int most) {
        AxisTicks around = AxisTicks.around(low, low + span, most);
        assertThat(around.values().size()).isBetween(2, most);
        assertThat(around.first()).isLessThanOrEqualTo(low + 1e-6);
        assertThat(around.last()).isGreaterThanOrEqualTo(low + span - 1e-6);
        AxisTicks within = AxisTicks.within(low, low + span, most);
        assertThat(within.values().size()).isLessThanOrEqualTo(most);
        assertThat(within.values()).allSatisfy(each -> assertThat(each).isBetween(low - 1e-6, low + span + 1e-6));
    }
}
