package courseworthy.demand;

import courseworthy.topic.SettledTopic;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** Measures that are known only once earlier layers are settled. */
public final class DerivedMeasures {

    private static final List<Measure> ALL = Arrays.stream(Measure.values()).filter(Measure::derived).toList();
    private static final List<List<Measure>> BY_LAYER = new ArrayList<>();
    private static final Set<Measure> READ = EnumSet.noneOf(Measure.class);

    static {
        for (int layer = 0; layer <= Topics.LAST_LAYER; layer++) {
            int of = layer;
            BY_LAYER.add(ALL.stream().filter(measure -> measure.layer() == of).toList());
        }
        ALL.forEach(measure -> READ.addAll(measure.derivation().measures()));
    }

    private DerivedMeasures() {
    }

    /** The measures from which others derive. */
    public static Set<Measure> read() {
        return Collections.unmodifiableSet(READ);
    }

    /** The measures that are known once a layer is settled. */
    public static List<Measure> ofLayer(int layer) {
        return BY_LAYER.get(layer);
    }

    /** The topics on which one measure hangs: those it derives from; the bike for a figure of the bike at hand; none where it is what it is. */
    public static List<Topic> topicsRead(Measure measure) {
        return measure.derived() ? measure.derivation().topics() : measure.ofTheBike() ? List.of(Topics.BIKE) : List.of();
    }

    /** The measures from which one derives; none where it is what it is. */
    public static List<Measure> measuresRead(Measure measure) {
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
        return after(layer, demands, settled, measure -> true);
    }

    /** As {@link #after(int, Demands, Map)}, of some of the measures of that layer. */
    public static Map<Measure, MeasureValue> after(int layer, Demands demands, Map<Topic, SettledTopic> settled, Predicate<Measure> wanted) {
        Map<Measure, MeasureValue> out = new EnumMap<>(Measure.class);
        SettledInput input = new SettledInput(demands, settled);
        for (Measure measure : ofLayer(layer)) {
            if (wanted.test(measure)) {
                MeasureValue value = measure.derivation().calculate(input, measure.scale());
                if (value != null) {
                    out.put(measure, value);
                }
            }
        }
        return out;
    }
}
