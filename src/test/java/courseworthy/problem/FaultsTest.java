package courseworthy.problem;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** One slip is told of once. */
class FaultsTest {

    /** A key with nothing after it is found by what reads the file and again by what reads the value: only the second knows what would be right. */
    @Test
    void anEmptyValueIsToldOfOnceWithWhatWouldBeRight() {
        Faults faults = new Faults();
        faults.add("r.yaml", 4, "mass", Faults.NOTHING, Faults.ANY_VALUE, Faults.EMPTY);
        faults.add("r.yaml", 4, "mass", "\"\"", "a mass with its unit, such as 64 kg", "");
        assertThat(faults.faults()).extracting(Fault::toString).hasSize(1);
        assertThat(faults.faults().get(0)).isEqualTo(Fault.of("r.yaml", 4, "mass", "nothing", "a mass with its unit, such as 64 kg", "Write the value after the colon, or remove the line."));
    }

    /** A quoted empty text, or the same key in another line, is another slip. */
    @Test
    void anotherLineIsAnotherSlip() {
        Faults faults = new Faults();
        faults.add("r.yaml", 4, "mass", Faults.NOTHING, Faults.ANY_VALUE, Faults.EMPTY);
        faults.add("r.yaml", 5, "mass", "\"\"", "a mass", "");
        assertThat(faults.faults()).hasSize(2);
    }
}
