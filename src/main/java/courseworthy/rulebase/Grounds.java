package courseworthy.rulebase;

import courseworthy.claim.Ground;
import courseworthy.demand.Measure;
import courseworthy.demand.Scale;
import courseworthy.demand.StretchMeasure;
import courseworthy.topic.Topic;
import java.math.BigDecimal;

/** Makes grounds. */
final class Grounds {

    /** What was last told of each measure: in one call all rows are told the same. Threads may overwrite each other's. */
    private static final Told[] LAST = new Told[Measure.values().length];

    private record Told(long value, String text, BigDecimal number, String unit) {
    }

    private Grounds() {
    }

    /** A fact about a measure; {@code written} is empty where a value was taken from it and nothing tested. */
    static Ground of(Measure measure, long value, String written, boolean met, boolean near) {
        Told told = LAST[measure.ordinal()];
        if (told == null || told.value() != value) {
            Scale scale = measure.scale();
            told = new Told(value, scale.text(value), number(scale, value), unit(scale));
            LAST[measure.ordinal()] = told;
        }
        return new Ground(measure.written(), told.text(), told.number(), told.unit(), written, met, near);
    }

    static Ground of(Topic topic, long value, String written, boolean met) {
        Scale scale = Subject.of(topic).scale();
        return new Ground("decided: " + topic.name(), scale.text(value), number(scale, value), unit(scale), written, met, false);
    }

    static Ground ofRun(String measure, long length, String written, boolean met) {
        Scale scale = StretchMeasure.LENGTH.scale();
        String value = length == 0 ? "none" : scale.text(length);
        return new Ground(measure, value, number(scale, length), unit(scale), written, met, false);
    }

    static Ground ofShare(String measure, long[] ends, String written, boolean met) {
        Scale scale = Subject.SHARE.scale();
        String value = ends[0] == ends[1] ? scale.text(ends[0]) : scale.text(ends[0]) + " to " + scale.text(ends[1]);
        return new Ground(measure, value, number(scale, ends[0]), unit(scale), written, met, false);
    }

    static BigDecimal number(Scale scale, long value) {
        return scale.kind() == Scale.Kind.QUANTITY ? scale.resolution().json(value) : null;
    }

    static String unit(Scale scale) {
        return scale.kind() == Scale.Kind.QUANTITY ? scale.resolution().jsonUnit().symbol() : "";
    }
}
