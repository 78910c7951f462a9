package courseworthy.call;

import courseworthy.call.DependencyGraph.RowLayer;
import courseworthy.demand.DerivedMeasures;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.sheet.MeasureRange;
import courseworthy.sheet.RuleInputs;
import courseworthy.sheet.Saying;
import courseworthy.topic.Topic;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Where a decision can change as one measure does: from one of these values to just below the next, every rule says the same. They are
 * where a test of the measure turns, and every value at which a claim that comes from the measure is another one, as far as any other
 * claim or what is sensible for the topic reaches. A measure from which others derive may change something with every tick.
 */
final class Breakpoints {

    /** A measure from which others derive is followed up to so many times its value. */
    private static final int DERIVED_UP_TO = 3;

    private final WhatIfCall trial;
    private final DependencyGraph upstream;
    private final Measure measure;
    private final long now;
    private final SortedSet<Long> places = new TreeSet<>();

    private Breakpoints(WhatIfCall trial, Measure measure, long now) {
        this.trial = trial;
        this.upstream = trial.upstream();
        this.measure = measure;
        this.now = now;
    }

    /**
     * The places of a measure, ascending, the least value it can have first.
     *
     * @param now its value
     */
    static SortedSet<Long> of(WhatIfCall trial, Measure measure, long now) {
        Breakpoints out = new Breakpoints(trial, measure, now);
        out.places.add(MeasureRange.least(measure));
        if (measure.scale().kind() == MeasureScale.Kind.QUANTITY) {
            out.quantity();
        } else {
            out.every(0, measure.scale().words().size() - 1);
        }
        out.places.removeIf(place -> place < MeasureRange.least(measure) || place > MeasureRange.most(measure));
        return out.places;
    }

    private void every(long least, long most) {
        for (long value = least; value <= most; value++) {
            places.add(value);
        }
    }

    private void quantity() {
        if (upstream.derivesFromMeasures() && DerivedMeasures.read().contains(measure)) {
            long most = MeasureRange.most(measure);
            every(MeasureRange.least(measure), most == Long.MAX_VALUE ? DERIVED_UP_TO * now : most);
        }
        for (RowLayer slot : upstream.readers(measure)) {
            RuleInputs.turns(slot.row(), measure, places);
            for (Saying saying : slot.row().sayings()) {
                if (saying.source() instanceof Saying.Times times && times.measure() == measure) {
                    steps(saying, times);
                }
            }
        }
    }

    /** The values at which a claim that comes from the measure is another one. */
    private void steps(Saying saying, Saying.Times times) {
        Topic topic = saying.topic();
        long low = topic.least();
        long high = Math.max(topic.most(), times.on(topic, now));
        for (long value : trial.mayBeSaid(topic)) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        long room = 2 * topic.step(topic.most()) + 2;
        follow(topic, times, low - room, high + room);
    }

    private void follow(Topic topic, Saying.Times times, long low, long high) {
        long value = first(topic, times, low);
        long worth = times.on(topic, value);
        places.add(value);
        while (worth <= high && value <= MeasureRange.most(measure)) {
            long next = next(topic, times, value, worth);
            if (next < 0) {
                return;
            }
            value = next;
            worth = times.on(topic, value);
            places.add(value);
        }
    }

    /** The next value that makes another claim; most often it is the very next. Negative where none does. */
    private static long next(Topic topic, Saying.Times times, long value, long worth) {
        long step = 1;
        while (times.on(topic, value + step) == worth) {
            step *= 2;
            if (step > Integer.MAX_VALUE) {
                return -1;
            }
        }
        return step == 1 ? value + 1 : firstOver(topic, times, value + step / 2, value + step, worth);
    }

    private static long firstOver(Topic topic, Saying.Times times, long notYet, long already, long worth) {
        long low = notYet + 1;
        long high = already;
        while (low < high) {
            long middle = Math.floorDiv(low + high, 2);
            if (times.on(topic, middle) > worth) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return high;
    }

    /** The least value that makes a claim of at least so much; claims grow with the measure. */
    private long first(Topic topic, Saying.Times times, long wanted) {
        long low = MeasureRange.least(measure);
        long high = Math.max(1, Math.abs(now));
        while (times.on(topic, high) < wanted && high < Integer.MAX_VALUE) {
            high *= 2;
        }
        while (low < high) {
            long middle = Math.floorDiv(low + high, 2);
            if (times.on(topic, middle) >= wanted) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return high;
    }
}
