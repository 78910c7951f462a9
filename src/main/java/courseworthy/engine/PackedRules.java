package courseworthy.engine;

import courseworthy.claim.Deadline;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.SourceLocation;
import courseworthy.claim.Task;
import courseworthy.claim.Verb;
import courseworthy.demand.Measure;
import courseworthy.demand.StretchMeasure;
import courseworthy.sheet.Condition;
import courseworthy.sheet.Row;
import courseworthy.sheet.Saying;
import courseworthy.sheet.Sheet;
import courseworthy.sheet.StretchConditions;
import courseworthy.sheet.ValueTest;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The shipped rules in a fast-loading form, rows as they are once decoded. Written and read side by side, kind by kind. */
final class PackedRules {

    private static final Rank[] RANKS = Rank.values();
    private static final Force[] FORCES = Force.values();
    private static final Evidence[] EVIDENCE = Evidence.values();
    private static final Deadline[] DUES = Deadline.values();
    private static final Verb[] VERBS = Verb.values();
    private static final Measure[] MEASURES = Measure.values();
    private static final StretchMeasure[] STRETCH_MEASURES = StretchMeasure.values();

    private static final int MEASURED = 0;
    private static final int DECIDED = 1;
    private static final int STRETCHES = 2;
    private static final int SHARE = 3;
    private static final int ALL_OF = 4;
    private static final int ANY_OF = 5;
    private static final int NONE_OF = 6;

    private PackedRules() {
    }

    static byte[] write(ShippedRules shipped) {
        PackedData.PackedOutput out = new PackedData.PackedOutput();
        out.number(shipped.sheets().size());
        for (Sheet sheet : shipped.sheets()) {
            write(sheet, out);
        }
        out.number(shipped.pairs().pairs().size());
        for (GearPairs.GearPair pair : shipped.pairs().pairs()) {
            write(pair, out);
        }
        out.number(shipped.joins().size());
        for (Map.Entry<String, SourceLocation> join : shipped.joins().entrySet()) {
            out.text(join.getKey());
            write(join.getValue(), out);
        }
        return out.bytes();
    }

    static ShippedRules read(byte[] packed) {
        PackedData.PackedInput in = new PackedData.PackedInput(packed);
        List<Sheet> sheets = new ArrayList<>();
        for (int left = in.count(); left > 0; left--) {
            sheets.add(sheet(in));
        }
        List<GearPairs.GearPair> pairs = new ArrayList<>();
        for (int left = in.count(); left > 0; left--) {
            pairs.add(pair(in));
        }
        Map<String, SourceLocation> joins = new LinkedHashMap<>();
        for (int left = in.count(); left > 0; left--) {
            String name = in.text();
            joins.put(name, where(in));
        }
        return new ShippedRules(List.copyOf(sheets), new GearPairs(pairs), Collections.unmodifiableMap(joins));
    }

    private static void write(Sheet sheet, PackedData.PackedOutput out) {
        if (!sheet.leaveOuts().isEmpty()) {
            throw new IllegalArgumentException("a shipped sheet that leaves rules out: " + sheet.file());
        }
        out.text(sheet.title());
        out.text(sheet.by());
        out.text(sheet.file());
        out.number(sheet.line());
        out.number(sheet.rows().size());
        for (Row row : sheet.rows()) {
            write(row, out);
        }
    }

    private static Sheet sheet(PackedData.PackedInput in) {
        String title = in.text();
        String by = in.text();
        String file = in.text();
        int line = in.count();
        List<Row> rows = new ArrayList<>();
        for (int left = in.count(); left > 0; left--) {
            rows.add(row(in));
        }
        return new Sheet(title, by, file, line, List.copyOf(rows), List.of());
    }

    private static void write(Row row, PackedData.PackedOutput out) {
        write(row.origin(), out);
        parts(row.condition().parts(), out);
        out.number(row.sayings().size());
        for (Saying saying : row.sayings()) {
            write(saying, out);
        }
        out.flag(row.task() != null);
        if (row.task() != null) {
            write(row.task(), out);
        }
    }

    private static Row row(PackedData.PackedInput in) {
        RuleOrigin author = origin(in);
        Condition.AllOf condition = new Condition.AllOf(parts(in));
        List<Saying> sayings = new ArrayList<>();
        for (int left = in.count(); left > 0; left--) {
            sayings.add(saying(in));
        }
        return new Row(author, condition, sayings, in.flag() ? task(author, in) : null);
    }

    private static void write(RuleOrigin author, PackedData.PackedOutput out) {
        out.text(author.rule());
        out.number(author.rank().ordinal());
        out.number(author.sheet());
        out.number(author.force().ordinal());
        out.number(author.evidence().ordinal());
        out.text(author.source());
        out.text(author.because());
        write(author.where(), out);
    }

    private static RuleOrigin origin(PackedData.PackedInput in) {
        return new RuleOrigin(in.text(), RANKS[in.count()], in.count(), FORCES[in.count()], EVIDENCE[in.count()], in.text(), in.text(), where(in));
    }

    private static void write(SourceLocation where, PackedData.PackedOutput out) {
        out.text(where.file());
        out.number(where.line());
    }

    private static SourceLocation where(PackedData.PackedInput in) {
        return new SourceLocation(in.text(), in.count());
    }

    private static void write(Saying saying, PackedData.PackedOutput out) {
        write(saying.topic(), out);
        out.number(saying.verb().ordinal());
        out.flag(saying.source() instanceof Saying.Literal);
        if (saying.source() instanceof Saying.Literal literal) {
            out.number(literal.value());
        } else if (saying.source() instanceof Saying.Times times) {
            out.number(times.factor().unscaledValue().longValueExact());
            out.number(times.factor().scale());
            out.number(times.measure().ordinal());
        }
        out.text(saying.written());
    }

    private static Saying saying(PackedData.PackedInput in) {
        Topic topic = topic(in);
        Verb verb = VERBS[in.count()];
        Saying.ValueSource worth = in.flag() ? new Saying.Literal(in.number())
                : new Saying.Times(BigDecimal.valueOf(in.number(), in.count()), MEASURES[in.count()]);
        return new Saying(topic, verb, worth, in.text());
    }

    private static void write(Topic topic, PackedData.PackedOutput out) {
        out.number(Topics.all().indexOf(topic));
    }

    private static Topic topic(PackedData.PackedInput in) {
        return Topics.all().get(in.count());
    }

    private static void write(Task task, PackedData.PackedOutput out) {
        out.text(task.what());
        out.text(task.find());
        out.number(task.due().ordinal());
        out.number(task.needs());
        out.flag(task.critical());
        out.text(task.part());
        out.texts(task.after());
    }

    private static Task task(RuleOrigin author, PackedData.PackedInput in) {
        return new Task(author, in.text(), in.text(), DUES[in.count()], in.number(), in.flag(), in.text(), in.texts(), List.of());
    }

    private static void parts(List<Condition> parts, PackedData.PackedOutput out) {
        out.number(parts.size());
        for (Condition part : parts) {
            write(part, out);
        }
    }

    private static List<Condition> parts(PackedData.PackedInput in) {
        int size = in.count();
        List<Condition> out = new ArrayList<>(size);
        for (int i = 0; i < size; i++) {
            out.add(condition(in));
        }
        return out;
    }

    private static void write(Condition condition, PackedData.PackedOutput out) {
        if (condition instanceof Condition.MeasureCondition one) {
            out.number(MEASURED);
            out.number(one.measure().ordinal());
            write(one.test(), out);
            out.text(one.written());
        } else if (condition instanceof Condition.DecisionCondition one) {
            out.number(DECIDED);
            write(one.topic(), out);
            write(one.test(), out);
            out.text(one.written());
        } else if (condition instanceof Condition.Stretches one) {
            out.number(STRETCHES);
            out.flag(one.any());
            write(one.set(), out);
        } else if (condition instanceof Condition.StretchShareCondition one) {
            out.number(SHARE);
            write(one.where(), out);
            write(one.test(), out);
            out.text(one.written());
        } else if (condition instanceof Condition.AllOf group) {
            out.number(ALL_OF);
            parts(group.parts(), out);
        } else if (condition instanceof Condition.AnyOf group) {
            out.number(ANY_OF);
            parts(group.parts(), out);
        } else if (condition instanceof Condition.NoneOf group) {
            out.number(NONE_OF);
            parts(group.parts(), out);
        } else {
            throw new IllegalStateException("a condition that shipped rules may not have: " + condition);
        }
    }

    private static Condition condition(PackedData.PackedInput in) {
        int kind = in.count();
        return switch (kind) {
            case MEASURED -> new Condition.MeasureCondition(MEASURES[in.count()], test(in), in.text());
            case DECIDED -> new Condition.DecisionCondition(topic(in), test(in), in.text());
            case STRETCHES -> new Condition.Stretches(in.flag(), stretchSet(in));
            case SHARE -> new Condition.StretchShareCondition(stretchSet(in), test(in), in.text());
            case ALL_OF -> new Condition.AllOf(parts(in));
            case ANY_OF -> new Condition.AnyOf(parts(in));
            case NONE_OF -> new Condition.NoneOf(parts(in));
            default -> throw new IllegalStateException("a packed condition of no kind: " + kind);
        };
    }

    private static void write(StretchConditions set, PackedData.PackedOutput out) {
        out.number(set.tests().size());
        for (StretchConditions.One one : set.tests()) {
            out.number(one.measure().ordinal());
            write(one.test(), out);
            out.text(one.written());
        }
    }

    private static StretchConditions stretchSet(PackedData.PackedInput in) {
        List<StretchConditions.One> tests = new ArrayList<>();
        for (int left = in.count(); left > 0; left--) {
            tests.add(new StretchConditions.One(STRETCH_MEASURES[in.count()], test(in), in.text()));
        }
        return StretchConditions.of(tests);
    }

    /** Among several values: how many, which is never none, and each. Within a range: none, and its ends. */
    private static void write(ValueTest test, PackedData.PackedOutput out) {
        if (test instanceof ValueTest.Among among) {
            out.number(among.values().size());
            for (long value : among.values()) {
                out.number(value);
            }
        } else if (test instanceof ValueTest.Within within) {
            out.number(0);
            out.number(within.least());
            out.number(within.most());
        }
    }

    private static ValueTest test(PackedData.PackedInput in) {
        int size = in.count();
        if (size == 0) {
            return new ValueTest.Within(in.number(), in.number());
        }
        List<Long> values = new ArrayList<>(size);
        for (int i = 0; i < size; i++) {
            values.add(in.number());
        }
        return new ValueTest.Among(values);
    }

    private static void write(GearPairs.GearPair pair, PackedData.PackedOutput out) {
        out.text(pair.bike());
        out.text(pair.chainrings());
        out.number(pair.easiest());
        out.text(pair.easiestTeeth());
        out.number(pair.hardest());
        out.text(pair.hardestTeeth());
        out.number(pair.step());
        out.text(pair.cassette());
        numbers(pair.teeth().rings(), out);
        numbers(pair.teeth().sprockets(), out);
    }

    private static GearPairs.GearPair pair(PackedData.PackedInput in) {
        return new GearPairs.GearPair(in.text(), in.text(), in.number(), in.text(), in.number(), in.text(), in.number(), in.text(),
                new GearPairs.Teeth(numbers(in), numbers(in)));
    }

    private static void numbers(List<Integer> numbers, PackedData.PackedOutput out) {
        out.number(numbers.size());
        for (int number : numbers) {
            out.number(number);
        }
    }

    private static List<Integer> numbers(PackedData.PackedInput in) {
        int size = in.count();
        List<Integer> out = new ArrayList<>(size);
        for (int i = 0; i < size; i++) {
            out.add(in.count());
        }
        return out;
    }
}
