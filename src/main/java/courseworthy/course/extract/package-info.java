/** Map extracts: the ways and nodes of a map file that lie near a track. */
package courseworthy.course.extract;
