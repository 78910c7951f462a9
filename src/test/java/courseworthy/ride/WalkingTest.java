package courseworthy.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Walking against what was measured, and against what published equations come to when worked out by hand. */
class WalkingTest {

    /** Minetti and others (2002), J. Appl. Physiol. 93:1039-1046: the polynomial by hand. */
    @ParameterizedTest
    @CsvSource({"0, 2.50", "0.05, 3.60", "0.10, 4.90", "0.15, 6.34", "0.20, 7.88", "0.30, 11.18", "0.45, 17.60", "-0.10, 1.13", "-0.45, 3.61"})
    void theCostOfWalkingIsThatOfItsCurve(double gradient, double joules) {
        assertThat(Walking.cost(gradient)).isCloseTo(joules, within(0.006));
    }

    /** The same paper's measurement at 0.45: 17.33 ± 1.11 J/kg/m. */
    @Test
    void theCurveMeetsWhatWasMeasured() {
        assertThat(Walking.cost(0.45)).isCloseTo(17.33, within(1.11));
    }

    /** Pandolf and others (1977), by hand: 75 kg with 12 kg and without, 1.1 m/s, 15 %. */
    @Test
    void aLoadCostsWhatPandolfsEquationSays() {
        assertThat(Walking.pandolf(75, 12, 1.1, 0.15)).isCloseTo(777, within(1.0));
        assertThat(Walking.pandolf(75, 0, 1.1, 0.15)).isCloseTo(682, within(1.0));
    }

    /** On the level 1.64 ± 0.50 J/kg/m were measured at 1.0 m/s (Minetti and others 2002) over what rest takes, which the curve's 2.50 is not near. */
    @Test
    void theLevelIsNotTakenFromTheCurve() {
        assertThat(Walking.power(75, 0, 0.0).mid() / 75 / Walking.SPEED.mid()).isBetween(1.64, 3.2);
        assertThat(Walking.power(75, 14, 0.15).mid()).isBetween(Walking.cost(0.15) * 75 * 0.95, 1.4 * Walking.cost(0.15) * 75 * 0.95);
    }

    /**
     * Walking was cheaper than riding above 13 to 15 %, with a bicycle's load from about 20 % (Ardigò, Saibene, Minetti 2003): below that
     * band only who is as slow as a walker gets off, above it whoever loses balance.
     */
    @Test
    void ridersGetOffInTheBandThatWasMeasured() {
        assertThat(Walking.below(0.12)).isEqualTo(Walking.SPEED.mid());
        assertThat(Walking.below(0.16)).isBetween(Walking.SPEED.mid(), Walking.BALANCED);
        assertThat(Walking.below(0.20)).isEqualTo(Walking.BALANCED);
        assertThat(Walking.below(0.30)).isEqualTo(Walking.BALANCED);
    }

    /** Tobler's function, 6 exp(-3.5 |s + 0.05|) km/h, from 5 to 15 %, within what two decimals leave. */
    @Test
    void theSpeedIsThatOfWalkersUphill() {
        for (double slope : new double[] {0.05, 0.10, 0.15}) {
            assertThat(6 / 3.6 * Math.exp(-3.5 * (slope + 0.05))).isBetween(Walking.SPEED.low() - 0.005, Walking.SPEED.high() + 0.005);
        }
    }
}
