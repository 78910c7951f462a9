/** What a rider owns: bikes and parts with their masses, sizes, interfaces, marked limits, and what is mounted where. */
package courseworthy.workshop;
