package courseworthy.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Kleene's strong logic of three values (Kleene 1952, Introduction to Metamathematics, 64): its tables, entry by entry. */
class TruthTest {

    @ParameterizedTest
    @CsvSource({"TRUE, TRUE, TRUE, TRUE", "TRUE, FALSE, FALSE, TRUE", "TRUE, UNKNOWN, UNKNOWN, TRUE", "FALSE, TRUE, FALSE, TRUE", "FALSE, FALSE, FALSE, FALSE",
        "FALSE, UNKNOWN, FALSE, UNKNOWN", "UNKNOWN, TRUE, UNKNOWN, TRUE", "UNKNOWN, FALSE, FALSE, UNKNOWN", "UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN"})
    void tables(Truth one, Truth other, Truth both, Truth either) {
        assertThat(one.and(other)).isEqualTo(both);
        assertThat(one.or(other)).isEqualTo(either);
        assertThat(one.not().not()).isEqualTo(one);
        // De Morgan's law holds in it.
        assertThat(one.and(other).not()).isEqualTo(one.not().or(other.not()));
    }

    @ParameterizedTest
    @CsvSource({"true, TRUE, FALSE", "false, FALSE, TRUE"})
    void ofTwoValues(boolean value, Truth truth, Truth not) {
        assertThat(Truth.of(value)).isEqualTo(truth);
        assertThat(truth.not()).isEqualTo(not);
    }
}
