package courseworthy.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Limits that the rules name, against what the standards say. */
class RuleValueTest {

    /** ETRTO's limit on rims without hooks, 72.5 psi as manufacturers quote it. */
    @Test
    void theHooklessLimitIsWhatManufacturersQuote() {
        assertThat(RuleValue.HOOKLESS_PRESSURE.inBase()).isCloseTo(72.5 * 6894.757, within(500.0));
        assertThat(RuleValue.HOOKLESS_PRESSURE.text()).isEqualTo("5 bar");
    }

    /** EN 17406:2020 in centimetres; ASTM F2043-13 in inches (6, 24 and 48), on the ground alone in its first condition. */
    @ParameterizedTest
    @CsvSource({"EN 1, 0.15", "EN 2, 0.15", "EN 3, 0.60", "EN 4, 1.20", "EN 6, 0.15", "ASTM 1, 0", "ASTM 2, 0.1524", "ASTM 3, 0.6096", "ASTM 4, 1.2192"})
    void aCategoryIsForDropsUpTo(String marked, double metres) {
        assertThat(UseCategory.highestDrop(marked)).isCloseTo(metres, within(0.003));
    }

    @Test
    void theHighestCategoriesHaveNoBound() {
        assertThat(UseCategory.highestDrop("EN 5")).isInfinite();
        assertThat(UseCategory.highestDrop("ASTM 5")).isInfinite();
        assertThat(UseCategory.words()).hasSize(11).doesNotHaveDuplicates();
    }
}
