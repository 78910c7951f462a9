/** Calendars as iCalendar files (RFC 5545), written by hand so that lines are folded by octets. */
package courseworthy.render.calendar;
