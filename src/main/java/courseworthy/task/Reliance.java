package courseworthy.task;

/**
 * What decisions hang on.
 *
 * @param ground  which of them other ground would change
 * @param changes which single figures would change each of them
 */
record Reliance(GroundReliance ground, SingleChanges changes) {
}
