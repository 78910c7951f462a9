package courseworthy.call;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Status;
import courseworthy.demand.Demands;
import courseworthy.engine.RuleSet;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.BiPredicate;

/** One thing changed rung by rung on many days, all else held; then asked which way the decisions went. */
final class MeasureLadder {

    private final BiFunction<Integer, Integer, Demands> demands;
    private final List<List<Call>> days = new ArrayList<>();
    private final int rungs;
    private BiPredicate<Call, Call> comparable = (before, after) -> true;

    /**
     * @param days    how many
     * @param rungs   how many on each day, the one thing growing
     * @param demands of a day and a rung, both from 0
     */
    MeasureLadder(RuleSet rules, int days, int rungs, BiFunction<Integer, Integer, Demands> demands) {
        this.demands = demands;
        this.rungs = rungs;
        for (int day = 0; day < days; day++) {
            List<Call> calls = new ArrayList<>();
            for (int rung = 0; rung < rungs; rung++) {
                calls.add(CallMaker.call(rules, demands.apply(day, rung)));
            }
            this.days.add(calls);
        }
    }

    /** Compares only rungs that have these topics settled alike. */
    MeasureLadder sameSettled(String... topics) {
        comparable = (before, after) -> {
            for (String topic : topics) {
                if (!before.on(Topics.of(topic)).text().equals(after.on(Topics.of(topic)).text())) {
                    return false;
                }
            }
            return true;
        };
        return this;
    }

    /** The further up, the more or the same; more somewhere. */
    void neverDown(String... topics) {
        check(topics, 1);
    }

    /** The further up, the less or the same; less somewhere. */
    void neverUp(String... topics) {
        check(topics, -1);
    }

    private void check(String[] topics, int sign) {
        Map<String, String> wrong = new LinkedHashMap<>();
        Map<String, Integer> moved = new LinkedHashMap<>();
        for (String topic : topics) {
            moved.put(topic, 0);
            for (int day = 0; day < days.size(); day++) {
                for (int rung = 1; rung < rungs; rung++) {
                    int way = sign * way(topic, day, rung);
                    moved.merge(topic, Math.max(0, way), Integer::sum);
                    if (way < 0) {
                        wrong.putIfAbsent(topic, told(topic, day, rung));
                    }
                }
            }
        }
        assertThat(wrong.values()).as(String.join("\n", wrong.values())).isEmpty();
        assertThat(moved).allSatisfy((topic, times) -> assertThat(times).as(topic).isPositive());
    }

    private int way(String topic, int day, int rung) {
        Call before = days.get(day).get(rung - 1);
        Call after = days.get(day).get(rung);
        return comparable.test(before, after)
                ? Long.compare(worth(after.on(Topics.of(topic))), worth(before.on(Topics.of(topic)))) : 0;
    }

    /** What does not apply counts as least: a bike without a fork has no travel. */
    private static long worth(Decision decision) {
        assertThat(decision.status()).as("%s", decision).isNotEqualTo(Status.NONE_POSSIBLE);
        return decision.status() == Status.SETTLED ? decision.value() : Long.MIN_VALUE;
    }

    private String told(String topic, int day, int rung) {
        return "day " + day + ", rung " + rung + ": " + told(days.get(day).get(rung - 1), topic) + "\n  then "
                + told(days.get(day).get(rung), topic) + "\n  on " + demands.apply(day, rung).values();
    }

    private static String told(Call call, String topic) {
        Decision decision = call.on(Topics.of(topic));
        return call.on(Topics.BIKE).text() + ": " + topic + " " + decision.text() + " for "
                + decision.taken().stream()
                        .map(claim -> claim.origin().rule() + " " + claim.verb().word() + " " + claim.written()).toList()
                + " against " + decision.lost().stream().map(lost -> lost.claim().origin().rule() + " " + lost.how().words()).toList();
    }
}
