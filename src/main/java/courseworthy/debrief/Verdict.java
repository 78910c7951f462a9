package courseworthy.debrief;

import courseworthy.debrief.Given.Advice;
import courseworthy.debrief.Given.Said;
import java.util.List;

/**
 * What a day says of the advice on one topic.
 *
 * @param advice  as it was given
 * @param answer  of the advice as a whole
 * @param reasons in sentences without a full stop
 * @param rules   of each rule that spoke
 */
public record Verdict(Advice advice, Answer answer, List<String> reasons, List<OfRule> rules) {

    public Verdict {
        reasons = List.copyOf(reasons);
        rules = List.copyOf(rules);
    }

    /**
     * What the day says of one rule on that topic.
     *
     * @param reason why, a phrase
     */
    public record OfRule(Said said, Answer answer, String reason) {
    }
}
