package courseworthy.task;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.sheet.Condition;
import courseworthy.sheet.OccasionCondition;
import courseworthy.sheet.Row;
import courseworthy.sheet.Sheet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/** Remarks on tags of riders that no sheet asks for: a slip in one of them goes unnoticed otherwise. */
final class TagCheck {

    private static final String FIELD = "tags";

    private TagCheck() {
    }

    /**
     * Adds one warning for all such tags; none where no sheet is given.
     *
     * @param folder of the riders' files, as typed
     */
    static void check(String folder, List<RosterFolder.Member> riders, List<Sheet> sheets, Faults faults) {
        SortedSet<String> asked = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        sheets.forEach(sheet -> sheet.rows().forEach(row -> collect(row, asked)));
        Map<String, Integer> idle = new LinkedHashMap<>();
        for (RosterFolder.Member rider : riders) {
            rider.rider().tags().stream().filter(tag -> !asked.contains(tag)).forEach(tag -> idle.merge(tag, 1, Integer::sum));
        }
        if (sheets.isEmpty() || idle.isEmpty()) {
            return;
        }
        List<String> found = idle.entrySet().stream().map(each -> RequestReader.quoted(each.getKey()) + (each.getValue() > 1 ? " of " + each.getValue() + " riders" : "")).toList();
        String near = idle.keySet().stream().map(tag -> Spelling.didYouMean(tag, asked)).filter(each -> !each.isEmpty()).findFirst().orElse("");
        faults.add(Fault.warning(folder, 0, FIELD, String.join(", ", found), asked.isEmpty() ? "no tags, since no sheet asks for any"
                : "tags that a sheet asks for: " + String.join(", ", asked), near));
    }

    /** The tags that a row asks for. */
    static SortedSet<String> asked(Row row) {
        SortedSet<String> out = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        collect(row, out);
        return out;
    }

    private static void collect(Row row, SortedSet<String> asked) {
        collect(row.condition(), asked);
    }

    private static void collect(Condition condition, SortedSet<String> asked) {
        if (condition instanceof Condition.PartsCondition group) {
            group.parts().forEach(each -> collect(each, asked));
        } else if (condition instanceof Condition.OccasionTest asks && asks.test() instanceof OccasionCondition.Tags tags) {
            asked.addAll(tags.tags());
        }
    }
}
