package courseworthy.report;

import courseworthy.debrief.AdviceOutcome;
import courseworthy.debrief.Debrief.Line;
import courseworthy.debrief.DebriefResult;
import courseworthy.debrief.RuleRecord;
import courseworthy.debrief.RuleRecord.OfRule;
import courseworthy.debrief.Verdict;
import courseworthy.report.Page.Weight;
import java.util.List;
import java.util.Locale;

/** Writes debriefs for the terminal. */
public final class DebriefText {

    private static final int NAME = 22;
    private static final int RULE = 36;

    private DebriefText() {
    }

    /** One debrief. */
    public static String of(DebriefResult held, boolean colours) {
        Page page = new Page(colours);
        page.spread(held.debrief().name(), "debrief", Weight.BOLD);
        page.text(0, 0, DebriefWords.whose(held), Weight.PLAIN);
        SheetNames.add(page, held.given().sheets());
        page.heading("THE DAY");
        for (Line line : DebriefWords.day(held)) {
            page.row(line.what(), NAME, line.words(), Weight.PLAIN, "", 0, Weight.PLAIN);
        }
        for (AdviceOutcome answer : AdviceOutcome.values()) {
            verdicts(page, answer, DebriefWords.told(held, answer));
        }
        if (!DebriefWords.untold(held).isEmpty()) {
            page.heading("NOTHING TOLD BEARS ON");
            page.text(2, 2, DebriefWords.untold(held), Weight.FAINT);
        }
        tail(page);
        return page.toString();
    }

    private static void verdicts(Page page, AdviceOutcome answer, List<Verdict> verdicts) {
        if (verdicts.isEmpty()) {
            return;
        }
        page.heading(DebriefWords.title(answer).toUpperCase(Locale.ROOT));
        for (Verdict verdict : verdicts) {
            page.row(verdict.advice().topic().name(), NAME, DebriefWords.verdict(verdict), Weight.PLAIN, "", 0, Weight.PLAIN);
            for (String rule : DebriefWords.rules(verdict)) {
                page.text(4, 6, rule, Weight.FAINT);
            }
        }
    }

    /** The record over many. */
    public static String of(String folder, RuleRecord keeping, boolean colours) {
        Page page = new Page(colours);
        page.spread(folder, DebriefWords.howMany(keeping), Weight.BOLD);
        page.text(0, 0, DebriefWords.inTime(keeping), Weight.PLAIN);
        SheetNames.add(page, keeping.sheets());
        if (!keeping.toLookAt().isEmpty()) {
            page.heading("WORTH A LOOK");
            for (OfRule rule : keeping.toLookAt()) {
                page.text(2, 4, DebriefWords.look(rule), Weight.PLAIN);
            }
        }
        page.heading("RULES PUT TO THE TEST");
        for (OfRule rule : DebriefWords.tested(keeping)) {
            page.row(rule.rule(), RULE, DebriefWords.counts(rule), Weight.PLAIN, "", 0, Weight.PLAIN);
            page.text(4, 6, rule.share().words(), Weight.FAINT);
        }
        if (DebriefWords.tested(keeping).isEmpty()) {
            page.text(2, 2, "None yet.", Weight.PLAIN);
        }
        if (!DebriefWords.untested(keeping).isEmpty()) {
            page.text(2, 2, DebriefWords.untested(keeping), Weight.PLAIN);
        }
        page.gap();
        page.text(2, 2, DebriefWords.NUMBERS, Weight.FAINT);
        tail(page);
        return page.toString();
    }

    private static void tail(Page page) {
        page.gap();
        page.text(2, 2, DebriefWords.MEANS, Weight.FAINT);
        for (String caution : DebriefWords.CAUTIONS) {
            page.text(2, 2, caution, Weight.FAINT);
        }
    }
}
