/** User-facing faults: where, what was found, what was expected, how to mend it; collected and thrown together. */
package courseworthy.problem;
