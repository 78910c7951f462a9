/** Quantities with units, whole ticks of a declared resolution, conversions, and physical constants with their source. */
package courseworthy.units;
