package courseworthy.sheet;

import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.demand.StretchMeasure;
import courseworthy.topic.Topic;
import courseworthy.units.Dimension;
import courseworthy.units.Resolution;
import courseworthy.units.Unit;

/**
 * What a test is about.
 *
 * @param kind    what kind of thing
 * @param written its name in sheets
 * @param scale   how its values are counted and written
 * @param least   smallest value it can take, {@link Long#MIN_VALUE} where there is none
 * @param most    largest value it can take, {@link Long#MAX_VALUE} where there is none
 */
public record TestSubject(Kind kind, String written, MeasureScale scale, long least, long most) {

    /** Kinds of things that can be tested. */
    public enum Kind { MEASURE, STRETCH, SHARE, DECIDED }

    /** The share of the course by length, in whole per cent. */
    public static final TestSubject SHARE =
            new TestSubject(Kind.SHARE, "share of course", MeasureScale.quantity(Resolution.of(Unit.PERCENT, "1"), 0, 100), 0, 100);

    public static TestSubject of(Measure measure) {
        return of(Kind.MEASURE, measure.written(), measure.scale(), false);
    }

    public static TestSubject of(StretchMeasure measure) {
        return of(Kind.STRETCH, measure.written(), measure.scale(), measure == StretchMeasure.GRADIENT);
    }

    public static TestSubject of(Topic topic) {
        MeasureScale scale = switch (topic.kind()) {
            case QUANTITY -> MeasureScale.quantity(topic.resolution(), topic.least(), topic.most());
            case ORDERED -> MeasureScale.words(topic.options());
            case OPTIONS -> MeasureScale.options(topic.options());
        };
        return new TestSubject(Kind.DECIDED, topic.name(), scale, topic.least(), topic.most());
    }

    /** The same under another name. */
    TestSubject as(String name) {
        return new TestSubject(kind, name, scale, least, most);
    }

    private static TestSubject of(Kind kind, String written, MeasureScale scale, boolean signed) {
        if (scale.kind() != MeasureScale.Kind.QUANTITY) {
            return new TestSubject(kind, written, scale, 0, scale.words().size() - 1);
        }
        boolean below = signed || scale.resolution().unit().dimension() == Dimension.TEMPERATURE;
        return new TestSubject(kind, written, scale, below ? Long.MIN_VALUE : 0, Long.MAX_VALUE);
    }

    /** Whether values have an order that tests may use. */
    public boolean ordered() {
        return scale.kind() == MeasureScale.Kind.QUANTITY || scale.kind() == MeasureScale.Kind.WORDS;
    }

    /** A value as text with its unit. */
    public String text(long value) {
        return scale.text(value);
    }

    /** A test in words, {@code at least 18.1 m}. */
    public String text(ValueTest test) {
        if (test instanceof ValueTest.Among among) {
            return String.join(" or ", among.values().stream().map(this::text).toList());
        }
        ValueTest.Within within = (ValueTest.Within) test;
        if (within.least() == Long.MIN_VALUE) {
            return "at most " + text(within.most());
        }
        if (within.most() == Long.MAX_VALUE) {
            return "at least " + text(within.least());
        }
        return "between " + text(within.least()) + " and " + text(within.most());
    }
}
