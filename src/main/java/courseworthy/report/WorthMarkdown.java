package courseworthy.report;

import courseworthy.task.Brief;
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
}
