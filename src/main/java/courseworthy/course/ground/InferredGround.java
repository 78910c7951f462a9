package courseworthy.course.ground;

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
}
