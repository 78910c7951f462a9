package courseworthy.task;

import courseworthy.demand.Measure;
import java.util.List;

/**
 * A shipped rule with what it rests on.
 *
 * @param rule     the rule
 * @param measures measures it tests or takes its value from
 * @param decided  topics it tests
 * @param applies  sentences of cases in which it applies
 * @param silent   sentences of cases in which it does not
 * @param written  the row as it is written, line by line; empty where that is not known
 */
public record RulePage(RuleEntry rule, List<Measure> measures, List<String> decided, List<String> applies, List<String> silent,
        List<String> written) {

    public RulePage {
        measures = List.copyOf(measures);
        decided = List.copyOf(decided);
        applies = List.copyOf(applies);
        silent = List.copyOf(silent);
        written = List.copyOf(written);
    }
}
