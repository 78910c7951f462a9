package courseworthy;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import courseworthy.cli.Format;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A season made up of the shipped courses and workshop. What thirty riders and twelve events take is measured by hand:
 * {@link GeneratedSeasonMeasure}.
 */
class GeneratedSeasonTest {

    private static final Path EXAMPLES = Path.of("docs", "examples");
    private static final int RIDERS = 3;
    private static final int EVENTS = 3;

    @TempDir
    Path folder;

    /** Every third rider shares the workshop of the one before. */
    static void write(Path folder, int riders, int starts) throws IOException {
        StringBuilder season = new StringBuilder("riders:\n");
        Files.createDirectories(folder.resolve("events"));
        String workshop = Files.readString(EXAMPLES.resolve("workshops").resolve("cellar.yaml"));
        for (int i = 0; i < riders; i++) {
            Files.writeString(folder.resolve("r" + i + ".yaml"), "mass: " + (55 + i) + " kg\npower:\n  - {for: 20 min, power: " + (250 + 3 * i) + " W}\n");
            Files.writeString(folder.resolve("w" + i + ".yaml"), workshop);
            int shared = i % 3 == 2 ? i - 1 : i;
            season.append("  - {name: Rider ").append(i).append(", rider: r").append(i).append(".yaml, workshop: w").append(shared).append(".yaml}\n");
        }
        season.append("events:\n");
        List<Path> events;
        try (Stream<Path> all = Files.list(EXAMPLES.resolve("events"))) {
            events = all.sorted().limit(starts).toList();
        }
        for (int i = 0; i < events.size(); i++) {
            String file = events.get(i).getFileName().toString();
            // Of a race over several days one is ridden, of which the name is all that is known.
            String event = Files.readString(events.get(i));
            Files.writeString(folder.resolve("events").resolve(file), event.contains("\nstages:") ? event.lines().findFirst().orElseThrow() + "\n" : event);
            season.append("  - {course: ").append(file, 0, file.length() - 5).append(", event: events/").append(file).append(", date: 2026-")
                    .append(i < 9 ? "0" : "").append(i + 1).append("-12}\n");
        }
        Files.writeString(folder.resolve("season.yaml"), season);
    }

    private String season() {
        return season(folder);
    }

    static String season(Path folder) {
        return new ToolOutput().season(folder.toString(), Format.JSON);
    }

    /** Every start has its build, no part is on two bikes on one day, and the threads leave no mark. */
    @Test
    void everyStartIsBuiltAndNoPartServesTwice() throws IOException {
        write(folder, RIDERS, EVENTS);
        String written = season();
        JsonNode season = new ObjectMapper().readTree(written);
        assertThat(season.get("rides")).hasSize(RIDERS * EVENTS);
        Map<String, Set<String>> taken = new HashMap<>();
        for (JsonNode ride : season.get("rides")) {
            int rider = Integer.parseInt(ride.get("rider").asText().substring("Rider ".length()));
            String day = ride.get("date").asText() + " " + (rider % 3 == 2 ? rider - 1 : rider);
            for (JsonNode part : ride.get("build").get("parts")) {
                assertThat(taken.computeIfAbsent(day, each -> new HashSet<>()).add(part.get("part").asText())).as(day + ", " + part).isTrue();
            }
        }
        long shared = RIDERS / 3 * (long) EVENTS;
        assertThat(season.get("conflicts").size()).isGreaterThanOrEqualTo((int) shared);
        assertThat(season()).isEqualTo(written);
    }

    /** Ridden twice, the second start finds everything in place where parts stay, and the same work again where they go back. */
    @Test
    void theSecondStartBeginsWhereTheFirstEnded() throws IOException {
        Files.copy(EXAMPLES.resolve("workshops").resolve("cellar.yaml"), folder.resolve("w.yaml"));
        Files.copy(EXAMPLES.resolve("events").resolve("heather-ridge.yaml"), folder.resolve("e.yaml"));
        String twice = """
                riders: [{name: Ann, workshop: w.yaml}]
                events:
                  - {course: heather-ridge, event: e.yaml, date: 2026-06-14}
                  - {course: heather-ridge, event: e.yaml, date: 2026-07-14}
                """;
        Files.writeString(folder.resolve("season.yaml"), twice);
        JsonNode stay = new ObjectMapper().readTree(season()).get("rides");
        assertThat(stay.get(0).get("build").get("swaps")).isNotEmpty();
        assertThat(stay.get(1).get("build").get("swaps")).isEmpty();
        assertThat(stay.get(1).get("build").get("parts")).isEqualTo(stay.get(0).get("build").get("parts"));
        assertThat(stay.get(1).get("build").get("mass_now_kg")).isEqualTo(stay.get(0).get("build").get("mass_kg"));
        Files.writeString(folder.resolve("season.yaml"), "after each event: back\n" + twice);
        JsonNode back = new ObjectMapper().readTree(season()).get("rides");
        assertThat(back.get(1).get("build").get("swaps")).isEqualTo(back.get(0).get("build").get("swaps")).isNotEmpty();
    }
}
