/** The data of the pictures in reports. */
package courseworthy.report.picture;
