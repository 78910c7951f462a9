package courseworthy.brief;

import courseworthy.brief.Brief.LeaveAlone;
import courseworthy.call.Flip;
import courseworthy.checklist.Checklist;
import courseworthy.checklist.Checklist.Item;
import courseworthy.checklist.Checklist.Section;
import courseworthy.claim.Claim;
import courseworthy.claim.Ground;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Lost;
import courseworthy.decision.Decision.Status;
import courseworthy.demand.Demands.Assumed;
import java.util.List;

/** Writes a brief as a Markdown page to print. */
public final class BriefMarkdown {

    private final Brief brief;
    private final Marked page = new Marked();

    private BriefMarkdown(Brief brief) {
        this.brief = brief;
    }

    /** The whole brief. */
    public static String of(Brief brief) {
        BriefMarkdown markdown = new BriefMarkdown(brief);
        markdown.course();
        markdown.groundWanted();
        markdown.inShort();
        markdown.call();
        new PlanMarkdown(markdown.page, brief).all();
        WorthMarkdown.terse(markdown.page, brief);
        BuildMarkdown.add(markdown.page, brief.build());
        markdown.leaveAlone();
        markdown.why();
        markdown.against();
        markdown.assumed();
        markdown.unknown();
        markdown.cautions();
        markdown.checklist(2);
        return markdown.page.toString();
    }

    /** One topic in full, with what would change it, smallest first. */
    public static String of(Brief brief, String topic, List<Flip> flips) {
        BriefMarkdown markdown = new BriefMarkdown(brief);
        markdown.topic(brief.on(topic));
        FlipText.add(markdown.page, flips);
        return markdown.page.toString();
    }

    /** The checklist alone. */
    public static String checklist(Brief brief) {
        BriefMarkdown markdown = new BriefMarkdown(brief);
        markdown.title();
        markdown.checklist(2);
        return markdown.page.toString();
    }

    private void title() {
        page.heading(1, brief.course().name() + ", " + BriefText.title(brief));
        String whose = Words.whose(brief);
        if (!whose.isEmpty()) {
            page.paragraph(whose);
        }
        SheetWords.add(page, brief.sheets());
    }

    private void course() {
        title();
        for (String line : Words.course(brief)) {
            if (!line.isEmpty()) {
                page.bullet(line);
            }
        }
    }

    private void groundWanted() {
        String wanted = Words.missingGround(brief);
        if (!wanted.isEmpty()) {
            page.gap();
            page.paragraph(wanted);
        }
    }

    private void inShort() {
        page.heading(2, "In short");
        for (Short.Entry entry : Short.of(brief)) {
            page.bullet(entry.about() + ":", entry.values());
        }
    }

    private void call() {
        page.heading(2, "The call");
        page.tableHead("Topic", "Value", "How sure");
        for (Group group : Group.of(brief.decisions())) {
            for (Decision decision : group.decisions()) {
                row(decision);
            }
        }
        page.gap();
        List<String> without = Words.without(brief.decisions());
        if (!without.isEmpty()) {
            page.paragraph("Does not apply to this bike: " + String.join(", ", without) + ".");
        }
        page.emphasised(BriefText.HOW_SURE_MEANS);
        if (!brief.close().isEmpty()) {
            page.heading(2, "Close");
            page.emphasised(Words.CLOSE_MEANS);
            Words.close(brief.close()).forEach(page::bullet);
        }
    }

    private void row(Decision decision) {
        if (decision.status() == Status.NONE_POSSIBLE) {
            page.tableRow(decision.topic().name(), "none possible: " + decision.why(), "");
        } else if (decision.status() == Status.SETTLED) {
            page.tableRow(decision.topic().name(), decision.text(), Words.sure(brief, decision));
        }
    }

    private void leaveAlone() {
        if (!brief.leaveAlone().isEmpty()) {
            page.heading(2, "Leave alone");
            for (LeaveAlone thing : brief.leaveAlone()) {
                page.bullet(thing.what() + ".", thing.because());
            }
        }
    }

    private void why() {
        page.heading(2, "Why");
        page.emphasised(Words.ELSE_PRACTICE);
        for (Reason reason : brief.reasons()) {
            page.bullet(Words.values(reason.decisions()) + ":", Words.because(reason.claim().author()));
        }
    }

    private void against() {
        boolean titled = false;
        for (Decision decision : brief.decisions()) {
            for (Lost lost : Words.against(decision)) {
                if (!titled) {
                    page.heading(2, "What spoke against");
                    titled = true;
                }
                page.bullet(decision.topic().name() + ":", Words.says(lost.claim()) + ", " + Words.lost(lost) + ". "
                        + Words.because(lost.claim().author()));
            }
        }
    }

    private void assumed() {
        if (brief.demands().assumed().isEmpty() && brief.course().assumed().isEmpty()) {
            return;
        }
        page.heading(2, "Assumed, since not written");
        for (String ground : brief.course().assumed()) {
            page.bullet(ground);
        }
        for (Assumed each : brief.demands().assumed()) {
            page.bullet(each.what() + ": " + each.value());
        }
    }

    private void unknown() {
        if (!brief.wanted().isEmpty()) {
            page.heading(2, "What could not be told, for want of");
            for (Wanted wanted : brief.wanted()) {
                page.bullet(wanted.place().word() + ":", Words.wanted(wanted));
            }
        }
        List<String> mended = Words.mended(brief.course());
        if (!mended.isEmpty()) {
            page.heading(2, "To know of the course");
            for (String line : mended) {
                page.bullet(line);
            }
        }
    }

    private void cautions() {
        page.heading(2, "Cautions");
        for (String caution : brief.cautions()) {
            page.bullet(caution);
        }
    }

    private void checklist(int level) {
        Checklist checklist = brief.checklist();
        page.heading(level, "Checklist, " + Words.date(checklist.date()));
        page.paragraph("Safety hangs on what is marked (!).");
        for (Section section : checklist.sections()) {
            page.heading(level + 1, BriefText.capital(section.when()));
            for (Item item : section.items()) {
                page.box((item.critical() ? "(!) " : "") + item.what(), List.of("Find: " + item.find(), "Why: " + item.because()));
            }
            page.gap();
            page.emphasised(section.done());
        }
    }

    private void topic(Decision decision) {
        page.heading(1, decision.topic().name() + ": " + decision.text());
        page.paragraph(decision.topic().about() + ".");
        SheetWords.add(page, brief.sheets());
        if (decision.standing() != null) {
            page.paragraph("How sure: " + decision.standing().word());
        }
        if (!decision.why().isEmpty()) {
            page.paragraph(decision.why());
        }
        new PlanMarkdown(page, brief).topic(decision.topic().name());
        WorthMarkdown.full(page, brief, decision.topic());
        page.heading(2, decision.value() == null ? "Limits" : "For");
        for (Claim claim : decision.taken()) {
            claim(claim, "");
        }
        page.heading(2, decision.value() == null ? "Set aside" : "Against");
        for (Lost lost : decision.lost()) {
            claim(lost.claim(), Words.lost(lost));
        }
    }

    private void claim(Claim claim, String lost) {
        page.heading(3, Words.says(claim) + Words.computed(claim) + (lost.isEmpty() ? "" : ": " + lost));
        page.paragraph(claim.author().because());
        page.bullet(claim.author().force().word() + "; " + Words.standing(claim.author()));
        for (Ground ground : claim.grounds()) {
            page.bullet(Words.ground(ground));
        }
        page.bullet(claim.author().rule() + ", " + claim.author().where());
    }
}
