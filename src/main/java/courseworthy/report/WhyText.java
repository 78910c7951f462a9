package courseworthy.report;

import courseworthy.call.Explainer.Instead;
import courseworthy.call.RuleTrace;
import courseworthy.claim.Claim;
import courseworthy.claim.TestedFact;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Lost;
import courseworthy.report.Page.Weight;
import courseworthy.sheet.ConditionTrace;
import courseworthy.task.LeadingReason;
import courseworthy.task.WhyResult;
import java.util.List;
import java.util.Locale;

/** Writes why a decision is as it is, for the terminal. */
public final class WhyText {

    private final WhyResult reasoning;
    private final Page page;

    private WhyText(WhyResult reasoning, boolean colours) {
        this.reasoning = reasoning;
        this.page = new Page(colours);
    }

    /** One decision: the whole chain, or what was asked of one value or one rule. */
    public static String of(WhyResult reasoning, boolean colours) {
        WhyText text = new WhyText(reasoning, colours);
        text.head();
        if (reasoning.rule() != null) {
            text.rule(reasoning.rule());
        }
        if (reasoning.instead() != null) {
            text.instead(reasoning.instead());
        }
        if (!reasoning.narrow()) {
            text.chain();
            text.silent();
            FlipText.add(text.page, reasoning.flips());
        }
        return text.page.toString();
    }

    private void head() {
        Decision decision = reasoning.decision();
        boolean sure = decision != null && decision.standing() != null;
        page.spread(decision == null ? WhyResult.CHECKLIST : decision.topic().name() + ": " + decision.text(),
                sure ? decision.standing().word() : "", Weight.BOLD);
        page.text(0, 0, reasoning.brief().course().name() + ", " + BriefText.title(reasoning.brief()), Weight.FAINT);
        SheetNames.add(page, reasoning.brief().sheets());
    }

    private void chain() {
        page.heading("FROM MEASURES TO DECISION");
        for (Decision decision : reasoning.chain()) {
            step(decision);
        }
        Decision decision = reasoning.decision();
        page.text(2, 4, decision.topic().name() + ": " + decision.text(), Weight.BOLD);
        if (!decision.why().isEmpty()) {
            page.text(4, 4, decision.why(), Weight.PLAIN);
        }
        if (decision.taken().isEmpty() && decision.why().isEmpty()) {
            page.text(4, 4, "Nothing was said; it is the common value.", Weight.PLAIN);
        }
        for (Claim claim : decision.taken()) {
            claim(claim, "");
        }
        for (Lost lost : decision.lost()) {
            claim(lost.claim(), "; " + Phrases.lost(lost));
        }
    }

    /** An earlier decision with the claim that led to it. */
    private void step(Decision decision) {
        page.text(2, 4, decision.topic().name() + ": " + decision.text(), Weight.BOLD);
        Claim leading = LeadingReason.leading(decision);
        if (leading == null) {
            page.text(4, 4, decision.why().isEmpty() ? "Nothing was said; it is the common value." : decision.why(), Weight.PLAIN);
        } else {
            claim(leading, "");
        }
    }

    private void claim(Claim claim, String lost) {
        page.text(4, 6, WhyWords.claim(claim) + lost, Weight.PLAIN);
        for (TestedFact ground : claim.grounds()) {
            page.marked("      - ", Phrases.ground(ground), Weight.PLAIN);
        }
    }

    private void silent() {
        page.heading("RULES THAT KEPT SILENT");
        if (reasoning.silent().isEmpty()) {
            page.text(2, 2, "Every rule on it spoke.", Weight.PLAIN);
        }
        for (RuleTrace hearing : reasoning.silent()) {
            page.text(2, 4, WhyWords.says(hearing) + ": " + hearing.author().rule(), Weight.PLAIN);
            if (hearing.tests().isEmpty() || !hearing.wanting().isEmpty()) {
                page.text(4, 4, WhyWords.spoke(hearing), Weight.PLAIN);
            }
            tests(WhyWords.unmet(hearing), 4);
        }
        if (!reasoning.silent().isEmpty()) {
            page.text(2, 2, WhyWords.MARKS, Weight.FAINT);
        }
    }

    private void tests(List<ConditionTrace> tests, int indent) {
        for (ConditionTrace test : tests) {
            int at = indent + 2 * test.depth();
            page.text(at, at + 2, WhyWords.test(test), Weight.PLAIN);
        }
    }

    private void rule(RuleTrace hearing) {
        page.heading(hearing.author().rule());
        page.text(2, 4, WhyWords.says(hearing) + "; " + hearing.author().force().word(), Weight.PLAIN);
        page.text(2, 2, Phrases.because(hearing.author()), Weight.PLAIN);
        page.text(2, 2, WhyWords.spoke(hearing), Weight.BOLD);
        tests(hearing.tests(), 2);
        if (!hearing.tests().isEmpty()) {
            page.text(2, 2, WhyWords.MARKS, Weight.FAINT);
        }
        page.text(2, 4, hearing.author().where().toString(), Weight.FAINT);
    }

    private void instead(Instead instead) {
        page.heading(("why not " + WhyWords.value(instead)).toUpperCase(Locale.ROOT));
        page.text(2, 2, WhyWords.beaten(instead, reasoning.decision()), Weight.PLAIN);
        List<Claim> beaten = instead.excluding().isEmpty() ? instead.against() : instead.excluding();
        for (Claim claim : beaten) {
            claim(claim, "");
            page.text(6, 6, claim.author().because(), Weight.PLAIN);
        }
        if (!instead.onStep()) {
            page.text(2, 2, WhyWords.offStep(instead.topic()), Weight.PLAIN);
        }
        favouring(instead);
        page.text(2, 2, WhyWords.brings(instead), Weight.BOLD);
        page.text(2, 2, FlipWords.HELD, Weight.FAINT);
    }

    private void favouring(Instead instead) {
        if (!instead.favouring().isEmpty()) {
            page.text(2, 2, "What spoke for it:", Weight.PLAIN);
        }
        for (Lost lost : instead.favouring()) {
            claim(lost.claim(), "; " + Phrases.lost(lost));
        }
        if (!instead.wouldSay().isEmpty()) {
            page.text(2, 2, "What would speak for it, but kept silent:", Weight.PLAIN);
        }
        for (RuleTrace hearing : instead.wouldSay()) {
            page.text(4, 6, WhyWords.says(hearing) + ": " + hearing.author().rule(), Weight.PLAIN);
            tests(WhyWords.unmet(hearing), 6);
        }
    }
}
