package courseworthy.sheet;

import courseworthy.claim.Verb;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.topic.Topic;
import courseworthy.units.Resolution;
import courseworthy.units.TickConversion;
import java.math.BigDecimal;

/**
 * What a row says on one topic.
 *
 * @param topic   on what
 * @param verb    a bound, a preference, a dislike or a veto
 * @param source   the value, or where it comes from
 * @param written the value as the row writes it
 */
public record Saying(Topic topic, Verb verb, ValueSource source, String written) {

    /** A value that is written, or comes from a measure. */
    public sealed interface ValueSource permits Literal, Times {
    }

    /** A written value, in the topic's ticks or positions. */
    public record Literal(long value) implements ValueSource {
    }

    /** A measure of the topic's dimension, or with the topic's words, times an exact factor. */
    public static final class Times implements ValueSource {

        /** Ticks beyond what is sensible for any topic; more than that says no more. */
        private static final long BEYOND = 1_000_000_000_000L;

        private final BigDecimal factor;
        private final Measure measure;
        /** The conversion used last: a search for what would change a decision asks for it many thousand times. */
        private TickConversion conversion;

        /** @param factor 1 where none is written */
        public Times(BigDecimal factor, Measure measure) {
            this.factor = factor;
            this.measure = measure;
        }

        public BigDecimal factor() {
            return factor;
        }

        public Measure measure() {
            return measure;
        }

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
            TickConversion known = conversion;
            if (known == null || !known.to().equals(to)) {
                known = new TickConversion(from, factor, to);
                conversion = known;
            }
            return known.ticks(value, BEYOND);
        }

        @Override
        public boolean equals(Object other) {
            return this == other || other instanceof Times that && factor.equals(that.factor) && measure == that.measure;
        }

        @Override
        public int hashCode() {
            return factor.hashCode() * 31 + measure.hashCode();
        }

        @Override
        public String toString() {
            return factor.toPlainString() + " x " + measure.written();
        }
    }

    /** Verb and value as the row writes them, a named value with its figure: {@code at most the hookless limit (5.00 bar)}. */
    public String text() {
        boolean named = source instanceof Literal && topic.kind() == Topic.Kind.QUANTITY && NamedValues.isName(written);
        return verb.word() + " " + written + (named ? " (" + topic.text(((Literal) source).value()) + ")" : "");
    }

    /** The layer that must be settled before its value is known. */
    public int layer() {
        return source instanceof Times times ? times.measure().layer() : 0;
    }
}
