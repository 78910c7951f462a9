/** What course, rider and day ask for, as measures that rules may test; one catalogue, from which docs and schema are made. */
package courseworthy.demand;
