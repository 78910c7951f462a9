package courseworthy.engine;

import courseworthy.claim.RuleOrigin;
import courseworthy.sheet.Saying;
import java.util.List;

/**
 * A rule that could neither speak nor stay silent for want of knowledge.
 *
 * @param origin  the rule
 * @param topics  the topics it would have spoken on
 * @param wanting the measures that are unknown, as sheets write them ({@code sharp stones} of stretches included)
 * @param sayings what it would have said; empty where that is not known
 */
public record UndeterminedRule(RuleOrigin origin, List<String> topics, List<String> wanting, List<Saying> sayings) {

    public UndeterminedRule(RuleOrigin origin, List<String> topics, List<String> wanting) {
        this(origin, topics, wanting, List.of());
    }
}
