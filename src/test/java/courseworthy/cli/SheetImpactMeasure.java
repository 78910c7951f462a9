package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the shipped library under a coach's page takes for a roster of thirty, on two cores. */
class SheetImpactMeasure {

    private static final int RIDERS = Integer.getInteger("courseworthy.riders", 30);

    @TempDir
    private Path folder;

    @Test
    void aLibraryAndARosterTakeNoLongerThanACoachWaits() throws IOException {
        SheetImpactCommandTest.roster(folder, RIDERS);
        System.setProperty("courseworthy.home", Path.of("").toAbsolutePath().toString());
        try {
            long start = System.nanoTime();
            CommandRun ran = CommandRun.of("sheet", "impact", "none", "docs/examples/sheets/hill-country.yaml", "--riders", folder.toString());
            double took = (System.nanoTime() - start) / 1e9;
            System.out.printf(Locale.ROOT, "%d riders: %.1f s%n", RIDERS, took);
            assertThat(ran.code()).isZero();
            assertThat(took).as("s").isLessThan(20);
        } finally {
            System.clearProperty("courseworthy.home");
        }
    }
}
