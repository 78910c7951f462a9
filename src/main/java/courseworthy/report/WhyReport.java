package courseworthy.report;

import courseworthy.call.Explainer.Instead;
import courseworthy.call.RuleTrace;
import courseworthy.claim.Claim;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Status;
import courseworthy.report.ItemList.Item;
import courseworthy.report.Paragraph.Role;
import courseworthy.sheet.Truth;
import courseworthy.task.LeadingReason;
import courseworthy.task.WhyResult;
import courseworthy.topic.Topic;
import java.util.ArrayList;
import java.util.List;

/** Why a decision is as it is, why a rule applied or did not, or why another value was not chosen. */
public final class WhyReport {

    private static final String DEFAULT = "No rule applied, so the default is used.";

    private WhyReport() {
    }

    /** The whole chain, or what was asked of one value or one rule. */
    public static Report of(WhyResult result) {
        return of(result, RuleLinks.NONE);
    }

    /** @param links from reasons to the pages of rules */
    public static Report of(WhyResult result, RuleLinks links) {
        Report.Builder out = result.decision() == null ? Report.builder(RichText.of(WhyResult.CHECKLIST)) : ClaimItems.head(result.brief(), result.decision());
        out.paragraph(RichText.ofQuoted(result.brief().course().name()).text(", " + ReportHead.purpose(result.brief())))
                .paragraphs(SheetNames.paragraphs(result.brief().sheets()))
                .paragraphs(GroundPhrases.paragraphs(result.brief().course())).caution(GroundPhrases.rests(result.brief(), result.decision()));
        Topic topic = result.decision() == null ? null : result.decision().topic();
        if (result.rule() != null) {
            out.section(rule(result.rule(), topic, links));
        }
        if (result.instead() != null) {
            out.section(instead(result.instead(), result.decision(), links));
        }
        if (!result.narrow()) {
            out.section(FirmnessReport.section(result.brief(), result.decision())).section(chain(result, links)).section(inapplicable(result.silent(), topic, links)).section(FlipReport.section(result.flips()));
        }
        return out.build();
    }

    private static Section.Builder chain(WhyResult result, RuleLinks links) {
        List<Item> steps = new ArrayList<>();
        for (Decision decision : result.chain()) {
            Claim leading = LeadingReason.leading(decision);
            steps.add(step(decision, leading == null ? List.of() : List.of(ClaimItems.terse(leading, links)), leading == null));
        }
        List<Item> claims = new ArrayList<>();
        result.decision().taken().forEach(claim -> claims.add(ClaimItems.terse(claim, links)));
        result.decision().lost().forEach(lost -> claims.add(ClaimItems.terse(lost, links)));
        steps.add(step(result.decision(), claims, true));
        return Section.builder("chain", "From measures to decision").items(steps);
    }

    /** A decision with what led to it. */
    private static Item step(Decision decision, List<Item> claims, boolean withCause) {
        List<Block> below = new ArrayList<>();
        String none = decision.taken().isEmpty() ? DEFAULT : "";
        String cause = !withCause ? "" : decision.why().isEmpty() ? none : Phrases.sentence(decision.why());
        if (!cause.isEmpty()) {
            below.add(new Paragraph(RichText.ofQuoted(cause), Role.BODY));
        }
        if (!claims.isEmpty()) {
            below.add(new ItemList(false, claims));
        }
        return new Item(RichText.ofStrong(decision.topic().name() + ": " + decision.phrase()), below);
    }

    private static Section.Builder inapplicable(List<RuleTrace> rules, Topic topic, RuleLinks links) {
        return Section.builder("other-rules", "Rules that did not apply")
                .paragraph(rules.isEmpty() ? "Every rule on this topic applied." : "").items(inapplicableItems(rules, topic, links));
    }

    private static List<Item> inapplicableItems(List<RuleTrace> rules, Topic topic, RuleLinks links) {
        List<Item> out = new ArrayList<>();
        for (RuleTrace rule : rules) {
            List<Block> below = new ArrayList<>();
            if (rule.tests().isEmpty() || !rule.wanting().isEmpty()) {
                below.add(new Paragraph(RichText.of(outcome(rule)), Role.BODY));
            }
            List<Item> unmet = ConditionItems.unmet(rule);
            if (!unmet.isEmpty()) {
                below.add(new ItemList(false, unmet));
            }
            out.add(new Item(RichText.ofQuoted(says(rule, topic)).text(": ").append(links.of(rule.origin())), below));
        }
        return out;
    }

    private static Section.Builder rule(RuleTrace rule, Topic topic, RuleLinks links) {
        return Section.builder("rule", links.of(rule.origin()))
                .paragraph(RichText.ofQuoted(says(rule, topic)).text("; " + rule.origin().force().word()))
                .paragraph(RichText.ofQuoted(Phrases.because(rule.origin())))
                .paragraph(RichText.ofStrong(outcome(rule)))
                .items(ConditionItems.all(rule))
                .remark(RichText.ofQuoted(rule.origin().where().toString()));
    }

    /** Whether a rule applied, and in a word why not. */
    private static String outcome(RuleTrace rule) {
        if (rule.spoke()) {
            return "It applied.";
        }
        if (rule.says().isEmpty()) {
            return "It did not apply to the values decided here.";
        }
        if (!rule.wanting().isEmpty() && rule.truth() == Truth.TRUE) {
            return "It did not apply: its value comes from " + rule.wanting() + ", which is unknown.";
        }
        return rule.truth() == Truth.UNKNOWN ? "It did not apply: what it needs to know is missing."
                : "It did not apply: its conditions are not all met.";
    }

    /** {@code prefer 45 mm}; several things joined. */
    private static String says(RuleTrace rule, Topic topic) {
        return rule.says().isEmpty() ? "joins topics" : String.join(", ", rule.says().stream().map(each -> Phrases.says(topic, each)).toList());
    }

    private static Section.Builder instead(Instead instead, Decision decision, RuleLinks links) {
        List<Item> better = new ArrayList<>();
        (instead.excluding().isEmpty() ? instead.against() : instead.excluding()).forEach(claim -> better.add(ClaimItems.withReason(claim, links)));
        List<Item> favouring = new ArrayList<>();
        instead.favouring().forEach(lost -> favouring.add(ClaimItems.terse(lost, links)));
        return Section.builder("why-not", "Why not " + value(instead))
                .paragraph(RichText.ofQuoted(beaten(instead, decision))).items(better)
                .paragraph(instead.onStep() ? "" : betweenSteps(instead.topic()))
                .paragraph(favouring.isEmpty() ? "" : "Rules that recommended it:").items(favouring)
                .paragraph(instead.wouldSay().isEmpty() ? "" : "Rules that would recommend it, but did not apply:")
                .items(inapplicableItems(instead.wouldSay(), instead.topic(), links))
                .paragraph(RichText.ofStrong(leadingTo(instead))).remark(FlipReport.SEARCHED);
    }

    /** The value asked about, with its unit. */
    public static String value(Instead instead) {
        return instead.topic().phrase(instead.value());
    }

    /** Why a value was not chosen, in a sentence; the claims that it mentions follow it. */
    public static String beaten(Instead instead, Decision decision) {
        if (decision.status() != Status.SETTLED) {
            return "There is no value. " + Phrases.sentence(decision.why().isEmpty() ? decision.status().words() : decision.why());
        }
        if (!instead.excluding().isEmpty()) {
            return "Ruled out by:";
        }
        if (!instead.against().isEmpty()) {
            return "Preferred over it:";
        }
        boolean moved = decision.value() != decision.topic().standard();
        return "No rule recommends anything, so the default is used" + (moved ? ", moved inside the limits: " : ": ") + decision.phrase() + ".";
    }

    /** Where a topic is decided in steps and a value is none of them. */
    private static String betweenSteps(Topic topic) {
        return "Values are decided in steps of " + Phrases.steps(topic) + "; one between them comes only from a limit or a part that exists.";
    }

    private static String leadingTo(Instead instead) {
        if (!instead.bring().isEmpty()) {
            return "The smallest single change that would lead to it: " + FlipReport.change(instead.bring().get(0)) + ".";
        }
        String none = "No change to a single figure would lead to it.";
        return instead.toward() == null ? none
                : none + " The nearest is " + instead.toward().decision().phrase() + ", with " + FlipReport.change(instead.toward()) + ".";
    }
}
