/** The rule language: sheets, rows, conditions, sayings and cases, with their readers. */
package courseworthy.sheet;
