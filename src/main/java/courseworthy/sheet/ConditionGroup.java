package courseworthy.sheet;

import courseworthy.claim.TestedFact;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What groups of conditions have in common. */
final class ConditionGroup {

    private ConditionGroup() {
    }

    static String canonical(String name, List<Condition> parts) {
        List<String> out = new ArrayList<>();
        for (Condition part : parts) {
            out.add(part.canonical());
        }
        out.sort(null);
        return name + out;
    }

    static Truth any(List<Condition> parts, Stage stage) {
        Truth out = Truth.FALSE;
        for (int i = 0; i < parts.size(); i++) {
            out = out.or(parts.get(i).on(stage));
            if (out == Truth.TRUE) {
                return out;
            }
        }
        return out;
    }

    static int layer(List<Condition> parts) {
        int last = 0;
        for (Condition part : parts) {
            last = Math.max(last, part.layer());
        }
        return last;
    }

    /** Whether any part could turn out so. */
    static boolean anyCould(List<Condition> parts, Stage stage, boolean truth) {
        for (Condition part : parts) {
            if (part.could(stage, truth)) {
                return true;
            }
        }
        return false;
    }

    /** Whether all parts could turn out so. */
    static boolean allCould(List<Condition> parts, Stage stage, boolean truth) {
        for (Condition part : parts) {
            if (!part.could(stage, truth)) {
                return false;
            }
        }
        return true;
    }

    static List<Condition> map(List<Condition> parts, Condition.TestTransformer change) {
        List<Condition> out = new ArrayList<>();
        for (Condition part : parts) {
            out.add(part.map(change));
        }
        return out;
    }

    /** Only the parts that have the truth that is to be explained. */
    static void grounds(List<Condition> parts, Stage stage, boolean truth, Condition whole, List<TestedFact> out) {
        for (int i = 0; i < parts.size(); i++) {
            Condition part = parts.get(i);
            if (part.on(stage) == Truth.of(truth)) {
                part.grounds(stage, truth, whole, out);
            }
        }
    }

    static void wanting(List<Condition> parts, Stage stage, Set<String> out) {
        for (int i = 0; i < parts.size(); i++) {
            Condition part = parts.get(i);
            if (part.on(stage) == Truth.UNKNOWN) {
                part.wanting(stage, out);
            }
        }
    }
}
