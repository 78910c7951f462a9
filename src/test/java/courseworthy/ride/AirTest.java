package courseworthy.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Air against the standard atmosphere's table and worked-out values of CIPM-2007. */
class AirTest {

    /** ICAO Doc 7488, ISO 2533:1975. Density: 0.0003 covers geometric and geopotential height; the others half a unit of the last digit. */
    @ParameterizedTest
    @CsvSource({"0, 15.00, 1013.25, 1.2250", "500, 11.75, 954.61, 1.1673", "1000, 8.50, 898.75, 1.1116", "1500, 5.25, 845.56, 1.0581",
        "2000, 2.00, 794.95, 1.0065", "2500, -1.25, 746.83, 0.9569", "3000, -4.50, 701.09, 0.9091", "3500, -7.75, 657.64, 0.8632",
        "4000, -11.00, 616.40, 0.8191"})
    void followsTheStandardAtmosphere(double height, double celsius, double hectopascal, double density) {
        assertThat(Air.standardTemperature(height)).isCloseTo(celsius, within(0.005));
        assertThat(Air.standardPressure(height) / 100).isCloseTo(hectopascal, within(0.01));
        assertThat(Air.standardDensity(height)).isCloseTo(density, within(0.0003));
    }

    /** Published ratios to sea level at 4000 ft and 10,000 ft; half a unit of the last digit. */
    @ParameterizedTest
    @CsvSource({"1219, 0.8881", "3048, 0.7385"})
    void thinsAsPublished(double height, double ratio) {
        assertThat(Air.standardDensity(height) / Air.standardDensity(0)).isCloseTo(ratio, within(0.0001));
    }

    /** CIPM-2007 (Picard and others 2008), worked out apart and agreeing with a thermophysical library to 5e-5; tolerance 0.001. */
    @ParameterizedTest
    @CsvSource({"101325, 20, 0, 1.2046", "101325, 20, 0.5, 1.1993", "101325, 15, 0, 1.2255", "101325, 30, 0, 1.1647",
        "101325, 30, 0.5, 1.1555", "101325, 30, 1, 1.1464", "101325, 35, 0.8, 1.1266", "80000, 10, 0.5, 0.9818"})
    void weighsMoistAir(double pressure, double celsius, double humidity, double density) {
        assertThat(Air.density(pressure, celsius, humidity)).isCloseTo(density, within(0.0001));
    }

    /** 2339 Pa at 20 °C, to 3 Pa. */
    @Test
    void saturatesAsPublished() {
        assertThat(Air.saturationPressure(20)).isCloseTo(2339, within(3.0));
    }

    /** From dry to saturated: 0.9 % lighter at 20 °C, 1.6 % at 30 °C; half a unit of the last digit. */
    @ParameterizedTest
    @CsvSource({"20, 0.9", "30, 1.6"})
    void moistAirIsLighter(double celsius, double percent) {
        double dry = Air.density(101_325, celsius, 0);
        double wet = Air.density(101_325, celsius, 1);
        assertThat(100 * (dry - wet) / dry).isCloseTo(percent, within(0.05));
    }

    /** CIPM-2007 is a real gas: 0.04 % denser than the standard's ideal gas at the same state; half a unit of the last digit. */
    @Test
    void realGasIsALittleDenser() {
        double ratio = Air.density(101_325, 15, 0) / Air.standardDensity(0);
        assertThat(100 * (ratio - 1)).isCloseTo(0.04, within(0.005));
    }
}
