package courseworthy.report;

import courseworthy.problem.TextSanitiser;
import courseworthy.report.Page.Weight;
import courseworthy.task.Brief;
import courseworthy.worth.SetUp;
import java.util.ArrayList;
import java.util.List;

/** Writes set-ups side by side for the terminal: the recommended first, and two others beside it at a time. */
public final class CompareText {

    private static final int NAME = 20;
    private static final int BESIDE = 2;

    private CompareText() {
    }

    /** @param setUps the recommended first */
    public static String of(Brief brief, List<SetUp> setUps, boolean colours) {
        Page page = new Page(colours);
        page.spread(brief.course().name(), "set-ups side by side", Weight.BOLD);
        String whose = Phrases.whose(brief);
        if (!whose.isEmpty()) {
            page.text(0, 0, whose, Weight.PLAIN);
        }
        SheetNames.add(page, brief.sheets());
        List<CompareWords.Row> rows = CompareWords.rows(setUps);
        for (int from = 1; from < setUps.size(); from += BESIDE) {
            int to = Math.min(setUps.size(), from + BESIDE);
            page.gap();
            table(page, setUps, rows, from, to);
        }
        for (int i = 1; i < setUps.size(); i++) {
            page.heading(CompareWords.letter(i).toUpperCase(java.util.Locale.ROOT) + ": " + setUps.get(i).written());
            for (String line : CompareWords.differences(setUps.get(i))) {
                page.text(2, 4, WorthWords.capital(line), line.startsWith("!") ? Weight.ALERT : Weight.PLAIN);
            }
        }
        page.gap();
        page.text(0, 0, CompareWords.MEANS, Weight.FAINT);
        return page.toString();
    }

    private static void table(Page page, List<SetUp> setUps, List<CompareWords.Row> rows, int from, int to) {
        int columns = 1 + to - from;
        int width = (Columns.PAGE - NAME) / columns;
        List<String> heads = new ArrayList<>();
        heads.add(CompareWords.heading(setUps, 0));
        for (int i = from; i < to; i++) {
            heads.add(CompareWords.heading(setUps, i));
        }
        line(page, "", heads, width, Weight.BOLD);
        for (CompareWords.Row row : rows) {
            List<String> cells = new ArrayList<>();
            cells.add(row.cells().get(0));
            cells.addAll(row.cells().subList(from, to));
            line(page, row.what(), cells, width, Weight.PLAIN);
        }
    }

    /** One row, each cell wrapped in its column. */
    private static void line(Page page, String what, List<String> cells, int width, Weight weight) {
        List<List<String>> wrapped = new ArrayList<>();
        int most = 1;
        for (String cell : cells) {
            List<String> lines = Columns.wrap(TextSanitiser.line(cell), width - 2);
            wrapped.add(lines);
            most = Math.max(most, lines.size());
        }
        for (int i = 0; i < most; i++) {
            StringBuilder line = new StringBuilder(padded(i == 0 ? what : "", NAME));
            for (List<String> lines : wrapped) {
                line.append(padded(i < lines.size() ? lines.get(i) : "", width));
            }
            page.drawn(line.toString().stripTrailing(), weight);
        }
    }

    private static String padded(String text, int columns) {
        return text + " ".repeat(Math.max(0, columns - Columns.width(text)));
    }
}
