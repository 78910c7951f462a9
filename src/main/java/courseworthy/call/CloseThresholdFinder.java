package courseworthy.call;

import courseworthy.decision.Decision;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.demand.MeasureValue;
import courseworthy.engine.DroolsRules;
import courseworthy.sheet.Row;
import courseworthy.sheet.RuleInputs;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Decisions that are close: a threshold of some rule lies within what a measure may be, and with the measure on its other side, all
 * others held, the decision is another one. Each threshold is tried through all layers, on both of its sides, so that what merely grows
 * with the measure is not taken for it. Where another kind of bike would be called, that decision alone is close: the rest goes with it.
 */
public final class CloseThresholdFinder {

    /** What a forecast of the day before is easily off by: 2 C and 5 km/h (from memory; no input states it). */
    private static final long FORECAST_TEMPERATURE = 2;
    private static final long FORECAST_WIND = 5;

    private static final Topic BIKE = Topics.BIKE;
    private static final Topic WATER = Topics.WATER;

    private final Call call;
    private final WhatIfCall trial;
    private final Map<Topic, CloseThreshold> nearest = new LinkedHashMap<>();

    private CloseThresholdFinder(DroolsRules rules, Call call) {
        this.call = call;
        this.trial = new WhatIfCall(rules, call, null);
    }

    /** The nearest such threshold of each close decision, in the order of the catalogue. */
    public static List<CloseThreshold> of(DroolsRules rules, Call call) {
        CloseThresholdFinder margins = new CloseThresholdFinder(rules, call);
        for (Map.Entry<Measure, MeasureValue> each : call.demands().values().entrySet()) {
            if (each.getKey().layer() == 0) {
                margins.measure(rules, each.getKey(), each.getValue());
            }
        }
        List<CloseThreshold> out = new ArrayList<>();
        for (Topic topic : Topics.all()) {
            if (margins.nearest.containsKey(topic)) {
                out.add(margins.nearest.get(topic));
            }
        }
        return out;
    }

    private void measure(DroolsRules rules, Measure measure, MeasureValue value) {
        long least = value.low() - unstated(measure);
        long most = value.high() + unstated(measure);
        boolean ordered = measure.scale().kind() == MeasureScale.Kind.QUANTITY || measure.scale().kind() == MeasureScale.Kind.WORDS;
        if (least == most || !ordered) {
            return;
        }
        SortedSet<Long> turns = new TreeSet<>();
        for (Row row : rules.rows()) {
            RuleInputs.turns(row, measure, turns);
        }
        List<Long> up = List.copyOf(turns.subSet(value.mid() + 1, most + 1));
        List<Long> down = new ArrayList<>();
        turns.subSet(least + 1, value.mid() + 1).forEach(turn -> down.add(0, turn));
        up.forEach(turn -> threshold(measure, value.mid(), turn - 1, turn));
        down.forEach(turn -> threshold(measure, value.mid(), turn, turn - 1));
    }

    /** What a measure may be off by beyond the range it has, in its ticks: what is forecast is no more than that. */
    private static long unstated(Measure measure) {
        return switch (measure) {
            case START_TEMPERATURE, SUMMIT_TEMPERATURE, COLDEST_TEMPERATURE, HOTTEST_TEMPERATURE, NIGHT_TEMPERATURE -> FORECAST_TEMPERATURE;
            case WIND -> FORECAST_WIND;
            default -> 0;
        };
    }

    /** Whether a decision is the measure itself, so that saying that one is close to the other says nothing. */
    private static boolean isItself(Measure measure, Topic topic) {
        return measure == Measure.WATER_AT_THE_START && topic == WATER;
    }

    /** @param near the last value on this side of a threshold, {@code beyond} the first on its other side */
    private void threshold(Measure measure, long now, long near, long beyond) {
        Map<Topic, Decision> before = trial.all(measure, near);
        Map<Topic, Decision> after = trial.all(measure, beyond);
        boolean anotherBike = after.containsKey(BIKE) && WhatIfCall.differ(after.get(BIKE), call.on(BIKE));
        for (Map.Entry<Topic, Decision> each : after.entrySet()) {
            if (anotherBike && each.getKey() != BIKE || isItself(measure, each.getKey())) {
                continue;
            }
            Decision is = call.on(each.getKey());
            boolean turned = WhatIfCall.differ(each.getValue(), before.getOrDefault(each.getKey(), is)) && WhatIfCall.differ(each.getValue(), is);
            CloseThreshold known = nearest.get(each.getKey());
            if (turned && is.value() != null
                    && (known == null || ChangeSize.of(measure, now, beyond) < ChangeSize.of(known.measure(), known.from(), known.threshold()))) {
                nearest.put(each.getKey(), new CloseThreshold(is, measure, now, beyond, each.getValue()));
            }
        }
    }
}
