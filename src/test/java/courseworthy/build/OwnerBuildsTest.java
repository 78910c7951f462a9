package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.ToolOutput;
import courseworthy.cli.Format;
import courseworthy.report.json.OutputSchema;
import courseworthy.task.Request;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What an owner of three bikes and a hundred and ten parts, all invented, is told to change for eleven races. */
class OwnerBuildsTest {

    private static final String WORKSHOP = "src/test/resources/courseworthy/build/orchard-shed.yaml";
    private static final List<String> COURSES = List.of("beech-hollow", "fernbrake", "flintmoor-100", "grey-shoulder", "heather-ridge", "larch-common",
            "market-roads", "ochre-flats", "quern-hills", "three-becks", "wide-fallow");

    /** So many swaps in all, as they were read step by step and found to serve something; more would be busy work. */
    private static final int READ = 80;

    private static final Map<String, JsonNode> BUILDS = new LinkedHashMap<>();

    @BeforeAll
    static void builds() {
        for (String course : COURSES) {
            Request request = Request.builder(course).event("docs/examples/events/" + course + ".yaml").workshop(WORKSHOP).build();
            BUILDS.put(course, OutputSchema.tree(new ToolOutput().brief(request, Format.JSON)).get("build"));
        }
    }

    private static List<String> texts(JsonNode list) {
        List<String> out = new ArrayList<>();
        list.forEach(each -> out.add(each.asText()));
        return out;
    }

    private static String part(JsonNode build, String place) {
        for (JsonNode each : build.get("parts")) {
            if (each.get("place").asText().equals(place)) {
                return each.get("part").asText();
            }
        }
        return null;
    }

    @Test
    void noMoreIsChangedThanServes() {
        int swaps = 0;
        for (Map.Entry<String, JsonNode> each : BUILDS.entrySet()) {
            for (JsonNode swap : each.getValue().get("swaps")) {
                swaps++;
                assertThat(texts(swap.get("why"))).as(each.getKey() + " " + swap.get("on")).isNotEmpty().doesNotContain("");
            }
        }
        assertThat(swaps).isBetween(1, READ);
    }

    /** Roads on the road bike, gravel on the gravel bike, trails on the full-suspension bike, whatever is lent. */
    @Test
    void eachCourseIsRiddenOnTheBikeForIt() {
        assertThat(BUILDS.get("market-roads").get("bike").asText()).isEqualTo("green bike");
        assertThat(List.of("flintmoor-100", "quern-hills", "wide-fallow")).allMatch(course -> BUILDS.get(course).get("bike").asText().equals("brown bike"));
        assertThat(List.of("beech-hollow", "fernbrake", "grey-shoulder", "heather-ridge", "three-becks"))
                .allMatch(course -> BUILDS.get(course).get("bike").asText().equals("red bike"));
    }

    /** The stem of the build is the one that the position names, and what goes with it is said to. */
    @Test
    void positionAndBuildNameTheSameStem() {
        int carried = 0;
        for (JsonNode build : BUILDS.values()) {
            String bar = build.get("position").isEmpty() ? "" : build.get("position").get(0).asText();
            if (bar.startsWith("Take ") || bar.startsWith("Keep ")) {
                carried++;
                assertThat(bar).contains(part(build, "stem"));
                assertThat(build.get("to_mind").toString()).contains("32 mm of spacers go above the stem");
            }
        }
        assertThat(carried).isGreaterThan(2);
    }

    /** All three saddles are ridden in: the one that the build leaves alone is not to be exchanged for the position's sake either. */
    @Test
    void aSaddleThatIsRiddenInStays() {
        for (Map.Entry<String, JsonNode> each : BUILDS.entrySet()) {
            assertThat(texts(each.getValue().get("position"))).as(each.getKey()).noneMatch(line -> line.contains("saddle across"));
        }
    }

    /** New sealant goes in with a tyre: only what stays in its tyre grows old. */
    @Test
    void sealantIsNewWithItsTyre() {
        int old = 0;
        for (Map.Entry<String, JsonNode> each : BUILDS.entrySet()) {
            boolean isOld = texts(each.getValue().get("wear")).stream().anyMatch(line -> line.contains("days old on the day"));
            boolean isNew = false;
            for (JsonNode swap : each.getValue().get("swaps")) {
                isNew |= swap.get("place").asText().equals("rear tyre");
            }
            assertThat(isOld && isNew).as(each.getKey()).isFalse();
            old += isOld ? 1 : 0;
        }
        assertThat(old).as("courses on which it stays in its tyre").isPositive();
    }

    /** Going back leaves nothing on another bike, and everything that was lent is named with where it goes. */
    @Test
    void whatIsLentGoesBack() {
        for (Map.Entry<String, JsonNode> each : BUILDS.entrySet()) {
            Set<String> lent = new LinkedHashSet<>();
            each.getValue().get("swaps").forEach(swap -> {
                if (!swap.get("from").isNull()) {
                    lent.add(swap.get("on").asText());
                }
            });
            Set<String> due = new LinkedHashSet<>();
            each.getValue().get("due_back").forEach(part -> due.add(part.get("part").asText()));
            assertThat(due).as(each.getKey()).containsAll(lent);
        }
    }
}
