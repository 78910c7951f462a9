package courseworthy.sheet;

import courseworthy.claim.Rank;
import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * All rows that take part in one call: the shipped ones less those left out, the rider's own, and the coaches'.
 *
 * @param rows    qualified ids are unique
 * @param leftOut the shipped or earlier rows that a sheet leaves out, with its reason
 */
public record Rulebook(List<Row> rows, List<Sheet.LeaveOut> leftOut) {

    public Rulebook {
        rows = List.copyOf(rows);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * Puts rows together.
     *
     * @param shipped   the shipped sheets
     * @param rider   the rider's own rows
     * @param sheets  coaches' sheets, in the order given
     * @param faults  takes two sheets of one name, two rows of one id, leave-outs of rows that do not exist, are limits or carry what
     *                safety hangs on, and things to do that come after something nobody says
     */
    public static Rulebook of(List<Sheet> shipped, List<Row> rider, List<Sheet> sheets, Faults faults) {
        Map<String, Row> rows = new LinkedHashMap<>();
        addAll(shipped, rows, faults);
        for (Row row : rider) {
            add(row, rows, faults);
        }
        uniqueTitles(sheets, faults);
        addAll(sheets, rows, faults);
        List<Sheet.LeaveOut> leftOut = new ArrayList<>();
        Set<String> gone = new LinkedHashSet<>();
        for (Sheet sheet : sheets) {
            for (Sheet.LeaveOut leaveOut : sheet.leaveOuts()) {
                if (mayLeaveOut(leaveOut, rows, faults) && gone.add(leaveOut.rule())) {
                    leftOut.add(leaveOut);
                }
            }
        }
        afterSomething(rows, faults);
        gone.forEach(rows::remove);
        return new Rulebook(new ArrayList<>(rows.values()), leftOut);
    }

    private static void addAll(List<Sheet> sheets, Map<String, Row> rows, Faults faults) {
        for (Sheet sheet : sheets) {
            for (Row row : sheet.rows()) {
                add(row, rows, faults);
            }
        }
    }

    private static void add(Row row, Map<String, Row> rows, Faults faults) {
        Row first = rows.putIfAbsent(row.origin().rule(), row);
        if (first != null) {
            faults.add(row.origin().where().file(), row.origin().where().line(), "id", "\"" + row.origin().rule() + "\" a second time",
                    "an id of its own", "It first stands in " + first.origin().where() + ".");
        }
    }

    private static void uniqueTitles(List<Sheet> sheets, Faults faults) {
        Map<String, Sheet> seen = new HashMap<>();
        for (Sheet sheet : sheets) {
            Sheet first = seen.putIfAbsent(sheet.title(), sheet);
            if (first != null) {
                faults.add(sheet.file(), sheet.line(), "sheet", "\"" + sheet.title() + "\" a second time", "a name of its own",
                        "It is also the name of " + first.file() + ".");
            }
        }
    }

    private static boolean mayLeaveOut(Sheet.LeaveOut leaveOut, Map<String, Row> rows, Faults faults) {
        Row row = rows.get(leaveOut.rule());
        String found = "\"" + leaveOut.rule() + "\"";
        if (leaveOut.rule().startsWith("limit/") || leaveOut.rule().startsWith("pairing/")) {
            fault(leaveOut, found + ", a limit", "advice", "Limits cannot be left out.", faults);
        } else if (row == null) {
            String near = Spelling.didYouMean(leaveOut.rule(), rows.keySet());
            boolean others = !leaveOut.rule().startsWith("shipped/") && leaveOut.rule().indexOf('/') > 0;
            fault(leaveOut, found, "the id of a rule in force", near.isEmpty() && others ? "Where it is another sheet's, give that sheet too, with --sheet."
                    : near, faults);
        } else if (row.origin().rank() == Rank.RIDER) {
            fault(leaveOut, found + ", the rider's own", "advice", "Change it where the rider wrote it.", faults);
        } else if (row.task() != null && row.task().critical()) {
            fault(leaveOut, found + ", on which safety hangs", "advice", "What safety hangs on cannot be left out.", faults);
        } else {
            return true;
        }
        return false;
    }

    private static void fault(Sheet.LeaveOut leaveOut, String found, String expected, String mend, Faults faults) {
        faults.add(leaveOut.where().file(), leaveOut.where().line(), "leave out", found, expected, mend);
    }

    private static void afterSomething(Map<String, Row> rows, Faults faults) {
        for (Row row : rows.values()) {
            for (String id : row.task() == null ? List.<String>of() : row.task().after()) {
                Row before = rows.get(id);
                if (before == null || before.task() == null) {
                    faults.add(row.origin().where().file(), row.origin().where().line(), "after", "\"" + id + "\"",
                            "a row that has something to do", Spelling.didYouMean(id, rows.keySet()));
                }
            }
        }
    }
}
