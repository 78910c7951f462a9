package courseworthy.course.ground;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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
}
