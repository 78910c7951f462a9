package courseworthy.report.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** JSON that commands write held against its schemas, which were written by hand from the description of each format. */
public final class OutputSchema {

    private static final ObjectMapper JSON = new ObjectMapper().enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);
    private static final Map<String, JsonSchema> LOADED = new ConcurrentHashMap<>();
    private static final JsonSchema BRIEF = load("brief-format-2.schema.json");
    private static final JsonSchema WHY = load("why-format-2.schema.json");

    private OutputSchema() {
    }

    /** What the schema says against it, empty where nothing. */
    public static List<String> faults(String json) {
        return BRIEF.validate(tree(json)).stream().map(Object::toString).sorted().toList();
    }

    /** What the schema of reasons says against it, empty where nothing. */
    public static List<String> faultsOfWhy(String json) {
        return WHY.validate(tree(json)).stream().map(Object::toString).sorted().toList();
    }

    /**
     * What the schema of another output says against it, empty where nothing.
     *
     * @param kind such as {@code gears}, for {@code gears-format-2.schema.json}
     */
    public static List<String> faults(String kind, JsonNode json) {
        return LOADED.computeIfAbsent(kind + "-format-2.schema.json", OutputSchema::load).validate(json).stream().map(Object::toString).sorted().toList();
    }

    /** The JSON as a tree; a key twice in one object is refused, decimals stay exact. */
    public static JsonNode tree(String json) {
        try {
            return JSON.readTree(json);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static JsonSchema load(String name) {
        try (InputStream in = OutputSchema.class.getResourceAsStream(name)) {
            return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(in);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
