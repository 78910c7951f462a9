package courseworthy.task;

import courseworthy.call.Explainer;
import courseworthy.call.Flip;
import courseworthy.call.RuleTrace;
import courseworthy.decision.Decision;
import java.util.List;

/**
 * Why a decision is as it is: one model, from which text, JSON and Markdown are written.
 *
 * @param brief    the whole answer it belongs to
 * @param decision the decision asked about; null where a rule is asked about that has something to do
 * @param chain    the earlier decisions it rests on, in the order in which they were settled
 * @param silent   the rules on the topic that kept silent, those nearest to speaking first
 * @param flips    what would change it, smallest first
 * @param instead  another value that was asked about; null where none was
 * @param rule     a rule that was asked about; null where none was
 */
public record WhyResult(Brief brief, Decision decision, List<Decision> chain, List<RuleTrace> silent, List<Flip> flips,
        Explainer.Instead instead, RuleTrace rule) {

    /** Stands for a topic where a rule is asked about that has something to do. */
    public static final String CHECKLIST = "checklist";

    public WhyResult {
        chain = List.copyOf(chain);
        silent = List.copyOf(silent);
        flips = List.copyOf(flips);
    }

    /** Whether one value or one rule was asked about, and not the decision as a whole. */
    public boolean narrow() {
        return instead != null || rule != null;
    }
}
