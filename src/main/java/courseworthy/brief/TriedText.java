package courseworthy.brief;

import courseworthy.brief.Page.Weight;
import courseworthy.rulebase.Tried;
import java.util.List;

/** Writes how a sheet came out against its cases, for the terminal. */
public final class TriedText {

    private TriedText() {
    }

    /** @param file the sheet's path as typed */
    public static String of(String file, Tried tried, boolean colours) {
        Page page = new Page(colours);
        for (Tried.Failed failed : tried.failed()) {
            String rule = failed.rule().isEmpty() ? "" : failed.rule() + ": ";
            page.text(0, 4, failed.where() + ": " + rule + failed.sentence(), Weight.BOLD);
            for (String difference : failed.differences()) {
                int deeper = difference.length() - difference.stripLeading().length();
                page.text(4 + deeper, 6 + deeper, difference.strip(), Weight.PLAIN);
            }
        }
        if (tried.missing() != null) {
            missing(tried, page);
        }
        SheetWords.add(page, InForce.of(tried.sheets()));
        page.text(0, 0, file + ": " + summary(tried), Weight.PLAIN);
        return page.toString();
    }

    private static void missing(Tried tried, Page page) {
        for (Tried.Missing missing : tried.missing()) {
            page.text(0, 4, missing.where() + ": " + missing.rule() + ": " + missing.what(), Weight.BOLD);
            page.text(4, 4, "Add " + missing.lacking() + ".", Weight.PLAIN);
        }
    }

    private static String summary(Tried tried) {
        int wrong = tried.failed().size();
        String cover = tried.missing() == null ? "" : tried.missing().isEmpty() ? " Nothing is left untouched."
                : " " + count(tried.missing().size(), "place") + " no case touches.";
        return count(tried.rows(), "row") + ", " + count(tried.cases(), "case") + ", "
                + (wrong == 0 ? "all as expected." : wrong + " not as expected.") + cover;
    }

    private static String count(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }
}
