package courseworthy;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a season of thirty riders and twelve events takes, on two cores. */
class GeneratedSeasonMeasure {

    private static final int RIDERS = Integer.getInteger("courseworthy.season.riders", 30);
    private static final int EVENTS = Integer.getInteger("courseworthy.season.events", 12);

    @TempDir
    private Path folder;

    @Test
    void everyStartIsBuiltWithinAMinute() throws IOException {
        GeneratedSeasonTest.write(folder, RIDERS, EVENTS);
        long start = System.nanoTime();
        String written = GeneratedSeasonTest.season(folder);
        double took = (System.nanoTime() - start) / 1e9;
        System.out.printf(Locale.ROOT, "%d riders, %d events: %.1f s%n", RIDERS, EVENTS, took);
        assertThat(new ObjectMapper().readTree(written).get("rides")).hasSize(RIDERS * EVENTS);
        assertThat(took).as("s").isLessThan(60);
    }
}
