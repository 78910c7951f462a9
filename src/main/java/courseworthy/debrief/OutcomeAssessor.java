package courseworthy.debrief;

import courseworthy.claim.Verb;
import courseworthy.topic.Topic;

/**
 * What one outcome says of one saying of a rule. A rule is answered only where the day put its words to the test:
 *
 * <ul>
 * <li>{@code prefer}: borne out where what it named was ridden and was right, or where it named more (less) than was ridden and more
 * (less) was wanted; not borne out where it named what was ridden, or something farther the wrong way; else it was not tried.
 * <li>{@code at least}: borne out where it asked for more than was ridden and more was wanted, or where exactly that was ridden and was
 * right; not borne out where it kept the value from going lower and less was wanted. {@code at most} the other way round.
 * <li>{@code avoid}, {@code rule out}: borne out where what it spoke against was ridden and was wrong; not borne out where the rider
 * would take just that.
 * <li>A limit is never answered: that a day went well says nothing against it.
 * </ul>
 */
final class OutcomeAssessor {

    private final Topic topic;
    private final long ridden;
    private final Direction way;
    private final Long wanted;

    /**
     * @param ridden what was ridden
     * @param way    which way the day points from there
     * @param wanted what the rider would take; null where not told
     */
    OutcomeAssessor(Topic topic, long ridden, Direction way, Long wanted) {
        this.topic = topic;
        this.ridden = ridden;
        this.way = way;
        this.wanted = wanted;
    }

    AdviceOutcome of(Verb verb, long value) {
        return switch (verb) {
            case PREFER -> prefer(value);
            case AT_LEAST -> bound(value, 1);
            case AT_MOST -> bound(value, -1);
            case AVOID, RULE_OUT -> against(value);
            case ONE_OF -> AdviceOutcome.UNKNOWN;
        };
    }

    /** Values closer than a step are the same. */
    private int compare(long value) {
        return Math.abs(value - ridden) < topic.step(ridden) || value == ridden ? 0 : Long.compare(value, ridden);
    }

    private AdviceOutcome prefer(long value) {
        int side = compare(value);
        return switch (way) {
            case RIGHT -> side == 0 ? AdviceOutcome.BORNE_OUT : AdviceOutcome.UNKNOWN;
            case MORE -> side > 0 ? AdviceOutcome.BORNE_OUT : AdviceOutcome.NOT;
            case LESS -> side < 0 ? AdviceOutcome.BORNE_OUT : AdviceOutcome.NOT;
            case ANOTHER -> side == 0 ? AdviceOutcome.NOT : wanted != null && wanted == value ? AdviceOutcome.BORNE_OUT : AdviceOutcome.UNKNOWN;
        };
    }

    /** @param sign 1 for a bound from below, -1 for one from above */
    private AdviceOutcome bound(long value, int sign) {
        int beyond = sign * compare(value);
        Direction toward = sign > 0 ? Direction.MORE : Direction.LESS;
        Direction away = sign > 0 ? Direction.LESS : Direction.MORE;
        if (way == toward) {
            return beyond > 0 ? AdviceOutcome.BORNE_OUT : AdviceOutcome.UNKNOWN;
        }
        if (way == away) {
            return beyond >= 0 ? AdviceOutcome.NOT : AdviceOutcome.UNKNOWN;
        }
        return way == Direction.RIGHT && beyond == 0 ? AdviceOutcome.BORNE_OUT : AdviceOutcome.UNKNOWN;
    }

    private AdviceOutcome against(long value) {
        if (way == Direction.RIGHT) {
            return AdviceOutcome.UNKNOWN;
        }
        if (value == ridden) {
            return AdviceOutcome.BORNE_OUT;
        }
        return wanted != null && wanted == value ? AdviceOutcome.NOT : AdviceOutcome.UNKNOWN;
    }
}
