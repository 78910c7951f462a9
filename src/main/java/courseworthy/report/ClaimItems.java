package courseworthy.report;

import courseworthy.claim.Claim;
import courseworthy.claim.TestedFact;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.LosingClaim;
import courseworthy.report.ItemList.Item;
import courseworthy.report.Paragraph.Role;
import courseworthy.task.Brief;
import java.util.ArrayList;
import java.util.List;

/** Claims as items of a list, with the facts on which their rules rested. */
final class ClaimItems {

    private ClaimItems() {
    }

    /** {@code 57 mm}, and how firm it is, as the head of a report on one decision. */
    static Report.Builder head(Brief brief, Decision decision) {
        return Report.builder(RichText.of(decision.topic().name() + ": ").quoted(decision.phrase())).subtitle(decision.value() == null ? "" : "firmness: " + Phrases.firmness(brief, decision));
    }

    /** The rule and its facts: {@code prefer 45 mm: shipped/x, should}. */
    static Item terse(Claim claim, RuleLinks links) {
        return Item.of(rule(claim, links), facts(claim));
    }

    /** A claim that lost, with what became of it. */
    static Item terse(LosingClaim lost, RuleLinks links) {
        return Item.of(rule(lost.claim(), links).text("; " + Phrases.lost(lost)), facts(lost.claim()));
    }

    /** The rule, its facts and its reason. */
    static Item withReason(Claim claim, RuleLinks links) {
        List<Block> below = new ArrayList<>(terse(claim, links).below());
        below.add(new Paragraph(RichText.ofQuoted(claim.origin().because()), Role.BODY));
        return new Item(rule(claim, links), below);
    }

    /** Everything that is known of a claim: its reason, how that is known, its facts, and where the rule is written. */
    static Item full(Claim claim, RuleLinks links) {
        return full(claim, RichText.EMPTY, links);
    }

    static Item full(LosingClaim lost, RuleLinks links) {
        return full(lost.claim(), RichText.of(": ").quoted(Phrases.lost(lost)), links);
    }

    private static Item full(Claim claim, RichText lost, RuleLinks links) {
        List<Block> below = new ArrayList<>();
        below.add(new Paragraph(RichText.ofQuoted(claim.origin().because()), Role.BODY));
        below.add(new Paragraph(RichText.of(claim.origin().force().word() + "; ").append(Phrases.origin(claim.origin())), Role.BODY));
        if (!claim.grounds().isEmpty()) {
            below.add(ItemList.bulleted(facts(claim)));
        }
        below.add(new Paragraph(links.of(claim.origin()).quoted(", " + claim.origin().where()), Role.REMARK));
        return new Item(RichText.EMPTY.append(says(claim).in(Style.STRONG)).append(lost), below);
    }

    private static RichText says(Claim claim) {
        return RichText.ofQuoted(Phrases.says(claim) + Phrases.computed(claim));
    }

    private static RichText rule(Claim claim, RuleLinks links) {
        return says(claim).text(": ").append(links.of(claim.origin())).text(", " + claim.origin().force().word());
    }

    private static List<RichText> facts(Claim claim) {
        List<RichText> out = new ArrayList<>();
        for (TestedFact fact : claim.grounds()) {
            out.add(RichText.ofQuoted(Phrases.fact(fact)));
        }
        return out;
    }
}
