package courseworthy.report;

import courseworthy.checklist.Checklist;
import courseworthy.checklist.Checklist.Item;
import courseworthy.checklist.Checklist.Section;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Lost;
import courseworthy.decision.Decision.Standing;
import courseworthy.decision.Decision.Status;
import courseworthy.demand.Demands.Assumed;
import courseworthy.report.Page.Weight;
import courseworthy.task.Brief;
import courseworthy.task.Brief.LeaveAlone;
import courseworthy.task.LeadingReason;
import courseworthy.task.MissingInputs;
import java.util.ArrayList;
import java.util.List;

/** Writes a brief for the terminal: the course, the call, then the reasons and everything to mind, and the checklist last. */
public final class BriefText {

    private static final int NAME = 24;
    private static final int HOW_SURE = 14;

    private final Brief brief;
    private final Page page;

    private BriefText(Brief brief, boolean colours) {
        this.brief = brief;
        this.page = new Page(colours);
    }

    /** The whole brief. */
    public static String of(Brief brief, boolean colours) {
        BriefText text = new BriefText(brief, colours);
        text.course();
        text.groundWanted();
        text.inShort();
        text.call();
        new PlanText(text.page, brief).all();
        WorthText.terse(text.page, brief);
        if (brief.build() != null) {
            BuildText.add(text.page, brief.build());
        }
        text.leaveAlone();
        text.why();
        text.against();
        text.assumed();
        text.unknown();
        text.cautions();
        checklist(text.page, brief.checklist());
        return text.page.toString();
    }

    private void course() {
        page.spread(brief.course().name(), title(brief), Weight.BOLD);
        String whose = Phrases.whose(brief);
        if (!whose.isEmpty()) {
            page.text(0, 0, whose, Weight.PLAIN);
        }
        SheetNames.add(page, brief.sheets());
        for (String line : Phrases.course(brief)) {
            if (!line.isEmpty()) {
                page.text(0, 2, line, Weight.PLAIN);
            }
        }
        if (brief.course().line() != null) {
            page.drawn(ElevationSketch.row(ElevationSketch.columns(brief.course().line(), Columns.PAGE)), Weight.FAINT);
        }
    }

    private void groundWanted() {
        String wanted = Phrases.missingGround(brief);
        if (!wanted.isEmpty()) {
            page.gap();
            page.text(0, 0, wanted, Weight.ALERT);
        }
    }

    static String title(Brief brief) {
        return "set up for " + (brief.role().equals("race") ? "the race" : "training")
                + (brief.date() == null ? "" : ", " + Phrases.date(brief.date()));
    }

    private void inShort() {
        page.heading("IN SHORT");
        for (SetUpSummary.Entry entry : SetUpSummary.of(brief)) {
            page.row(entry.about(), 10, entry.values(), Weight.BOLD, "", 0, Weight.PLAIN);
        }
    }

    private void call() {
        page.gap();
        page.spread("THE CALL", "how sure", Weight.BOLD);
        for (TopicGroup group : TopicGroup.of(brief.decisions())) {
            group(group);
        }
        List<String> without = Phrases.without(brief.decisions());
        if (!without.isEmpty()) {
            page.gap();
            page.text(0, 2, "Does not apply to this bike: " + String.join(", ", without) + ".", Weight.FAINT);
        }
        page.gap();
        page.text(0, 2, HOW_SURE_MEANS, Weight.FAINT);
        if (!brief.close().isEmpty()) {
            page.heading("CLOSE");
            page.text(2, 2, Phrases.CLOSE_MEANS, Weight.FAINT);
            Phrases.close(brief.close()).forEach(line -> page.text(2, 4, line, Weight.PLAIN));
        }
    }

    /** What the words of the last column mean. */
    static final String HOW_SURE_MEANS = "settled: the advice agrees. leaning: two thirds of it does. split: less than that."
            + " bounded: within limits, but nothing preferred. assumed: no advice, a common value.";

    private void group(TopicGroup group) {
        boolean titled = false;
        for (Decision decision : group.decisions()) {
            if (decision.status() != Status.NOT_APPLICABLE) {
                if (!titled) {
                    page.text(0, 0, group.title(), Weight.FAINT);
                    titled = true;
                }
                decision(decision);
            }
        }
    }

    private void decision(Decision decision) {
        String name = decision.topic().name();
        if (decision.status() == Status.NONE_POSSIBLE) {
            page.row(name, NAME, "none possible: " + decision.why(), Weight.ALERT, "", 0, Weight.PLAIN);
            return;
        }
        Weight sure = decision.standing() == Standing.SPLIT ? Weight.ALERT : Weight.FAINT;
        page.row(name, NAME, decision.text(), Weight.BOLD, Phrases.sure(brief, decision), HOW_SURE, sure);
    }

    private void leaveAlone() {
        if (brief.leaveAlone().isEmpty()) {
            return;
        }
        page.heading("LEAVE ALONE");
        for (LeaveAlone thing : brief.leaveAlone()) {
            page.marked("  - ", thing.what() + (thing.because().isEmpty() ? "" : ". " + thing.because()), Weight.PLAIN);
        }
    }

    private void why() {
        page.heading("WHY");
        page.text(2, 2, Phrases.ELSE_PRACTICE, Weight.FAINT);
        if (brief.reasons().isEmpty()) {
            page.text(2, 2, "No rule spoke; every value is a common one.", Weight.PLAIN);
        }
        for (LeadingReason reason : brief.reasons()) {
            page.led(2, 4, Phrases.values(reason.decisions()) + ":", Phrases.because(reason.claim().author()));
        }
    }

    private void against() {
        List<String> lines = new ArrayList<>();
        for (Decision decision : brief.decisions()) {
            for (Lost lost : Phrases.against(decision)) {
                lines.add(decision.topic().name() + ": " + Phrases.says(lost.claim()) + ", " + Phrases.lost(lost) + ". "
                        + Phrases.because(lost.claim().author()));
            }
        }
        if (!lines.isEmpty()) {
            page.heading("WHAT SPOKE AGAINST");
            page.texts("  - ", lines);
        }
    }

    private void assumed() {
        List<Assumed> assumed = brief.demands().assumed();
        if (assumed.isEmpty() && brief.course().assumed().isEmpty()) {
            return;
        }
        page.heading("ASSUMED, SINCE NOT WRITTEN");
        for (String ground : brief.course().assumed()) {
            page.text(2, 4, ground, Weight.PLAIN);
        }
        for (Assumed each : assumed) {
            page.row(each.what(), 46, each.value(), Weight.PLAIN, "", 0, Weight.PLAIN);
        }
    }

    private void unknown() {
        if (!brief.wanted().isEmpty()) {
            page.heading("WHAT COULD NOT BE TOLD, FOR WANT OF");
            for (MissingInputs wanted : brief.wanted()) {
                page.row(wanted.place().word(), 10, Phrases.wanted(wanted), Weight.PLAIN, "", 0, Weight.PLAIN);
            }
        }
        List<String> mended = Phrases.mended(brief.course());
        if (!mended.isEmpty()) {
            page.heading("TO KNOW OF THE COURSE");
            page.texts("  - ", mended);
        }
    }

    private void cautions() {
        page.heading("CAUTIONS");
        page.texts("  ! ", Phrases.cautions(brief));
    }

    /** The checklist alone. */
    public static String checklist(Brief brief, boolean colours) {
        Page page = new Page(colours);
        page.spread(brief.course().name(), title(brief), Weight.BOLD);
        SheetNames.add(page, brief.sheets());
        checklist(page, brief.checklist());
        return page.toString();
    }

    private static void checklist(Page page, Checklist checklist) {
        page.gap();
        page.spread("CHECKLIST (! safety hangs on it)", Phrases.date(checklist.date()), Weight.BOLD);
        if (checklist.sections().isEmpty()) {
            page.text(2, 2, "Nothing to do was said.", Weight.PLAIN);
        }
        for (Section section : checklist.sections()) {
            page.heading(capital(section.when()));
            for (Item item : section.items()) {
                item(page, item);
            }
            page.text(2, 2, section.done(), Weight.FAINT);
        }
    }

    private static void item(Page page, Item item) {
        page.marked(item.critical() ? "  [ ] ! " : "  [ ]   ", item.what(), Weight.BOLD);
        page.text(8, 8, "Find: " + item.find(), Weight.PLAIN);
        page.text(8, 8, "Why: " + item.because(), Weight.FAINT);
    }

    static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    }
}
