package courseworthy.call;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.decision.Decision;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.demand.MeasureValue;
import courseworthy.engine.DroolsRules;
import courseworthy.topic.Topic;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Flips the slow way: the whole call for every value of a measure, with nothing left out and nothing remembered. */
final class TickByTick {

    private final DroolsRules rules;
    private final Demands demands;
    private final Call call;
    private final Map<Topic, List<Flip>> found = new HashMap<>();

    TickByTick(DroolsRules rules, Demands demands) {
        this.rules = rules;
        this.demands = demands;
        this.call = CallMaker.call(rules, demands);
    }

    Call call() {
        return call;
    }

    /** The flips that a search finds on a topic. */
    List<Flip> found(Topic topic) {
        return found.computeIfAbsent(topic, t -> new FlipFinder(rules, call, t, (done, of) -> { }).any());
    }

    /** The whole call with one measure changed. */
    Call with(Measure measure, long value) {
        return CallMaker.call(rules, demands.with(Map.of(measure, MeasureValue.exact(value))));
    }

    /**
     * Compares what a search finds with what every value between two ends gives, on some topics.
     *
     * @return how many flips there were
     */
    int agree(Measure measure, long least, long most, List<Topic> topics) {
        long now = demands.get(measure).mid();
        Map<Long, Call> calls = new HashMap<>();
        for (long value = least; value <= most; value++) {
            calls.put(value, with(measure, value));
        }
        int flips = 0;
        for (Topic topic : topics) {
            Map<Flip.FlipDirection, List<Long>> expected = new EnumMap<>(Flip.FlipDirection.class);
            if (ordered(measure)) {
                first(calls, topic, now, 1, most, Flip.FlipDirection.UP, expected);
                first(calls, topic, now, -1, least, Flip.FlipDirection.DOWN, expected);
            } else {
                over(calls, topic, now, expected);
            }
            assertThat(within(topic, measure, least, most)).as("%s as %s changes from %s", topic, measure, now).isEqualTo(expected);
            flips += expected.size();
        }
        return flips;
    }

    private static boolean ordered(Measure measure) {
        return measure.scale().kind() == MeasureScale.Kind.QUANTITY || measure.scale().kind() == MeasureScale.Kind.WORDS;
    }

    private void first(Map<Long, Call> calls, Topic topic, long now, long step, long end, Flip.FlipDirection way,
            Map<Flip.FlipDirection, List<Long>> out) {
        for (long value = now + step; step > 0 ? value <= end : value >= end; value += step) {
            if (another(calls.get(value), topic)) {
                out.put(way, List.of(value));
                return;
            }
        }
    }

    private void over(Map<Long, Call> calls, Topic topic, long now, Map<Flip.FlipDirection, List<Long>> out) {
        List<Long> values = calls.keySet().stream().sorted().filter(value -> value != now && another(calls.get(value), topic)).toList();
        if (!values.isEmpty()) {
            out.put(Flip.FlipDirection.OVER, values);
        }
    }

    private boolean another(Call with, Topic topic) {
        Decision now = call.on(topic);
        return with.on(topic).status() != now.status() || !java.util.Objects.equals(with.on(topic).value(), now.value());
    }

    private Map<Flip.FlipDirection, List<Long>> within(Topic topic, Measure measure, long least, long most) {
        Map<Flip.FlipDirection, List<Long>> out = new EnumMap<>(Flip.FlipDirection.class);
        for (Flip flip : found(topic)) {
            if (flip.measure() == measure && flip.to() >= least && flip.to() <= most) {
                out.computeIfAbsent(flip.way(), way -> new ArrayList<>()).add(flip.to());
            }
        }
        out.replaceAll((way, values) -> values.stream().sorted().toList());
        return out;
    }
}
