/** Reasons over sheets of advice: rows that can never speak, say nothing new, contradict each other or could be one. */
package courseworthy.analysis;
