package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import courseworthy.fit.FitCaseKeys;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every key of a workshop is used, or said not to be: a change of the example workshop makes a difference that a command shows, or a case of
 * a fit rule turns on it.
 */
class WorkshopKeyUseTest {

    private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Path CHANGES = Path.of("src/test/resources/courseworthy/keys/workshop-changes.yaml");
    private static final String BRIEF = "brief %s.yaml --event %s-day.yaml --rider %s.yaml --workshop cellar.yaml --format json";
    private static final Map<String, String> COMMANDS = Map.of("day", String.format(BRIEF, "quern-hills", "quern-hills", "joss-steel"),
            "race", String.format(BRIEF, "heather-ridge", "heather-ridge", "ida-hardtail"),
            "night", String.format(BRIEF, "heather-ridge", "night", "ida-hardtail"),
            "roads", String.format(BRIEF, "market-roads", "market-roads", "ida-hardtail"),
            "wishes", "season . --format json",
            "position", "position cellar.yaml --rider joss-steel.yaml --format json",
            "carried", "position cellar.yaml --from steel_bike --to hardtail --format json");
    /** Of the same use on every kind of part: told on some, and no user of theirs asks for the kind. */
    private static final Set<String> ALIKE = Set.of("name", "on", "mass", "price", "hours used", "stays", "owned", "rider limit", "mass limit", "end");

    @TempDir
    private Path folder;

    private final Map<String, String> before = new HashMap<>();

    /** One change. */
    private record Change(String of, String key, JsonNode with, JsonNode from, JsonNode to, String by) {
    }

    @BeforeEach
    void files() throws IOException {
        for (String name : List.of("course-profiles/quern-hills", "course-profiles/heather-ridge", "course-profiles/market-roads", "docs/examples/riders/ida-hardtail",
                "docs/examples/riders/joss-steel")) {
            copy(name, Path.of(name).getFileName().toString());
        }
        copy("docs/examples/events/quern-hills", "quern-hills-day");
        copy("docs/examples/events/market-roads", "market-roads-day");
        copy("docs/examples/events/heather-ridge", "night-day");
        copy("docs/examples/events/heather-ridge", "heather-ridge-day");
        Files.writeString(folder.resolve("season.yaml"), "season: One race\ncurrency: florins\na minute is worth: 15\n"
                + "riders:\n  - {name: Ida, rider: ida-hardtail.yaml, workshop: cellar.yaml}\n"
                + "events:\n  - {course: heather-ridge.yaml, event: heather-ridge-day.yaml, starts: [{rider: Ida}]}\n");
        Path night = folder.resolve("night-day.yaml");
        Files.writeString(night, Files.readString(night).replaceAll("start: .*", "start: 20:00").replaceAll("ground: [a-z]+", "going: wet"));
    }

    private void copy(String from, String to) throws IOException {
        Files.writeString(folder.resolve(to + ".yaml"), Files.readString(Path.of(from + ".yaml")));
    }

    @Test
    void eachChangeIsNoticed() throws IOException {
        JsonNode cellar = YAML.readTree(Path.of("docs/examples/workshops/cellar.yaml").toFile());
        List<String> unnoticed = new ArrayList<>();
        for (Change change : changes()) {
            JsonNode first = cellar.deepCopy();
            change.with().properties().forEach(each -> place(first, change).set(each.getKey(), each.getValue()));
            if (!change.from().isMissingNode()) {
                place(first, change).set(change.key(), change.from());
            }
            JsonNode second = first.deepCopy();
            place(second, change).set(change.key(), change.to());
            String was = said(first, change.by());
            String is = said(second, change.by());
            if (was.equals(is)) {
                unnoticed.add(change.of() + ": " + change.key());
            }
        }
        assertThat(unnoticed).isEmpty();
    }

    @Test
    void everyKeyIsChangedHereOrByAFitCase() throws IOException {
        Set<String> left = new TreeSet<>(SchemaKeys.of("workshop").keySet());
        left.removeAll(FitCaseKeys.all());
        JsonNode cellar = YAML.readTree(Path.of("docs/examples/workshops/cellar.yaml").toFile());
        Set<String> shown = new TreeSet<>();
        for (Change change : changes()) {
            String kind = place(cellar, change).path("kind").asText();
            boolean bike = change.of().isEmpty() || "bikes".equals(list(cellar, change.of()));
            left.remove(change.of().isEmpty() ? change.key() : bike ? "bikes/" + change.key() : "parts/" + kind + "/" + change.key());
            shown.add(change.key());
        }
        // Where both halves of a clearance or of a row of a chart are changed; names, which everything goes by; minutes, which WorkshopKeysTest sets for each kind.
        left.removeIf(key -> key.endsWith("tyre clearance/bead seat") || key.endsWith("tyre clearance/width") || key.contains("/air chart/") || key.startsWith("minutes/"));
        // What only a log and a stock make use of: RideLogKeyUseTest changes it.
        left.removeIf(key -> key.matches("log|stock/.*|.*/fitted|.*/intervals/.*|bikes/hours used|parts/brake pads/least left"));
        left.removeIf(key -> ALIKE.contains(key.substring(key.lastIndexOf('/') + 1)));
        assertThat(left).isEmpty();
        assertThat(shown).containsAll(Set.of("mass", "on", "price", "hours used", "stays", "owned", "rider limit", "mass limit", "end"));
    }

    private static List<Change> changes() throws IOException {
        List<Change> out = new ArrayList<>();
        for (JsonNode each : YAML.readTree(CHANGES.toFile())) {
            out.add(new Change(each.path("of").asText(), each.get("key").asText(), each.path("with"), each.path("from"), each.get("to"),
                    each.path("by").asText("day")));
        }
        return out;
    }

    /** The block that a change is in: the workshop itself, its minutes, a bike or a part. */
    private static ObjectNode place(JsonNode workshop, Change change) {
        if (change.of().isEmpty() || change.of().equals("minutes")) {
            return (ObjectNode) (change.of().isEmpty() ? workshop : workshop.get("minutes"));
        }
        for (JsonNode each : workshop.get(list(workshop, change.of()))) {
            if (each.get("name").asText().equals(change.of())) {
                return (ObjectNode) each;
            }
        }
        throw new IllegalArgumentException(change.of());
    }

    private static String list(JsonNode workshop, String name) {
        return workshop.get("bikes").findValuesAsText("name").contains(name) ? "bikes" : "parts";
    }

    private String said(JsonNode workshop, String by) throws IOException {
        String text = JSON.writeValueAsString(workshop);
        String key = by + "\n" + text;
        if (!before.containsKey(key)) {
            Files.writeString(folder.resolve("cellar.yaml"), text);
            List<String> args = new ArrayList<>();
            for (String word : COMMANDS.get(by).split(" ")) {
                args.add(word.equals(".") || word.endsWith(".yaml") ? folder.resolve(word).toString() : word.replace('_', ' '));
            }
            CommandRun ran = CommandRun.of(args.toArray(new String[0]));
            assertThat(ran.code()).as(ran.err()).isZero();
            before.put(key, KeyUse.said(ran));
        }
        return before.get(key);
    }
}
