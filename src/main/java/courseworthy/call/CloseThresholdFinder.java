package courseworthy.call;

import courseworthy.call.DependencyGraph.RowLayer;
import courseworthy.decision.Decision;
import courseworthy.demand.DerivedMeasures;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.demand.MeasureValue;
import courseworthy.engine.DroolsRules;
import courseworthy.sheet.MeasureRange;
import courseworthy.sheet.Row;
import courseworthy.sheet.RuleInputs;
import courseworthy.sheet.Saying;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.units.Unit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Decisions that are close: with one measure elsewhere within what it may be, or on the next step to which it is rounded, all others held,
 * the decision is another one by at least a {@linkplain Topic#notch() notch}. Each threshold of a rule there is tried through all layers, on
 * both of its sides; what grows with the measure by a notch or more is found from the ends. Where another kind of bike would be called, that
 * decision alone is close: the rest goes with it.
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
    private final Set<Measure> saidFrom = EnumSet.noneOf(Measure.class);

    private CloseThresholdFinder(DroolsRules rules, Call call, WhatIfCall trial) {
        this.call = call;
        this.trial = trial;
        for (Row row : rules.rows()) {
            for (Saying saying : row.sayings()) {
                if (saying.source() instanceof Saying.Times times) {
                    saidFrom.add(times.measure());
                }
            }
        }
    }

    /** The nearest such threshold of each close decision, in the order of the catalogue. */
    public static List<CloseThreshold> of(DroolsRules rules, Call call) {
        return of(rules, call, new WhatIfCall(rules, call));
    }

    /** @param trial of the same call, for every topic */
    public static List<CloseThreshold> of(DroolsRules rules, Call call, WhatIfCall trial) {
        CloseThresholdFinder margins = new CloseThresholdFinder(rules, call, trial);
        for (Map.Entry<Measure, MeasureValue> each : call.demands().values().entrySet()) {
            if (each.getKey().layer() == 0) {
                margins.measure(each.getKey(), each.getValue());
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

    private void measure(Measure measure, MeasureValue value) {
        boolean ordered = measure.scale().kind() == MeasureScale.Kind.QUANTITY || measure.scale().kind() == MeasureScale.Kind.WORDS;
        long least = least(measure, value);
        long most = most(measure, value);
        if (least == most || !ordered) {
            return;
        }
        SortedSet<Long> turns = new TreeSet<>();
        for (RowLayer slot : trial.upstream().readers(measure)) {
            RuleInputs.turns(slot.row(), measure, turns);
        }
        List<Long> up = List.copyOf(turns.subSet(value.mid() + 1, most + 1));
        List<Long> down = new ArrayList<>();
        turns.subSet(least + 1, value.mid() + 1).forEach(turn -> down.add(0, turn));
        up.forEach(turn -> threshold(measure, value.mid(), turn - 1, turn));
        down.forEach(turn -> threshold(measure, value.mid(), turn, turn - 1));
        if (!up.isEmpty() || !down.isEmpty() || grows(measure)) {
            end(measure, value.mid(), most);
            end(measure, value.mid(), least);
        }
    }

    /** The least that a measure may be: the low end of its range, or the step to which it is rounded next where that is lower. */
    static long least(Measure measure, MeasureValue value) {
        return Math.max(MeasureRange.least(measure), Math.min(value.low() - unstated(measure), value.mid() - step(measure, value)));
    }

    /** The most that a measure may be, likewise. */
    static long most(Measure measure, MeasureValue value) {
        return Math.min(MeasureRange.most(measure), Math.max(value.high() + unstated(measure), value.mid() + step(measure, value)));
    }

    /** The step to which a measure is rounded; none for what is counted, nor where there is none of it. */
    private static long step(Measure measure, MeasureValue value) {
        boolean measured = measure.scale().kind() == MeasureScale.Kind.QUANTITY && measure.scale().resolution().unit() != Unit.ONE;
        return measured && value.mid() != 0 ? 1 : 0;
    }

    /** Whether something that rules say comes from the measure, directly or by way of another. */
    private boolean grows(Measure measure) {
        return saidFrom.contains(measure) || DerivedMeasures.read().contains(measure);
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

    /** What has changed by a notch at an end of what a measure may be, without a threshold: from the nearest value at which it has. */
    private void end(Measure measure, long now, long end) {
        if (end == now) {
            return;
        }
        Map<Topic, Decision> there = trial.all(measure, end);
        boolean anotherBike = there.containsKey(BIKE) && WhatIfCall.differ(there.get(BIKE), call.on(BIKE));
        for (Topic topic : there.keySet()) {
            if (!nearest.containsKey(topic) && !isItself(measure, topic) && (!anotherBike || topic == BIKE) && turned(there.get(topic), call.on(topic))) {
                nearestTurn(measure, now, end, topic);
            }
        }
    }

    private void nearestTurn(Measure measure, long now, long end, Topic topic) {
        long same = now;
        long turned = end;
        while (Math.abs(turned - same) > 1) {
            long middle = Math.floorDiv(same + turned, 2);
            if (turned(trial.all(measure, middle).getOrDefault(topic, call.on(topic)), call.on(topic))) {
                turned = middle;
            } else {
                same = middle;
            }
        }
        note(measure, now, turned, trial.all(measure, turned).get(topic));
    }

    /** Whether a decision is another one by at least a notch. */
    public static boolean turned(Decision other, Decision is) {
        if (other.value() == null || is.value() == null || is.topic().kind() != Topic.Kind.QUANTITY) {
            return WhatIfCall.differ(other, is);
        }
        return Math.abs(other.value() - is.value()) >= is.topic().notch();
    }

    private void note(Measure measure, long now, long beyond, Decision otherwise) {
        Decision is = call.on(otherwise.topic());
        CloseThreshold known = nearest.get(otherwise.topic());
        if (is.value() != null
                && (known == null || ChangeSize.of(measure, now, beyond) < ChangeSize.of(known.measure(), known.from(), known.threshold()))) {
            nearest.put(otherwise.topic(), new CloseThreshold(is, measure, now, beyond, otherwise));
        }
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
            if (turned(each.getValue(), is) && WhatIfCall.differ(each.getValue(), before.getOrDefault(each.getKey(), is))) {
                note(measure, now, beyond, each.getValue());
            }
        }
    }
}
