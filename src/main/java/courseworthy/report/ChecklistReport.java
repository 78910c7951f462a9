package courseworthy.report;

import courseworthy.checklist.Checklist;
import courseworthy.task.Brief;
import java.util.ArrayList;
import java.util.List;

/** What to do before, at and after the ride, with a box to tick for each thing. */
public final class ChecklistReport {

    static final String ID = "checklist";

    private ChecklistReport() {
    }

    /** The checklist by itself. */
    public static Report of(Brief brief) {
        return ReportHead.of(brief, ReportHead.purpose(brief)).section(section(brief.checklist())).section(PlanReport.pits(brief)).build();
    }

    /** The checklist by itself, as a page. */
    public static Report pageOf(Brief brief) {
        return ReportHead.of(brief, ReportHead.purpose(brief)).section(onPage(brief.checklist())).section(PlanReport.pits(brief)).build();
    }

    /** The checklist by itself, to be printed: what to do and what to find, without why. */
    public static PrintedReport printed(Brief brief) {
        List<Section> sections = printed(brief.checklist());
        Section pits = PlanReport.pits(brief).build();
        if (!pits.isEmpty()) {
            sections.add(pits);
        }
        Section rests = Section.builder("basis", "What this rests on").paragraph(ReportHead.notes(brief)).paragraphs(SheetNames.paragraphs(brief.sheets()))
                .paragraphs(GroundPhrases.paragraphs(brief.course())).build();
        if (!rests.isEmpty()) {
            sections.add(rests);
        }
        RichText whose = RichText.ofQuoted(Phrases.whose(brief));
        return new PrintedReport(RichText.ofQuoted(brief.course().name()), RichText.join(", ", List.of(RichText.of("Checklist (! = safety-critical), " + ReportHead.purpose(brief)), whose)),
                List.of(sections), ReportHead.foot(brief), null);
    }

    /** What to do and what to find, without why. */
    static List<Section> printed(Checklist checklist) {
        List<Section> out = new ArrayList<>();
        for (int i = 0; i < checklist.sections().size(); i++) {
            Checklist.ChecklistSection each = checklist.sections().get(i);
            List<CheckboxList.Entry> boxes = new ArrayList<>();
            for (Checklist.ChecklistItem item : each.items()) {
                boxes.add(new CheckboxList.Entry(item.critical(), RichText.ofQuoted(item.what()), RichText.ofQuoted(item.find()), RichText.EMPTY));
            }
            out.add(Section.builder(ID + "-" + (i + 1), RichText.ofQuoted(Phrases.capital(each.when()))).checkboxes(boxes).remark(RichText.ofQuoted(each.done())).build());
        }
        if (out.isEmpty()) {
            out.add(Section.builder(ID, "Checklist").paragraph("There is nothing to do.").build());
        }
        return out;
    }

    /** The checklist as a part of a brief. */
    static Section section(Checklist checklist) {
        return section("Checklist (! = safety-critical)", checklist);
    }

    /** The checklist on a page, where each thing that safety depends on says so. */
    static Section onPage(Checklist checklist) {
        return section("Checklist", checklist);
    }

    private static Section section(String heading, Checklist checklist) {
        Section.Builder out = Section.builder(ID, heading).aside(Phrases.date(checklist.date()))
                .paragraph(checklist.sections().isEmpty() ? "There is nothing to do." : "");
        for (int i = 0; i < checklist.sections().size(); i++) {
            Checklist.ChecklistSection each = checklist.sections().get(i);
            out.section(Section.builder(ID + "-" + (i + 1), RichText.ofQuoted(Phrases.capital(each.when()))).checkboxes(entries(each))
                    .remark(RichText.ofQuoted(each.done())));
        }
        return out.build();
    }

    private static List<CheckboxList.Entry> entries(Checklist.ChecklistSection section) {
        List<CheckboxList.Entry> out = new ArrayList<>();
        for (Checklist.ChecklistItem item : section.items()) {
            out.add(new CheckboxList.Entry(item.critical(), RichText.ofQuoted(item.what()), RichText.ofQuoted(item.find()), RichText.ofQuoted(item.because())));
        }
        return out;
    }
}
