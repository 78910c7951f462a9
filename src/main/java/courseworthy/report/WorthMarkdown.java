package courseworthy.report;

import courseworthy.task.Brief;
import courseworthy.topic.Topic;
import courseworthy.worth.Alternative;
import courseworthy.worth.Worth;
import java.util.List;

/** Writes in Markdown what decisions are worth. */
final class WorthMarkdown {

    private WorthMarkdown() {
    }

    /** The leading figures of the whole call. */
    static void terse(Marked page, Brief brief) {
        List<SetUpSummary.Entry> entries = WorthWords.terse(brief);
        if (!entries.isEmpty()) {
            page.heading(2, "What it is worth here");
            for (SetUpSummary.Entry entry : entries) {
                page.bullet(entry.about() + ":", entry.values());
            }
        }
    }

    /** One topic in full. */
    static void full(Marked page, Brief brief, Topic topic) {
        Worth worth = WorthWords.worth(brief, topic);
        if (worth == null) {
            return;
        }
        page.heading(2, "What it is worth here");
        if (worth.gears() != null) {
            new GearsMarkdown(page, worth.gears()).all(3);
        }
        if (worth.extensions() != null) {
            page.paragraph(WorthWords.capital(WorthWords.extensions(worth.extensions())) + ".");
            page.paragraph("With " + Figures.mass(worth.extensions().mass()) + " of them carried throughout.");
        }
        for (Alternative each : worth.alternatives()) {
            page.heading(3, WorthWords.capital(WorthWords.alternative(each)));
            for (String line : WorthWords.lines(each)) {
                page.bullet(line);
            }
        }
        page.gap();
        for (String note : worth.notes()) {
            page.emphasised(note);
        }
    }
}
