package courseworthy.report;

import courseworthy.engine.CaseResults;
import courseworthy.report.Page.Weight;
import courseworthy.sheet.SheetInForce;

/** Writes how a sheet came out against its cases, for the terminal. */
public final class TestText {

    private TestText() {
    }

    /** @param file the sheet's path as typed */
    public static String of(String file, CaseResults tried, boolean colours) {
        Page page = new Page(colours);
        for (CaseResults.Failed failed : tried.failed()) {
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
        SheetNames.add(page, SheetInForce.of(tried.sheets()));
        page.text(0, 0, file + ": " + summary(tried), Weight.PLAIN);
        return page.toString();
    }

    private static void missing(CaseResults tried, Page page) {
        for (CaseResults.Missing missing : tried.missing()) {
            page.text(0, 4, missing.where() + ": " + missing.rule() + ": " + missing.what(), Weight.BOLD);
            page.text(4, 4, "Add " + missing.lacking() + ".", Weight.PLAIN);
        }
    }

    private static String summary(CaseResults tried) {
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
