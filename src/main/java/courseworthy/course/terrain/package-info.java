/** Ground heights from elevation tiles on disk. */
package courseworthy.course.terrain;
