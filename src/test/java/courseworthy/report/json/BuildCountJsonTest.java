package courseworthy.report.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import courseworthy.ToolOutput;
import courseworthy.cli.Format;
import courseworthy.task.Request;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The count of the build for a race, worked out again from the rest of the brief's JSON, the workshop's file and the page that says how to. */
class BuildCountJsonTest {

    private static final String WORKSHOP = "docs/examples/workshops/cellar.yaml";
    private static final Path PAGE = Path.of("docs/reference/build-count.md");
    private static final double EXACT = 1e-9;
    private static final Map<String, Integer> FORCE = Map.of("must", 4, "should", 2, "may", 1);

    private static JsonNode brief(String course) {
        return OutputSchema.tree(new ToolOutput().brief(Request.builder(course).event("docs/examples/events/" + course + ".yaml")
                .rider("docs/examples/riders/ida-hardtail.yaml").workshop(WORKSHOP).build(), Format.JSON));
    }

    @ParameterizedTest
    @ValueSource(strings = {"heather-ridge", "grey-shoulder"})
    void eachTermAndTheTotalComeOutAgain(String course) throws IOException {
        JsonNode brief = brief(course);
        JsonNode count = brief.get("build").get("count");
        double total = 0;
        for (String kind : List.of("decisions", "empty_places", "masses", "swaps", "pairs")) {
            double sum = 0;
            for (JsonNode term : count.get(kind)) {
                double again = switch (kind) {
                    case "decisions" -> departure(term, brief);
                    case "masses" -> mass(term, brief);
                    case "swaps" -> swap(term, brief.get("build"));
                    case "pairs" -> pair(term);
                    default -> 100_000;
                };
                assertThat(term.get("cost_notches").asDouble()).as(term.toString()).isCloseTo(again, within(EXACT));
                sum += again;
            }
            assertThat(count.get(kind + "_notches").asDouble()).as(kind).isCloseTo(sum, within(EXACT));
            total += sum;
        }
        assertThat(count.get("total_notches").asDouble()).isCloseTo(total, within(EXACT)).isPositive();
        nothingIsLeftOut(brief);
    }

    /** What the brief says is not met, or is swapped, is in the count; so is the mass of each part that may be fitted for its lightness. */
    private static void nothingIsLeftOut(JsonNode brief) {
        JsonNode build = brief.get("build");
        JsonNode count = build.get("count");
        List<String> topics = new ArrayList<>();
        count.get("decisions").forEach(each -> topics.add(each.get("topic").asText()));
        List<String> swapped = new ArrayList<>();
        count.get("swaps").forEach(each -> swapped.add(each.get("part").asText()));
        assertThat(build.get("not_met")).isNotEmpty().allSatisfy(each -> assertThat(topics).contains(each.get("topic").asText()));
        for (JsonNode each : build.get("swaps")) {
            String place = each.get("place").asText();
            if (!List.of("stem", "spacers", "lights").contains(place) && !place.endsWith("sealant")) {
                assertThat(swapped).contains((each.get("on").isNull() ? each.get("off") : each.get("on")).asText());
            }
        }
        List<String> weighed = new ArrayList<>();
        count.get("masses").forEach(each -> weighed.add(each.get("place").asText()));
        assertThat(weighed).contains("fork", "front wheel", "rear wheel", "front tyre", "rear tyre", "cassette", "chainring")
                .doesNotContain("saddle", "pedals", "crank", "stem", "bar");
    }

    // Decisions

    private static double departure(JsonNode term, JsonNode brief) throws IOException {
        JsonNode decision = find(brief.get("decisions"), "topic", term.get("topic").asText());
        assertThat(term.get("wanted")).isEqualTo(decision.get("value"));
        int weight = weight(decision);
        if (term.get("got").isNull()) {
            return 2 * Math.max(1, weight);
        }
        String[] row = row(term.get("topic").asText());
        double apart = weight == 0 || harmless(row[4], term) ? 0 : notches(row[3], term.get("wanted"), term.get("got"));
        assertThat(term.get("weight").asInt()).isEqualTo(weight);
        assertThat(term.get("apart_notches").asDouble()).as(term.toString()).isEqualTo(apart);
        double tens = Math.floor(term.get("apart_s").asDouble() / 10);
        double bounds = bounds(row[3], decision, term, tens);
        assertThat(term.get("beyond_bounds_notches").asDouble()).as(term.toString()).isEqualTo(bounds);
        return weight * (apart + tens) + bounds;
    }

    private static int weight(JsonNode decision) {
        int out = 0;
        for (JsonNode each : decision.get("for")) {
            boolean preference = List.of("prefer", "avoid").contains(each.get("says").get("verb").asText());
            out = preference ? Math.max(out, FORCE.get(each.get("force").asText())) : out;
        }
        int outvoted = 0;
        for (JsonNode each : decision.get("against")) {
            boolean preference = each.get("how").asText().equals("outvoted") && each.get("says").get("verb").asText().equals("prefer");
            outvoted = preference ? Math.max(outvoted, FORCE.get(each.get("force").asText())) : outvoted;
        }
        return out > 0 ? out : outvoted;
    }

    private static boolean harmless(String side, JsonNode term) {
        double more = term.get("got").asDouble() - term.get("wanted").asDouble();
        return side.equals("more") && more >= 0 || side.equals("less") && more <= 0;
    }

    private static double bounds(String notch, JsonNode decision, JsonNode term, double tens) throws IOException {
        double sum = 0;
        for (JsonNode each : decision.get("for")) {
            JsonNode value = each.get("says").get("value");
            String verb = each.get("says").get("verb").asText();
            boolean option = verb.equals("rule out") || verb.equals("avoid");
            boolean broken = option ? value.equals(term.get("got")) : verb.startsWith("at ") && beyond(notch, verb, value, term.get("got"));
            if (broken && !leftToFit(each.get("rule").asText())) {
                boolean same = option || value.equals(term.get("wanted"));
                assertThat(same || tens == 0).as("a bound elsewhere than what is decided, with a time that the JSON does not have: choose another example").isTrue();
                sum += FORCE.get(each.get("force").asText()) * ((option ? 2 : Math.max(1, notches(notch, value, term.get("got")))) + tens);
            }
        }
        return sum;
    }

    private static boolean beyond(String notch, String verb, JsonNode bound, JsonNode got) {
        double more = position(notch, got) - position(notch, bound);
        return verb.equals("at least") ? more < 0 : more > 0;
    }

    private static boolean leftToFit(String rule) throws IOException {
        return rule.startsWith("pairing/") || Files.readString(PAGE).contains("`" + rule + "`");
    }

    // The page's table: a topic's notch

    private static String[] row(String topic) throws IOException {
        for (String line : Files.readAllLines(PAGE)) {
            if (line.startsWith("| " + topic + " |")) {
                return line.split(" ?\\| ?", -1);
            }
        }
        throw new AssertionError("no row of " + topic);
    }

    private static double position(String notch, JsonNode value) {
        return notch.startsWith("a step of ") ? List.of(notch.substring("a step of ".length()).split(" < ")).indexOf(value.asText()) : value.asDouble();
    }

    private static double notches(String notch, JsonNode one, JsonNode other) {
        if (notch.equals("2 for another")) {
            return one.equals(other) ? 0 : 2;
        }
        double apart = Math.abs(position(notch, one) - position(notch, other));
        if (notch.startsWith("a step of ")) {
            return apart;
        }
        Matcher figure = Pattern.compile("([0-9.]+)( %)?.*").matcher(notch);
        assertThat(figure.matches()).as(notch).isTrue();
        double size = Double.parseDouble(figure.group(1)) / (figure.group(2) == null ? 1 : 100);
        return Math.floor(apart / size + 0.5 + EXACT);
    }

    // Mass, work, pairs

    private static double mass(JsonNode term, JsonNode brief) throws IOException {
        JsonNode part = part(term.get("part").asText());
        double hours = part.has("hours used") ? figure(part.get("hours used")) : Double.MAX_VALUE;
        boolean stands = find(brief.get("build").get("places"), "place", term.get("place").asText()).get("before").equals(term.get("part"));
        if (part.has("mass") && (stands || hours >= 5)) {
            assertThat(term.get("counted_kg").asDouble()).isCloseTo(figure(part.get("mass")) / (part.get("mass").asText().endsWith("kg") ? 1 : 1000), within(EXACT));
        }
        return term.get("counted_kg").asDouble() * 1000 * brief.get("build").get("count").get("saved_per_kg_s").asDouble() / 10_000;
    }

    private static double figure(JsonNode written) {
        return Double.parseDouble(written.asText().replaceAll("[^0-9.].*", ""));
    }

    private static double swap(JsonNode term, JsonNode build) {
        for (JsonNode each : build.get("swaps")) {
            if (each.get("on").equals(term.get("part"))) {
                assertThat(each.get("work_s")).isEqualTo(term.get("work_s"));
                boolean lent = !each.get("from").isNull() && !each.get("from").equals(build.get("bike"));
                assertThat(!lent || term.get("times").asInt() == 2).as(each.toString()).isTrue();
            }
        }
        double once = Math.max(1, term.get("work_s").asDouble() / 900) - 0.00001;
        double end = term.get("changes_ends").asBoolean() ? Math.floor(1_000_000 * 2 / 15.0) / 1_000_000 : 0;
        return term.get("times").asInt() * Math.round(once * 1_000_000) / 1_000_000.0 + end;
    }

    private static double pair(JsonNode term) throws IOException {
        JsonNode one = part(term.get("parts").get(0).asText());
        JsonNode other = part(term.get("parts").get(1).asText());
        Map<String, Double> costs = new HashMap<>(Map.of("tyres that differ", 0.5, "the later of a pair in front", 0.000001, "brake pads of two compounds", 1.5));
        List<String> keys = term.get("what").asText().startsWith("brake") ? List.of("compound") : List.of("width", "casing", "tread");
        boolean differ = keys.stream().anyMatch(key -> !one.path(key).equals(other.path(key)));
        assertThat(differ).as(term.toString()).isEqualTo(!term.get("what").asText().startsWith("the later"));
        return costs.get(term.get("what").asText());
    }

    /** A part as it is written in the workshop's file. */
    private static JsonNode part(String name) throws IOException {
        JsonNode file = new YAMLMapper().readTree(Files.readString(Path.of(WORKSHOP)));
        return file.findParents("name").stream().filter(each -> each.get("name").asText().equals(name)).findFirst().orElseThrow();
    }

    private static JsonNode find(JsonNode list, String key, String value) {
        for (JsonNode each : list) {
            if (each.get(key).asText().equals(value)) {
                return each;
            }
        }
        throw new AssertionError("no " + value);
    }
}
