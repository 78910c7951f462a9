package courseworthy.call;

import courseworthy.decision.Decision;
import courseworthy.demand.Measure;
import java.util.List;

/**
 * A change in one stated measure that changes a decision, all other stated measures held; nothing nearer on that side does.
 *
 * @param measure   what changes
 * @param from      its value now, in ticks or positions
 * @param to        the nearest value with which the decision is another
 * @param way       in which direction
 * @param inRange   whether {@code to} lies in the measure's own range, so that the decision may be the other already
 * @param decision  the decision it then is
 * @param tyre      for a pressure, what else is then decided of its tyre: a pressure belongs to a width, a casing and an insert
 */
public record Flip(Measure measure, long from, long to, FlipDirection way, boolean inRange, Decision decision, List<Decision> tyre) {

    public Flip {
        tyre = List.copyOf(tyre);
    }

    /** Directions. */
    public enum FlipDirection {
        UP("up"), DOWN("down"),
        /** To another value of a measure whose values have no order. */
        OVER("over");

        private final String word;

        FlipDirection(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** How large the change is, as {@link ChangeSize} has it. */
    public double size() {
        return ChangeSize.of(measure, from, to);
    }
}
