package courseworthy.report;

import courseworthy.build.Position;
import courseworthy.build.PositionTransfer;
import courseworthy.report.Page.Weight;
import courseworthy.report.PositionWords.Line;
import java.util.List;

/** Writes bar and saddle positions for the terminal. */
public final class PositionText {

    private static final int NAME = 22;
    private static final int FIGURE = 18;

    private PositionText() {
    }

    /** The positions on several bikes. */
    public static String of(String workshop, List<Position> positions, boolean colours) {
        Page page = head(workshop, colours);
        for (Position position : positions) {
            page.heading(position.bike().name());
            for (Line line : PositionWords.lines(position)) {
                if (PositionWords.shown(line)) {
                    page.row(line.what(), NAME, PositionWords.text(line), Weight.PLAIN, "", 0, Weight.PLAIN);
                }
            }
            list(page, "To measure:", PositionWords.sentences(position.toMeasure()));
            list(page, "To mind:", PositionWords.sentences(position.restsOn()));
        }
        page.gap();
        tail(page);
        return page.toString();
    }

    /** A position carried over. */
    public static String of(String workshop, PositionTransfer carried, boolean colours) {
        Page page = head(workshop, colours);
        page.text(0, 0, carried.now().bike() + " to be ridden as " + carried.from().bike() + " is", Weight.PLAIN);
        figures(page, carried);
        list(page, "To measure:", PositionWords.sentences(carried.toMeasure()));
        page.heading("THE STEM THAT COMES CLOSEST");
        for (String line : PositionWords.closest(carried)) {
            page.text(2, 4, line, Weight.PLAIN);
        }
        list(page, "Other stems, each at its closest:", PositionWords.others(carried));
        page.heading("THE SADDLE");
        for (String line : PositionWords.saddle(carried)) {
            page.text(2, 4, line, Weight.PLAIN);
        }
        page.heading("TO MIND");
        page.texts("  - ", PositionWords.sentences(carried.toMind()));
        page.texts("  - ", PositionWords.CAUTIONS);
        tail(page);
        return page.toString();
    }

    private static Page head(String workshop, boolean colours) {
        Page page = new Page(colours);
        page.spread(workshop.isEmpty() ? "The workshop" : workshop, "bar and saddle position", Weight.BOLD);
        return page;
    }

    private static void figures(Page page, PositionTransfer carried) {
        List<Line> wanted = PositionWords.lines(carried.from());
        List<Line> now = PositionWords.lines(carried.now());
        page.gap();
        figure(page, "", carried.from().bike().name(), carried.now().bike().name() + " now", "differs", Weight.FAINT);
        for (int i = 0; i < wanted.size(); i++) {
            if (PositionWords.shown(wanted.get(i), now.get(i))) {
                figure(page, wanted.get(i).what(), PositionWords.text(wanted.get(i)), PositionWords.text(now.get(i)),
                        PositionWords.difference(now.get(i), wanted.get(i)), Weight.PLAIN);
            }
        }
    }

    private static void figure(Page page, String what, String wanted, String now, String differs, Weight weight) {
        page.drawn("  " + what + " ".repeat(NAME - what.length()) + right(wanted) + right(now) + right(differs), weight);
    }

    private static String right(String text) {
        String shown = Columns.shorten(courseworthy.problem.TextSanitiser.line(text), FIGURE - 2);
        return " ".repeat(FIGURE - Columns.width(shown)) + shown;
    }

    private static void list(Page page, String title, List<String> lines) {
        if (!lines.isEmpty()) {
            page.gap();
            page.text(0, 2, title, Weight.FAINT);
            page.texts("  - ", lines);
        }
    }

    private static void tail(Page page) {
        page.text(2, 2, PositionWords.MEANS, Weight.FAINT);
        for (String line : PositionWords.RESTS_ON) {
            page.text(2, 2, line, Weight.FAINT);
        }
    }
}
