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
final class Judging {

    private final Topic topic;
    private final long ridden;
    private final Way way;
    private final Long wanted;

    /**
     * @param ridden what was ridden
     * @param way    which way the day points from there
     * @param wanted what the rider would take; null where not told
     */
    Judging(Topic topic, long ridden, Way way, Long wanted) {
        this.topic = topic;
        this.ridden = ridden;
        this.way = way;
        this.wanted = wanted;
    }

    Answer of(Verb verb, long value) {
        return switch (verb) {
            case PREFER -> prefer(value);
            case AT_LEAST -> bound(value, 1);
            case AT_MOST -> bound(value, -1);
            case AVOID, RULE_OUT -> against(value);
            case ONE_OF -> Answer.UNKNOWN;
        };
    }

    /** Values closer than a step are the same. */
    private int compare(long value) {
        return Math.abs(value - ridden) < topic.step(ridden) || value == ridden ? 0 : Long.compare(value, ridden);
    }

    private Answer prefer(long value) {
        int side = compare(value);
        return switch (way) {
            case RIGHT -> side == 0 ? Answer.BORNE_OUT : Answer.UNKNOWN;
            case MORE -> side > 0 ? Answer.BORNE_OUT : Answer.NOT;
            case LESS -> side < 0 ? Answer.BORNE_OUT : Answer.NOT;
            case ANOTHER -> side == 0 ? Answer.NOT : wanted != null && wanted == value ? Answer.BORNE_OUT : Answer.UNKNOWN;
        };
    }

    /** @param sign 1 for a bound from below, -1 for one from above */
    private Answer bound(long value, int sign) {
        int beyond = sign * compare(value);
        Way toward = sign > 0 ? Way.MORE : Way.LESS;
        Way away = sign > 0 ? Way.LESS : Way.MORE;
        if (way == toward) {
            return beyond > 0 ? Answer.BORNE_OUT : Answer.UNKNOWN;
        }
        if (way == away) {
            return beyond >= 0 ? Answer.NOT : Answer.UNKNOWN;
        }
        return way == Way.RIGHT && beyond == 0 ? Answer.BORNE_OUT : Answer.UNKNOWN;
    }

    private Answer against(long value) {
        if (way == Way.RIGHT) {
            return Answer.UNKNOWN;
        }
        if (value == ridden) {
            return Answer.BORNE_OUT;
        }
        return wanted != null && wanted == value ? Answer.NOT : Answer.UNKNOWN;
    }
}
