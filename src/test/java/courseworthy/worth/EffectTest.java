package courseworthy.worth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.ride.Range;
import org.junit.jupiter.api.Test;

/** Sums of effects by hand: of independent parts the ends are 3, 4 and 5 apart, of parts of one make they add up. */
class EffectTest {

    private static final Effect ONE = Effect.mass(0.07, 0.10, 0.13).and(Effect.drag(-0.03, 0, 0.03)).and(Effect.rolling(0.02, 0.05, 0.08));
    private static final Effect OTHER = Effect.mass(0.16, 0.20, 0.24).and(Effect.drag(-0.04, 0, 0.04)).and(Effect.rolling(0.01, 0.05, 0.09));

    @Test
    void independentEffectsAddBySquares() {
        Effect sum = ONE.and(OTHER);
        near(sum.mass(), 0.25, 0.30, 0.35);
        near(sum.drag(), -0.05, 0, 0.05);
        near(sum.rolling(), 0.05, 0.10, 0.15);
    }

    @Test
    void effectsOfOneMakeAddEndByEnd() {
        Effect sum = ONE.alike(OTHER);
        near(sum.mass(), 0.23, 0.30, 0.37);
        near(sum.drag(), -0.07, 0, 0.07);
        near(sum.rolling(), 0.03, 0.10, 0.17);
    }

    @Test
    void takenAwayTheEndsChangePlaces() {
        Effect less = OTHER.times(-2);
        near(less.mass(), -0.48, -0.40, -0.32);
        near(less.drag(), -0.08, 0, 0.08);
        near(less.rolling(), -0.18, -0.10, -0.02);
    }

    @Test
    void nothingIsNothingInAllThree() {
        assertThat(Effect.NONE.none()).isTrue();
        assertThat(Effect.mass(0, 0, 0).none()).isTrue();
        assertThat(Effect.mass(0, 0.1, 0.2).none()).isFalse();
        assertThat(Effect.drag(0, 0.1, 0.2).none()).isFalse();
        assertThat(Effect.rolling(0, 0.1, 0.2).none()).isFalse();
        assertThat(ONE.times(0).none()).isTrue();
    }

    private static void near(Range range, double low, double mid, double high) {
        assertThat(new double[] {range.low(), range.mid(), range.high()}).containsExactly(new double[] {low, mid, high}, within(1e-9));
    }
}
