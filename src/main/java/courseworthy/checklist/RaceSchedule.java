package courseworthy.checklist;

import courseworthy.checklist.Checklist.ChecklistSection;
import courseworthy.checklist.ChecklistSchedule.ScheduledSection;
import courseworthy.claim.Deadline;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * When the checklist of a race over several days is worked through: what is done once before the first stage, what is done again for each, and
 * what is left for the end. Hours are those of {@link ChecklistSchedule}.
 *
 * @param zone     of all times; null where it is not known
 * @param stages   in order
 * @param sections in the order of the checklist, those of each stage in its order
 */
public record RaceSchedule(ZoneId zone, List<StageTimes> stages, List<StageSection> sections) {

    public RaceSchedule {
        stages = List.copyOf(stages);
        sections = List.copyOf(sections);
    }

    /**
     * When a stage is ridden.
     *
     * @param number from 1
     * @param course its name
     * @param finish at the slow estimate; the start where no ride was estimated
     */
    public record StageTimes(int number, String course, LocalDateTime start, LocalDateTime finish) {
    }

    /**
     * A section with its time.
     *
     * @param stage for which it is done; null for what is done once for the race
     */
    public record StageSection(StageTimes stage, ScheduledSection scheduled) {
    }

    /** @param stages at least one */
    public static RaceSchedule of(Checklist checklist, List<StageTimes> stages, ZoneId zone) {
        List<StageSection> out = new ArrayList<>();
        LocalDateTime first = stages.get(0).start();
        for (Deadline due : Deadline.values()) {
            List<ChecklistSection> each = checklist.sections().stream().filter(section -> section.due() == due && !isLast(section)).toList();
            switch (due) {
                case WEEK_BEFORE -> once(out, ChecklistSchedule.onEvenings(each, first));
                case TWO_DAYS_BEFORE -> once(out, ChecklistSchedule.upTo(ChecklistSchedule.evening(first, ChecklistSchedule.TWO_EVENINGS), each));
                case NIGHT_BEFORE -> again(out, stages, stage -> ChecklistSchedule.upTo(ChecklistSchedule.evening(stage.start(), 1), each));
                case RACE_MORNING -> again(out, stages, stage -> ChecklistSchedule.upTo(stage.start().minusHours(1), each));
                case AT_THE_START -> again(out, stages, stage -> ChecklistSchedule.upTo(stage.start(), each));
                case AFTER_THE_RACE -> again(out, stages, stage -> ChecklistSchedule.after(stage.finish(), each));
            }
        }
        LocalDateTime end = out.stream().map(each -> each.scheduled().to()).max(LocalDateTime::compareTo).orElse(first);
        once(out, ChecklistSchedule.after(end, checklist.sections().stream().filter(RaceSchedule::isLast).toList()));
        return new RaceSchedule(zone, stages, out);
    }

    private static boolean isLast(ChecklistSection section) {
        return section.when().startsWith(RaceChecklistMaker.AT_THE_END);
    }

    private static void once(List<StageSection> to, List<ScheduledSection> sections) {
        sections.forEach(each -> to.add(new StageSection(null, each)));
    }

    private static void again(List<StageSection> to, List<StageTimes> stages, Function<StageTimes, List<ScheduledSection>> sections) {
        stages.forEach(stage -> sections.apply(stage).forEach(each -> to.add(new StageSection(stage, each))));
    }
}
