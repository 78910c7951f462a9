package courseworthy.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import courseworthy.report.ExampleBrief;
import courseworthy.topic.Topics;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class JsonBriefTest {

    private final String json = JsonBrief.of(ExampleBrief.rich().brief());
    private final JsonNode tree = OutputSchema.tree(json);

    @Test
    void aBriefKeepsToItsSchema() {
        assertThat(OutputSchema.faults(json)).isEmpty();
    }

    /** The schema itself must be able to fail. */
    @Test
    void theSchemaRefusesWhatIsNotABrief() {
        ObjectNode broken = (ObjectNode) OutputSchema.tree(json);
        ((ObjectNode) broken.get("decisions").get(0)).put("firmness", "sure");
        ((ObjectNode) broken.get("course")).remove("distance_m");
        ((ObjectNode) broken.get("demands").get(0)).put("unit", "km");
        assertThat(OutputSchema.faults(broken.toString())).anyMatch(f -> f.contains("firmness")).anyMatch(f -> f.contains("distance_m"))
                .anyMatch(f -> f.contains("unit")).hasSizeGreaterThanOrEqualTo(3);
    }

    @Test
    void unitsAreThoseOfTheInternationalSystem() {
        assertThat(demand("distance").toString()).isEqualTo(
                "{\"name\":\"distance\",\"value\":24600,\"low\":24600,\"high\":24600,\"unit\":\"m\",\"text\":\"24.6 km\"}");
        assertThat(demand("hours").toString()).isEqualTo(
                "{\"name\":\"hours\",\"value\":4920,\"low\":4200,\"high\":6000,\"unit\":\"s\",\"text\":\"1:22 h (1:10 to 1:40 h)\"}");
        assertThat(demand("hookless").get("value").asText()).isEqualTo("yes");
        assertThat(demand("coldest temperature").get("value").decimalValue()).isEqualByComparingTo("-2");
        assertThat(decision("rear tyre pressure").get("value").decimalValue()).isEqualByComparingTo("200");
        assertThat(decision("rear tyre pressure").get("unit").asText()).isEqualTo("kPa");
        assertThat(decision("front tyre width").get("value").decimalValue()).isEqualByComparingTo("45");
        assertThat(decision("front tyre width").get("unit").asText()).isEqualTo("mm");
        assertThat(decision("battery reserve").get("value").decimalValue()).isEqualByComparingTo("0.3");
        assertThat(decision("bike").get("value").asText()).isEqualTo("gravel");
    }

    @Test
    void everyTopicIsThereInTheOrderOfTheCatalogue() {
        List<String> topics = new ArrayList<>();
        tree.get("decisions").forEach(decision -> topics.add(decision.get("topic").asText()));
        assertThat(topics).isEqualTo(Topics.names());
    }

    @Test
    void aLostClaimSaysWhatItLostTo() {
        JsonNode lost = decision("front tyre width").get("against").get(0);
        assertThat(lost.get("rule").asText()).isEqualTo("Fast lines/narrow");
        assertThat(lost.get("overruled_by").asText()).isEqualTo("shipped/wide-on-rough");
        assertThat(lost.get("how").asText()).isEqualTo("outvoted");
        assertThat(lost.get("says").toString()).isEqualTo("{\"verb\":\"prefer\",\"value\":38,\"unit\":\"mm\",\"written\":\"38 mm\"}");
    }

    @Test
    void aGroundCarriesTheNumberItRestedOn() {
        JsonNode ground = decision("front tyre width").get("for").get(0).get("grounds").get(0);
        assertThat(ground.toString()).isEqualTo("{\"measure\":\"roughness\",\"value\":2.3,\"unit\":\"\",\"text\":\"rough (2.3)\","
                + "\"test\":\"at least rough\",\"met\":true,\"near\":true}");
    }

    @Test
    void theCourseIsOneLap() {
        JsonNode course = tree.get("course");
        assertThat(course.get("distance_m").decimalValue()).isEqualByComparingTo("8200");
        assertThat(course.get("surfaces").toString())
                .isEqualTo("[{\"surface\":\"gravel\",\"share\":0.7561,\"share_at_most\":0.7561},"
                        + "{\"surface\":\"unknown\",\"share\":0.2439,\"share_at_most\":0.2439}]");
        assertThat(course.get("repairs").toString()).isEqualTo("[{\"what\":\"elevation spikes removed\",\"count\":3}]");
    }

    @Test
    void noValueIsNull() {
        JsonNode none = decision("front tyre pressure");
        assertThat(none.get("value").isNull()).isTrue();
        assertThat(none.get("status").asText()).isEqualTo("none possible");
        assertThat(none.get("firmness").isNull()).isTrue();
    }

    @Test
    void theTextIsUtf8WithLineFeedsAndPlainNumbers() {
        assertThat(json).endsWith("}\n").doesNotContain("\r", "\t", "NaN", "-0,", "Infinity").doesNotContainPattern("[0-9][eE][+-]?[0-9]");
    }

    @Test
    void hostileNamesStayWhatTheyAre() {
        ExampleBrief hostile = ExampleBrief.rich();
        hostile.name = ExampleBrief.HOSTILE;
        String text = JsonBrief.of(hostile.brief());
        assertThat(text).doesNotContain("\u001b", "\u0007");
        assertThat(OutputSchema.faults(text)).isEmpty();
        assertThat(OutputSchema.tree(text).get("course").get("name").asText()).isEqualTo(ExampleBrief.HOSTILE.replace('\ud800', '\ufffd'));
        assertThat(new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8)).isEqualTo(text);
    }

    @Test
    void oneTopicAlone() {
        JsonNode alone = OutputSchema.tree(JsonBrief.of(ExampleBrief.rich().brief(), Topics.FOOD, ExampleBrief.flips()));
        assertThat(alone.get("decisions")).hasSize(1);
        assertThat(alone.get("decisions").get(0).get("topic").asText()).isEqualTo("food");
    }

    private JsonNode decision(String topic) {
        return find("decisions", "topic", topic);
    }

    private JsonNode demand(String name) {
        return find("demands", "name", name);
    }

    private JsonNode find(String list, String key, String value) {
        for (JsonNode node : tree.get(list)) {
            if (node.get(key).asText().equals(value)) {
                return node;
            }
        }
        throw new AssertionError(value);
    }
}
