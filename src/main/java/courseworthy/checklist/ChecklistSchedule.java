package courseworthy.checklist;

import courseworthy.checklist.Checklist.ChecklistItem;
import courseworthy.checklist.Checklist.ChecklistSection;
import courseworthy.claim.Deadline;
import courseworthy.event.Event;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/**
 * When the sections of a checklist are worked through, and the ride between them, by the clock of the place. Evening work ends at nine,
 * that of the morning an hour before the start, as {@link ItemScheduler} counts on, so that what needs hours has them.
 *
 * @param zone   of all times; null where it is not known
 * @param start  of the ride
 * @param finish at the slow estimate
 * @param slots  earliest first, one for each section
 */
public record ChecklistSchedule(ZoneId zone, LocalDateTime start, LocalDateTime finish, List<ScheduledSection> slots) {

    /** The last evening of the week before: the first that leaves the 120 h counted on, whenever the start is. */
    private static final int LAST_EVENING_OF_THE_WEEK = 6;
    static final int TWO_EVENINGS = 2;
    private static final double MINUTE = 60;
    /** Beginnings are rounded down to this, min: nobody begins at 19:37. */
    private static final int STEP = 5;
    /** A look or a touch at the line takes a minute (common practice, no source). */
    private static final double GLANCE_MINUTES = 1;

    public ChecklistSchedule {
        slots = List.copyOf(slots);
    }

    /**
     * When one section is worked through.
     *
     * @param number place among the sections that are due together, from 1
     */
    public record ScheduledSection(ChecklistSection section, int number, LocalDateTime from, LocalDateTime to) {
    }

    /**
     * The schedule of a ride whose date and start are known.
     *
     * @param longest the slow estimate of the time, s
     */
    public static ChecklistSchedule of(Checklist checklist, Event event, double longest) {
        LocalDateTime start = event.date().atTime(event.start());
        LocalDateTime finish = start.plusMinutes((long) Math.ceil(longest / MINUTE));
        List<ScheduledSection> slots = new ArrayList<>();
        for (Deadline due : Deadline.values()) {
            List<ChecklistSection> sections = checklist.sections().stream().filter(each -> each.due() == due).toList();
            slots.addAll(switch (due) {
                case WEEK_BEFORE -> onEvenings(sections, start);
                case TWO_DAYS_BEFORE -> upTo(evening(start, TWO_EVENINGS), sections);
                case NIGHT_BEFORE -> upTo(evening(start, 1), sections);
                case RACE_MORNING -> upTo(start.minusHours(1), sections);
                case AT_THE_START -> upTo(start, sections);
                case AFTER_THE_RACE -> after(finish, sections);
            });
        }
        return new ChecklistSchedule(event.zone(), start, finish, slots);
    }

    static LocalDateTime evening(LocalDateTime start, int daysBefore) {
        return start.toLocalDate().minusDays(daysBefore).atStartOfDay().plusSeconds(ItemScheduler.EVENING_END);
    }

    /** One section an evening, the last of them in time. */
    static List<ScheduledSection> onEvenings(List<ChecklistSection> sections, LocalDateTime start) {
        List<ScheduledSection> out = new ArrayList<>();
        for (int i = 0; i < sections.size(); i++) {
            LocalDateTime to = evening(start, LAST_EVENING_OF_THE_WEEK + sections.size() - 1 - i);
            out.add(new ScheduledSection(sections.get(i), i + 1, begun(to, sections.get(i)), to));
        }
        return out;
    }

    /** One after another, the last of them done at a time. */
    static List<ScheduledSection> upTo(LocalDateTime end, List<ChecklistSection> sections) {
        List<ScheduledSection> out = new ArrayList<>();
        LocalDateTime to = end;
        for (int i = sections.size() - 1; i >= 0; i--) {
            LocalDateTime from = begun(to, sections.get(i));
            out.add(0, new ScheduledSection(sections.get(i), i + 1, from, to));
            to = from;
        }
        return out;
    }

    static List<ScheduledSection> after(LocalDateTime begin, List<ChecklistSection> sections) {
        List<ScheduledSection> out = new ArrayList<>();
        LocalDateTime from = begin;
        for (int i = 0; i < sections.size(); i++) {
            LocalDateTime to = from.plusMinutes(minutes(sections.get(i)));
            out.add(new ScheduledSection(sections.get(i), i + 1, from, to));
            from = to;
        }
        return out;
    }

    private static LocalDateTime begun(LocalDateTime to, ChecklistSection section) {
        LocalDateTime from = to.minusMinutes(minutes(section));
        return from.minusMinutes(from.getMinute() % STEP);
    }

    private static long minutes(ChecklistSection section) {
        double out = 0;
        for (ChecklistItem item : section.items()) {
            out += section.due() == Deadline.AT_THE_START ? GLANCE_MINUTES : item.minutes();
        }
        return (long) Math.ceil(out);
    }
}
