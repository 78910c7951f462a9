package courseworthy.report;

import courseworthy.debrief.AdviceOutcome;
import courseworthy.debrief.Debrief.Line;
import courseworthy.debrief.DebriefResult;
import courseworthy.debrief.RuleRecord;
import courseworthy.debrief.RuleRecord.OfRule;
import courseworthy.debrief.Verdict;
import java.util.List;

/** Writes debriefs as a Markdown page. */
public final class DebriefMarkdown {

    private DebriefMarkdown() {
    }

    /** One debrief. */
    public static String of(DebriefResult held) {
        Marked page = new Marked();
        page.heading(1, held.debrief().name() + ", debrief");
        page.paragraph(DebriefWords.whose(held));
        SheetNames.add(page, held.given().sheets());
        page.heading(2, "The day");
        page.tableHead("What", "How it was");
        for (Line line : DebriefWords.day(held)) {
            page.tableRow(line.what(), line.words());
        }
        for (AdviceOutcome answer : AdviceOutcome.values()) {
            verdicts(page, answer, DebriefWords.told(held, answer));
        }
        if (!DebriefWords.untold(held).isEmpty()) {
            page.heading(2, "Nothing told bears on");
            page.paragraph(DebriefWords.untold(held));
        }
        tail(page);
        return page.toString();
    }

    private static void verdicts(Marked page, AdviceOutcome answer, List<Verdict> verdicts) {
        if (!verdicts.isEmpty()) {
            page.heading(2, DebriefWords.title(answer));
            for (Verdict verdict : verdicts) {
                page.bullet(verdict.advice().topic().name() + " " + DebriefWords.verdict(verdict), DebriefWords.rules(verdict));
            }
        }
    }

    /** The record over many. */
    public static String of(String folder, RuleRecord keeping) {
        Marked page = new Marked();
        page.heading(1, folder + ", " + DebriefWords.howMany(keeping));
        page.paragraph(DebriefWords.inTime(keeping));
        SheetNames.add(page, keeping.sheets());
        List<OfRule> look = keeping.toLookAt();
        if (!look.isEmpty()) {
            page.heading(2, "Worth a look");
            look.forEach(rule -> page.bullet(DebriefWords.look(rule)));
        }
        page.heading(2, "Rules put to the test");
        page.tableHead("Rule", "Spoke", "Borne out", "Not", "Could not tell", "Of those that could be told");
        for (OfRule rule : DebriefWords.tested(keeping)) {
            page.tableRow(rule.rule(), Integer.toString(rule.spoke()), Integer.toString(rule.borneOut()), Integer.toString(rule.not()),
                    Integer.toString(rule.unknown()), rule.share().words());
        }
        page.gap();
        if (!DebriefWords.untested(keeping).isEmpty()) {
            page.paragraph(DebriefWords.untested(keeping));
        }
        page.emphasised(DebriefWords.NUMBERS);
        tail(page);
        return page.toString();
    }

    private static void tail(Marked page) {
        page.gap();
        page.emphasised(DebriefWords.MEANS);
        DebriefWords.CAUTIONS.forEach(page::emphasised);
    }
}
