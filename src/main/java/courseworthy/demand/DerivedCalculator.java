package courseworthy.demand;

import courseworthy.ride.Range;
import courseworthy.topic.Topic;
import java.util.List;
import java.util.function.Function;

/**
 * How a measure follows from decisions, and what it is worked out from.
 *
 * @param layer    the layer that has to be settled
 * @param topics   the topics it reads
 * @param measures the measures it reads
 * @param formula  its value in base units, null where it cannot be known
 */
record DerivedCalculator(int layer, List<Topic> topics, List<Measure> measures, Function<SettledInput, Range> formula) {

    DerivedCalculator {
        topics = List.copyOf(topics);
        measures = List.copyOf(measures);
    }

    MeasureValue calculate(SettledInput input, MeasureScale scale) {
        Range base = formula.apply(input);
        return base == null ? null : scale.value(base);
    }

    static DerivedCalculator afterLayer(int layer, List<Topic> topics, List<Measure> measures, Function<SettledInput, Range> formula) {
        return new DerivedCalculator(layer, topics, measures, formula);
    }
}
