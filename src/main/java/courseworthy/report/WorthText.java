package courseworthy.report;

import courseworthy.report.Page.Weight;
import courseworthy.task.Brief;
import courseworthy.topic.Topic;
import courseworthy.worth.Alternative;
import courseworthy.worth.Worth;

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

    /** One topic in full. */
    static void full(Page page, Brief brief, Topic topic) {
        Worth worth = WorthWords.worth(brief, topic);
        if (worth == null) {
            return;
        }
        page.heading("WHAT IT IS WORTH HERE");
        if (worth.gears() != null) {
            new GearsText(page, worth.gears()).all();
        }
        if (worth.extensions() != null) {
            page.text(2, 2, WorthWords.capital(WorthWords.extensions(worth.extensions())) + ".", Weight.BOLD);
            page.text(2, 2, "With " + Figures.mass(worth.extensions().mass()) + " of them carried throughout.", Weight.PLAIN);
        }
        for (Alternative each : worth.alternatives()) {
            page.text(2, 4, WorthWords.capital(WorthWords.alternative(each)) + ".", Weight.BOLD);
            for (String line : WorthWords.lines(each)) {
                page.text(4, 6, line, Weight.PLAIN);
            }
        }
        for (String note : worth.notes()) {
            page.text(2, 2, note, Weight.FAINT);
        }
    }
}
