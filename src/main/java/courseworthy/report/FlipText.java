package courseworthy.report;

import courseworthy.call.Flip;
import courseworthy.report.Page.Weight;
import java.util.List;
import java.util.Locale;

/** Writes what would change a decision, as a section of text or of Markdown. */
public final class FlipText {

    private FlipText() {
    }

    public static void add(Page page, List<Flip> flips) {
        page.heading(FlipWords.TITLE.toUpperCase(Locale.ROOT));
        if (flips.isEmpty()) {
            page.text(2, 2, FlipWords.NONE, Weight.PLAIN);
        }
        page.texts("  - ", FlipWords.lines(flips));
        page.text(2, 2, FlipWords.HELD, Weight.FAINT);
    }

    public static void add(Marked page, List<Flip> flips) {
        page.heading(2, FlipWords.TITLE);
        if (flips.isEmpty()) {
            page.paragraph(FlipWords.NONE);
        }
        for (String line : FlipWords.lines(flips)) {
            page.bullet(line);
        }
        page.gap();
        page.emphasised(FlipWords.HELD);
    }
}
