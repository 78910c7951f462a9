/** Map matching: which mapped way lies under each part of a track, and how sure that is. */
package courseworthy.course.matching;
