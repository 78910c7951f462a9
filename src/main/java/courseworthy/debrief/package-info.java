/** Outcomes held against briefs: which advice was borne out, which was not, and which could not tell. */
package courseworthy.debrief;
