/** Reasons over sheets of advice: rows that can never apply, say nothing new, contradict each other or could be one. */
package courseworthy.analysis;
