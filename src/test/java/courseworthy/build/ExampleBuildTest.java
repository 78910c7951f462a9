package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import courseworthy.Courseworthy;
import courseworthy.Courseworthy.Format;
import courseworthy.Request;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;

/** The build of the shipped example, held against habits of the trade (common practice, no source). */
class ExampleBuildTest {

    private static final Request RACE = new Request("heather-ridge", null, "docs/examples/events/heather-ridge.yaml",
            "docs/examples/riders/robin-gravel.yaml", List.of(), null, null, "docs/examples/workshops/robin.yaml");

    private static String brief(Format format) {
        return new Courseworthy(Path.of(""), remark -> { }).brief(RACE, format, false);
    }

    private static JsonNode build() throws IOException {
        return new ObjectMapper().readTree(brief(Format.JSON)).get("build");
    }

    private static String part(JsonNode build, String place) {
        return StreamSupport.stream(build.get("parts").spliterator(), false).filter(each -> each.get("place").asText().equals(place))
                .map(each -> each.get("part").asText()).collect(Collectors.joining());
    }

    /** Carbon wheels for racing, the dropper stays on, the shared crank comes over for its power meter, sidewalls keep their protection. */
    @Test
    void theRaceBikeIsBuiltForTheRace() throws IOException {
        JsonNode build = build();
        assertThat(build.get("bike").asText()).isEqualTo("race bike");
        assertThat(part(build, "front wheel")).isEqualTo("race carbon front");
        assertThat(part(build, "rear wheel")).isEqualTo("race carbon rear");
        assertThat(part(build, "crank")).isEqualTo("power crank");
        assertThat(part(build, "seatpost")).contains("dropper");
        assertThat(part(build, "rear tyre")).doesNotContain("light");
        assertThat(build.get("mass_kg").asDouble()).isLessThan(build.get("mass_now_kg").asDouble());
        assertThat(build.get("lacking").get(0).asText()).isEqualTo("training bike stands without power crank until they go back");
        assertThat(build.get("in_the_way")).isEmpty();
    }

    /** The race bike takes over where the rider sits on the bike that is trained on. */
    @Test
    void thePositionComesAlong() throws IOException {
        assertThat(build().get("position")).extracting(JsonNode::asText).containsExactly(
                "Take race stem 70, the other way up (70 mm at 6 deg), with 15 mm of race spacers and 15 mm of loose spacers under it; it leaves the "
                        + "hands 11 mm too low and 1 mm too far back.",
                "Saddle: height 750 mm, as it is. Tip 38 mm behind the bottom bracket: 2 mm farther forward than now. To be tried in training "
                        + "first; the position command tells the rest.");
    }

    /** What the JSON says stands in the text and in the Markdown too. */
    @Test
    void theThreeAgree() throws IOException {
        JsonNode build = build();
        String text = brief(Format.TEXT).replaceAll("\\s+", " ");
        String markdown = brief(Format.MARKDOWN).replaceAll("\\s+", " ");
        build.get("parts").forEach(each -> {
            assertThat(text).contains(each.get("place").asText() + " " + each.get("part").asText());
            assertThat(markdown).contains("| " + each.get("place").asText() + " | " + each.get("part").asText());
        });
        build.get("swaps").forEach(each -> assertThat(text).contains("Put on " + each.get("on").asText()));
        String list = text.substring(text.indexOf("CHECKLIST"));
        build.get("swaps").forEach(each -> assertThat(list).contains("Put on " + each.get("on").asText()));
        assertThat(list).contains("Ride 30 to 60 min on the very build");
        build.get("pressures").forEach(each -> assertThat(text).contains(each.asText()));
        assertThat(brief(Format.TEXT).lines()).allMatch(line -> line.length() <= 80);
    }
}
