/** The documents that commands print, as a model of their content: what stands in them, and nothing of how it looks. */
package courseworthy.report;
