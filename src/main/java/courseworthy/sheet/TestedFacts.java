package courseworthy.sheet;

import courseworthy.claim.TestedFact;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.demand.StretchMeasure;
import courseworthy.topic.Topic;
import java.math.BigDecimal;

/** Makes grounds. */
public final class TestedFacts {

    /** What was last told of each measure: in one call all rows are told the same. Threads may overwrite each other's. */
    private static final FormattedValue[] LAST = new FormattedValue[Measure.values().length];

    private record FormattedValue(long value, String text, BigDecimal number, String unit) {
    }

    private TestedFacts() {
    }

    /** A fact about a measure; {@code written} is empty where a value was taken from it and nothing tested. */
    public static TestedFact of(Measure measure, long value, String written, boolean met, boolean near) {
        FormattedValue formatted = LAST[measure.ordinal()];
        if (formatted == null || formatted.value() != value) {
            MeasureScale scale = measure.scale();
            formatted = new FormattedValue(value, scale.text(value), number(scale, value), unit(scale));
            LAST[measure.ordinal()] = formatted;
        }
        return new TestedFact(measure.written(), formatted.text(), formatted.number(), formatted.unit(), written, met, near);
    }

    public static TestedFact of(Topic topic, long value, String written, boolean met) {
        MeasureScale scale = TestSubject.of(topic).scale();
        return new TestedFact("decided: " + topic.name(), scale.text(value), number(scale, value), unit(scale), written, met, false);
    }

    static TestedFact ofRun(String measure, long length, String written, boolean met) {
        MeasureScale scale = StretchMeasure.LENGTH.scale();
        String value = length == 0 ? "none" : scale.text(length);
        return new TestedFact(measure, value, number(scale, length), unit(scale), written, met, false);
    }

    static TestedFact ofShare(String measure, long[] ends, String written, boolean met) {
        MeasureScale scale = TestSubject.SHARE.scale();
        String value = ends[0] == ends[1] ? scale.text(ends[0]) : scale.text(ends[0]) + " to " + scale.text(ends[1]);
        return new TestedFact(measure, value, number(scale, ends[0]), unit(scale), written, met, false);
    }

    static BigDecimal number(MeasureScale scale, long value) {
        return scale.kind() == MeasureScale.Kind.QUANTITY ? scale.resolution().json(value) : null;
    }

    static String unit(MeasureScale scale) {
        return scale.kind() == MeasureScale.Kind.QUANTITY ? scale.resolution().jsonUnit().symbol() : "";
    }
}
