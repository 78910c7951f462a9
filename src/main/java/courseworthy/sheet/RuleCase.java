package courseworthy.sheet;

import courseworthy.claim.SourceLocation;
import java.util.List;

/**
 * One case of a rule: a sentence, the facts it stands for, whether the rule speaks, and what it then says.
 *
 * @param rule     the row's id, unqualified
 * @param sentence what is the case, in plain words
 * @param fires    whether the rule must speak
 * @param facts    what is known
 * @param says     all that it must say on topics, as {@link RowOutput} has it; null where the case leaves that open
 * @param does     all that its checklist item must have, as {@link RowOutput} has it; null where the case leaves that open
 * @param where    where it is written
 */
public record RuleCase(String rule, String sentence, boolean fires, Situation facts, List<String> says, List<String> does, SourceLocation where) {

    /** Whether it says what must come of the rule. */
    public boolean expects() {
        return says != null || does != null;
    }

    /** Whether what a row gives is what it must give; true where the case leaves that open. */
    public boolean met(RowOutput output) {
        return (says == null || says.equals(output.says())) && (does == null || does.equals(output.does()));
    }
}
