package courseworthy.task;

import courseworthy.call.CloseThreshold;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Standing;
import courseworthy.engine.UndeterminedRule;
import courseworthy.topic.Topic;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A decision that may well turn out otherwise, and what would settle it.
 *
 * @param decision the decision
 * @param close    the threshold it rests on closely, whose measure settles it when it is known better; null where it rests on none
 * @param wanted   what to write so that rules on it that could not tell can; empty where none are in want
 */
public record LeastSure(Decision decision, CloseThreshold close, List<MissingInputs> wanted) {

    /** So many are named (judgement: what a reader keeps in mind). */
    private static final int TOLD = 3;
    /** How much less sure advice that is split makes a decision than advice that leans, a close threshold, a rule in want (judgement). */
    private static final int SPLIT = 4;
    private static final int CLOSE = 3;
    private static final int LEANING = 2;
    private static final int IN_WANT = 1;

    public LeastSure {
        wanted = List.copyOf(wanted);
    }

    /** Whether nothing but the rider's or the coach's own preference settles it: advice differs, and more knowledge would change nothing. */
    public boolean isPreference() {
        return close == null && wanted.isEmpty();
    }

    /**
     * The decisions that are least sure, the least sure first: advice that is split weighs most, then a threshold within what its measure may
     * be, then advice that leans, then rules in want of knowledge; of equals the first in the catalogue. Of two ends alike the front is named.
     */
    static List<LeastSure> of(Brief brief) {
        List<LeastSure> all = new ArrayList<>();
        for (Decision decision : brief.decisions()) {
            LeastSure each = new LeastSure(decision, brief.close(decision), MissingInputs.of(untold(decision.topic(), brief.couldNotTell())));
            boolean told = all.stream().anyMatch(other -> other.decision().topic().isFrontOf(decision.topic()) && other.weight() == each.weight());
            if (each.weight() > 0 && !told) {
                all.add(each);
            }
        }
        all.sort(Comparator.comparingInt(LeastSure::weight).reversed());
        return List.copyOf(all.subList(0, Math.min(TOLD, all.size())));
    }

    private static List<UndeterminedRule> untold(Topic topic, List<UndeterminedRule> rules) {
        return rules.stream().filter(each -> each.topics().contains(topic.name())).toList();
    }

    private int weight() {
        if (decision.value() == null) {
            return 0;
        }
        int standing = decision.standing() == Standing.SPLIT ? SPLIT : decision.standing() == Standing.LEANING ? LEANING : 0;
        return standing + (close == null ? 0 : CLOSE) + (wanted.isEmpty() ? 0 : IN_WANT);
    }
}
