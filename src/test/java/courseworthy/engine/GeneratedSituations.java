package courseworthy.engine;

import courseworthy.claim.Deadline;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.SourceLocation;
import courseworthy.claim.Task;
import courseworthy.claim.Verb;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.demand.MeasureValue;
import courseworthy.demand.StretchFacts;
import courseworthy.demand.StretchMeasure;
import courseworthy.sheet.Condition;
import courseworthy.sheet.Row;
import courseworthy.sheet.Saying;
import courseworthy.sheet.Stage;
import courseworthy.sheet.StretchConditions;
import courseworthy.sheet.TestSubject;
import courseworthy.sheet.ValueTest;
import courseworthy.topic.SettledTopic;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/** Rows and situations made by chance from a seed: conditions of every shape, several layers, much that is unknown. */
public final class GeneratedSituations {

    /** Quantities and thresholds lie within so many ticks, so that thresholds are met exactly often enough. */
    private static final int TICKS = 12;
    private static final Measure[] MEASURES = Measure.values();

    private final SplittableRandom chance;

    public GeneratedSituations(long seed) {
        this.chance = new SplittableRandom(seed);
    }

    /** Rows with at least so many conditions and up to three more. */
    public List<Row> rows(int count, int conditions) {
        List<Row> out = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            out.add(row(i, conditions + chance.nextInt(4)));
        }
        return out;
    }

    private Row row(int number, int conditions) {
        int settled = chance.nextInt(Topics.LAST_LAYER);
        List<Condition> parts = parts(conditions, settled, 2);
        Condition.AllOf condition = new Condition.AllOf(parts);
        List<Saying> sayings = new ArrayList<>();
        for (int i = chance.nextInt(3); i >= 0; i--) {
            saying(condition.layer(), sayings);
        }
        Rank rank = Rank.values()[chance.nextInt(Rank.values().length)];
        RuleOrigin author = new RuleOrigin(rank.word() + "/row-" + number, rank, 0, Force.SHOULD, Evidence.PRACTICE, "", "By chance.",
                new SourceLocation("generated", number));
        Task task = sayings.isEmpty() || chance.nextInt(10) == 0
                ? new Task(author, "Do it", "It is done", Deadline.RACE_MORNING, 0, false, "", List.of(), List.of()) : null;
        return new Row(author, condition, sayings, task);
    }

    private void saying(int layer, List<Saying> out) {
        Topic topic = one(Topics.all());
        if (topic.layer() <= layer) {
            return;
        }
        Measure measure = one(List.of(Measure.values()));
        boolean alike = topic.kind() == Topic.Kind.QUANTITY && measure.scale().kind() == MeasureScale.Kind.QUANTITY
                && measure.scale().resolution().unit().dimension() == topic.resolution().unit().dimension();
        if (alike && measure.layer() < topic.layer()) {
            out.add(new Saying(topic, Verb.AT_MOST, new Saying.Times(new BigDecimal("0.95"), measure), "0.95 x " + measure.written()));
        } else {
            long value = topic.least() + chance.nextLong(topic.most() - topic.least() + 1);
            out.add(new Saying(topic, Verb.PREFER, new Saying.Literal(value), topic.text(value)));
        }
    }

    private List<Condition> parts(int count, int settled, int depth) {
        List<Condition> out = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            out.add(part(settled, depth));
        }
        return out;
    }

    private Condition part(int settled, int depth) {
        switch (chance.nextInt(depth > 0 ? 10 : 6)) {
            case 0:
                return decided(settled);
            case 1:
                return new Condition.Stretches(chance.nextBoolean(), set(true));
            case 2:
                return new Condition.StretchShareCondition(set(false), within(0, 100), "some share");
            case 6, 7:
                return new Condition.AnyOf(sets(settled, depth));
            case 8, 9:
                return new Condition.NoneOf(sets(settled, depth));
            default:
                Measure measure = one(List.of(Measure.values()));
                return measure.layer() > settled ? decided(settled) : new Condition.MeasureCondition(measure, test(TestSubject.of(measure)), "some");
        }
    }

    private Condition decided(int settled) {
        List<Topic> topics = Topics.all().stream().filter(t -> t.layer() <= Math.max(1, settled)).toList();
        Topic topic = one(topics);
        return new Condition.DecisionCondition(topic, test(TestSubject.of(topic)), "some");
    }

    private List<Condition> sets(int settled, int depth) {
        List<Condition> out = new ArrayList<>();
        for (int i = chance.nextInt(3); i >= 0; i--) {
            out.add(new Condition.AllOf(parts(1 + chance.nextInt(2), settled, depth - 1)));
        }
        return out;
    }

    private StretchConditions set(boolean summed) {
        List<StretchConditions.One> out = new ArrayList<>();
        for (int i = chance.nextInt(2); i >= 0; i--) {
            StretchMeasure measure = one(List.of(StretchMeasure.values()));
            StretchMeasure each = measure.summed() ? StretchMeasure.SURFACE : measure;
            out.add(new StretchConditions.One(each, test(TestSubject.of(each)), "some"));
        }
        if (summed && chance.nextBoolean()) {
            StretchMeasure sum = one(List.of(StretchMeasure.LENGTH, StretchMeasure.ASCENT, StretchMeasure.DESCENT));
            out.add(new StretchConditions.One(sum, within(0, 3 * TICKS), "some"));
        }
        return StretchConditions.of(out);
    }

    private ValueTest test(TestSubject subject) {
        if (!subject.ordered()) {
            List<Long> values = new ArrayList<>();
            for (int i = chance.nextInt(2); i >= 0; i--) {
                values.add(value(subject));
            }
            return new ValueTest.Among(values);
        }
        long at = value(subject);
        return switch (chance.nextInt(3)) {
            case 0 -> new ValueTest.Within(at, Long.MAX_VALUE);
            case 1 -> new ValueTest.Within(Long.MIN_VALUE, at);
            default -> new ValueTest.Within(at - chance.nextInt(TICKS / 2), at);
        };
    }

    private ValueTest within(long least, long most) {
        long at = least + chance.nextLong(most - least + 1);
        return chance.nextBoolean() ? new ValueTest.Within(at, Long.MAX_VALUE) : new ValueTest.Within(Long.MIN_VALUE, at);
    }

    private long value(TestSubject subject) {
        long least = subject.least() == Long.MIN_VALUE ? -TICKS / 2 : subject.least();
        return Math.min(subject.most(), least + chance.nextInt(TICKS + 1));
    }

    /** What is known on one day: measures with ranges, stretches and a settled value for every topic, each now and then unknown. */
    public record Situation(Demands demands, Map<Topic, SettledTopic> settled) {

        Stage after(int layer) {
            Map<Measure, MeasureValue> known = new EnumMap<>(Measure.class);
            for (Measure measure : MEASURES) {
                MeasureValue value = demands.get(measure);
                if (value != null && measure.layer() <= layer) {
                    known.put(measure, value);
                }
            }
            Map<Topic, SettledTopic> so = new LinkedHashMap<>();
            settled.forEach((topic, one) -> {
                if (topic.layer() <= layer) {
                    so.put(topic, one);
                }
            });
            return new Stage(layer, new Demands(known, demands.stretches(), List.of()), so);
        }
    }

    public Situation situation() {
        int gaps = 3 + chance.nextInt(20);
        Map<Measure, MeasureValue> known = new EnumMap<>(Measure.class);
        for (Measure measure : Measure.values()) {
            if (chance.nextInt(gaps) > 0) {
                long mid = value(TestSubject.of(measure));
                boolean range = measure.scale().kind() == MeasureScale.Kind.QUANTITY && chance.nextInt(4) == 0;
                known.put(measure, range ? MeasureValue.around(mid - chance.nextInt(3), mid, mid + chance.nextInt(3)) : MeasureValue.exact(mid));
            }
        }
        List<StretchFacts> stretches = new ArrayList<>();
        for (int i = chance.nextInt(7); i > 0; i--) {
            stretches.add(stretch(gaps));
        }
        Map<Topic, SettledTopic> settled = new LinkedHashMap<>();
        for (Topic topic : Topics.all()) {
            settled.put(topic, new SettledTopic(topic, chance.nextInt(gaps) > 0, value(TestSubject.of(topic))));
        }
        return new Situation(new Demands(known, stretches, List.of()), settled);
    }

    StretchFacts stretch(int gaps) {
        Map<StretchMeasure, Long> known = new EnumMap<>(StretchMeasure.class);
        for (StretchMeasure measure : StretchMeasure.values()) {
            if (measure == StretchMeasure.LENGTH || chance.nextInt(gaps) > 0) {
                known.put(measure, value(TestSubject.of(measure)));
            }
        }
        return new StretchFacts(known);
    }

    private <T> T one(List<T> of) {
        return of.get(chance.nextInt(of.size()));
    }
}
