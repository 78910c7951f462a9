package courseworthy.course.ground;

import courseworthy.course.GroundPairs;
import courseworthy.course.GroundReader;
import courseworthy.course.Smoothness;
import courseworthy.course.Surface;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Reads the ground out of the tags of a way: what is mapped as it is mapped, and what the table infers where nothing is. */
public final class TagInterpreter {

    /** The row that stands for a surface tagged with several values, all of which it may be. */
    static final String SEVERAL_SURFACES = "several-surfaces";

    private static final List<String> OF_THE_GROUND = List.of("surface", "smoothness", "tracktype", "mtb:scale");

    private final GroundRules rules;
    private final Map<Map<String, String>, TaggedGround> known = new HashMap<>();

    public TagInterpreter(GroundRules rules) {
        this.rules = rules;
    }

    /** The ground of a way with these tags. */
    TaggedGround of(Map<String, String> tags) {
        return known.computeIfAbsent(tags, this::interpret);
    }

    private TaggedGround interpret(Map<String, String> tags) {
        Map<String, String> mapped = new LinkedHashMap<>();
        Map<String, String> tested = new LinkedHashMap<>(tags);
        for (String key : OF_THE_GROUND) {
            String value = value(key, tags.get(key));
            tested.remove(key);
            if (value != null) {
                mapped.put(key, value);
                tested.put(key, value);
            }
        }
        withoutContradiction(mapped);
        if (isFord(tags)) {
            mapped.put("water crossings", "1");
        }
        List<InferredGround> inferred = new ArrayList<>();
        severalSurfaces(tags.get("surface"), mapped, inferred);
        for (GroundRule rule : rules.rules()) {
            if (rule.holds(tested)) {
                infer(rule, mapped, inferred);
            }
        }
        return new TaggedGround(mapped, List.copyOf(inferred));
    }

    private static boolean isFord(Map<String, String> tags) {
        String ford = tags.get("ford");
        return ford != null && !ford.equals("no");
    }

    /** A tag's value as a profile writes it; null where it is absent or says nothing that is documented. */
    private String value(String key, String written) {
        if (written == null) {
            return null;
        }
        String plain = written.strip().toLowerCase(Locale.ROOT).replace(' ', '_');
        String value = rules.spellings().getOrDefault(key, Map.of()).getOrDefault(plain, plain);
        boolean documented = switch (key) {
            case "surface" -> Surface.of(value) != null;
            case "smoothness" -> Smoothness.of(value) != null;
            case "tracktype" -> GroundReader.TRACKTYPES.contains(value);
            default -> value.matches("[0-6][+-]?");
        };
        return documented ? value : null;
    }

    /** What cannot be at once is left unknown, the less plain of both. */
    private static void withoutContradiction(Map<String, String> mapped) {
        String key = GroundPairs.contradiction(mapped);
        while (key != null) {
            mapped.remove(key);
            key = GroundPairs.contradiction(mapped);
        }
    }

    private void severalSurfaces(String written, Map<String, String> mapped, List<InferredGround> inferred) {
        if (written == null || !written.contains(";") || mapped.containsKey("surface")) {
            return;
        }
        List<Map<String, String>> mayBe = new ArrayList<>();
        for (String each : written.split(";")) {
            String value = value("surface", each);
            if (value != null) {
                mayBe.add(Map.of("surface", value));
            }
        }
        if (mayBe.size() > 1) {
            inferred.add(new InferredGround(SEVERAL_SURFACES, Map.of(), List.copyOf(mayBe)));
        }
    }

    /** Takes of a row what no tag and no row before it has said. */
    private static void infer(GroundRule rule, Map<String, String> mapped, List<InferredGround> inferred) {
        for (InferredGround before : inferred) {
            for (String key : OF_THE_GROUND) {
                boolean said = before.gives().containsKey(key) || before.mayBe().stream().anyMatch(each -> each.containsKey(key));
                if (said && rule.speaksOf(key)) {
                    return;
                }
            }
        }
        Map<String, String> gives = new LinkedHashMap<>(rule.gives());
        gives.keySet().removeAll(mapped.keySet());
        Map<String, String> with = new LinkedHashMap<>(mapped);
        with.putAll(gives);
        if (!GroundPairs.agree(with)) {
            return;
        }
        List<Map<String, String>> mayBe = new ArrayList<>();
        for (Map<String, String> each : rule.mayBe()) {
            Map<String, String> other = new LinkedHashMap<>(with);
            other.putAll(each);
            if (GroundPairs.agree(other)) {
                mayBe.add(each);
            }
        }
        inferred.add(new InferredGround(rule.id(), gives, List.copyOf(mayBe)));
    }
}
