package courseworthy.debrief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What can be said of few times. */
class ProportionTest {

    /** Newcombe (1998) Statistics in Medicine 17:857-872, table I, method 3, to four decimals (from memory). */
    @ParameterizedTest
    @CsvSource({"81, 263, 0.2553, 0.3662", "15, 148, 0.0624, 0.1605", "0, 20, 0.0000, 0.1611", "1, 29, 0.0061, 0.1718"})
    void theIntervalsOfTheLiterature(int held, int of, double low, double high) {
        assertThat(new Proportion(held, of).low()).isCloseTo(low, within(0.00005));
        assertThat(new Proportion(held, of).high()).isCloseTo(high, within(0.00005));
    }

    /** By its definition: at either end what was seen lies 1.96 standard errors from the share. */
    @Test
    void theEndsAreSoManyStandardErrorsOff() {
        for (int of = 1; of <= 40; of++) {
            for (int held = 0; held <= of; held++) {
                Proportion share = new Proportion(held, of);
                for (double end : new double[] {share.low(), share.high()}) {
                    double error = Math.sqrt(end * (1 - end) / of);
                    if (end > 1e-9 && end < 1 - 1e-9) {
                        assertThat(Math.abs((double) held / of - end) / error).isCloseTo(1.959964, within(1e-5));
                    }
                }
                assertThat(share.low()).isCloseTo(1 - new Proportion(of - held, of).high(), within(1e-12));
            }
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"0 | 0 | never put to the test", "2 | 2 | 2 of 2, too few to tell (34 to 100 %)",
        "0 | 1 | 0 of 1, too few to tell (0 to 79 %)", "4 | 4 | 4 of 4, mostly borne out (51 to 100 %)", "0 | 4 | 0 of 4, mostly not (0 to 49 %)",
        "3 | 4 | 3 of 4, too few to tell (30 to 95 %)", "5 | 10 | 5 of 10, too few to tell (24 to 76 %)"})
    void theWordsClaimNoMoreThanTheNumbers(int held, int of, String words) {
        assertThat(new Proportion(held, of).words()).isEqualTo(words);
    }
}
