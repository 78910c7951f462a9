package courseworthy.report;

import courseworthy.analysis.Finding;
import courseworthy.analysis.Finding.Fact;
import courseworthy.analysis.Findings;
import courseworthy.task.CheckResult;
import java.util.ArrayList;
import java.util.List;

/** What was found in a sheet by reasoning over its rows. */
public final class CheckReport {

    private CheckReport() {
    }

    public static Report of(CheckResult result) {
        Findings findings = result.findings();
        int count = findings.count();
        Report.Builder out = Report.builder(RichText.ofQuoted(result.file()))
                .subtitle(Phrases.count(result.rows(), "row") + ", " + (count == 0 ? "nothing found" : Phrases.count(count, "finding")));
        for (int i = 0; i < findings.list().size(); i++) {
            out.section(finding(result, i));
        }
        List<RichText> unlisted = new ArrayList<>();
        findings.unlisted().forEach((kind, more) -> unlisted.add(RichText.of("And " + more + " more like this: " + kind.words() + ".")));
        boolean all = unlisted.isEmpty() && findings.list().stream().allMatch(each -> each.more() == 0);
        return out.section(Section.builder("not-listed", "Not listed").paragraphs(unlisted)
                .paragraph(all ? RichText.EMPTY : RichText.EMPTY.code("--all").text(" lists them."))).build();
    }

    private static Section.Builder finding(CheckResult result, int index) {
        Finding finding = result.findings().list().get(index);
        String where = finding.rows().isEmpty() ? result.file() + ": " + finding.topic()
                : finding.rows().get(0).where() + ": " + finding.rows().get(0).rule();
        String shown = result.examples().isEmpty() ? "" : result.examples().get(index);
        return Section.builder("finding-" + (index + 1), RichText.ofQuoted(where + ": " + finding.kind().words()))
                .paragraph(RichText.ofQuoted(finding.text() + otherRow(finding)).text(finding.more() == 0 ? "" : " And " + finding.more() + " more like this."))
                .paragraph(RichText.ofQuoted(finding.mend()))
                .remark(finding.witness().facts().isEmpty() ? RichText.EMPTY : RichText.of("Such as: ").quoted(example(finding)).text("."))
                .remark(shown.isEmpty() ? RichText.EMPTY : RichText.of("Shown by ").quoted(shown).text("."));
    }

    /** Where the row stands that it is compared with. */
    private static String otherRow(Finding finding) {
        return finding.rows().size() < 2 ? "" : " (" + finding.rows().get(1).where() + ")";
    }

    private static String example(Finding finding) {
        List<String> out = new ArrayList<>();
        for (Fact fact : finding.witness().facts()) {
            out.add(fact.what() + " " + fact.value());
        }
        return String.join(", ", out);
    }
}
