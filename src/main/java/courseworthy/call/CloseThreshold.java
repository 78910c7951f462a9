package courseworthy.call;

import courseworthy.decision.Decision;
import courseworthy.demand.Measure;

/**
 * A threshold of a rule that lies within what a measure may be, and on whose other side a decision is another one.
 *
 * @param decision  as it is
 * @param measure   that the threshold is on
 * @param from      its likely value, in ticks or positions
 * @param threshold the nearest value on the other side, in ticks or positions
 * @param otherwise what is decided there
 */
public record CloseThreshold(Decision decision, Measure measure, long from, long threshold, Decision otherwise) {
}
