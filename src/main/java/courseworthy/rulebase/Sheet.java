package courseworthy.rulebase;

import courseworthy.claim.Where;
import java.util.List;

/**
 * A sheet of advice.
 *
 * @param title     its name
 * @param by        who wrote it
 * @param file      the path as typed, or {@code rules/...}
 * @param line      where its title stands
 * @param rows      its rows, in the order written
 * @param leaveOuts the rules it leaves out
 */
public record Sheet(String title, String by, String file, int line, List<Row> rows, List<LeaveOut> leaveOuts) {

    /** A rule left out, and why. */
    public record LeaveOut(String rule, String because, Where where) {
    }

    public Sheet {
        rows = List.copyOf(rows);
        leaveOuts = List.copyOf(leaveOuts);
    }
}
