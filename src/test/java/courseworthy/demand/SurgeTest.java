package courseworthy.demand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Surges on steep pieces against the critical power of Monod and Scherrer (1965), Ergonomics 8:329-338, P = CP + W'/t. It holds from about 2 to
 * 15 minutes and says nothing of hours, so no time of the tool rests on it; it bounds what is asked of a rider for a few minutes.
 */
class SurgeTest {

    /** With 250 W and 20 kJ, by hand; hour power is at most the critical power, so a surge on it is what is compared. */
    @ParameterizedTest
    @CsvSource({"120, 416.7", "300, 316.7", "600, 283.3", "1200, 266.7"})
    void noSurgeIsMoreThanCriticalPowerAllows(double seconds, double watts) {
        double most = 250 + 20_000 / seconds;
        assertThat(most).isCloseTo(watts, within(0.05));
        double asked = seconds <= 120 ? GearDemands.MOST_SURGE : seconds <= 300 ? GearDemands.SURGE : 1;
        assertThat(asked * 250).isLessThanOrEqualTo(most);
    }
}
