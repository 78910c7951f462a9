package courseworthy.report;

import courseworthy.checklist.Checklist;
import courseworthy.checklist.Checklist.Item;
import courseworthy.checklist.Checklist.Section;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Lost;
import courseworthy.decision.Decision.Status;
import courseworthy.demand.Demands.Assumed;
import courseworthy.task.Brief;
import courseworthy.task.Brief.LeaveAlone;
import courseworthy.task.LeadingReason;
import courseworthy.task.MissingInputs;
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

    /** The checklist alone. */
    public static String checklist(Brief brief) {
        BriefMarkdown markdown = new BriefMarkdown(brief);
        markdown.title();
        markdown.checklist(2);
        return markdown.page.toString();
    }

    private void title() {
        page.heading(1, brief.course().name() + ", " + BriefText.title(brief));
        String whose = Phrases.whose(brief);
        if (!whose.isEmpty()) {
            page.paragraph(whose);
        }
        SheetNames.add(page, brief.sheets());
    }

    private void course() {
        title();
        for (String line : Phrases.course(brief)) {
            if (!line.isEmpty()) {
                page.bullet(line);
            }
        }
    }

    private void groundWanted() {
        String wanted = Phrases.missingGround(brief);
        if (!wanted.isEmpty()) {
            page.gap();
            page.paragraph(wanted);
        }
    }

    private void inShort() {
        page.heading(2, "In short");
        for (SetUpSummary.Entry entry : SetUpSummary.of(brief)) {
            page.bullet(entry.about() + ":", entry.values());
        }
    }

    private void call() {
        page.heading(2, "The call");
        page.tableHead("Topic", "Value", "How sure");
        for (TopicGroup group : TopicGroup.of(brief.decisions())) {
            for (Decision decision : group.decisions()) {
                row(decision);
            }
        }
        page.gap();
        List<String> without = Phrases.without(brief.decisions());
        if (!without.isEmpty()) {
            page.paragraph("Does not apply to this bike: " + String.join(", ", without) + ".");
        }
        page.emphasised(BriefText.HOW_SURE_MEANS);
        if (!brief.close().isEmpty()) {
            page.heading(2, "Close");
            page.emphasised(Phrases.CLOSE_MEANS);
            Phrases.close(brief.close()).forEach(page::bullet);
        }
    }

    private void row(Decision decision) {
        if (decision.status() == Status.NONE_POSSIBLE) {
            page.tableRow(decision.topic().name(), "none possible: " + decision.why(), "");
        } else if (decision.status() == Status.SETTLED) {
            page.tableRow(decision.topic().name(), decision.text(), Phrases.sure(brief, decision));
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
        page.emphasised(Phrases.ELSE_PRACTICE);
        for (LeadingReason reason : brief.reasons()) {
            page.bullet(Phrases.values(reason.decisions()) + ":", Phrases.because(reason.claim().author()));
        }
    }

    private void against() {
        boolean titled = false;
        for (Decision decision : brief.decisions()) {
            for (Lost lost : Phrases.against(decision)) {
                if (!titled) {
                    page.heading(2, "What spoke against");
                    titled = true;
                }
                page.bullet(decision.topic().name() + ":", Phrases.says(lost.claim()) + ", " + Phrases.lost(lost) + ". "
                        + Phrases.because(lost.claim().author()));
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
            for (MissingInputs wanted : brief.wanted()) {
                page.bullet(wanted.place().word() + ":", Phrases.wanted(wanted));
            }
        }
        List<String> mended = Phrases.mended(brief.course());
        if (!mended.isEmpty()) {
            page.heading(2, "To know of the course");
            for (String line : mended) {
                page.bullet(line);
            }
        }
    }

    private void cautions() {
        page.heading(2, "Cautions");
        for (String caution : Phrases.cautions(brief)) {
            page.bullet(caution);
        }
    }

    private void checklist(int level) {
        Checklist checklist = brief.checklist();
        page.heading(level, "Checklist, " + Phrases.date(checklist.date()));
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
}
