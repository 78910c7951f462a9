package courseworthy.debrief;

import courseworthy.topic.Topic;

/**
 * What an outcome says of one topic.
 *
 * @param what  the outcome in words, {@code walked at 45.6 km, the gear being too hard}
 * @param topic what it bears on
 * @param way   which way it points
 * @param why   why it bears on it, a sentence without a full stop
 */
public record ReportedValue(String what, Topic topic, Direction way, String why) {

    /** Why it bears on the advice, after what happened where that is more than the answer to a question, which is among the lines of the day. */
    String words() {
        return what.contains(": ") || what.endsWith(" did not run out") ? why : what + " (" + why + ")";
    }
}
