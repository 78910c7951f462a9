/**
 * The ride as physics: power balance, air, rolling resistance, drag area, what a rider can hold and how fast rough ground lets them go;
 * from these times and speeds, with ranges. Every constant has its unit and source beside it; what is practice says so.
 */
package courseworthy.ride;
