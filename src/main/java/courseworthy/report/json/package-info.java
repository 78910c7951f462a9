/** The JSON of each command, written from the same results as every other output: a contract of its own. */
package courseworthy.report.json;
