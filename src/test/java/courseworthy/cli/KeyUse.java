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

/**
 * A search for keys that nothing uses: the values of one file's keys are changed one at a time, and whatever a command then says otherwise,
 * or a warning that the key is not used, shows that the key is used or refused.
 */
final class KeyUse {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());

    private static final int REFUSED = 2;
    private static final Pattern DIGEST = Pattern.compile("(?<![0-9A-Za-z_])[0-9a-f]{12,}+(?![0-9A-Za-z_])");

    private final Path folder;
    private final String kind;
    private final Map<String, List<JsonNode>> keys;
    private final Map<String, List<String>> others;
    private final Set<String> unseen;
    private final Set<String> unused;
    private final Map<String, CommandRun> before = new LinkedHashMap<>();
    private final Map<String, String> saidBefore = new LinkedHashMap<>();
    private Path file;
    private List<String> commands = List.of();

    /**
     * @param folder where commands find the files they name
     * @param others by kind of file and path of a key: values to try, where those that a general rule finds do not agree with the rest
     */
    KeyUse(Path folder, String kind, Map<String, List<String>> others) {
        this(folder, kind, others, SchemaKeys.of(kind));
    }

    KeyUse(Path folder, String kind, Map<String, List<String>> others, Map<String, List<JsonNode>> keys) {
        this.folder = folder;
        this.kind = kind;
        this.keys = keys;
        this.others = others;
        this.unseen = new TreeSet<>(keys.keySet());
        this.unused = new TreeSet<>(keys.keySet());
    }

    /** Keys that no file has had yet. */
    Set<String> unseen() {
        return unseen;
    }

    /** Keys that no command has been seen to use yet. */
    Set<String> unused() {
        return unused;
    }

    /** Looks whether a file's keys are used by some commands; those first that say most. */
    void look(Path example, List<String> by) throws IOException {
        file = example;
        commands = by;
        before.clear();
        saidBefore.clear();
        JsonNode tree = YAML.readTree(file.toFile());
        write(tree);
        for (SchemaKeys.Place place : SchemaKeys.places(tree)) {
            unseen.remove(place.path());
            if (unused.contains(place.path()) && changes(tree, place)) {
                unused.remove(place.path());
            }
        }
        write(tree);
    }

    /** Whether another value of a key, or the one it has, makes a difference that can be seen. */
    private boolean changes(JsonNode tree, SchemaKeys.Place place) throws IOException {
        List<JsonNode> values = new ArrayList<>();
        others.getOrDefault(kind + "/" + place.path(), List.of()).forEach(text -> values.add(JSON.getNodeFactory().textNode(text)));
        if (values.isEmpty()) {
            values.addAll(AcceptedValues.besides(place.value(), keys.get(place.path())));
        }
        String key = place.path().substring(place.path().lastIndexOf('/') + 1);
        for (String command : commands) {
            CommandRun was = ran(tree, command);
            if (Pattern.compile("(?:" + Pattern.quote(key) + ": found|found .*\\b" + Pattern.quote(key) + "\\b).*\\R.*not used").matcher(was.err()).find()) {
                return true;
            }
        }
        for (JsonNode other : values) {
            write(replaced(tree, place.pointer(), other));
            for (String command : commands) {
                CommandRun now = run(command);
                if (now.code() == REFUSED) {
                    break;
                }
                String was = saidBefore.computeIfAbsent(command, each -> said(before.get(each)));
                if (now.code() < REFUSED && !said(now).equals(was)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** What a command said, without what tells one file's text from another's whatever it means. */
    static String said(CommandRun ran) {
        return DIGEST.matcher(ran.out() + ran.err()).replaceAll("");
    }

    private CommandRun ran(JsonNode tree, String command) throws IOException {
        if (!before.containsKey(command)) {
            write(tree);
            CommandRun ran = run(command);
            assertThat(ran.code()).as(command + "\n" + ran.err()).isLessThan(REFUSED);
            before.put(command, ran);
        }
        return before.get(command);
    }

    private CommandRun run(String command) {
        List<String> args = new ArrayList<>();
        for (String word : command.split(" ")) {
            args.add(word.endsWith(".yaml") || word.equals(".") ? folder.resolve(word).normalize().toString() : word);
        }
        return CommandRun.of(args.toArray(new String[0]));
    }

    /** On one line, so that the lines that messages name stay as they are. */
    private void write(JsonNode tree) throws IOException {
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
}
