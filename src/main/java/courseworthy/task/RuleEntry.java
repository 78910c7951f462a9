package courseworthy.task;

import courseworthy.claim.RuleOrigin;
import java.util.List;
import java.util.Set;

/**
 * A shipped rule as a list shows it.
 *
 * @param origin the rule, why it says so, and where it is written
 * @param says   what it says, each with its topic: {@code fork travel: at least 120 mm}; may be empty
 * @param topics the topics it is about
 * @param does   what it puts on the checklist, else empty
 */
public record RuleEntry(RuleOrigin origin, List<String> says, Set<String> topics, String does) {
}
