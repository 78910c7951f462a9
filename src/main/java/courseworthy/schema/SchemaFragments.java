package courseworthy.schema;

import courseworthy.text.FileKey;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Pieces of schema. Editors read YAML by its own rules, so what may look like a number or a truth to them is allowed as one:
 * {@code 3}, {@code 0.68}, {@code yes}, {@code off}.
 */
final class SchemaFragments {

    private static final List<String> LIKE_TRUTHS = List.of("yes", "no", "on", "off", "true", "false");

    private SchemaFragments() {
    }

    static Map<String, Object> of(Object... keysAndValues) {
        Map<String, Object> out = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            out.put((String) keysAndValues[i], keysAndValues[i + 1]);
        }
        return out;
    }

    /** A shape with what it is about, and behind that how it is written where the shape says so. */
    static Map<String, Object> about(String description, Map<String, Object> shape) {
        Map<String, Object> out = of("description", description);
        out.putAll(shape);
        Object form = shape.get("description");
        out.put("description", form == null ? description : description + ": " + form);
        return out;
    }

    /** Free text; an editor may take it for a number. */
    static Map<String, Object> text() {
        return of("type", List.of("string", "number", "boolean"));
    }

    static Map<String, Object> pattern(String regex) {
        return of("type", "string", "pattern", "^(?:" + regex + ")$");
    }

    static Map<String, Object> amount(Dimension dimension) {
        Map<String, Object> written = pattern(Amount.pattern(dimension));
        return about(Amount.expected(dimension), bare(dimension) ? anyOf(written, of("type", "number")) : written);
    }

    /** Whether amounts of a dimension are written without a unit. */
    static boolean bare(Dimension dimension) {
        return dimension == Dimension.NUMBER || dimension == Dimension.RATIO;
    }

    static Map<String, Object> whole(int least, int most) {
        return of("type", "integer", "minimum", least, "maximum", most);
    }

    static Map<String, Object> yesNo() {
        return word(List.of("yes", "no", "true", "false"));
    }

    static Map<String, Object> word(List<String> words) {
        Map<String, Object> listed = of("enum", words);
        return words.stream().anyMatch(LIKE_TRUTHS::contains) ? anyOf(listed, of("type", "boolean")) : listed;
    }

    /** Words as alternatives of a regular expression. */
    static String either(List<String> words) {
        List<String> quoted = new ArrayList<>();
        for (String word : words) {
            quoted.add(word.replaceAll("([\\\\.\\[\\](){}*+?^$|])", "\\\\$1"));
        }
        return "(?:" + String.join("|", quoted) + ")";
    }

    static Map<String, Object> anyOf(Map<String, Object> one, Map<String, Object> other) {
        return of("anyOf", List.of(one, other));
    }

    static Map<String, Object> listOf(Map<String, Object> item) {
        return of("type", "array", "items", item);
    }

    /** Regular expressions as alternatives of one. */
    static String alternatives(List<String> patterns) {
        return "(?:" + String.join("|", patterns) + ")";
    }

    /** One, or a list of them. */
    static Map<String, Object> oneOrMore(Map<String, Object> item) {
        Map<String, Object> list = listOf(item);
        list.put("minItems", 1);
        return anyOf(item, list);
    }

    /** One name without a comma, or a list of names; {@code or} is what else may stand alone, as an alternative with its bar. */
    static Map<String, Object> names(String or) {
        Map<String, Object> list = listOf(text());
        list.put("minItems", 1);
        return anyOf(anyOf(pattern(or + "[^,]*"), of("type", List.of("number", "boolean"))), list);
    }

    /** What is written under a key; null where the reader does not declare it. */
    private static Map<String, Object> shape(FileKey<?> key) {
        return switch (key.form()) {
            case AMOUNT -> amount(key.dimension());
            case WHOLE -> whole(key.least(), key.most());
            case YES_NO -> yesNo();
            case WORD -> word(key.words());
            case LINE -> text();
            case NAMES -> names("");
            case OTHER -> null;
        };
    }

    static Map<String, Object> reference(String name) {
        return of("$ref", "#/$defs/" + name);
    }

    /** A block of keys. */
    static final class KeyBlock {
        private final Map<String, Object> properties = new LinkedHashMap<>();
        private final Map<String, Object> more = new LinkedHashMap<>();
        private List<String> required = List.of();

        /** The keys of a reader, in its order. Those of a form of their own wait for {@link #key}. */
        KeyBlock keys(List<FileKey<?>> declared) {
            for (FileKey<?> key : declared) {
                Map<String, Object> shape = SchemaFragments.shape(key);
                properties.put(key.name(), key.about().isEmpty() ? shape : about(key.about(), shape));
            }
            return this;
        }

        KeyBlock key(String name, Map<String, Object> shape) {
            properties.put(name, shape);
            return this;
        }

        KeyBlock required(String... keys) {
            required = List.of(keys);
            return this;
        }

        /** Another word of schema beside the keys. */
        KeyBlock also(String word, Object value) {
            more.put(word, value);
            return this;
        }

        Map<String, Object> shape() {
            properties.forEach((name, shape) -> Objects.requireNonNull(shape, () -> "no shape of the key " + name));
            Map<String, Object> out = of("type", "object", "properties", properties, "additionalProperties", false);
            if (!required.isEmpty()) {
                out.put("required", required);
            }
            out.putAll(more);
            return out;
        }

        /** The whole of a file. */
        Map<String, Object> file(String title) {
            Map<String, Object> out = of("$schema", "https://json-schema.org/draft/2020-12/schema", "title", title);
            out.putAll(shape());
            return out;
        }
    }
}
