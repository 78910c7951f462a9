package courseworthy.course;

import courseworthy.problem.Faults;
import courseworthy.text.FieldReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads where the ground of a stretch comes from, and what it may be instead. */
public final class GroundOriginReader {

    /** The keys of a stretch that say so. */
    public static final List<String> KEYS = List.of("way", "mapped", "inferred", "may be");

    private static final int LONGEST_NAME = 400;
    private static final String INFERRED = "values and the rule that inferred them, such as [surface=unpaved by track]";

    private GroundOriginReader() {
    }

    /** Null where the stretch does not say that a map gave it. */
    static GroundOrigin origin(FieldReader fields) {
        String way = fields.line("way", LONGEST_NAME);
        Map<String, String> mapped = pairs(fields, "mapped");
        Map<String, Map<String, String>> inferred = inferred(fields);
        return way == null && mapped == null && inferred == null ? null
                : new GroundOrigin(way == null ? "" : way, mapped == null ? Map.of() : mapped, inferred == null ? Map.of() : inferred);
    }

    private static Map<String, String> pairs(FieldReader fields, String key) {
        String text = fields.prose(key);
        return text == null ? null : GroundPairs.read(text, fields.file(), fields.node(key).line(), key, fields.faults());
    }

    /** What was inferred, by rule; null where the stretch says nothing of it. */
    private static Map<String, Map<String, String>> inferred(FieldReader fields) {
        if (fields.node("inferred") == null) {
            return null;
        }
        Map<String, Map<String, String>> out = new LinkedHashMap<>();
        for (String text : fields.texts("inferred")) {
            int by = text.lastIndexOf(GroundOrigin.BY);
            String rule = by < 0 ? "" : text.substring(by + GroundOrigin.BY.length()).strip();
            String values = by < 0 ? "" : text.substring(0, by).strip();
            if (rule.isEmpty()) {
                fields.fault("inferred", "\"" + text + "\"", INFERRED, "");
            } else {
                out.put(rule, values.equals(GroundOrigin.RANGE_ALONE) ? Map.of()
                        : GroundPairs.read(values, fields.file(), fields.lineOf("inferred"), "inferred", fields.faults()));
            }
        }
        return out;
    }

    /**
     * What the ground may be instead. What a person wrote of it since it was taken from a map is no longer open.
     *
     * @param ground as it is written now
     * @param origin may be null
     */
    static List<Ground> alternatives(FieldReader fields, Ground ground, GroundOrigin origin) {
        List<Ground> out = new ArrayList<>();
        Map<String, String> now = GroundPairs.of(ground);
        Map<String, String> imported = origin == null ? now : origin.imported();
        for (String text : fields.items("may be").isEmpty() ? List.<String>of() : fields.texts("may be")) {
            Map<String, String> other = GroundPairs.read(text, fields.file(), fields.node("may be").line(), "may be", fields.faults());
            boolean open = true;
            for (String key : other.keySet()) {
                open &= java.util.Objects.equals(now.get(key), imported.get(key));
            }
            if (open && !other.isEmpty()) {
                Map<String, String> values = new LinkedHashMap<>(now);
                values.putAll(other);
                possible(fields, values, out);
            }
        }
        return out;
    }

    private static void possible(FieldReader fields, Map<String, String> values, List<Ground> out) {
        Faults own = new Faults();
        Ground ground = GroundPairs.ground(values, fields.file(), fields.node("may be").line(), own);
        if (own.stop()) {
            fields.fault("may be", GroundPairs.text(values), "ground there can be", "Correct what the ground may be, or what is given for it.");
        } else {
            out.add(ground);
        }
    }
}
