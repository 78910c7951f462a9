package courseworthy.report;

import courseworthy.task.Brief;
import courseworthy.worth.SetUp;
import java.util.List;

/** Writes set-ups side by side as a Markdown page. */
public final class CompareMarkdown {

    private CompareMarkdown() {
    }

    /** @param setUps the recommended first */
    public static String of(Brief brief, List<SetUp> setUps) {
        Marked page = new Marked();
        page.heading(1, brief.course().name() + ", set-ups side by side");
        String whose = Phrases.whose(brief);
        if (!whose.isEmpty()) {
            page.paragraph(whose);
        }
        SheetNames.add(page, brief.sheets());
        String[] heads = new String[setUps.size() + 1];
        heads[0] = "";
        for (int i = 0; i < setUps.size(); i++) {
            heads[i + 1] = CompareWords.heading(setUps, i);
        }
        page.tableHead(heads);
        for (CompareWords.Row row : CompareWords.rows(setUps)) {
            String[] cells = new String[setUps.size() + 1];
            cells[0] = row.what();
            for (int i = 0; i < setUps.size(); i++) {
                cells[i + 1] = row.cells().get(i);
            }
            page.tableRow(cells);
        }
        for (int i = 1; i < setUps.size(); i++) {
            page.heading(2, WorthWords.capital(CompareWords.letter(i)) + ": " + setUps.get(i).written());
            for (String line : CompareWords.differences(setUps.get(i))) {
                page.bullet(WorthWords.capital(line));
            }
        }
        page.gap();
        page.emphasised(CompareWords.MEANS);
        return page.toString();
    }
}
