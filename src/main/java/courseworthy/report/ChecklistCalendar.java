package courseworthy.report;

import courseworthy.checklist.Checklist.ChecklistItem;
import courseworthy.checklist.Checklist.ChecklistSection;
import courseworthy.checklist.ChecklistSchedule;
import courseworthy.checklist.ChecklistSchedule.ScheduledSection;
import courseworthy.demand.Measure;
import courseworthy.report.Calendar.Entry;
import courseworthy.task.Brief;
import courseworthy.task.CalendarResult;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A checklist as entries of a calendar, one a section, with the ride between them. */
public final class ChecklistCalendar {

    /** Work is announced when it begins: it has been in the calendar for days. */
    static final int AT_ONCE = 0;
    /** The ride is announced when the work of the morning is due to be done (common practice, no source), min before. */
    static final int AN_HOUR_BEFORE = 60;

    private final Brief brief;
    private final ChecklistSchedule schedule;
    private final Instant changed;

    private ChecklistCalendar(CalendarResult result, Instant changed) {
        this.changed = changed;
        brief = result.brief();
        schedule = result.schedule();
    }

    /** @param changed when what it is made of was last changed; null where that is not known */
    public static Calendar of(CalendarResult result, Instant changed) {
        return new ChecklistCalendar(result, changed).calendar();
    }

    private Calendar calendar() {
        List<Entry> out = new ArrayList<>();
        out.add(ride());
        for (ScheduledSection slot : schedule.slots()) {
            out.add(section(slot));
        }
        out.sort(Comparator.comparing(Entry::from));
        return new Calendar(RichText.ofQuoted(name()).text(": ").text(ReportHead.purpose(brief)), brief.date(), schedule.zone(), changed, out);
    }

    private String name() {
        return brief.event().isEmpty() ? brief.course().name() : brief.event();
    }

    private Entry ride() {
        List<RichText> lines = new ArrayList<>();
        lines.add(RichText.of("About " + Phrases.range(brief.demands(), Measure.HOURS) + "; the entry ends at the slow estimate."));
        PlanReport.pitLines(brief).forEach(line -> lines.add(RichText.of(line)));
        lines.addAll(whose());
        if (!brief.notes().isEmpty()) {
            lines.add(ReportHead.notes(brief));
        }
        lines.addAll(SheetNames.paragraphs(brief.sheets()));
        lines.addAll(GroundPhrases.attribution(brief.course().attribution()));
        return new Entry(identity("start", 0), RichText.of("Start: ").quoted(name()), lines, schedule.start(), schedule.finish(), AN_HOUR_BEFORE);
    }

    private Entry section(ScheduledSection slot) {
        List<RichText> lines = lines(slot.section());
        lines.addAll(whose());
        RichText title = RichText.ofQuoted(Phrases.capital(slot.section().when())).text(": ").quoted(name());
        return new Entry(identity(slot.section().due().words(), slot.number()), title, lines, slot.from(), slot.to(), AT_ONCE);
    }

    /** What is to be done, a line each, and what to say at the end. */
    static List<RichText> lines(ChecklistSection section) {
        List<RichText> out = new ArrayList<>();
        for (ChecklistItem item : section.items()) {
            out.add(RichText.of(item.critical() ? "! " : "- ").quoted(item.what()).text(". " + CheckboxList.DONE_WHEN + ": ").quoted(item.find()));
        }
        out.add(RichText.ofQuoted(section.done()));
        return out;
    }

    private List<RichText> whose() {
        return List.of(RichText.ofQuoted(Phrases.capital(ReportHead.purpose(brief))).text(brief.rider().isEmpty() ? "" : ", for ").quoted(brief.rider()));
    }

    /** Course, rider, day and section: what is made of the same again, for another forecast say, replaces what was there. */
    private List<String> identity(String section, int number) {
        return List.of(brief.course().name(), brief.rider(), brief.date().toString(), section, Integer.toString(number));
    }
}
