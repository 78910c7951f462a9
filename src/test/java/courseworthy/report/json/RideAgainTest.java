package courseworthy.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.ToolOutput;
import courseworthy.cli.Format;
import courseworthy.task.Request;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A third person gets within 1 % of the middle time of every shipped course from the JSON and docs/explanation/figures.md. */
class RideAgainTest {

    static Stream<String> courses() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("course-profiles"))) {
            return files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".yaml")).sorted().toList().stream();
        }
    }

    private static JsonNode ride(String file) {
        return ride(file, "docs/examples/events/" + file);
    }

    private static JsonNode ride(String file, String event) {
        Request request = Request.builder("course-profiles/" + file).event(event)
                .rider("docs/examples/riders/kim-cross-country.yaml").role("race").build();
        return OutputSchema.tree(new ToolOutput().brief(request, Format.JSON)).get("ride");
    }

    /** Every field that the page names is there, so that nobody looks for it in vain. */
    @Test
    void thePageNamesFieldsThatAreThere() throws IOException {
        JsonNode ride = ride("grey-shoulder.yaml");
        Matcher name = Pattern.compile("`([a-z][a-z0-9_.]+)`").matcher(Files.readString(Path.of("docs/explanation/figures.md")));
        int seen = 0;
        while (name.find()) {
            String field = name.group(1).replaceFirst("^ride\\.", "");
            String first = field.split("\\.")[0];
            boolean apart = List.of("ride", "code", "value", "low", "high", "decisions").contains(first);
            assertThat(apart || ride.has(first) || !ride.findPath(first).isMissingNode()).as(name.group(1)).isTrue();
            seen++;
        }
        assertThat(seen).isGreaterThan(40);
    }

    @ParameterizedTest
    @MethodSource("courses")
    void theTimeCanBeWorkedOutAgain(String file) {
        again(file, ride(file));
    }

    @Test
    void underAForecastByTheHourToo() {
        again("flintmoor-100 by the hour", ride("flintmoor-100.yaml", "docs/examples/by-the-hour/flintmoor-100.yaml"));
    }

    private static void again(String file, JsonNode ride) {
        double told = ride.get("riding_s").get("value").asDouble();
        double again = new RideAgain(ride).seconds();
        assertThat(Math.abs(again / told - 1)).as("%s: %.0f s told, %.0f s again", file, told, again).isLessThan(0.01);
        JsonNode stops = ride.get("stops");
        double stopped = ride.get("stops_elsewhere_s").get("value").asDouble();
        for (JsonNode stop : stops) {
            stopped += stop.get("stop_s").get("value").asDouble();
        }
        assertThat(Math.abs(stopped - ride.get("stops_s").get("value").asDouble())).as(file).isLessThan(0.5 + 0.1 * stops.size());
        assertThat(ride.get("inputs").toString().length()).as("characters of inputs").isLessThan(200_000);
    }
}
