package courseworthy.rulebase;

import courseworthy.demand.Measure;
import courseworthy.demand.Scale;
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
public record Subject(Kind kind, String written, Scale scale, long least, long most) {

    /** Kinds of things that can be tested. */
    public enum Kind { MEASURE, STRETCH, SHARE, DECIDED }

    /** The share of the course by length, in whole per cent. */
    public static final Subject SHARE =
            new Subject(Kind.SHARE, "share of course", Scale.quantity(Resolution.of(Unit.PERCENT, "1")), 0, 100);

    public static Subject of(Measure measure) {
        return of(Kind.MEASURE, measure.written(), measure.scale(), false);
    }

    public static Subject of(StretchMeasure measure) {
        return of(Kind.STRETCH, measure.written(), measure.scale(), measure == StretchMeasure.GRADIENT);
    }

    public static Subject of(Topic topic) {
        Scale scale = switch (topic.kind()) {
            case QUANTITY -> Scale.quantity(topic.resolution());
            case ORDERED -> Scale.words(topic.options());
            case OPTIONS -> Scale.options(topic.options());
        };
        return new Subject(Kind.DECIDED, topic.name(), scale, topic.least(), topic.most());
    }

    /** The same under another name. */
    Subject as(String name) {
        return new Subject(kind, name, scale, least, most);
    }

    private static Subject of(Kind kind, String written, Scale scale, boolean signed) {
        if (scale.kind() != Scale.Kind.QUANTITY) {
            return new Subject(kind, written, scale, 0, scale.words().size() - 1);
        }
        boolean below = signed || scale.resolution().unit().dimension() == Dimension.TEMPERATURE;
        return new Subject(kind, written, scale, below ? Long.MIN_VALUE : 0, Long.MAX_VALUE);
    }

    /** Whether values have an order that tests may use. */
    public boolean ordered() {
        return scale.kind() == Scale.Kind.QUANTITY || scale.kind() == Scale.Kind.WORDS;
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
