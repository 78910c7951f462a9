package courseworthy.course.ground;

import java.util.List;
import java.util.Map;

/**
 * A row of the table that infers ground from tags: where they hold, keys of the ground have a likely value, a range of values, or both.
 *
 * @param id        unique among all rows
 * @param when      accepted values by tag; {@value #NONE} stands for a tag that is absent or says nothing
 * @param gives     likely values by key of the ground, as a profile writes them; may be empty
 * @param mayBe     what the ground may be instead, each by key
 * @param published whether {@code source} is published; else common practice, no source
 * @param source    empty for practice
 * @param because   one sentence
 * @param file      where the row is written
 * @param line      1-based
 */
public record GroundRule(String id, Map<String, List<String>> when, Map<String, String> gives, List<Map<String, String>> mayBe,
        boolean published, String source, String because, String file, int line) {

    static final String NONE = "none";

    /** Whether the tags of a way meet all conditions. */
    boolean holds(Map<String, String> tags) {
        for (Map.Entry<String, List<String>> condition : when.entrySet()) {
            String value = tags.get(condition.getKey());
            if (!condition.getValue().contains(value == null ? NONE : value)) {
                return false;
            }
        }
        return true;
    }

    /** Whether the row says something of a key, likely value or range. */
    boolean speaksOf(String key) {
        return gives.containsKey(key) || mayBe.stream().anyMatch(each -> each.containsKey(key));
    }
}
