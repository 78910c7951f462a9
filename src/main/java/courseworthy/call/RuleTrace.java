package courseworthy.call;

import courseworthy.claim.RuleOrigin;
import courseworthy.sheet.ConditionTrace;
import courseworthy.sheet.Truth;
import java.util.List;

/**
 * A rule held against the day: what it says on a topic, and each of its conditions with what was found.
 *
 * @param origin the rule
 * @param says   what it says on the topic, or would say, {@code prefer 45 mm}; empty for a join
 * @param spoke  whether it spoke
 * @param truth  whether its condition holds; a rule may keep silent all the same where the measure its value comes from is unknown
 * @param tests  its conditions; empty where it has none, or is a join
 * @param wanting the measure that its value comes from and that is unknown; else empty
 */
public record RuleTrace(RuleOrigin origin, List<String> says, boolean spoke, Truth truth, List<ConditionTrace> tests, String wanting) {

    public RuleTrace {
        says = List.copyOf(says);
        tests = List.copyOf(tests);
    }

    /** How many of its conditions do not hold; groups count once. */
    public int unmet() {
        int unmet = 0;
        for (ConditionTrace test : tests) {
            unmet += test.depth() == 0 && test.truth() != Truth.TRUE ? 1 : 0;
        }
        return unmet;
    }
}
