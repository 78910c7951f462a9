package courseworthy.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pressures as they are told. */
class PressureStepsTest {

    private static final double BAR = 1e5;

    /** 1 psi is 6.894757 kPa (NIST SP 811). */
    @ParameterizedTest
    @CsvSource({"1.234, 1.25 bar (18 psi)", "1.20, 1.20 bar (17 psi)", "2.449, 2.45 bar (36 psi)", "2.49, 2.5 bar (36 psi)", "2.56, 2.6 bar (38 psi)",
        "4.86, 4.9 bar (71 psi)", "8, 8.0 bar (116 psi)"})
    void inStepsThatCanBeFelt(double bar, String told) {
        double near = PressureSteps.nearest(bar * BAR);
        assertThat(PressureSteps.text(near, null)).isEqualTo(told);
    }

    /** 5 bar are 72.5 psi, and 73 would be more. */
    @Test
    void neitherBarNorPsiGoOverACeiling() {
        assertThat(PressureSteps.text(5 * BAR, 5 * BAR)).isEqualTo("5.0 bar (72 psi)");
        assertThat(PressureSteps.text(5 * BAR, null)).isEqualTo("5.0 bar (73 psi)");
        for (double bar = 0.8; bar < 8; bar += 0.013) {
            assertThat(PressureSteps.down(bar * BAR)).isLessThanOrEqualTo(bar * BAR + 1);
            assertThat(PressureSteps.up(bar * BAR)).isGreaterThanOrEqualTo(bar * BAR - 1);
            assertThat(PressureSteps.psi(PressureSteps.down(bar * BAR), bar * BAR) * 6894.757).isLessThanOrEqualTo(bar * BAR + 2);
            assertThat(Math.abs(PressureSteps.nearest(bar * BAR) - bar * BAR)).isLessThanOrEqualTo((bar < 2.5 ? 0.025 : 0.05) * BAR + 1);
        }
    }
}
