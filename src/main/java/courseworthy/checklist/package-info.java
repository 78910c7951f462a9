/** What to do before, at and after the ride: made from rules' tasks, decisions and the event; in sections by due time. */
package courseworthy.checklist;
