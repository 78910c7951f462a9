package courseworthy.report;

import courseworthy.call.Flip;
import courseworthy.claim.Claim;
import courseworthy.claim.TestedFact;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Lost;
import courseworthy.engine.UndeterminedRule;
import courseworthy.report.Page.Weight;
import courseworthy.task.Brief;
import java.util.List;

/** Writes one topic in full: every claim for and against, what it rested on and where it is written. */
public final class TopicText {

    private final Brief brief;
    private final Decision decision;
    private final Page page;

    private TopicText(Brief brief, Decision decision, boolean colours) {
        this.brief = brief;
        this.decision = decision;
        this.page = new Page(colours);
    }

    /**
     * @param topic a name of the catalogue
     * @param flips what would change it, smallest first
     */
    public static String of(Brief brief, String topic, List<Flip> flips, boolean colours) {
        TopicText text = new TopicText(brief, brief.on(topic), colours);
        text.decision();
        new PlanText(text.page, brief).topic(topic);
        WorthText.full(text.page, brief, text.decision.topic());
        text.claims();
        FlipText.add(text.page, flips);
        text.untold();
        return text.page.toString();
    }

    private void decision() {
        String sure = decision.standing() == null ? "" : decision.standing().word();
        page.spread(decision.topic().name() + ": " + decision.text(), sure, Weight.BOLD);
        page.text(0, 0, decision.topic().about() + ".", Weight.PLAIN);
        if (!decision.why().isEmpty()) {
            page.text(0, 0, BriefText.capital(decision.why()) + ".", Weight.ALERT);
        }
        page.text(0, 0, brief.course().name() + ", " + BriefText.title(brief), Weight.FAINT);
        SheetNames.add(page, brief.sheets());
    }

    private void claims() {
        if (decision.value() == null) {
            unsettled();
            return;
        }
        page.heading("FOR");
        if (decision.taken().isEmpty()) {
            page.text(2, 2, "No rule spoke for it.", Weight.PLAIN);
        }
        for (Claim claim : decision.taken()) {
            claim(claim, "");
        }
        page.heading("AGAINST");
        if (decision.lost().isEmpty()) {
            page.text(2, 2, "Nothing spoke against it.", Weight.PLAIN);
        }
        for (Lost lost : decision.lost()) {
            claim(lost.claim(), Phrases.lost(lost));
        }
    }

    /** Without a value nothing is for it or against it: the limits that leave none, and what was set aside. */
    private void unsettled() {
        if (!decision.taken().isEmpty()) {
            page.heading("LIMITS");
            decision.taken().forEach(claim -> claim(claim, ""));
        }
        if (!decision.lost().isEmpty()) {
            page.heading("SET ASIDE");
            decision.lost().forEach(lost -> claim(lost.claim(), Phrases.lost(lost)));
        }
    }

    private void claim(Claim claim, String lost) {
        page.text(2, 4, Phrases.says(claim) + Phrases.computed(claim) + (lost.isEmpty() ? "" : ": " + lost), Weight.BOLD);
        page.text(4, 4, claim.author().because(), Weight.PLAIN);
        page.text(4, 6, claim.author().force().word() + "; " + Phrases.standing(claim.author()), Weight.PLAIN);
        for (TestedFact ground : claim.grounds()) {
            page.marked("    - ", Phrases.ground(ground), Weight.PLAIN);
        }
        page.text(4, 6, claim.author().rule() + ", " + claim.author().where(), Weight.FAINT);
    }

    private void untold() {
        boolean titled = false;
        for (UndeterminedRule rule : brief.couldNotTell()) {
            if (rule.topics().contains(decision.topic().name())) {
                if (!titled) {
                    page.heading("COULD NOT TELL");
                    titled = true;
                }
                page.text(2, 4, rule.author().rule() + ", for want of " + list(rule.wanting()) + ", " + rule.author().where(),
                        Weight.PLAIN);
            }
        }
    }

    private static String list(List<String> names) {
        return String.join(", ", names);
    }
}
