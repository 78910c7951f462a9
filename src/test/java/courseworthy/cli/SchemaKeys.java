package courseworthy.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import courseworthy.schema.Schemas;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The keys that the JSON Schema of a kind of file names, each with what its value may be, and where a file has them. A path is written
 * {@code bike/mass}, of what is in a list as well; parts of a workshop are told apart by their kind: {@code parts/tyre/width}.
 */
final class SchemaKeys {

    private static final ObjectMapper JSON = new ObjectMapper();

    /** Where a file has a key: its path, where it stands in the tree, and its value. */
    record Place(String path, String pointer, JsonNode value) {
    }

    private SchemaKeys() {
    }

    /** The keys with a value of their own, not those that only hold further keys. */
    static Map<String, List<JsonNode>> of(String kind) {
        return of(kind, Set.of());
    }

    /** @param entered definitions whose keys count too; a reference to any other is one value */
    static Map<String, List<JsonNode>> of(String kind, Set<String> entered) {
        Map<String, List<JsonNode>> out = new LinkedHashMap<>();
        JsonNode schema = JSON.valueToTree(Schemas.of(kind));
        walk(schema, entry(schema, entered), "", out);
        return out;
    }

    private static Map<String, JsonNode> entry(JsonNode schema, Set<String> names) {
        Map<String, JsonNode> out = new LinkedHashMap<>();
        names.forEach(name -> out.put("#/$defs/" + name, schema.path("$defs").path(name)));
        return out;
    }

    private static void walk(JsonNode written, Map<String, JsonNode> definitions, String path, Map<String, List<JsonNode>> out) {
        JsonNode shape = definitions.getOrDefault(written.path("$ref").asText(), written);
        if (shape.has("properties")) {
            JsonNode kind = shape.at("/properties/kind/const");
            String at = kind.isMissingNode() ? path : path + "/" + kind.asText();
            shape.get("properties").properties().forEach(key -> walk(key.getValue(), definitions,
                    at.isEmpty() ? key.getKey() : at + "/" + key.getKey(), out));
            return;
        }
        for (String several : List.of("anyOf", "oneOf")) {
            shape.path(several).forEach(each -> walk(each, definitions, path, out));
        }
        if (shape.has("items")) {
            walk(shape.get("items"), definitions, path, out);
        } else if (shape.has("pattern") || shape.has("enum") || shape.has("type") || shape.has("$ref")) {
            out.computeIfAbsent(path, any -> new ArrayList<>()).add(shape);
        }
    }

    /** Where a file has its keys. */
    static List<Place> places(JsonNode file) {
        List<Place> out = new ArrayList<>();
        find(file, "", "", out);
        return out;
    }

    private static void find(JsonNode node, String path, String pointer, List<Place> out) {
        if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                find(node.get(i), path, pointer + "/" + i, out);
            }
        } else if (node.isObject()) {
            String at = path.equals("parts") ? path + "/" + node.path("kind").asText() : path;
            node.properties().forEach(key -> {
                String below = at.isEmpty() ? key.getKey() : at + "/" + key.getKey();
                String there = pointer + "/" + key.getKey().replace("~", "~0").replace("/", "~1");
                out.add(new Place(below, there, key.getValue()));
                find(key.getValue(), below, there, out);
            });
        }
    }
}
