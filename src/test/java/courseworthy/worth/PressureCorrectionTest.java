package courseworthy.worth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.ride.Range;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Gauge pressures by temperature and height, and pounds per square inch. */
class PressureCorrectionTest {

    private static final double BAR = 1e5;

    /** Gas law (textbook): gauge pressure and the air's together go with absolute temperature; 0.01 bar. */
    @ParameterizedTest
    @CsvSource({"2.0, 20, 5, 1.85", "2.0, 20, 40, 2.21", "1.5, 20, 0, 1.33", "2.0, 20, 20, 2.0"})
    void goesWithTemperature(double bar, double from, double to, double there) {
        assertThat(PressureCorrection.elsewhere(bar * BAR, from, 0, to, 0) / BAR).isCloseTo(there, within(0.01));
        assertThat(PressureCorrection.elsewhere(PressureCorrection.elsewhere(bar * BAR, from, 0, to, 0), to, 0, from, 0)).isCloseTo(bar * BAR, within(1e-6));
    }

    /** The air's pressure by height is the standard atmosphere's (ISO 2533:1975): what it loses the gauge gains; 0.01 bar. */
    @ParameterizedTest
    @CsvSource({"500, 0.06", "1000, 0.11", "1500, 0.17", "2000, 0.22", "3000, 0.31"})
    void goesWithHeight(double height, double more) {
        assertThat(PressureCorrection.elsewhere(2 * BAR, 15, 0, 15, height) / BAR - 2).isCloseTo(more, within(0.01));
        assertThat(PressureCorrection.elsewhere(5 * BAR, 15, height, 15, 0) / BAR - 5).isCloseTo(-more, within(0.01));
    }

    /** 1 psi is 6.894757 kPa exactly enough; the hookless limit of 72.5 psi is 4.999 bar (ETRTO as makers quote it). */
    @Test
    void poundsAreTheNearestButNeverOverTheLimit() {
        assertThat(tyre(null).psi(1.20 * BAR)).isEqualTo(17);
        assertThat(tyre(null).psi(2.00 * BAR)).isEqualTo(29);
        assertThat(tyre(null).psi(5.00 * BAR)).isEqualTo(73);
        assertThat(tyre(5.0 * BAR).psi(5.00 * BAR)).isEqualTo(72);
        assertThat(tyre(5.0 * BAR).psi(72.5 * 6894.757293168)).isEqualTo(72);
        assertThat(72.5 * 6894.757293168 / BAR).isCloseTo(4.999, within(0.0005));
    }

    private static TyreSetting tyre(Double ceiling) {
        return new TyreSetting(Range.exact(45), new TyreSetting.Tyre(0.028, null, 0, true), 2e5, 2e5, Range.exact(2e5), 1e5, ceiling, null, false, 2e5);
    }
}
