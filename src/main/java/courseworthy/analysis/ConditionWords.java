package courseworthy.analysis;

import courseworthy.sheet.Condition;
import courseworthy.sheet.StretchConditions;
import java.util.List;

/** Conditions as sheets write them, on one line. */
final class ConditionWords {

    private ConditionWords() {
    }

    static String of(Condition condition) {
        if (condition instanceof Condition.MeasureCondition measured) {
            return measured.measure().written() + ": " + measured.written();
        }
        if (condition instanceof Condition.DecisionCondition decided) {
            return "decided " + decided.topic().name() + ": " + decided.written();
        }
        if (condition instanceof Condition.Stretches stretches) {
            return (stretches.any() ? "any stretch: " : "no stretch: ") + set(stretches.set());
        }
        if (condition instanceof Condition.StretchShareCondition share) {
            return "share of course (" + set(share.where()) + "): " + share.written();
        }
        if (condition instanceof Condition.OccasionTest one) {
            return one.test().key() + ": " + one.written();
        }
        if (condition instanceof Condition.AnyOf any) {
            return "any of [" + joined(any.parts(), "; ") + "]";
        }
        if (condition instanceof Condition.NoneOf none) {
            return "none of [" + joined(none.parts(), "; ") + "]";
        }
        return joined(((Condition.AllOf) condition).parts(), ", ");
    }

    private static String joined(List<Condition> parts, String joint) {
        return String.join(joint, parts.stream().map(ConditionWords::of).toList());
    }

    private static String set(StretchConditions set) {
        return String.join(", ", set.tests().stream().map(one -> one.measure().written() + " " + one.written()).toList());
    }
}
