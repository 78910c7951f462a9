package courseworthy.sheet;

import courseworthy.demand.MeasureScale;
import courseworthy.demand.MeasureValue;
import courseworthy.demand.StretchMeasure;
import courseworthy.topic.SettledTopic;
import java.util.ArrayList;
import java.util.List;

/**
 * One line of a condition held against a day, as whoever asks why a row kept silent is shown it.
 *
 * @param depth how deep it stands in groups, 0 at the top
 * @param what  what is tested, {@code roughness}, {@code decided: bike}; the group's name where it is a group
 * @param value what was found, with its unit; {@code unknown}, or empty for a group
 * @param asked the test as written; empty for a group
 * @param truth whether it holds
 * @param off   how far it is from holding, {@code short by 0.4 km}; empty where it holds or there is no distance
 */
public record ConditionTrace(int depth, String what, String value, String asked, Truth truth, String off) {

    static final String UNKNOWN = "unknown";

    /** Every line of a row's condition, in the order written; groups before what is in them. */
    public static List<ConditionTrace> of(Row row, Stage stage) {
        List<ConditionTrace> out = new ArrayList<>();
        for (Condition part : row.condition().parts()) {
            add(part, stage, 0, out);
        }
        return out;
    }

    /** Whether a row's condition holds. */
    public static Truth truth(Row row, Stage stage) {
        return row.condition().on(stage);
    }

    private static void add(Condition condition, Stage stage, int depth, List<ConditionTrace> out) {
        if (condition instanceof Condition.MeasureCondition measured) {
            out.add(measured(measured, stage, depth));
        } else if (condition instanceof Condition.DecisionCondition decided) {
            out.add(decided(decided, stage, depth));
        } else if (condition instanceof Condition.Stretches stretches) {
            out.add(stretches(stretches, stage, depth));
        } else if (condition instanceof Condition.StretchShareCondition share) {
            out.add(share(share, stage, depth));
        } else if (condition instanceof Condition.OccasionTest one) {
            out.add(new ConditionTrace(depth, one.test().key(), one.test().found(stage.demands().occasion()), one.written(), one.on(stage), ""));
        } else if (condition instanceof Condition.AllOf all) {
            group("all of", all, all.parts(), stage, depth, out);
        } else if (condition instanceof Condition.AnyOf any) {
            group("any of", any, any.parts(), stage, depth, out);
        } else if (condition instanceof Condition.NoneOf none) {
            group("none of", none, none.parts(), stage, depth, out);
        }
    }

    /** A set of one test stands for itself. */
    private static void group(String name, Condition whole, List<Condition> parts, Stage stage, int depth, List<ConditionTrace> out) {
        if (whole instanceof Condition.AllOf && parts.size() == 1) {
            add(parts.get(0), stage, depth, out);
            return;
        }
        out.add(new ConditionTrace(depth, name, "", "", whole.on(stage), ""));
        for (Condition part : parts) {
            add(part, stage, depth + 1, out);
        }
    }

    private static ConditionTrace measured(Condition.MeasureCondition measured, Stage stage, int depth) {
        MeasureValue value = stage.demands().get(measured.measure());
        String found = value == null ? UNKNOWN : measured.measure().scale().text(value.mid());
        String off = value == null ? "" : off(measured.test(), value.mid(), measured.measure().scale());
        return new ConditionTrace(depth, measured.measure().written(), found, measured.written(), measured.on(stage), off);
    }

    private static ConditionTrace decided(Condition.DecisionCondition decided, Stage stage, int depth) {
        SettledTopic settled = stage.settled().get(decided.topic());
        boolean known = settled != null && settled.known();
        String off = known ? off(decided.test(), settled.value(), TestSubject.of(decided.topic()).scale()) : "";
        return new ConditionTrace(depth, "decided: " + decided.topic().name(), known ? settled.text() : "no answer", decided.written(),
                decided.on(stage), off);
    }

    private static ConditionTrace stretches(Condition.Stretches stretches, Stage stage, int depth) {
        String name = stretches.any() ? "any stretch" : "no stretch";
        boolean none = stage.demands().stretches().isEmpty();
        long longest = StretchRuns.longest(stretches.set(), stage.demands().stretches());
        MeasureScale metres = StretchMeasure.LENGTH.scale();
        String found = none ? UNKNOWN : longest == 0 ? "none such" : "longest such " + metres.text(longest);
        Truth truth = stretches.on(stage);
        String off = truth == Truth.FALSE && stretches.any() ? lengthOff(stretches.set(), longest) : "";
        return new ConditionTrace(depth, name, found, stretches.set().written(), truth, off);
    }

    private static String lengthOff(StretchConditions set, long longest) {
        for (StretchConditions.One one : set.summed()) {
            if (one.measure() == StretchMeasure.LENGTH && longest > 0) {
                return off(one.test(), longest, StretchMeasure.LENGTH.scale());
            }
        }
        return "";
    }

    private static ConditionTrace share(Condition.StretchShareCondition share, Stage stage, int depth) {
        long[] ends = share.ends(stage);
        MeasureScale percent = TestSubject.SHARE.scale();
        String found = ends == null ? UNKNOWN
                : ends[0] == ends[1] ? percent.text(ends[0]) : percent.text(ends[0]) + " to " + percent.text(ends[1]);
        Truth truth = share.on(stage);
        String off = truth != Truth.FALSE ? "" : off(share.test(), nearer(share.test(), ends), percent);
        return new ConditionTrace(depth, "share of course: " + share.where().written(), found, share.written(), truth, off);
    }

    private static long nearer(ValueTest test, long[] ends) {
        return test instanceof ValueTest.Within within && ends[1] < within.least() ? ends[1] : ends[0];
    }

    /** How far a value is from passing a test of an ordered scale. */
    private static String off(ValueTest test, long value, MeasureScale scale) {
        if (!(test instanceof ValueTest.Within within) || test.holds(value)) {
            return "";
        }
        boolean below = value < within.least();
        return (below ? "short by " : "over by ") + apart(below ? within.least() - value : value - within.most(), scale);
    }

    private static String apart(long ticks, MeasureScale scale) {
        if (scale.kind() == MeasureScale.Kind.QUANTITY) {
            return scale.resolution().text(ticks);
        }
        return ticks == 1 ? "1 step" : ticks + " steps";
    }
}
