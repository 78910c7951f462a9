package courseworthy.engine;

import courseworthy.claim.SourceLocation;
import courseworthy.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;

/**
 * A sheet held against its cases.
 *
 * @param sheet   the sheet
 * @param beside  other sheets in force with it
 * @param rows    how many rows it has
 * @param cases   how many cases there are
 * @param failed  those that did not come out as expected, in the order written
 * @param missing what no case covers, in the order of the rows; null where it was not asked for
 */
public record CaseResults(Sheet sheet, List<Sheet> beside, int rows, int cases, List<FailedCase> failed, List<MissingCase> missing) {

    /** The sheets in force, the one that was tried last. */
    public List<Sheet> sheets() {
        List<Sheet> out = new ArrayList<>(beside);
        out.add(sheet);
        return out;
    }


    /**
     * A case that did not come out as expected.
     *
     * @param where       where it is written
     * @param rule        the rule it is a case of; empty for a whole day
     * @param sentence    what is the case
     * @param differences what is otherwise, each in one line
     */
    public record FailedCase(SourceLocation where, String rule, String sentence, List<String> differences) {
    }

    /**
     * Something of a row that no case covers.
     *
     * @param where   where the row stands
     * @param rule    its qualified id
     * @param what    what is not touched
     * @param lacking the case that would
     */
    public record MissingCase(SourceLocation where, String rule, String what, String lacking) {
    }
}
