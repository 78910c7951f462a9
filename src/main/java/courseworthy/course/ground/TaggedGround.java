package courseworthy.course.ground;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the tags of a way say of its ground, by key and value as a profile writes them.
 *
 * @param mapped   values that are tagged
 * @param inferred what the table adds, in its order
 */
record TaggedGround(Map<String, String> mapped, List<InferredGround> inferred) {

    static final TaggedGround UNKNOWN = new TaggedGround(Map.of(), List.of());

    /** The likely values: those that are mapped, then those that are inferred. */
    Map<String, String> likely() {
        Map<String, String> out = new LinkedHashMap<>(mapped);
        inferred.forEach(each -> each.gives().forEach(out::putIfAbsent));
        return out;
    }

    /** What may be either of two grounds that are not sure: all that both may be, or nothing where one is unknown. */
    TaggedGround either(TaggedGround other) {
        if (equals(other)) {
            return this;
        }
        if (inferred.isEmpty() || other.inferred.isEmpty()) {
            return UNKNOWN;
        }
        Set<Map<String, String>> both = new LinkedHashSet<>(possible());
        both.addAll(other.possible());
        return new TaggedGround(Map.of(), List.of(InferredGround.oneOf(inferred.get(0).rule(), both)));
    }

    /** All that the ground may be, the likely one first where there is one; without water crossings. */
    List<Map<String, String>> possible() {
        List<Map<String, String>> out = new ArrayList<>();
        Map<String, String> likely = likely();
        likely.remove(GroundPiece.CROSSINGS);
        if (!likely.isEmpty()) {
            out.add(likely);
        }
        for (InferredGround each : inferred) {
            for (Map<String, String> other : each.mayBe()) {
                Map<String, String> values = new LinkedHashMap<>(likely);
                values.putAll(other);
                out.add(values);
            }
        }
        return out;
    }
}
