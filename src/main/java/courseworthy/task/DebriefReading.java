package courseworthy.task;

import courseworthy.debrief.DebriefResult;
import courseworthy.debrief.RuleRecord;

/**
 * One debrief held against its brief, or the record of each rule over all debriefs of a folder.
 *
 * @param result the one debrief; null where a folder was named
 * @param folder as typed, with a slash at its end; empty where one debrief was named
 * @param record the record over the folder; null where one debrief was named
 */
public record DebriefReading(DebriefResult result, String folder, RuleRecord record) {
}
