package courseworthy.checklist;

import courseworthy.build.Build;
import courseworthy.call.Call;
import courseworthy.checklist.Checklist.ChecklistItem;
import courseworthy.checklist.Checklist.ChecklistSection;
import courseworthy.claim.Deadline;
import courseworthy.claim.Task;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.event.Event;
import courseworthy.worth.PitPlan;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Makes the checklist of one call: the tasks of its rules with their values filled in, the demands of the event, and the things that
 * wait in the pits. A task is left out only where it needs something that is not on this bike; a safety-critical one never is.
 */
public final class ChecklistMaker {

    private static final String RACE = "race";
    private static final String TRAINING = "training";

    private final Call call;
    private final Event event;
    private final Build build;
    private final PitPlan pits;
    private final String role;

    private ChecklistMaker(Call call, Event event, Build build, PitPlan pits) {
        this.call = call;
        this.event = event;
        this.build = build;
        this.pits = pits;
        this.role = role(call);
    }

    public static Checklist of(Call call, Event event) {
        return of(call, event, null, PitPlan.NONE);
    }

    /** @param build whose swaps go on the list; null for none */
    public static Checklist of(Call call, Event event, Build build) {
        return of(call, event, build, PitPlan.NONE);
    }

    /**
     * The checklist with all that belongs to the day.
     *
     * @param build whose swaps go on the list; null for none
     * @param pits  what waits in them goes on the list
     */
    public static Checklist of(Call call, Event event, Build build, PitPlan pits) {
        return new ChecklistMaker(call, event, build, pits).checklist();
    }

    /** What the bike is set up for; {@code training} where the demands do not say. */
    static String role(Call call) {
        MeasureValue role = call.demands().get(Measure.ROLE);
        return role == null ? TRAINING : Measure.ROLE.scale().text(role.mid());
    }

    /** The tasks of a call that are on its list, with the names of topics and measures where their values would stand. */
    public static List<Task> listed(Call call) {
        PlaceholderFiller filling = new PlaceholderFiller(call, Map.of());
        List<Task> out = new ArrayList<>();
        for (Task task : call.tasks()) {
            if (entry(task, filling) != null) {
                out.add(new Task(task.origin(), PlaceholderFiller.named(task.what()), PlaceholderFiller.named(task.find()), task.due(), task.needs(), task.critical(),
                        task.part(), task.after(), task.grounds()));
            }
        }
        return out;
    }

    private Checklist checklist() {
        List<PendingItem> entries = new ItemScheduler(event.start()).timed(distinct(entries()));
        Map<Deadline, List<PendingItem>> byDue = new EnumMap<>(Deadline.class);
        for (PendingItem entry : entries) {
            byDue.computeIfAbsent(entry.due(), due -> new ArrayList<>()).add(entry);
        }
        List<ChecklistSection> sections = new ArrayList<>();
        byDue.forEach((due, list) -> sections.addAll(sections(due, ItemOrder.of(list))));
        return new Checklist(role, event.date(), sections);
    }

    private List<PendingItem> entries() {
        List<PendingItem> out = new ArrayList<>();
        PlaceholderFiller filling = new PlaceholderFiller(call, build == null ? Map.of() : build.set());
        for (Task task : call.tasks()) {
            PendingItem entry = entry(task, filling);
            if (entry != null) {
                out.add(entry);
            }
        }
        out.addAll(asked());
        out.addAll(PitItems.of(pits));
        if (build != null) {
            out.addAll(SwapItems.of(build));
        }
        return out;
    }

    /** The task with its values; null where it asks for something that is not there and safety does not hang on it. */
    private static PendingItem entry(Task task, PlaceholderFiller filling) {
        boolean applies = filling.applies(task.what());
        String find = filling.fill(task.find());
        if (!task.critical() && (!applies || find.isEmpty() && !task.find().isEmpty())) {
            return null;
        }
        String what = applies ? filling.fill(task.what()) : PlaceholderFiller.named(task.what());
        String found = find.isEmpty() ? "In order" : find;
        ChecklistItem item = new ChecklistItem(what, found, task.origin().because(), task.critical(), task.part(), task.origin().rule(),
                task.origin().where());
        return new PendingItem(item, task.origin().rule(), task.due(), task.needs(), task.after());
    }

    /** What the event's own rules and its support points ask for. */
    private List<PendingItem> asked() {
        List<PendingItem> out = new ArrayList<>();
        String edition = event.rules().edition();
        String because = "The event requires it" + (edition.isEmpty() ? "; check its newest rules." : " (rules of " + edition + ").");
        for (String kit : event.rules().kit()) {
            out.add(asked(out.size(), "Pack what the event requires: " + kit, "In the bag, working", because, "event kit"));
        }
        for (Event.Support support : event.support()) {
            if (support.bag()) {
                String place = "km " + Math.round(support.at() / 1000);
                out.add(asked(out.size(), "Pack the bag that waits at " + place, "Name and number on it; where and when to hand it in is known",
                        "A bag of your own can wait there.", "event kit"));
            }
        }
        return out;
    }

    private static PendingItem asked(int number, String what, String find, String because, String part) {
        ChecklistItem item = new ChecklistItem(what, find, because, false, part, "", null);
        String id = "event/" + (number < 10 ? "0" : "") + number;
        return new PendingItem(item, id, Deadline.NIGHT_BEFORE, 0, List.of());
    }

    /** Two rules may ask for the very same thing: it is done once, critical where either says so. */
    private static List<PendingItem> distinct(List<PendingItem> entries) {
        Map<String, PendingItem> out = new LinkedHashMap<>();
        for (PendingItem entry : entries) {
            String key = entry.due() + "\n" + entry.item().what() + "\n" + entry.item().find();
            out.merge(key, entry, (first, second) -> second.item().critical() && !first.item().critical() ? second : first);
        }
        return new ArrayList<>(out.values());
    }

    /** One section, or several numbered ones where it would be too long. */
    private List<ChecklistSection> sections(Deadline due, List<PendingItem> entries) {
        List<List<PendingItem>> pieces = SectionSplitter.of(entries);
        List<ChecklistSection> out = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            String when = title(due) + (pieces.size() == 1 ? "" : ", " + (i + 1) + " of " + pieces.size());
            List<ChecklistItem> items = new ArrayList<>();
            for (PendingItem entry : pieces.get(i)) {
                items.add(entry.item().needing(entry.needs()));
            }
            out.add(new ChecklistSection(due, when, items, "All done? Say: \"" + when + ", complete.\""));
        }
        return Collections.unmodifiableList(out);
    }

    private String title(Deadline due) {
        if (role.equals(RACE)) {
            return due.words();
        }
        return switch (due) {
            case WEEK_BEFORE -> "week before the ride";
            case TWO_DAYS_BEFORE -> "two days before the ride";
            case NIGHT_BEFORE -> "night before the ride";
            case RACE_MORNING -> "morning of the ride";
            case AT_THE_START -> "before setting off";
            case AFTER_THE_RACE -> "after the ride";
        };
    }
}
