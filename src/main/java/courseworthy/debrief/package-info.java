/** Outcomes held against briefs: which advice was borne out, which was not, and on which the day was inconclusive. */
package courseworthy.debrief;
