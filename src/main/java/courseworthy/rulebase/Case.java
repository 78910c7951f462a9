package courseworthy.rulebase;

import courseworthy.claim.Where;

/**
 * One case of a rule: a sentence, the facts it stands for, and whether the rule speaks.
 *
 * @param rule     the row's id, unqualified
 * @param sentence what is the case, in plain words
 * @param fires    whether the rule must speak
 * @param facts    what is known
 * @param where    where it is written
 */
public record Case(String rule, String sentence, boolean fires, Situation facts, Where where) {
}
