package courseworthy.event;

/**
 * A place on each lap where things of one's own may wait.
 *
 * @param at      m from the start of the lap
 * @param helper  whether somebody of one's own stands there and hands up
 * @param bottles whether bottles may be taken there
 * @param wheels  whether wheels may wait there
 * @param bike    whether a second bike may wait there
 * @param line    the line on which it is written
 */
public record Pit(double at, boolean helper, boolean bottles, boolean wheels, boolean bike, int line) {
}
