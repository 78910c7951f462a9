package courseworthy.sheet;

import courseworthy.claim.TestedFact;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.demand.StretchFacts;
import courseworthy.demand.StretchMeasure;
import courseworthy.topic.SettledTopic;
import courseworthy.topic.Topic;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What must hold for a row to speak: one tree of predicates, used by the rule network, by the plain loop and by whoever asks why a
 * row kept silent. Total: it never throws, and what is not known makes it unknown only where that matters.
 */
public sealed interface Condition {

    Truth on(Stage stage);

    /** The same text for equal conditions, and for no others. */
    String canonical();

    /** The layer that must be settled before it can be told. */
    int layer();

    /** The same condition with each of its tests changed. */
    Condition map(TestTransformer change);

    /** Adds the facts that make it true (or false, where {@code truth} is false). */
    void grounds(Stage stage, boolean truth, Condition whole, List<TestedFact> out);

    /** Adds the measures for want of which it is unknown. */
    void wanting(Stage stage, Set<String> out);

    /** Whether it could turn out so if all measures were known; a topic that does not apply stays unknown. */
    boolean could(Stage stage, boolean truth);

    /** Changes one test. */
    interface TestTransformer {
        ValueTest of(TestSubject subject, ValueTest test);
    }

    /** Every value at which one of its tests turns, in the order written. */
    default List<Threshold> thresholds() {
        List<Threshold> out = new ArrayList<>();
        map((subject, test) -> {
            if (test instanceof ValueTest.Within within) {
                ThresholdFinder.of(subject, within, out);
            }
            return test;
        });
        return out;
    }

    /** The same condition with one of its {@link #thresholds()} moved to another tick. */
    default Condition withThreshold(int index, long tick) {
        int[] next = {0};
        return map((subject, test) -> {
            if (!(test instanceof ValueTest.Within within)) {
                return test;
            }
            int first = next[0];
            next[0] += ThresholdFinder.count(within);
            return ThresholdFinder.moved(within, index - first, tick);
        });
    }

    /** A test of a measure. */
    record MeasureCondition(Measure measure, ValueTest test, String written) implements Condition {

        @Override
        public Truth on(Stage stage) {
            MeasureValue value = stage.demands().get(measure);
            return value == null ? Truth.UNKNOWN : Truth.of(test.holds(value.mid()));
        }

        @Override
        public String canonical() {
            return measure.written() + test.canonical();
        }

        @Override
        public int layer() {
            return measure.layer();
        }

        @Override
        public Condition map(TestTransformer change) {
            return new MeasureCondition(measure, change.of(TestSubject.of(measure), test), written);
        }

        @Override
        public void grounds(Stage stage, boolean truth, Condition whole, List<TestedFact> out) {
            MeasureValue value = stage.demands().get(measure);
            if (value == null) {
                return;
            }
            boolean met = test.holds(value.mid());
            boolean near = turnsAt(value.low(), met, stage, whole) || turnsAt(value.high(), met, stage, whole);
            out.add(TestedFacts.of(measure, value.mid(), written, met, near));
        }

        private boolean turnsAt(long end, boolean met, Stage stage, Condition whole) {
            return test.holds(end) != met && whole.on(stage) != whole.on(
                    new Stage(stage.layer(), stage.demands().with(Map.of(measure, MeasureValue.exact(end))), stage.settled()));
        }

        @Override
        public void wanting(Stage stage, Set<String> out) {
            if (!stage.demands().known(measure)) {
                out.add(measure.written());
            }
        }

        @Override
        public boolean could(Stage stage, boolean truth) {
            Truth now = on(stage);
            return now == Truth.UNKNOWN || now == Truth.of(truth);
        }
    }

    /** A test of a topic settled in an earlier layer; unknown where the topic does not apply. */
    record DecisionCondition(Topic topic, ValueTest test, String written) implements Condition {

        @Override
        public Truth on(Stage stage) {
            SettledTopic settled = stage.settled().get(topic);
            return settled == null || !settled.known() ? Truth.UNKNOWN : Truth.of(test.holds(settled.value()));
        }

        @Override
        public String canonical() {
            return "decided " + topic.name() + test.canonical();
        }

        @Override
        public int layer() {
            return topic.layer();
        }

        @Override
        public Condition map(TestTransformer change) {
            return new DecisionCondition(topic, change.of(TestSubject.of(topic), test), written);
        }

        @Override
        public void grounds(Stage stage, boolean truth, Condition whole, List<TestedFact> out) {
            SettledTopic settled = stage.settled().get(topic);
            if (settled != null && settled.known()) {
                out.add(TestedFacts.of(topic, settled.value(), written, test.holds(settled.value())));
            }
        }

        @Override
        public void wanting(Stage stage, Set<String> out) {
            // A topic that does not apply is no want of knowledge.
        }

        @Override
        public boolean could(Stage stage, boolean truth) {
            return on(stage) == Truth.of(truth);
        }
    }

    /** Whether some maximal run of stretches, or none, satisfies a set of conditions. */
    record Stretches(boolean any, StretchConditions set) implements Condition {

        @Override
        public Truth on(Stage stage) {
            Truth some = StretchRuns.any(set, stage.demands().stretches());
            return any ? some : some.not();
        }

        @Override
        public String canonical() {
            return name() + set.canonical();
        }

        /** What it tests, as its ground names it. */
        public String measure() {
            return name() + ": " + set.names();
        }

        private String name() {
            return any ? "any stretch" : "no stretch";
        }

        @Override
        public int layer() {
            return 0;
        }

        @Override
        public Condition map(TestTransformer change) {
            return new Stretches(any, set.map(change));
        }

        @Override
        public void grounds(Stage stage, boolean truth, Condition whole, List<TestedFact> out) {
            Truth now = on(stage);
            if (now != Truth.UNKNOWN) {
                long longest = StretchRuns.longest(set, stage.demands().stretches());
                out.add(TestedFacts.ofRun(measure(), longest, set.written(), now == Truth.TRUE));
            }
        }

        @Override
        public void wanting(Stage stage, Set<String> out) {
            for (StretchFacts facts : stage.demands().stretches()) {
                UnknownProperties.of(set, facts, out);
            }
            if (stage.demands().stretches().isEmpty()) {
                set.tests().forEach(t -> out.add(t.measure().written()));
            }
        }

        @Override
        public boolean could(Stage stage, boolean truth) {
            Truth now = on(stage);
            return now == Truth.UNKNOWN || now == Truth.of(truth);
        }
    }

    /** A test of the share of the course, by length, whose stretches satisfy a set of conditions. */
    record StretchShareCondition(StretchConditions where, ValueTest test, String written) implements Condition {

        @Override
        public Truth on(Stage stage) {
            long[] ends = ends(stage);
            return ends == null ? Truth.UNKNOWN : test.holdsSomewhere(ends[0], ends[1]);
        }

        /** The least and the greatest share it can be, in whole per cent; null without stretches. */
        long[] ends(Stage stage) {
            long[] length = new long[Truth.values().length];
            for (StretchFacts facts : stage.demands().stretches()) {
                length[where.on(facts).ordinal()] += facts.get(StretchMeasure.LENGTH);
            }
            long yes = length[Truth.TRUE.ordinal()];
            long may = yes + length[Truth.UNKNOWN.ordinal()];
            long total = may + length[Truth.FALSE.ordinal()];
            return total == 0 ? null : new long[] {percent(yes, total), percent(may, total)};
        }

        /** To the nearest whole per cent, halves up. */
        private static long percent(long part, long total) {
            return (200 * part + total) / (2 * total);
        }

        /** What it tests, as its ground names it. */
        public String measure() {
            return "share of course: " + where.written();
        }

        @Override
        public String canonical() {
            return "share of course" + where.canonical() + test.canonical();
        }

        @Override
        public int layer() {
            return 0;
        }

        @Override
        public Condition map(TestTransformer change) {
            return new StretchShareCondition(where.map(change), change.of(TestSubject.SHARE, test), written);
        }

        @Override
        public void grounds(Stage stage, boolean truth, Condition whole, List<TestedFact> out) {
            long[] ends = ends(stage);
            if (ends != null) {
                out.add(TestedFacts.ofShare(measure(), ends, written, on(stage) == Truth.TRUE));
            }
        }

        @Override
        public void wanting(Stage stage, Set<String> out) {
            new Stretches(true, where).wanting(stage, out);
        }

        @Override
        public boolean could(Stage stage, boolean truth) {
            Truth now = on(stage);
            return now == Truth.UNKNOWN || now == Truth.of(truth);
        }
    }

    /** A test of whose day it is, or which. */
    record OccasionTest(OccasionCondition test, String written) implements Condition {

        @Override
        public Truth on(Stage stage) {
            return test.on(stage.demands().occasion());
        }

        @Override
        public String canonical() {
            return test.canonical();
        }

        @Override
        public int layer() {
            return 0;
        }

        @Override
        public Condition map(TestTransformer change) {
            return this;
        }

        @Override
        public void grounds(Stage stage, boolean truth, Condition whole, List<TestedFact> out) {
            Truth now = on(stage);
            if (now != Truth.UNKNOWN) {
                out.add(new TestedFact(test.key(), test.found(stage.demands().occasion()), null, "", written, now == Truth.TRUE, false));
            }
        }

        @Override
        public void wanting(Stage stage, Set<String> out) {
            if (on(stage) == Truth.UNKNOWN) {
                out.add(test.key());
            }
        }

        @Override
        public boolean could(Stage stage, boolean truth) {
            Truth now = on(stage);
            return now == Truth.UNKNOWN || now == Truth.of(truth);
        }
    }

    /** A group of conditions. */
    sealed interface PartsCondition extends Condition {

        List<Condition> parts();

        @Override
        default int layer() {
            return ConditionGroup.layer(parts());
        }

        @Override
        default void wanting(Stage stage, Set<String> out) {
            ConditionGroup.wanting(parts(), stage, out);
        }
    }

    /** All must hold; none at all always holds. */
    record AllOf(List<Condition> parts) implements PartsCondition {

        public AllOf {
            parts = List.copyOf(parts);
        }

        @Override
        public Truth on(Stage stage) {
            Truth out = Truth.TRUE;
            for (int i = 0; i < parts.size(); i++) {
                out = out.and(parts.get(i).on(stage));
                if (out == Truth.FALSE) {
                    return out;
                }
            }
            return out;
        }

        @Override
        public String canonical() {
            return ConditionGroup.canonical("all", parts);
        }

        @Override
        public AllOf map(TestTransformer change) {
            return new AllOf(ConditionGroup.map(parts, change));
        }

        @Override
        public void grounds(Stage stage, boolean truth, Condition whole, List<TestedFact> out) {
            ConditionGroup.grounds(parts, stage, truth, whole, out);
        }

        @Override
        public boolean could(Stage stage, boolean truth) {
            return truth ? ConditionGroup.allCould(parts, stage, true) : ConditionGroup.anyCould(parts, stage, false);
        }
    }

    /** At least one must hold. */
    record AnyOf(List<Condition> parts) implements PartsCondition {

        public AnyOf {
            parts = List.copyOf(parts);
        }

        @Override
        public Truth on(Stage stage) {
            return ConditionGroup.any(parts, stage);
        }

        @Override
        public String canonical() {
            return ConditionGroup.canonical("any", parts);
        }

        @Override
        public AnyOf map(TestTransformer change) {
            return new AnyOf(ConditionGroup.map(parts, change));
        }

        @Override
        public void grounds(Stage stage, boolean truth, Condition whole, List<TestedFact> out) {
            ConditionGroup.grounds(parts, stage, truth, whole, out);
        }

        @Override
        public boolean could(Stage stage, boolean truth) {
            return truth ? ConditionGroup.anyCould(parts, stage, true) : ConditionGroup.allCould(parts, stage, false);
        }
    }

    /** None may hold. */
    record NoneOf(List<Condition> parts) implements PartsCondition {

        public NoneOf {
            parts = List.copyOf(parts);
        }

        @Override
        public Truth on(Stage stage) {
            return ConditionGroup.any(parts, stage).not();
        }

        @Override
        public String canonical() {
            return ConditionGroup.canonical("none", parts);
        }

        @Override
        public NoneOf map(TestTransformer change) {
            return new NoneOf(ConditionGroup.map(parts, change));
        }

        @Override
        public void grounds(Stage stage, boolean truth, Condition whole, List<TestedFact> out) {
            ConditionGroup.grounds(parts, stage, !truth, whole, out);
        }

        @Override
        public boolean could(Stage stage, boolean truth) {
            return truth ? ConditionGroup.allCould(parts, stage, false) : ConditionGroup.anyCould(parts, stage, true);
        }
    }
}
