package courseworthy.task;

import courseworthy.checklist.ChecklistSchedule;

/**
 * What is to be done when.
 *
 * @param brief    the whole answer
 * @param schedule when its checklist is worked through
 */
public record CalendarResult(Brief brief, ChecklistSchedule schedule) {
}
