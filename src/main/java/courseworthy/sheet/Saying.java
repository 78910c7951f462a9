package courseworthy.sheet;

import courseworthy.claim.Verb;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.topic.Topic;
import courseworthy.units.Resolution;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * What a row says on one topic.
 *
 * @param topic   on what
 * @param verb    a bound, a preference, a dislike or a veto
 * @param worth   the value, or where it comes from
 * @param written the value as the row writes it
 */
public record Saying(Topic topic, Verb verb, Worth worth, String written) {

    /** A value that is written, or comes from a measure. */
    public sealed interface Worth permits Literal, Times {
    }

    /** A written value, in the topic's ticks or positions. */
    public record Literal(long value) implements Worth {
    }

    /**
     * A measure times an exact factor.
     *
     * @param factor  1 where none is written
     * @param measure of the topic's dimension, or with the topic's words
     */
    public record Times(BigDecimal factor, Measure measure) implements Worth {

        /** Ticks beyond what is sensible for any topic; more than that says no more. */
        private static final long BEYOND = 1_000_000_000_000L;

        /**
         * The value in the topic's ticks: exact, then to the nearest tick, halves up. It may lie beyond what is sensible for the topic:
         * a limit must not shrink to fit.
         */
        public long on(Topic topic, long value) {
            return measure.scale().kind() == MeasureScale.Kind.QUANTITY ? converted(topic.resolution(), value) : value;
        }

        private long converted(Resolution to, long value) {
            Resolution from = measure.scale().resolution();
            if (from.equals(to) && factor.compareTo(BigDecimal.ONE) == 0) {
                return value;
            }
            BigDecimal base = from.unit().toBase(from.step().multiply(BigDecimal.valueOf(value))).multiply(factor);
            BigDecimal ticks = to.unit().fromBase(base).divide(to.step(), 0, RoundingMode.HALF_UP);
            return ticks.max(BigDecimal.valueOf(-BEYOND)).min(BigDecimal.valueOf(BEYOND)).longValueExact();
        }
    }

    /** Verb and value as the row writes them, a named value with its figure: {@code at most the hookless limit (5.00 bar)}. */
    public String text() {
        boolean named = worth instanceof Literal && topic.kind() == Topic.Kind.QUANTITY && NamedValues.isName(written);
        return verb.word() + " " + written + (named ? " (" + topic.text(((Literal) worth).value()) + ")" : "");
    }

    /** The layer that must be settled before its value is known. */
    public int layer() {
        return worth instanceof Times times ? times.measure().layer() : 0;
    }
}
