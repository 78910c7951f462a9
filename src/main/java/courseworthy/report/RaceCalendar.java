package courseworthy.report;

import courseworthy.checklist.Checklist.ChecklistSection;
import courseworthy.checklist.RaceSchedule;
import courseworthy.checklist.RaceSchedule.StageSection;
import courseworthy.checklist.RaceSchedule.StageTimes;
import courseworthy.report.Calendar.Entry;
import courseworthy.task.StagesResult;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The checklist of a race over several days as entries of a calendar, one a section and stage, with the stages between them. */
public final class RaceCalendar {

    private final StagesResult race;
    private final RaceSchedule schedule;

    private RaceCalendar(StagesResult race, RaceSchedule schedule) {
        this.race = race;
        this.schedule = schedule;
    }

    /** @param changed when what it is made of was last changed; null where that is not known */
    public static Calendar of(StagesResult race, RaceSchedule schedule, Instant changed) {
        return new RaceCalendar(race, schedule).calendar(changed);
    }

    private Calendar calendar(Instant changed) {
        List<Entry> out = new ArrayList<>();
        schedule.stages().forEach(stage -> out.add(start(stage)));
        schedule.sections().forEach(section -> out.add(section(section)));
        out.sort(Comparator.comparing(Entry::from));
        return new Calendar(RichText.ofQuoted(name()).text(": set up for the race"), schedule.stages().get(0).start().toLocalDate(), schedule.zone(), changed, out);
    }

    private String name() {
        return race.event().name().isEmpty() ? StagesReport.UNNAMED : race.event().name();
    }

    private Entry start(StageTimes stage) {
        List<RichText> lines = new ArrayList<>();
        lines.add(RichText.ofQuoted(stage.course()).text(stage.finish().equals(stage.start()) ? "" : "; the entry ends at the slow estimate."));
        lines.addAll(whose());
        lines.addAll(SheetNames.paragraphs(race.sheets()));
        return new Entry(identity("start", stage, 0), RichText.of("Start of stage " + stage.number() + ": ").quoted(name()), lines, stage.start(), stage.finish(),
                ChecklistCalendar.AN_HOUR_BEFORE);
    }

    private Entry section(StageSection each) {
        ChecklistSection section = each.scheduled().section();
        List<RichText> lines = ChecklistCalendar.lines(section);
        lines.addAll(whose());
        RichText title = RichText.of(Phrases.capital(when(section, each.stage()))).text(": ").quoted(name());
        return new Entry(identity(section.when().replaceFirst(",.*", ""), each.stage(), each.scheduled().number()), title, lines, each.scheduled().from(), each.scheduled().to(),
                ChecklistCalendar.AT_ONCE);
    }

    /** A section's heading with the one stage that it is done for. */
    private static String when(ChecklistSection section, StageTimes stage) {
        return stage == null ? section.when()
                : section.when().replace("each stage", "stage " + stage.number()).replace("each start", "the start of stage " + stage.number());
    }

    private List<RichText> whose() {
        return race.rider().isEmpty() ? List.of() : List.of(RichText.of("For ").quoted(race.rider()));
    }

    /** Race, rider, first day, section and stage: what is made of the same again replaces what was there. */
    private List<String> identity(String section, StageTimes stage, int number) {
        return List.of(name(), race.rider(), schedule.stages().get(0).start().toLocalDate().toString(), section, stage == null ? "" : Integer.toString(stage.number()),
                Integer.toString(number));
    }
}
