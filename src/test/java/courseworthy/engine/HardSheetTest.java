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
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Sheets that are hard to look over are. What that takes is measured by hand: {@link HardSheetMeasure}. */
class HardSheetTest {

    private static final int ROWS = Integer.getInteger("courseworthy.rows", 500);

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource
    void itIsLookedOver(HardSheet hard) throws IOException {
        Path file = Files.writeString(folder.resolve("hard.yaml"), hard.of(ROWS, 5));
        Faults faults = new Faults();
        Sheet sheet = SheetReader.read(file, "hard.yaml", 0, faults);
        faults.throwIfAny();
        Findings remarks = SheetCheck.of(sheet.rows(), ShippedRules.rules());
        assertThat(sheet.rows()).hasSize(ROWS);
        assertThat(remarks.count()).isPositive();
    }
}
