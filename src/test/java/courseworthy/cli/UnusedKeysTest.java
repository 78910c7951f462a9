package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every accepted value is used or refused: for each key that a schema names there is an example file in which another value changes what
 * some command says, or of which a warning says that it is not used. The examples are folders of {@code courseworthy/keys}.
 */
class UnusedKeysTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());
    private static final Path EXAMPLES = Path.of("src", "test", "resources", "courseworthy", "keys");

    /** What a general rule would not find: values that agree with what else the example says. */
    private static final Map<String, List<String>> OTHERS = Map.of(
            "event/date", List.of("2026-12-20", "2026-03-01"),
            "event/utc offset", List.of("+01:00", "+03:00"),
            "event/zone", List.of("Europe/London"),
            "event/edition", List.of("2027"),
            "course/track", List.of("other.gpx"));

    /** What no output can show, with the reason. */
    private static final Map<String, String> COMMENTS = Map.of();

    @TempDir
    private Path folder;

    private final Map<String, Ran> before = new LinkedHashMap<>();

    @Test
    void ofARider() throws IOException {
        used("rider", day(), "ridge", "track");
    }

    @Test
    void ofAnEvent() throws IOException {
        used("event", day(), "ridge", "track", "plain");
    }

    @Test
    void ofACourse() throws IOException {
        used("course", day(), "ridge", "track");
    }

    /** Commands that read a day, those first that say most. */
    private static List<String> day() {
        String files = " course.yaml --rider rider.yaml --event event.yaml --sheet sheet.yaml";
        return List.of("brief" + files + " --format json", "brief" + files, "course course.yaml --format json", "course course.yaml");
    }

    private void used(String kind, List<String> commands, String... examples) throws IOException {
        Map<String, List<JsonNode>> keys = SchemaKeys.of(kind);
        Set<String> unseen = new TreeSet<>(keys.keySet());
        Set<String> unused = new TreeSet<>(keys.keySet());
        for (String example : examples) {
            copy(example);
            before.clear();
            Path file = folder.resolve(kind + ".yaml");
            JsonNode tree = YAML.readTree(file.toFile());
            write(file, tree);
            for (SchemaKeys.Place place : SchemaKeys.places(tree)) {
                unseen.remove(place.path());
                if (unused.contains(place.path()) && changes(kind, tree, place, keys.get(place.path()), commands)) {
                    unused.remove(place.path());
                }
            }
        }
        assertThat(unseen).as("keys of a " + kind + " that no example has").isEmpty();
        unused.removeIf(key -> COMMENTS.containsKey(kind + "/" + key));
        assertThat(unused).as("keys of a " + kind + " that nothing uses").isEmpty();
    }

    /** Whether another value of a key, or the one it has, makes a difference that can be seen. */
    private boolean changes(String kind, JsonNode tree, SchemaKeys.Place place, List<JsonNode> shapes, List<String> commands) throws IOException {
        Path file = folder.resolve(kind + ".yaml");
        List<JsonNode> others = new ArrayList<>();
        OTHERS.getOrDefault(kind + "/" + place.path(), List.of()).forEach(text -> others.add(JSON.getNodeFactory().textNode(text)));
        if (others.isEmpty()) {
            others.addAll(AcceptedValues.besides(place.value(), shapes));
        }
        String key = place.path().substring(place.path().lastIndexOf('/') + 1);
        for (String command : commands) {
            Ran was = ran(file, tree, command);
            if (Pattern.compile("(?:" + Pattern.quote(key) + ": found|found .*\\b" + Pattern.quote(key) + "\\b).*\\R.*not used").matcher(was.err()).find()) {
                return true;
            }
        }
        for (JsonNode other : others) {
            write(file, replaced(tree, place.pointer(), other));
            for (String command : commands) {
                Ran now = run(command);
                if (now.code() == 2) {
                    break;
                }
                Ran was = before.get(command);
                if (now.code() == 0 && !(now.out() + now.err()).equals(was.out() + was.err())) {
                    return true;
                }
            }
        }
        return false;
    }

    private Ran ran(Path file, JsonNode tree, String command) throws IOException {
        if (!before.containsKey(command)) {
            write(file, tree);
            Ran ran = run(command);
            assertThat(ran.code()).as(command + "\n" + ran.err()).isZero();
            before.put(command, ran);
        }
        return before.get(command);
    }

    private Ran run(String command) {
        List<String> args = new ArrayList<>();
        for (String word : command.split(" ")) {
            args.add(word.endsWith(".yaml") ? folder.resolve(word).toString() : word);
        }
        return Ran.of(args.toArray(new String[0]));
    }

    /** On one line, so that the lines that messages name stay as they are. */
    private static void write(Path file, JsonNode tree) throws IOException {
        Files.writeString(file, JSON.writeValueAsString(tree));
    }

    private static JsonNode replaced(JsonNode tree, String pointer, JsonNode value) {
        JsonNode out = tree.deepCopy();
        JsonPointer at = JsonPointer.compile(pointer);
        JsonNode parent = out.at(at.head());
        if (parent instanceof ArrayNode list) {
            list.set(at.last().getMatchingIndex(), value);
        } else {
            ((ObjectNode) parent).set(at.last().getMatchingProperty(), value);
        }
        return out;
    }

    private void copy(String example) throws IOException {
        for (String name : List.of("course", "rider", "event", "workshop")) {
            Path from = EXAMPLES.resolve(example).resolve(name + ".yaml");
            if (Files.exists(from)) {
                Files.writeString(folder.resolve(name + ".yaml"), Files.readString(from));
            }
        }
        Files.writeString(folder.resolve("sheet.yaml"), Files.readString(EXAMPLES.resolve("sheet.yaml")));
        String track = Files.readString(Path.of("course-profiles", "tracks", "home-trails.gpx"));
        Files.writeString(folder.resolve("lap.gpx"), track);
        Files.writeString(folder.resolve("other.gpx"), track.replace("<ele>2", "<ele>3"));
    }
}
