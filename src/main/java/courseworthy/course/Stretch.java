package courseworthy.course;

/**
 * A piece of a course with one surface, one smoothness, one technical grade.
 *
 * @param length   m, above 0
 * @param rise     m climbed, 0 or more; null where unknown
 * @param drop     m descended, 0 or more; null where unknown
 * @param steepest steepest gradient as written, as a fraction (0.12 for 12 %); null where not written
 * @param ground   what is written of the ground
 * @param line     line in the profile, 0 where none
 */
public record Stretch(double length, Double rise, Double drop, Double steepest, Ground ground, int line) {
}
