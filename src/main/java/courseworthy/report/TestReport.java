package courseworthy.report;

import courseworthy.engine.CaseResults;
import courseworthy.engine.CaseResults.FailedCase;
import courseworthy.engine.CaseResults.MissingCase;
import courseworthy.sheet.SheetInForce;
import java.util.ArrayList;
import java.util.List;

/** How a sheet did in its cases: those that failed, and what no case covers. */
public final class TestReport {

    private TestReport() {
    }

    /** @param file the sheet's path as typed */
    public static Report of(String file, CaseResults results) {
        Report.Builder out = Report.builder(RichText.ofQuoted(file)).subtitle(summary(results))
                .paragraphs(SheetNames.paragraphs(SheetInForce.of(results.sheets())));
        for (int i = 0; i < results.failed().size(); i++) {
            out.section(failed(results.failed().get(i), "failed-" + (i + 1)));
        }
        List<MissingCase> missing = results.missing() == null ? List.of() : results.missing();
        for (int i = 0; i < missing.size(); i++) {
            MissingCase each = missing.get(i);
            out.section(Section.builder("untouched-" + (i + 1), RichText.ofQuoted(each.where() + ": " + each.rule() + ": " + each.what()))
                    .paragraph(RichText.of("Add ").quoted(each.lacking()).text(".")));
        }
        return out.build();
    }

    private static Section.Builder failed(FailedCase failed, String id) {
        String rule = failed.rule().isEmpty() ? "" : failed.rule() + ": ";
        return Section.builder(id, RichText.ofQuoted(failed.where() + ": " + rule + failed.sentence()))
                .items(differences(failed.differences()));
    }

    /** Lines that are indented say more of the line above them. */
    private static List<ItemList.Item> differences(List<String> lines) {
        List<ItemList.Item> out = new ArrayList<>();
        for (int from = 0; from < lines.size(); ) {
            int to = from + 1;
            while (to < lines.size() && lines.get(to).startsWith(" ")) {
                to++;
            }
            List<RichText> below = lines.subList(from + 1, to).stream().map(RichText::ofQuoted).toList();
            out.add(ItemList.Item.of(RichText.ofQuoted(lines.get(from)), below));
            from = to;
        }
        return out;
    }

    private static String summary(CaseResults results) {
        int wrong = results.failed().size();
        String cover = results.missing() == null ? "" : results.missing().isEmpty() ? ", all of it covered"
                : ", " + Phrases.count(results.missing().size(), "place") + " that no case covers";
        return Phrases.count(results.rows(), "row") + ", " + Phrases.count(results.cases(), "case") + ", "
                + (wrong == 0 ? "all as expected" : wrong + " not as expected") + cover;
    }
}
