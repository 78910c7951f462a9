package courseworthy.demand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.ride.Range;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sweat and drinking against what was measured in riders. */
class SweatRateTest {

    /** 13 riders over two hours at 23.8 C: 1.4 L/h, 0.9 to 2.4 (Capitan and others, Int. J. Exerc. Sci. Conf. Proc. 11(2)), their power taken as 2.2 W/kg. */
    @Test
    void asMeasuredInARace() {
        Range rate = new SweatRate(null, 180).at(23.8);
        assertThat(rate.low()).isCloseTo(0.9, within(1e-9));
        assertThat(rate.mid()).isCloseTo(1.4, within(1e-9));
        assertThat(rate.high()).isCloseTo(2.4, within(1e-9));
    }

    /**
     * Inside the range lie: 1.2 L/h at 33 C (Ryan and others 1989, MSSE 21:51-58, 60 % of the highest uptake, taken as 180 W); 0.34 to 0.55
     * L/h drunk and 1 to 2 % of 75 kg lost a stage of four to five hours at 6 to 21 C, so 0.5 to 0.9 L/h (Rose and Peters 2010, taken as 160 W).
     */
    @ParameterizedTest
    @CsvSource({"33, 180, 1.2", "13, 160, 0.5", "13, 160, 0.9"})
    void otherMeasurementsLieInside(double temperature, double watts, double measured) {
        Range rate = new SweatRate(null, watts).at(temperature);
        assertThat(measured).isBetween(rate.low() - 0.02, rate.high());
    }

    @Test
    void neverLessWithHeatOrPowerAndNeverAnotherThanStated() {
        Range before = Range.exact(0);
        for (double temperature = -30; temperature <= 50; temperature += 0.5) {
            Range rate = new SweatRate(null, 180).at(temperature);
            assertThat(rate.low()).isGreaterThanOrEqualTo(before.low());
            assertThat(rate.mid()).isGreaterThanOrEqualTo(before.mid());
            assertThat(rate.high()).isGreaterThanOrEqualTo(before.high());
            assertThat(new SweatRate(null, 190).at(temperature).mid()).isGreaterThan(rate.mid());
            assertThat(new SweatRate(1.1, 180).at(temperature)).isEqualTo(Range.exact(1.1));
            before = rate;
        }
        assertThat(new SweatRate(1.1, 180).at(null)).isEqualTo(Range.exact(1.1));
    }

    /** 70 kg, 1.28 L/h and 0.6 L/h drunk: 1.4 kg are lost after 2.06 h, and from then on all of it is made good (arithmetic). */
    @Test
    void lossStopsAtTwoPercent() {
        FluidBalance balance = new FluidBalance(70);
        double drunk = 0;
        for (int minute = 0; minute < 300; minute++) {
            drunk += balance.have(1.28 / 60, 1 / 60.0);
        }
        assertThat(balance.behind()).isCloseTo(1.4, within(1e-9));
        assertThat(drunk).isCloseTo(5 * 1.28 - 1.4, within(1e-9));
    }

    /** Never more than is shown to pass a stomach, 1.05 L/h: the rest is a loss (Ryan and others 1989); never more than is sweated, also where thirst would be for more. */
    @Test
    void drinkingHasTwoCeilings() {
        FluidBalance hot = new FluidBalance(70);
        double drunk = 0;
        for (int hour = 0; hour < 6; hour++) {
            double each = hot.drink(2, 1);
            assertThat(each).isLessThanOrEqualTo(1.05);
            drunk += each;
        }
        assertThat(hot.behind()).isCloseTo(12 - drunk, within(1e-9)).isGreaterThan(5);
        assertThat(new FluidBalance(70).drink(0.2, 1)).isEqualTo(0.2);
    }
}
