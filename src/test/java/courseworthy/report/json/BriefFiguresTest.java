package courseworthy.report.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.ToolOutput;
import courseworthy.cli.Format;
import courseworthy.task.Request;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What every decision is worth, what is least firm, and how light it is, as a brief's JSON has them: against the rest of it. */
class BriefFiguresTest {

    private static final Map<String, JsonNode> BRIEFS = new HashMap<>();

    private static Request request(String name) {
        return Request.builder("course-profiles/" + name + ".yaml").event("docs/examples/events/" + name + ".yaml")
                .rider("docs/examples/riders/kim-cross-country.yaml").build();
    }

    private static JsonNode brief(String name) {
        return BRIEFS.computeIfAbsent(name, each -> OutputSchema.tree(new ToolOutput().brief(request(each), Format.JSON)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"heather-ridge", "market-roads", "quern-hills"})
    void everyDecisionHasItsWorthOrAReasonWhyNot(String name) {
        Set<String> listed = new HashSet<>();
        double before = Double.MAX_VALUE;
        boolean unknown = false;
        for (JsonNode each : brief(name).get("worth")) {
            Topic topic = Topics.find(each.get("topic").asText());
            assertThat(listed.add(topic.name())).isTrue();
            if (each.get("front_and_rear").asBoolean()) {
                assertThat(listed.add(topic.otherEnd().name())).isTrue();
            }
            unknown |= !each.get("unknown_because").isNull();
            assertThat(each.get("unknown_because").isNull()).as("known before unknown, at %s", topic).isEqualTo(!unknown);
            if (!unknown) {
                double saved = each.get("saved_s").get("value").asDouble();
                assertThat(saved).isLessThanOrEqualTo(before);
                before = saved;
                for (JsonNode other : each.get("others")) {
                    assertThat(other.get("saved_s").get("value").asDouble()).isLessThanOrEqualTo(saved);
                }
            }
        }
        assertThat(listed).containsExactlyInAnyOrderElementsOf(Topics.all().stream().map(Topic::name).toList());
    }

    /** The same figures as the decision alone gives with all its alternatives. */
    @Test
    void theWorthOfADecisionIsThatOfTheTopicInFull() {
        for (JsonNode each : brief("heather-ridge").get("worth")) {
            if (List.of("rear tyre casing", "front tyre casing", "lockout", "water").contains(each.get("topic").asText())) {
                JsonNode full = OutputSchema.tree(new ToolOutput().topic(request("heather-ridge"), each.get("topic").asText(), Format.JSON))
                        .get("decisions").get(0).get("worth");
                double best = Double.NEGATIVE_INFINITY;
                for (JsonNode alternative : full.get("alternatives")) {
                    best = Math.max(best, alternative.get("saved_s").get("value").asDouble());
                }
                assertThat(each.get("saved_s").get("value").asDouble()).as(each.get("topic").asText()).isEqualTo(best);
                assertThat(each.get("others")).hasSize(full.get("alternatives").size() - 1);
            }
        }
    }

    /** Of a mass alone: what the plain rule of the brief, so much a kilogram, makes of it. */
    @Test
    void aTubeIsWorthItsMass() {
        String mass = new ToolOutput().part(request("heather-ridge"), "worth", Format.MARKDOWN).replaceAll("(?s).*1 kg less saves ([0-9.]+) min.*", "$1");
        for (JsonNode each : brief("heather-ridge").get("worth")) {
            if (each.get("topic").asText().equals("tubes")) {
                // A tube for such tyres weighs 0.1 to 0.25 kg (common practice, no source).
                assertThat(each.get("saved_s").get("value").asDouble()).isBetween(0.1 * 60 * Double.parseDouble(mass), 0.25 * 60 * Double.parseDouble(mass));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"heather-ridge", "market-roads", "quern-hills", "larch-common"})
    void theLeastFirmAreOpenDecisionsWithWhatSettlesThem(String name) {
        Map<String, JsonNode> decisions = new HashMap<>();
        brief(name).get("decisions").forEach(each -> decisions.put(each.get("topic").asText(), each));
        boolean thin = decisions.values().stream().anyMatch(each -> each.get("firmness").asText().equals("thin") && insisted(each)
                && !each.get("firmness_from").get("evidence").asText().equals("none"));
        JsonNode least = brief(name).get("least_firm");
        assertThat(least).hasSizeBetween(1, 3);
        for (JsonNode each : least) {
            JsonNode decision = decisions.get(each.get("topic").asText());
            assertThat(each.get("firmness")).isEqualTo(decision.get("firmness"));
            assertThat(each.get("close")).isEqualTo(decision.get("close"));
            boolean open = each.get("close").asBoolean() || !each.get("firmness").asText().equals("firm");
            assertThat(open).as(each.toString()).isTrue();
            assertThat(each.get("settled_by").isEmpty() || !List.of("a test ride", "your own choice").contains(each.get("settled_with").asText())).as(each.toString()).isTrue();
            assertThat(TOLD_BY_NO_RIDE).as(each.toString()).noneMatch(topic -> each.get("topic").asText().equals(topic) && each.get("settled_with").asText().equals("a test ride"));
        }
        assertThat(!thin || least.get(0).get("firmness").asText().equals("thin")).as("thin advice comes first").isTrue();
    }

    /** What a ride does not tell is better one way or the other. */
    private static final List<String> TOLD_BY_NO_RIDE = List.of("emergency kit", "tools", "spares", "plugs", "tubes", "lights", "chain", "cassette", "battery reserve");

    /** Whether any advice that the value follows says more than that one may. */
    private static boolean insisted(JsonNode decision) {
        for (JsonNode claim : decision.get("for")) {
            if (!claim.get("force").asText().equals("may")) {
                return true;
            }
        }
        return false;
    }

    /** Light changes when the sun does by the same brief, and the spans fill the ride. */
    @ParameterizedTest
    @ValueSource(strings = {"heather-ridge", "quern-hills", "flintmoor-100"})
    void lightIsTheSunsOnTheClockOfTheRide(String name) {
        JsonNode plan = brief(name).get("plan");
        double start = seconds(plan.get("start"));
        double rise = seconds(plan.get("sunrise")) - start;
        double set = seconds(plan.get("sunset")) - start;
        double at = 0;
        for (JsonNode span : plan.get("light")) {
            assertThat(span.get("from_s").asDouble()).isEqualTo(at);
            at = span.get("to_s").asDouble();
            double middle = (span.get("from_s").asDouble() + at) / 2;
            assertThat(span.get("light").asText().equals("day")).as("after %.0f s", middle).isEqualTo(middle > rise && middle < set);
        }
        assertThat(at).isEqualTo(brief(name).get("ride").get("total_s").get("value").asDouble(), within(1.0));
    }

    private static double seconds(JsonNode clock) {
        String[] parts = clock.asText().split(":");
        return 3600 * Integer.parseInt(parts[0]) + 60 * Integer.parseInt(parts[1]);
    }
}
