package courseworthy.course;

import courseworthy.problem.Faults;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Ground as keys and values: as a block of a profile has them, or as {@code key=value} pairs with commas between. */
public final class GroundPairs {

    private static final String EXPECTED = "key=value pairs with commas between, such as surface=gravel, smoothness=bad";

    private GroundPairs() {
    }

    /**
     * The pairs of a text, by key; empty with a fault where it has none or one is at fault.
     *
     * @param key under which the text stands, for faults
     */
    public static Map<String, String> read(String text, String file, int line, String key, Faults faults) {
        Map<String, String> out = new LinkedHashMap<>();
        for (String pair : text.split(",", -1)) {
            int equals = pair.indexOf('=');
            String name = equals < 0 ? "" : pair.substring(0, equals).strip();
            String value = equals < 0 ? "" : pair.substring(equals + 1).strip();
            if (name.isEmpty() || value.isEmpty()) {
                faults.add(file, line, key, "\"" + pair.strip() + "\"", EXPECTED, "");
                return Map.of();
            }
            if (out.put(name, value) != null) {
                faults.add(file, line, key, name + " a second time", "each key once", "");
                return Map.of();
            }
        }
        Faults own = new Faults();
        ground(out, file, line, own);
        faults.addAll(own);
        return own.stop() ? Map.of() : out;
    }

    /** The ground of keys and values; what is at fault is unknown. */
    public static Ground ground(Map<String, String> values, String file, int line, Faults faults) {
        List<Node.Entry> entries = new ArrayList<>();
        values.forEach((key, value) -> entries.add(new Node.Entry(new Node.Scalar(key, false, false, line, 1), new Node.Scalar(value, false, false, line, 1))));
        FieldReader fields = new FieldReader(file, new Node.Mapping(List.copyOf(entries), line, 1), faults);
        Ground ground = GroundReader.read(fields);
        fields.done();
        return ground;
    }

    /** The ground of keys and values that are known to be right. */
    public static Ground ground(Map<String, String> values) {
        Faults faults = new Faults();
        Ground out = ground(values, "", 0, faults);
        faults.throwIfAny();
        return out;
    }

    /** Whether values can be at once. */
    public static boolean agree(Map<String, String> values) {
        return contradiction(values) == null;
    }

    /** The key that says what no ground is at once with the others, or null. */
    public static String contradiction(Map<String, String> values) {
        return GroundReader.contradiction(ground(values, "", 0, new Faults()));
    }

    /** What is known of a ground, by key as a profile writes it. */
    public static Map<String, String> of(Ground ground) {
        Map<String, String> out = new LinkedHashMap<>();
        String[] said = GroundReader.said(ground);
        for (int i = 0; i < said.length; i++) {
            if (said[i] != null) {
                out.put(GroundReader.KEYS.get(i), said[i]);
            }
        }
        return out;
    }

    /** {@code surface=gravel, smoothness=bad}. */
    public static String text(Map<String, String> values) {
        StringBuilder out = new StringBuilder();
        values.forEach((key, value) -> out.append(out.length() == 0 ? "" : ", ").append(key).append('=').append(value));
        return out.toString();
    }
}
