package courseworthy.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** However much is wrong with a file as long as may be, what is said of it stays short. */
class FaultListTest {

    private final Faults faults = new Faults();

    @Test
    void aHundredAreShownAndTheOthersCounted() {
        for (int i = 1; i <= 250; i++) {
            faults.add("f.yaml", i, "k" + i, "x", "y", "");
        }
        List<String> lines = FaultList.text(faults.faults()).lines().toList();
        assertThat(lines).hasSize(101).startsWith("f.yaml:1: k1: found x, expected y").endsWith("150 more like these; mend the above first.");
    }

    @Test
    void allAreCountedThoughNotAllAreKept() {
        Faults others = new Faults();
        for (int i = 1; i <= 3000; i++) {
            (i > 1500 ? others : faults).add("f.yaml", i, "k", "x", "y", "");
        }
        faults.addAll(others);
        assertThat(faults.stop()).isTrue();
        assertThat(faults.faults()).hasSize(1001).last().extracting(Fault::found).isEqualTo("2000 more faults");
    }

    @Test
    void namesAsLongAsAFileAreCut() {
        String name = "x".repeat(900_000);
        for (int i = 1; i <= 200; i++) {
            faults.add("f.yaml", i, name, "\"" + name + "\"", "one of: " + name, "Did you mean \"" + name + "\"?");
        }
        assertThat(FaultList.text(faults.faults())).hasSizeLessThan(100_000).endsWith(" more like these; mend the above first.\n");
    }
}
