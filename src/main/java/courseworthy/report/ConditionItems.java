package courseworthy.report;

import courseworthy.call.RuleTrace;
import courseworthy.report.ItemList.Item;
import courseworthy.sheet.ConditionTrace;
import courseworthy.sheet.Truth;
import java.util.ArrayList;
import java.util.List;

/** The conditions of a rule as items of a list: what was found, what is needed, and whether that is met. */
final class ConditionItems {

    private ConditionItems() {
    }

    /** Every condition. */
    static List<Item> all(RuleTrace rule) {
        return items(rule.tests(), 0, rule.tests().size(), 0);
    }

    /** The conditions that keep a rule from applying; of those that are met, none. */
    static List<Item> unmet(RuleTrace rule) {
        List<ConditionTrace> out = new ArrayList<>();
        boolean shown = false;
        boolean noneOf = false;
        for (ConditionTrace test : rule.tests()) {
            if (test.depth() == 0) {
                shown = test.truth() != Truth.TRUE;
                noneOf = test.what().equals("none of");
            }
            if (shown && !(noneOf && test.depth() > 0 && test.truth() == Truth.FALSE)) {
                out.add(test);
            }
        }
        return items(out, 0, out.size(), 0);
    }

    /** The items of one depth between two places, those of greater depth below them. */
    private static List<Item> items(List<ConditionTrace> tests, int from, int to, int depth) {
        List<Item> out = new ArrayList<>();
        int at = from;
        while (at < to) {
            int next = at + 1;
            while (next < to && tests.get(next).depth() > depth) {
                next++;
            }
            List<Item> below = items(tests, at + 1, next, depth + 1);
            out.add(new Item(line(tests.get(at)), below.isEmpty() ? List.of() : List.of(new ItemList(false, below))));
            at = next;
        }
        return out;
    }

    /** {@code roughness: rough (2.7), needs at least rough: met}. */
    private static RichText line(ConditionTrace test) {
        RichText what = RichText.ofQuoted(test.asked().isEmpty() ? test.what()
                : test.what() + ": " + test.value() + ", needs " + test.asked());
        return what.text(": ").strong(outcome(test.truth())).text(test.off().isEmpty() ? "" : " (" + test.off() + ")");
    }

    private static String outcome(Truth truth) {
        return switch (truth) {
            case TRUE -> "met";
            case FALSE -> "not met";
            case UNKNOWN -> "unknown";
        };
    }
}
