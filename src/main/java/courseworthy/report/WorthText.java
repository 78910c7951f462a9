package courseworthy.report;

import courseworthy.report.Page.Weight;
import courseworthy.task.Brief;

/** Writes for the terminal what decisions are worth. */
final class WorthText {

    private static final int ABOUT = 18;

    private WorthText() {
    }

    /** The leading figures of the whole call. */
    static void terse(Page page, Brief brief) {
        boolean titled = false;
        for (SetUpSummary.Entry entry : WorthWords.terse(brief)) {
            if (!titled) {
                page.gap();
                page.spread("WHAT IT IS WORTH HERE", "in full: --topic NAME", Weight.BOLD);
                titled = true;
            }
            page.row(entry.about(), ABOUT, entry.values(), Weight.PLAIN, "", 0, Weight.PLAIN);
        }
    }
}
