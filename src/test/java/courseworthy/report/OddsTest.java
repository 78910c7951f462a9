package courseworthy.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two figures of an estimate that is good to a factor of three: GUM (JCGM 100:2008), 7.2.6, gives an uncertain figure two at most. */
class OddsTest {

    @ParameterizedTest
    @CsvSource({"1.94, 1.9", "9.94, 9.9", "14.4, 14", "99.4, 99", "441, 440", "1729, 1700", "6079, 6100"})
    void ridesAreCountedToTwoFigures(double rides, String shown) {
        assertThat(WorthReport.count(rides)).isEqualTo(shown);
    }
}
