package courseworthy.call;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.engine.DroolsRules;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What would change every decision, against the exact search for one of them and against the whole call made anew. */
class NearestChangeFinderTest {

    private static final DroolsRules SHIPPED = ShippedRuleSet.read();
    /** For a longer run: every topic of every day ({@code -Dcourseworthy.flips=1}). */
    private static final boolean ALL = Integer.getInteger("courseworthy.flips", 0) > 0;

    /** Each third topic of days of every kind; a longer run has all. */
    @ParameterizedTest
    @ValueSource(ints = {0, 9, 22, 43})
    void itFindsWhatTheExactSearchFinds(int first) {
        List<ShippedDays> days = ShippedDays.all();
        int compared = 0;
        for (int i = first; i < (ALL ? days.size() : first + 1); i++) {
            TickByTick slow = new TickByTick(SHIPPED, days.get(i).demands());
            Map<Topic, List<Flip>> found = NearestChangeFinder.of(SHIPPED, slow.call());
            List<Topic> topics = Topics.all();
            for (int k = ALL ? 0 : first % 3; k < topics.size(); k += ALL ? 1 : 3) {
                List<String> expected = expected(slow, topics.get(k));
                assertThat(found.get(topics.get(k))).as(days.get(i).name() + " " + topics.get(k)).extracting(NearestChangeFinderTest::text).isEqualTo(expected);
                compared += expected.size();
            }
        }
        assertThat(compared).as("a comparison of nothing proves nothing").isGreaterThan(20);
    }

    /** Those within reach that leave the kind of bike. */
    private static List<String> expected(TickByTick slow, Topic topic) {
        List<String> out = new ArrayList<>();
        for (Flip flip : slow.found(topic)) {
            Call there = slow.with(flip.measure(), flip.to());
            boolean anotherBike = WhatIfCall.differ(there.on(Topics.BIKE), slow.call().on(Topics.BIKE));
            boolean within = flip.way() == Flip.FlipDirection.OVER || NearestChangeFinder.isReasonable(flip.measure(), slow.call().demands().get(flip.measure()), flip.to());
            if (within && (topic.equals(Topics.BIKE) || !anotherBike)) {
                out.add(text(flip));
            }
        }
        return out;
    }

    private static String text(Flip flip) {
        return flip.measure() + " " + flip.from() + " to " + flip.to() + ": " + flip.decision().status() + " " + flip.decision().text() + " " + flip.inRange() + " " + flip.tyre();
    }

    /** From nothing there is neither half nor double, yet the first of it counts. */
    @ParameterizedTest
    @ValueSource(ints = {0, 9})
    void aChangeIsNoMoreThanDoubleOrHalf(int day) {
        Call call = CallMaker.call(SHIPPED, ShippedDays.all().get(day).demands());
        assertThat(NearestChangeFinder.of(SHIPPED, call).values().stream().flatMap(List::stream).filter(flip -> flip.way() != Flip.FlipDirection.OVER && !flip.inRange()))
                .isNotEmpty().allSatisfy(flip -> assertThat(flip.size() <= 0.5 || flip.from() == 0 && flip.to() == 1).as(flip.measure() + " " + flip.to()).isTrue());
    }
}
