package courseworthy.course.ground;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What one row of the table says of a way.
 *
 * @param rule   the row's id
 * @param gives  likely values by key of the ground; may be empty
 * @param mayBe  what the ground may be instead, each by key
 */
record InferredGround(String rule, Map<String, String> gives, List<Map<String, String>> mayBe) {

    /** Of ground that may be one of several: what all of them have is given, the rest may be. */
    static InferredGround oneOf(String rule, Collection<Map<String, String>> possible) {
        Map<String, String> common = new LinkedHashMap<>(possible.iterator().next());
        for (Map<String, String> each : possible) {
            common.entrySet().removeIf(pair -> !pair.getValue().equals(each.get(pair.getKey())));
        }
        List<Map<String, String>> mayBe = new ArrayList<>();
        for (Map<String, String> each : possible) {
            Map<String, String> more = new LinkedHashMap<>(each);
            more.keySet().removeAll(common.keySet());
            if (!more.isEmpty()) {
                mayBe.add(more);
            }
        }
        return new InferredGround(rule, common, List.copyOf(mayBe));
    }
}
