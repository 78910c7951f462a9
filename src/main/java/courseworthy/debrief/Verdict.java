package courseworthy.debrief;

import courseworthy.debrief.SavedBrief.Advice;
import courseworthy.debrief.SavedBrief.SavedClaim;
import java.util.List;

/**
 * What a day says of the advice on one topic.
 *
 * @param advice  as it was given
 * @param answer  of the advice as a whole
 * @param reasons in sentences without a full stop
 * @param rules   of each rule that spoke
 */
public record Verdict(Advice advice, AdviceOutcome answer, List<String> reasons, List<RuleVerdict> rules) {

    public Verdict {
        reasons = List.copyOf(reasons);
        rules = List.copyOf(rules);
    }

    /**
     * What the day says of one rule on that topic.
     *
     * @param reason why, a phrase
     */
    public record RuleVerdict(SavedClaim said, AdviceOutcome answer, String reason) {
    }
}
