package courseworthy.report;

import courseworthy.build.Position;
import courseworthy.build.PositionTransfer;
import courseworthy.report.PositionWords.Line;
import java.util.List;

/** Writes bar and saddle positions as a Markdown page. */
public final class PositionMarkdown {

    private PositionMarkdown() {
    }

    /** The positions on several bikes. */
    public static String of(String workshop, List<Position> positions) {
        Marked page = head(workshop);
        for (Position position : positions) {
            page.heading(2, position.bike().name());
            page.tableHead("What", "Where");
            for (Line line : PositionWords.lines(position)) {
                if (PositionWords.shown(line)) {
                    page.tableRow(line.what(), PositionWords.text(line));
                }
            }
            page.gap();
            list(page, "To measure:", PositionWords.sentences(position.toMeasure()));
            list(page, "To mind:", PositionWords.sentences(position.restsOn()));
        }
        tail(page);
        return page.toString();
    }

    /** A position carried over. */
    public static String of(String workshop, PositionTransfer carried) {
        Marked page = head(workshop);
        page.paragraph(carried.now().bike() + " to be ridden as " + carried.from().bike() + " is");
        page.tableHead("What", carried.from().bike().name(), carried.now().bike() + " now", "Differs");
        List<Line> wanted = PositionWords.lines(carried.from());
        List<Line> now = PositionWords.lines(carried.now());
        for (int i = 0; i < wanted.size(); i++) {
            if (PositionWords.shown(wanted.get(i), now.get(i))) {
                page.tableRow(wanted.get(i).what(), PositionWords.text(wanted.get(i)), PositionWords.text(now.get(i)),
                        PositionWords.difference(now.get(i), wanted.get(i)));
            }
        }
        page.gap();
        list(page, "To measure:", PositionWords.sentences(carried.toMeasure()));
        section(page, "The stem that comes closest", PositionWords.closest(carried));
        list(page, "Other stems, each at its closest:", PositionWords.others(carried));
        section(page, "The saddle", PositionWords.saddle(carried));
        section(page, "To mind", PositionWords.sentences(carried.toMind()));
        PositionWords.CAUTIONS.forEach(page::bullet);
        page.gap();
        tail(page);
        return page.toString();
    }

    private static Marked head(String workshop) {
        Marked page = new Marked();
        page.heading(1, (workshop.isEmpty() ? "The workshop" : workshop) + ", bar and saddle position");
        return page;
    }

    private static void section(Marked page, String title, List<String> lines) {
        page.heading(2, title);
        lines.forEach(page::bullet);
        page.gap();
    }

    private static void list(Marked page, String title, List<String> lines) {
        if (!lines.isEmpty()) {
            page.paragraph(title);
            lines.forEach(page::bullet);
            page.gap();
        }
    }

    private static void tail(Marked page) {
        page.emphasised(PositionWords.MEANS);
        PositionWords.RESTS_ON.forEach(page::emphasised);
    }
}
