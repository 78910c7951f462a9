package courseworthy.demand;

import courseworthy.topic.SettledTopic;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Measures that are known only once earlier layers are settled. */
public final class DerivedMeasures {

    private static final List<Measure> ALL = Arrays.stream(Measure.values()).filter(Measure::derived).toList();
    private static final Set<Measure> READ = EnumSet.noneOf(Measure.class);

    static {
        ALL.forEach(measure -> READ.addAll(measure.derivation().measures()));
    }

    private DerivedMeasures() {
    }

    /** The measures from which others derive. */
    public static Set<Measure> read() {
        return Collections.unmodifiableSet(READ);
    }

    /** The topics on which one measure hangs: those it derives from; the bike for a figure of the bike at hand; none where it is what it is. */
    public static List<Topic> topicsRead(Measure measure) {
        return measure.derived() ? measure.derivation().topics() : measure.ofTheBike() ? List.of(Topics.BIKE) : List.of();
    }

    /** The measures from which one derives; none where it is what it is. */
    static List<Measure> measuresRead(Measure measure) {
        return measure.derived() ? measure.derivation().measures() : List.of();
    }

    /** Whether a measure derives from other measures too, those of {@link #read()}, and not from decisions alone. */
    public static boolean readsMeasures(Measure measure) {
        return measure.derived() && !measure.derivation().measures().isEmpty();
    }

    /**
     * What can be derived once a layer is settled.
     *
     * @param layer   the layer just settled
     * @param demands what is known so far
     * @param settled what is settled so far, by topic
     * @return the measures of that layer; a measure that cannot be told is not in it
     */
    public static Map<Measure, MeasureValue> after(int layer, Demands demands, Map<Topic, SettledTopic> settled) {
        Map<Measure, MeasureValue> out = new EnumMap<>(Measure.class);
        SettledInput input = new SettledInput(demands, settled);
        for (Measure measure : ALL) {
            if (measure.layer() == layer) {
                MeasureValue value = measure.derivation().calculate(input, measure.scale());
                if (value != null) {
                    out.put(measure, value);
                }
            }
        }
        return out;
    }
}
