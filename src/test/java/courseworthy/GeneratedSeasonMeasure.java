package courseworthy;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a season of thirty riders and twelve events takes, on two cores, and what its pages take; those in the memory that
 * {@code -Dcourseworthy.heap=512m} gives.
 */
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

    @Test
    void everyPageIsWrittenWithinAMinute() throws IOException {
        Path season = Files.createDirectory(folder.resolve("season"));
        Path pages = folder.resolve("pages");
        GeneratedSeasonTest.write(season, RIDERS, EVENTS);
        long start = System.nanoTime();
        new ToolOutput().run("season", season.toString(), "--format", "html", "-o", pages.toString());
        double took = (System.nanoTime() - start) / 1e9;
        try (Stream<Path> all = Files.walk(pages)) {
            long written = all.filter(each -> each.toString().endsWith(".html")).count();
            System.out.printf(Locale.ROOT, "%d riders, %d events: %d pages in %.1f s%n", RIDERS, EVENTS, written, took);
            assertThat(written).isEqualTo(1L + RIDERS + EVENTS + (long) RIDERS * EVENTS);
        }
        assertThat(took).as("s").isLessThan(60);
    }
}
