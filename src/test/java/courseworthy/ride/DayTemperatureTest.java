package courseworthy.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Temperature by hour and height, against values of the published curves worked out apart from this code. */
class DayTemperatureTest {

    private static final double HOUR = 3600;

    /** Parton and Logan (1981), Colorado at 150 cm, lowest 10 C, highest 25 C: to 0.05 K. */
    @ParameterizedTest
    @CsvSource({"6, 18, 8, 16.18", "6, 18, 10, 20.92", "6, 18, 12, 24.02", "6, 18, 13.86, 25.00", "6, 18, 16, 23.70", "6, 18, 18, 20.34",
        "6, 18, 20, 17.13", "6, 18, 22, 14.92", "6, 18, 27, 11.94", "6, 18, 3, 11.94", "5, 21, 8, 17.14", "5, 21, 12, 23.52",
        "5, 21, 18, 23.22", "5, 21, 21, 18.58"})
    void colorado(double rise, double set, double hour, double expected) {
        assertThat(10 + 15 * DiurnalCurve.COLORADO.at(hour, rise, set)).isCloseTo(expected, within(0.05));
    }

    /** The same with the constants of North Carolina (Wann and others 1985). */
    @ParameterizedTest
    @CsvSource({"8, 11.50", "10, 17.80", "12, 22.56", "14.59, 25.00", "18, 20.86"})
    void carolina(double hour, double expected) {
        assertThat(10 + 15 * DiurnalCurve.CAROLINA.at(hour, 6, 18)).isCloseTo(expected, within(0.05));
    }

    /** Both once more as shares, by the papers' formulas worked out apart, sun from 6 to 18 h: mornings tell a and c, evenings c, nights b. */
    @ParameterizedTest
    @CsvSource({"7, 0.2269, 0.0483", "9, 0.5811, 0.3179", "16, 0.9137, 0.9509", "20, 0.4754, 0.5234", "22, 0.3277, 0.3783", "27, 0.1293, 0.1680"})
    void bothAsShares(double hour, double colorado, double carolina) {
        assertThat(DiurnalCurve.COLORADO.at(hour, 6, 18)).isCloseTo(colorado, within(0.0002));
        assertThat(DiurnalCurve.CAROLINA.at(hour, 6, 18)).isCloseTo(carolina, within(0.0002));
    }

    /** The night's curve is led down to the lowest within its last hour: half an hour before it, to half of what it would be. */
    @Test
    void theNightIsLedDownWithinAnHour() {
        double lowest = 30 - 0.17;
        double before = DiurnalCurve.COLORADO.at(lowest - 1.001, 6, 18);
        assertThat(DiurnalCurve.COLORADO.at(lowest - 0.5, 6, 18) / before).isCloseTo(0.5 * Math.exp(-2.20 * 0.5 / 11.83), within(0.002));
        assertThat(DiurnalCurve.COLORADO.at(lowest - 1.5, 6, 18) / before).isCloseTo(Math.exp(2.20 * 0.5 / 11.83), within(0.002));
    }

    /** The curves were fitted to days of the middle latitudes: for daylight of 6 to 20 h they are used (judgement). */
    @Test
    void curvesAreForDaysOfSixToTwentyHours() {
        assertThat(DiurnalCurve.fits(9, 15)).isTrue();
        assertThat(DiurnalCurve.fits(9, 14.99)).isFalse();
        assertThat(DiurnalCurve.fits(2, 22)).isTrue();
        assertThat(DiurnalCurve.fits(2, 22.01)).isFalse();
        assertThat(DiurnalCurve.fits(Double.NaN, 22)).isFalse();
    }

    /** Campbell and Norman (1998). */
    @ParameterizedTest
    @CsvSource({"5, 0.030", "9, 0.424", "14, 0.997", "21, 0.319"})
    void byTheClock(double hour, double expected) {
        assertThat(DiurnalCurve.byTheClock(hour)).isCloseTo(expected, within(0.0006));
        assertThat(new DayTemperature(hour * HOUR, 0, 0, 100, Double.NaN, Double.NaN).temperature(0, 0)).isCloseTo(100 * expected, within(0.06));
    }

    /** Never outside the day's ends, no step over 0.5 K in five minutes of a day of 15 K, the highest a after noon; for any day's length. */
    @ParameterizedTest
    @CsvSource({"6, 18", "5, 21", "8.05, 15.88", "3, 23", "2.1, 21.9"})
    void staysInsideAndHasNoSteps(double rise, double set) {
        for (DiurnalCurve curve : new DiurnalCurve[] {DiurnalCurve.COLORADO, DiurnalCurve.CAROLINA}) {
            double before = curve.at(-1 / 12.0, rise, set);
            double most = 0;
            double warmest = 0;
            for (int i = 0; i < 3 * 288; i++) {
                double share = curve.at(i / 12.0, rise, set);
                assertThat(share).isBetween(0.0, 1.0);
                assertThat(Math.abs(share - before)).as("at %s h", i / 12.0).isLessThan(0.5 / 15);
                warmest = i < 288 && share > most ? i / 12.0 : warmest;
                most = Math.max(most, share);
                before = share;
            }
            assertThat(most).isCloseTo(1, within(0.001));
            assertThat(warmest - (rise + set) / 2).isCloseTo(curve == DiurnalCurve.COLORADO ? 1.86 : 2.59, within(0.05));
        }
    }

    /** The mean of both curves, and how far they are from it: at 8 h with the sun from 6 to 18 h 13.84 C and 2.34 either way (by hand). */
    @Test
    void theCurvesDifferMostInTheMorning() {
        DayTemperature day = new DayTemperature(6 * HOUR, 12 * HOUR, 10, 25, 6 * HOUR, 18 * HOUR);
        assertThat(day.temperature(2 * HOUR, 0)).isCloseTo(13.84, within(0.05));
        assertThat(day.unsure(2 * HOUR)).isCloseTo(2.34, within(0.05));
        assertThat(day.unsure(8 * HOUR)).isLessThan(0.6);
    }

    /** A race at 14:00 begins near the day's highest, not at its lowest; one at dawn near the lowest. */
    @Test
    void anAfternoonDoesNotStartAtTheLow() {
        for (DayTemperature day : new DayTemperature[] {new DayTemperature(14 * HOUR, 3 * HOUR, 8, 24, 6 * HOUR, 20 * HOUR), new DayTemperature(14 * HOUR, 3 * HOUR, 8, 24, Double.NaN, Double.NaN)}) {
            assertThat(day.temperature(0, 0)).isBetween(22.5, 24.0);
        }
        assertThat(new DayTemperature(6 * HOUR, 3 * HOUR, 8, 24, 6 * HOUR, 20 * HOUR).temperature(0, 0)).isBetween(8.0, 10.0);
    }

    /** Where nothing was fitted, near the poles, the clock alone serves. */
    @Test
    void polarDaysGoByTheClock() {
        double clock = new DayTemperature(10 * HOUR, HOUR, -5, 5, Double.NaN, Double.NaN).temperature(0, 0);
        assertThat(new DayTemperature(10 * HOUR, HOUR, -5, 5, 11 * HOUR, 13 * HOUR).temperature(0, 0)).isEqualTo(clock);
        assertThat(new DayTemperature(10 * HOUR, HOUR, -5, 5, Double.NaN, Double.NaN).temperature(0, 0)).isEqualTo(clock);
    }

    /** 6.5 K per km (ISO 2533:1975): 1000 m higher is 6.5 °C colder, by hand. */
    @Test
    void isColderHigherUp() {
        DayTemperature day = new DayTemperature(8 * 3600, 4 * 3600, 12, 12, Double.NaN, Double.NaN);
        assertThat(day.temperature(3600, 0)).isCloseTo(12, within(1e-9));
        assertThat(day.temperature(3600, 1000)).isCloseTo(5.5, within(1e-9));
        assertThat(day.temperature(3600, -400)).isCloseTo(14.6, within(1e-9));
    }
}
