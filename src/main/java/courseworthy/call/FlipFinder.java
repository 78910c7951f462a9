package courseworthy.call;

import courseworthy.decision.Decision;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.engine.DroolsRules;
import courseworthy.topic.Topic;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.function.Predicate;

/**
 * What would change a decision: stated measures are varied one at a time with all others held, and at every place where something can
 * turn, nearest first, the call is settled anew through all layers. Exact, not sampled; what rules ask of single stretches is held too.
 */
public final class FlipFinder {

    /** Smallest first; equals in the order of the catalogue. */
    static final Comparator<Flip> BY_SIZE = Comparator.comparingDouble(Flip::size).thenComparing(Flip::measure)
            .thenComparing(Flip::way).thenComparingLong(Flip::to);

    /** Told how far a search has come. */
    @FunctionalInterface
    public interface SearchProgress {
        void at(int done, int of);
    }

    private final Demands demands;
    private final WhatIfCall trial;
    private final Decision now;
    private final SearchProgress progress;

    /**
     * Prepares to vary what bears on a topic.
     *
     * @param rules    the rules that made the call
     * @param call     the call as it is
     * @param topic    the topic whose decision is to change
     * @param progress told as measures are done
     */
    public FlipFinder(DroolsRules rules, Call call, Topic topic, SearchProgress progress) {
        this.demands = call.demands().settling(topic);
        this.now = call.on(topic);
        this.trial = new WhatIfCall(rules, call, topic);
        this.progress = progress;
    }

    /** The nearest change of each measure, in each direction, that makes the decision another; smallest first. */
    public List<Flip> any() {
        return where(decision -> WhatIfCall.differ(decision, now));
    }

    /** The nearest change of each measure, in each direction, that brings a value; smallest first. */
    public List<Flip> to(long value) {
        return where(decision -> decision.value() != null && decision.value() == value);
    }

    /**
     * Of all changes of one measure, the one that brings the decision nearest to a value, if nearer than it is; of equals the smallest.
     * Null where none does, and for options without order, where nothing lies between.
     */
    public Flip toward(long value) {
        if (now.topic().kind() == Topic.Kind.OPTIONS || now.value() == null) {
            return null;
        }
        Flip[] best = {null};
        search(flip -> {
            if (apart(flip.decision(), value) < apart(best[0] == null ? now : best[0].decision(), value)
                    || best[0] != null && apart(flip.decision(), value) == apart(best[0].decision(), value)
                            && BY_SIZE.compare(flip, best[0]) < 0) {
                best[0] = flip;
            }
            return false;
        });
        return best[0];
    }

    private static long apart(Decision decision, long value) {
        return decision.value() == null ? Long.MAX_VALUE : Math.abs(decision.value() - value);
    }

    private List<Flip> where(Predicate<Decision> wanted) {
        List<Flip> out = new ArrayList<>();
        search(flip -> wanted.test(flip.decision()) && out.add(flip));
        out.sort(BY_SIZE);
        return out;
    }

    /** Tries every place of every known measure, nearest first in each direction until one is enough. */
    private void search(Predicate<Flip> enough) {
        Set<Measure> measures = trial.upstream().measures();
        int done = 0;
        for (Measure measure : measures) {
            MeasureValue value = demands.get(measure);
            if (value != null) {
                search(measure, value, enough);
            }
            progress.at(++done, measures.size());
        }
    }

    private void search(Measure measure, MeasureValue value, Predicate<Flip> enough) {
        SortedSet<Long> places = Breakpoints.of(trial, measure, value.mid());
        if (ordered(measure)) {
            search(measure, value, up(places, value.mid()), Flip.FlipDirection.UP, enough);
            search(measure, value, down(places, value.mid()), Flip.FlipDirection.DOWN, enough);
        } else {
            for (long place : places) {
                search(measure, value, place == value.mid() ? List.of() : List.of(place), Flip.FlipDirection.OVER, enough);
            }
        }
    }

    private void search(Measure measure, MeasureValue value, List<Long> candidates, Flip.FlipDirection way, Predicate<Flip> enough) {
        for (long candidate : candidates) {
            boolean inRange = candidate >= value.low() && candidate <= value.high();
            WhatIfCall.TurnedDecision turned = trial.with(measure, candidate);
            if (enough.test(new Flip(measure, value.mid(), candidate, way, inRange, turned.decision(), turned.tyre()))) {
                return;
            }
        }
    }

    private static boolean ordered(Measure measure) {
        return switch (measure.scale().kind()) {
            case QUANTITY, WORDS -> true;
            case OPTIONS, YES_NO -> false;
        };
    }

    /** The places above a value, nearest first. */
    static List<Long> up(SortedSet<Long> places, long value) {
        return List.copyOf(places.tailSet(value + 1));
    }

    /** The last values before each place at or below a value, nearest first. */
    static List<Long> down(SortedSet<Long> places, long value) {
        List<Long> out = new ArrayList<>();
        for (long place : places.headSet(value + 1)) {
            if (place > places.first()) {
                out.add(0, place - 1);
            }
        }
        return out;
    }
}
