package courseworthy.claim;

import java.util.List;

/**
 * One thing to do, said by a rule.
 *
 * @param origin  the rule; its reason says why the item is on this list
 * @param what    what to do
 * @param find    the value or state to find when it is done; may name a topic in braces, {@code {front tyre pressure}}
 * @param due     by when
 * @param needs   seconds it needs before it is effective (sealant, charging), 0 where none
 * @param critical whether safety hangs on it; only shipped rules may say so
 * @param part    the part of the bike or kit it belongs to, so that items stay together
 * @param after   ids of tasks that must come before, qualified
 * @param grounds the facts it rested on
 */
public record Task(RuleOrigin origin, String what, String find, Deadline due, long needs, boolean critical, String part, List<String> after,
        List<TestedFact> grounds) {
}
