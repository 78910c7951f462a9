package courseworthy.call;

import courseworthy.decision.Decision;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.demand.MeasureValue;
import courseworthy.engine.DroolsRules;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;

/**
 * What would change each decision of a call, for all of them at once: every stated measure is varied alone within what it may reasonably be,
 * outward from its value, and the whole call made again at each place where something can turn. {@link FlipFinder} does so for one
 * decision, without an end. Where another kind of bike would be called, only that decision is named: the rest follows from it.
 */
public final class NearestChangeFinder {

    /** A measure is followed to so many times its value and to as small a part of it (judgement); where its scale has ends, over half of the scale. */
    private static final double HALF = 0.5;
    /** Where a measure has more places than this in one direction, only so many are tried at first. */
    private static final int STOPS = 32;

    private final Call call;
    private final WhatIfCall trial;
    private final Map<Long, Map<Topic, Decision>> tried = new HashMap<>();
    private final Map<Topic, List<Flip>> found = new LinkedHashMap<>();

    private NearestChangeFinder(Call call, WhatIfCall trial) {
        this.call = call;
        this.trial = trial;
        Topics.all().forEach(topic -> found.put(topic, new ArrayList<>()));
    }

    /** By topic, the nearest change of each measure in each direction, smallest first; none for a topic that no single change turns. */
    public static Map<Topic, List<Flip>> of(DroolsRules rules, Call call) {
        return of(call, new WhatIfCall(rules, call));
    }

    /** @param trial of the same call, for every topic */
    public static Map<Topic, List<Flip>> of(Call call, WhatIfCall trial) {
        NearestChangeFinder finder = new NearestChangeFinder(call, trial);
        for (Measure measure : finder.trial.upstream().measures()) {
            MeasureValue value = call.demands().get(measure);
            if (value != null) {
                finder.tried.clear();
                finder.search(measure, value);
            }
        }
        finder.found.values().forEach(flips -> flips.sort(FlipFinder.BY_SIZE));
        return finder.found;
    }

    private void search(Measure measure, MeasureValue value) {
        SortedSet<Long> places = Breakpoints.of(trial, measure, value.mid());
        if (measure.scale().kind() == MeasureScale.Kind.QUANTITY || measure.scale().kind() == MeasureScale.Kind.WORDS) {
            search(measure, value, FlipFinder.up(places, value.mid()), Flip.FlipDirection.UP);
            search(measure, value, FlipFinder.down(places, value.mid()), Flip.FlipDirection.DOWN);
            return;
        }
        for (long place : places) {
            search(measure, value, place == value.mid() ? List.of() : List.of(place), Flip.FlipDirection.OVER);
        }
    }

    /** Nearest first in one direction; where there are many places, every so many of them, and those between only where something has turned. */
    private void search(Measure measure, MeasureValue value, List<Long> all, Flip.FlipDirection way) {
        List<Long> places = way == Flip.FlipDirection.OVER ? all : all.stream().filter(place -> isReasonable(measure, value, place)).toList();
        Set<Topic> done = new HashSet<>();
        int stride = Math.max(1, places.size() / STOPS);
        for (int from = 0; from < places.size(); from += stride) {
            List<Long> stretch = places.subList(from, Math.min(from + stride, places.size()));
            stretch(measure, stretch, done).forEach((topic, place) -> {
                boolean inRange = place >= value.low() && place <= value.high();
                Map<Topic, Decision> there = turned(measure, place);
                found.get(topic).add(new Flip(measure, value.mid(), place, way, inRange, there.get(topic), tyre(topic, there)));
            });
        }
    }

    /** The first place of each topic in a stretch of places that has turned by its end. */
    private Map<Topic, Long> stretch(Measure measure, List<Long> places, Set<Topic> done) {
        Map<Topic, Long> out = new LinkedHashMap<>();
        for (Topic topic : turned(measure, places.get(places.size() - 1)).keySet()) {
            if (done.add(topic)) {
                int same = -1;
                int turned = places.size() - 1;
                while (turned - same > 1) {
                    int middle = (same + turned) / 2;
                    if (turned(measure, places.get(middle)).containsKey(topic)) {
                        turned = middle;
                    } else {
                        same = middle;
                    }
                }
                out.put(topic, places.get(turned));
            }
        }
        return out;
    }

    /** The decisions that are others where a measure has another value. */
    private Map<Topic, Decision> turned(Measure measure, long place) {
        return tried.computeIfAbsent(place, at -> {
            Map<Topic, Decision> there = trial.all(measure, at);
            there.values().removeIf(each -> !WhatIfCall.differ(each, call.on(each.topic())));
            if (there.containsKey(Topics.BIKE)) {
                there.keySet().retainAll(Set.of(Topics.BIKE));
            }
            return there;
        });
    }

    /** For a pressure, what is decided otherwise of the tyre it is for. */
    private List<Decision> tyre(Topic topic, Map<Topic, Decision> there) {
        return Topics.ofTyre(topic).stream().map(there::get).filter(each -> each != null && WhatIfCall.differ(each, call.on(each.topic()))).toList();
    }

    /** Whether a value is among those followed: what a measure may be already, half to double of it or so, and from nothing the least there can be. */
    static boolean isReasonable(Measure measure, MeasureValue value, long candidate) {
        long now = value.mid();
        return candidate >= value.low() && candidate <= value.high() || ChangeSize.of(measure, now, candidate) <= HALF
                || now == 0 && candidate <= 1;
    }
}
