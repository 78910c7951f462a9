package courseworthy.report;

import courseworthy.analysis.Finding;
import courseworthy.analysis.Finding.Fact;
import courseworthy.analysis.Findings;
import courseworthy.claim.RuleOrigin;
import courseworthy.report.Page.Weight;
import java.util.ArrayList;
import java.util.List;

/** Writes what is to be looked at in a sheet, for the terminal. */
public final class CheckText {

    private CheckText() {
    }

    /**
     * @param file    the sheet's path as typed
     * @param rows    how many rows it has
     * @param remarks what is to be looked at, in order
     * @param files   for each remark the file that shows it, empty where there is none; no entries where none were asked for
     */
    public static String of(String file, int rows, Findings remarks, List<String> files, boolean colours) {
        Page page = new Page(colours);
        for (int i = 0; i < remarks.list().size(); i++) {
            Finding remark = remarks.list().get(i);
            String about = remark.rows().isEmpty() ? file + ": " + remark.topic() : head(remark.rows().get(0));
            page.text(0, 4, about + ": " + remark.kind().words(), Weight.BOLD);
            page.text(4, 4, remark.text() + other(remark) + more(remark), Weight.PLAIN);
            page.text(4, 4, remark.mend(), Weight.PLAIN);
            if (!remark.example().isEmpty()) {
                page.text(4, 6, "Such as: " + example(remark) + ".", Weight.FAINT);
            }
            if (!files.isEmpty() && !files.get(i).isEmpty()) {
                page.text(4, 6, "Shown by " + files.get(i) + ".", Weight.FAINT);
            }
        }
        remarks.unlisted().forEach((kind, count) -> page.text(0, 4, "And " + count + " more like this: " + kind.words() + ".", Weight.PLAIN));
        if (!remarks.unlisted().isEmpty() || remarks.list().stream().anyMatch(remark -> remark.more() > 0)) {
            page.text(0, 4, "'--all' lists them.", Weight.PLAIN);
        }
        int count = remarks.count();
        page.text(0, 0, file + ": " + count(rows, "row") + ", " + (count == 0 ? "nothing to look at" : count(count, "remark")) + ".",
                Weight.PLAIN);
        return page.toString();
    }

    private static String head(RuleOrigin row) {
        return row.where() + ": " + row.rule();
    }

    /** Where the row stands that it is held against. */
    private static String other(Finding remark) {
        return remark.rows().size() < 2 ? "" : " (" + remark.rows().get(1).where() + ")";
    }

    private static String more(Finding remark) {
        return remark.more() == 0 ? "" : " And " + remark.more() + " more like this.";
    }

    private static String example(Finding remark) {
        List<String> out = new ArrayList<>();
        for (Fact fact : remark.example()) {
            out.add(fact.what() + " " + fact.value());
        }
        return String.join(", ", out);
    }

    private static String count(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }
}
