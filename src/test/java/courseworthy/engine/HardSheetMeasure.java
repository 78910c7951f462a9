package courseworthy.engine;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.analysis.Findings;
import courseworthy.analysis.SheetCheck;
import courseworthy.problem.Faults;
import courseworthy.sheet.Sheet;
import courseworthy.sheet.SheetReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What sheets that are hard to look over take, on two cores. */
class HardSheetMeasure {

    private static final int ROWS = Integer.getInteger("courseworthy.rows", 10_000);

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource
    void itIsLookedOverInTime(HardSheet hard) throws IOException {
        Path file = Files.writeString(folder.resolve("hard.yaml"), hard.of(ROWS, 5));
        Faults faults = new Faults();
        long start = System.nanoTime();
        Sheet sheet = SheetReader.read(file, "hard.yaml", 0, faults);
        faults.throwIfAny();
        Findings remarks = SheetCheck.of(sheet.rows(), ShippedRules.rules());
        double took = (System.nanoTime() - start) / 1e9;
        System.out.printf(Locale.ROOT, "%d rows, %s: read and looked over in %.2f s (%d remarks)%n", ROWS, hard, took, remarks.count());
        assertThat(sheet.rows()).hasSize(ROWS);
        assertThat(remarks.count()).isPositive();
        assertThat(took).as("s to read and look over").isLessThan(5);
    }
}
