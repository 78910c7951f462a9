package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.report.json.OutputSchema;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What another sheet changes, counted again: the groups and the text from the list of single changes, and that list from whole briefs, each
 * made by itself under either sheet.
 */
class ImpactRecountTest {

    private static final String SHEET = "docs/examples/sheets/hill-country.yaml";
    private static final List<String> COURSES = List.of("ochre-flats", "heather-ridge", "wide-fallow", "market-roads");
    private static final Pattern GROUP = Pattern.compile("; (?:(\\d+) of|all) (\\d+) recommendations?");

    @TempDir
    private Path folder;
    private JsonNode json;
    private String text;

    @BeforeEach
    void compared() throws IOException {
        Files.createDirectory(folder.resolve("courses"));
        Files.createDirectory(folder.resolve("events"));
        for (String course : COURSES) {
            Files.copy(Path.of("course-profiles", course + ".yaml"), folder.resolve("courses/" + course + ".yaml"));
            Files.copy(Path.of("docs/examples/events", course + ".yaml"), folder.resolve("events/" + course + ".yaml"));
        }
        rider("ann", "[juniors]", "road");
        rider("bo", "[seniors]", "gravel");
        rider("cy", "[juniors]", "trail");
        text = impact();
        json = OutputSchema.tree(impact("--format", "json"));
    }

    private void rider(String name, String tags, String kind) throws IOException {
        Files.createDirectories(folder.resolve("riders"));
        Files.writeString(folder.resolve("riders/" + name + ".yaml"), "name: " + name + "\nmass: 62 kg\npower: 220 W\nheld for: 1:00 h\nskill: good\ntags: "
                + tags + "\nbike: {kind: " + kind + "}\n");
    }

    private String impact(String... more) {
        String[] args = {"sheet", "impact", "none", SHEET, "--courses", folder + "/courses", "--events", folder + "/events", "--riders", folder + "/riders"};
        CommandRun ran = CommandRun.of(Stream.concat(Stream.of(args), Stream.of(more)).toArray(String[]::new));
        assertThat(ran.err()).isEmpty();
        return ran.out();
    }

    /** The groups of text and JSON against the single changes. */
    @Test
    void groupsAreTheirMembers() {
        Set<String> changed = new TreeSet<>();
        Set<String> topics = new LinkedHashSet<>();
        int members = 0;
        for (JsonNode each : json.get("decisions")) {
            changed.addAll(rides(each));
            topics.add(each.get("topic").asText());
            members += each.get("rides").size();
        }
        json.get("checklist").forEach(each -> changed.addAll(rides(each)));
        assertThat(json.get("changed").asInt()).isEqualTo(changed.size());
        assertThat(text.replaceAll("\\s+", " ")).contains(" 12 recommendations compared (3 riders on 4 courses): " + changed.size() + " changed, " + topics.size() + " topics touched. ");

        int inGroups = 0;
        List<Integer> counts = new ArrayList<>();
        for (JsonNode group : json.get("groups")) {
            for (JsonNode topic : group.get("topics")) {
                List<JsonNode> alike = alike(group, topic.asText());
                Set<String> rides = new TreeSet<>();
                alike.forEach(each -> rides.addAll(rides(each)));
                assertThat(group.get("calls").asInt()).as("%s", group).isEqualTo(rides.size());
                inGroups += rides.size();
                extent(group, alike);
            }
        }
        assertThat(inGroups).as("each change in one group").isEqualTo(members);
        for (String firmness : List.of("no", "yes")) {
            json.get("groups").forEach(group -> {
                if (group.get("change").asText().equals("firmness") == firmness.equals("yes")) {
                    counts.add(group.get("calls").asInt());
                }
            });
        }
        for (JsonNode group : json.get("checklist_groups")) {
            counts.add(group.get("calls").asInt());
        }
        assertThat(told()).isEqualTo(counts);
    }

    private static Set<String> rides(JsonNode change) {
        Set<String> out = new TreeSet<>();
        change.get("rides").forEach(ride -> out.add(ride.get("course").asText() + "/" + ride.get("rider").asText()));
        return out;
    }

    private List<JsonNode> alike(JsonNode group, String topic) {
        List<JsonNode> out = new ArrayList<>();
        String words = group.get("words").asText();
        for (JsonNode each : json.get("decisions")) {
            String change = each.get("change").asText();
            boolean same = each.get("topic").asText().equals(topic) && change.equals(group.get("change").asText());
            if (same && (!change.equals("instead") || words.endsWith(" becomes " + each.get("to").get("text").asText()))
                    && (!change.equals("firmness") || words.endsWith(" becomes " + each.get("to").get("firmness").asText()))) {
                out.add(each);
            }
        }
        return out;
    }

    /** The least and the most by which a pressure changes, from its values in kPa; and which way each quantity goes. */
    private static void extent(JsonNode group, List<JsonNode> alike) {
        TreeSet<BigDecimal> by = new TreeSet<>();
        for (JsonNode each : alike) {
            JsonNode from = each.get("from").get("value");
            JsonNode to = each.get("to").get("value");
            switch (group.get("change").asText()) {
                case "up" -> by.add(to.decimalValue().subtract(from.decimalValue()));
                case "down" -> by.add(from.decimalValue().subtract(to.decimalValue()));
                case "firmness" -> assertThat(to).isEqualTo(from);
                default -> assertThat(to).isNotEqualTo(from);
            }
        }
        assertThat(by).allMatch(each -> each.signum() > 0);
        if (group.get("topics").get(0).asText().endsWith("tyre pressure") && !by.isEmpty()) {
            String ends = bar(by.first()).equals(bar(by.last())) ? bar(by.last()) : bar(by.first()) + " to " + bar(by.last());
            assertThat(group.get("words").asText()).contains(" by " + ends + " bar, now ");
        }
    }

    private static String bar(BigDecimal kilopascals) {
        return kilopascals.movePointLeft(2).setScale(2).toPlainString();
    }

    /** The counts of the text, in order. */
    private List<Integer> told() {
        List<Integer> out = new ArrayList<>();
        Matcher each = GROUP.matcher(text.replaceAll("\\s+", " "));
        while (each.find()) {
            out.add(Integer.parseInt(each.group(each.group(1) == null ? 2 : 1)));
        }
        return out;
    }

    /** The single changes against two briefs for each rider on each course. */
    @Test
    void changesAreWhatTwoBriefsDifferIn() {
        Map<String, String> changes = new TreeMap<>();
        for (JsonNode each : json.get("decisions")) {
            for (String ride : rides(each)) {
                changes.put(ride + ": " + each.get("topic").asText(), decision(each.get("from")) + " becomes " + decision(each.get("to")));
            }
        }
        Map<String, String> differences = new TreeMap<>();
        for (String course : COURSES) {
            for (String rider : List.of("ann", "bo", "cy")) {
                Map<String, String> before = brief(course, rider);
                Map<String, String> after = brief(course, rider, "--sheet", SHEET);
                before.forEach((topic, was) -> {
                    if (!after.get(topic).equals(was)) {
                        differences.put(course + "/" + rider + ": " + topic, was + " becomes " + after.get(topic));
                    }
                });
            }
        }
        assertThat(changes).isEqualTo(differences);
    }

    private Map<String, String> brief(String course, String rider, String... more) {
        String[] args = {"brief", folder + "/courses/" + course + ".yaml", "--event", folder + "/events/" + course + ".yaml", "--rider",
                folder + "/riders/" + rider + ".yaml", "--format", "json"};
        Map<String, String> out = new TreeMap<>();
        for (JsonNode each : OutputSchema.tree(CommandRun.of(Stream.concat(Stream.of(args), Stream.of(more)).toArray(String[]::new)).out()).get("decisions")) {
            out.put(each.get("topic").asText(), decision(each));
        }
        return out;
    }

    private static String decision(JsonNode decision) {
        return decision.get("status").asText() + ", " + decision.get("text").asText() + ", " + decision.get("firmness").asText();
    }
}
