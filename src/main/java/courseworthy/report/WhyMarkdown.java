package courseworthy.report;

import courseworthy.call.Explainer.Instead;
import courseworthy.call.RuleTrace;
import courseworthy.claim.Claim;
import courseworthy.claim.TestedFact;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Lost;
import courseworthy.sheet.ConditionTrace;
import courseworthy.task.LeadingReason;
import courseworthy.task.WhyResult;
import java.util.ArrayList;
import java.util.List;

/** Writes why a decision is as it is, as Markdown. */
public final class WhyMarkdown {

    private final WhyResult reasoning;
    private final Marked page = new Marked();

    private WhyMarkdown(WhyResult reasoning) {
        this.reasoning = reasoning;
    }

    /** One decision: the whole chain, or what was asked of one value or one rule. */
    public static String of(WhyResult reasoning) {
        WhyMarkdown markdown = new WhyMarkdown(reasoning);
        markdown.head();
        if (reasoning.rule() != null) {
            markdown.rule(reasoning.rule());
        }
        if (reasoning.instead() != null) {
            markdown.instead(reasoning.instead());
        }
        if (!reasoning.narrow()) {
            markdown.chain();
            markdown.silent();
            FlipText.add(markdown.page, reasoning.flips());
        }
        return markdown.page.toString();
    }

    private void head() {
        Decision decision = reasoning.decision();
        page.heading(1, decision == null ? WhyResult.CHECKLIST : decision.topic().name() + ": " + decision.text());
        page.paragraph(reasoning.brief().course().name() + ", " + BriefText.title(reasoning.brief()));
        SheetNames.add(page, reasoning.brief().sheets());
        if (decision != null && decision.standing() != null) {
            page.paragraph("How sure: " + decision.standing().word());
        }
    }

    private void chain() {
        page.heading(2, "From measures to decision");
        for (Decision decision : reasoning.chain()) {
            page.heading(3, decision.topic().name() + ": " + decision.text());
            Claim leading = LeadingReason.leading(decision);
            if (leading == null) {
                page.bullet(decision.why().isEmpty() ? "Nothing was said; it is the common value." : decision.why());
            } else {
                claim(leading, "");
            }
        }
        Decision decision = reasoning.decision();
        page.heading(3, decision.topic().name() + ": " + decision.text());
        if (!decision.why().isEmpty()) {
            page.bullet(decision.why());
        }
        if (decision.taken().isEmpty() && decision.why().isEmpty()) {
            page.bullet("Nothing was said; it is the common value.");
        }
        for (Claim claim : decision.taken()) {
            claim(claim, "");
        }
        for (Lost lost : decision.lost()) {
            claim(lost.claim(), "; " + Phrases.lost(lost));
        }
    }

    private void claim(Claim claim, String lost) {
        List<String> below = new ArrayList<>();
        for (TestedFact ground : claim.grounds()) {
            below.add(Phrases.ground(ground));
        }
        page.bullet(WhyWords.claim(claim) + lost, below);
    }

    private void silent() {
        page.heading(2, "Rules that kept silent");
        if (reasoning.silent().isEmpty()) {
            page.paragraph("Every rule on it spoke.");
            return;
        }
        for (RuleTrace hearing : reasoning.silent()) {
            silent(hearing);
        }
        page.gap();
        page.emphasised(WhyWords.MARKS);
    }

    private void silent(RuleTrace hearing) {
        List<String> below = new ArrayList<>();
        if (hearing.tests().isEmpty() || !hearing.wanting().isEmpty()) {
            below.add(WhyWords.spoke(hearing));
        }
        for (ConditionTrace test : WhyWords.unmet(hearing)) {
            below.add(WhyWords.test(test));
        }
        page.bullet(WhyWords.says(hearing) + ": " + hearing.author().rule(), below);
    }

    private void rule(RuleTrace hearing) {
        page.heading(2, hearing.author().rule());
        page.paragraph(WhyWords.says(hearing) + "; " + hearing.author().force().word());
        page.paragraph(Phrases.because(hearing.author()));
        page.paragraph(WhyWords.spoke(hearing));
        for (ConditionTrace test : hearing.tests()) {
            page.bullet(WhyWords.test(test));
        }
        if (!hearing.tests().isEmpty()) {
            page.gap();
            page.emphasised(WhyWords.MARKS);
        }
        page.paragraph(hearing.author().where().toString());
    }

    private void instead(Instead instead) {
        page.heading(2, "Why not " + WhyWords.value(instead));
        page.paragraph(WhyWords.beaten(instead, reasoning.decision()));
        for (Claim claim : instead.excluding().isEmpty() ? instead.against() : instead.excluding()) {
            claim(claim, "");
            page.gap();
            page.paragraph(claim.author().because());
        }
        if (!instead.onStep()) {
            page.paragraph(WhyWords.offStep(instead.topic()));
        }
        favouring(instead);
        page.paragraph(WhyWords.brings(instead));
        page.emphasised(FlipWords.HELD);
    }

    private void favouring(Instead instead) {
        if (!instead.favouring().isEmpty()) {
            page.paragraph("What spoke for it:");
            instead.favouring().forEach(lost -> claim(lost.claim(), "; " + Phrases.lost(lost)));
            page.gap();
        }
        if (!instead.wouldSay().isEmpty()) {
            page.paragraph("What would speak for it, but kept silent:");
            instead.wouldSay().forEach(this::silent);
            page.gap();
        }
    }
}
