package courseworthy.checklist;

import courseworthy.checklist.Checklist.ChecklistItem;
import courseworthy.checklist.Checklist.ChecklistSection;
import courseworthy.claim.Deadline;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Makes one checklist for a race over several days of the checklists of its days: what is done once before it, what is done again for each stage,
 * with what to find on which, and what is left for the end.
 */
public final class RaceChecklistMaker {

    private static final Map<Deadline, String> TITLES = new EnumMap<>(Map.of(Deadline.WEEK_BEFORE, "week before the race", Deadline.TWO_DAYS_BEFORE, "two days before the race",
            Deadline.NIGHT_BEFORE, "evening before each stage", Deadline.RACE_MORNING, "morning of each stage", Deadline.AT_THE_START, "at each start",
            Deadline.AFTER_THE_RACE, "after each stage"));
    static final String AT_THE_END = "after the last stage";

    private final List<Checklist> days;
    private final Map<String, List<PendingItem>> byTitle = new LinkedHashMap<>();
    private final Map<String, Deadline> due = new LinkedHashMap<>();

    private RaceChecklistMaker(List<Checklist> days) {
        this.days = days;
        for (Deadline each : Deadline.values()) {
            start(TITLES.get(each), each);
        }
        start(AT_THE_END, Deadline.AFTER_THE_RACE);
    }

    /**
     * What no checklist of one day has.
     *
     * @param due by when, before each stage or the race
     */
    public record Extra(Deadline due, ChecklistItem item) {
    }

    /** An item with the stages that have it, and what each of them finds. */
    private record SharedItem(ChecklistItem item, Map<Integer, String> found) {

        ChecklistItem merged(int stages, boolean each) {
            String of = each && found.size() < stages ? list(List.copyOf(found.keySet()), true) + ": " : "";
            return new ChecklistItem(of.isEmpty() ? item.what() : of + lower(item.what()), find(), item.because(), item.critical(), item.part(), item.rule(), item.where(),
                    item.minutes(), item.needs());
        }

        boolean differs() {
            return found.values().stream().distinct().count() > 1;
        }

        private String find() {
            Map<String, List<Integer>> by = new LinkedHashMap<>();
            found.forEach((stage, text) -> by.computeIfAbsent(text, key -> new ArrayList<>()).add(stage));
            List<String> out = new ArrayList<>();
            by.forEach((text, stages) -> out.add(by.size() == 1 ? text : list(stages, out.isEmpty()) + ": " + lower(text)));
            return String.join("; ", out);
        }

        private static String list(List<Integer> stages, boolean first) {
            String word = stages.size() == 1 ? "tage " : "tages ";
            return (first ? "S" : "s") + word + String.join(", ", stages.stream().map(String::valueOf).toList());
        }

        private static String lower(String text) {
            return text.isEmpty() || text.length() > 1 && Character.isUpperCase(text.charAt(1)) ? text : Character.toLowerCase(text.charAt(0)) + text.substring(1);
        }
    }

    /** @param days the checklist of each stage, in order */
    public static Checklist of(List<Checklist> days, List<Extra> extras) {
        RaceChecklistMaker maker = new RaceChecklistMaker(days);
        for (Deadline each : Deadline.values()) {
            maker.merge(each);
            extras.stream().filter(extra -> extra.due() == each).forEach(extra -> maker.add(TITLES.get(each), extra.item()));
        }
        return maker.made();
    }

    private void start(String title, Deadline at) {
        byTitle.put(title, new ArrayList<>());
        due.put(title, at);
    }

    private void merge(Deadline at) {
        Map<String, SharedItem> items = new LinkedHashMap<>();
        for (int i = 0; i < days.size(); i++) {
            int stage = i + 1;
            for (ChecklistSection section : days.get(i).sections()) {
                for (ChecklistItem item : section.due() == at ? section.items() : List.<ChecklistItem>of()) {
                    items.computeIfAbsent(item.what(), what -> new SharedItem(item, new LinkedHashMap<>())).found().put(stage, item.find());
                }
            }
        }
        for (SharedItem each : items.values()) {
            boolean again = at == Deadline.TWO_DAYS_BEFORE && each.differs();
            boolean last = at == Deadline.AFTER_THE_RACE && each.item().rule().isEmpty();
            boolean once = last || !again && at.compareTo(Deadline.NIGHT_BEFORE) < 0;
            add(last ? AT_THE_END : TITLES.get(again ? Deadline.NIGHT_BEFORE : at), each.merged(days.size(), !once));
        }
    }

    private void add(String title, ChecklistItem item) {
        byTitle.get(title).add(new PendingItem(item, item.rule(), due.get(title), 0, List.of()));
    }

    private Checklist made() {
        List<ChecklistSection> sections = new ArrayList<>();
        byTitle.forEach((title, items) -> {
            List<List<PendingItem>> pieces = SectionSplitter.of(criticalFirst(items));
            for (int i = 0; i < pieces.size(); i++) {
                String when = title + (pieces.size() == 1 ? "" : ", " + (i + 1) + " of " + pieces.size());
                sections.add(new ChecklistSection(due.get(title), when, pieces.get(i).stream().map(PendingItem::item).toList(), "All done? Say: \"" + when + ", complete.\""));
            }
        });
        return new Checklist(days.get(0).role(), days.get(0).date(), sections);
    }

    /** Work before the race and back after it keeps its order: one thing waits for another there. */
    private static List<PendingItem> criticalFirst(List<PendingItem> items) {
        boolean inOrder = items.stream().anyMatch(each -> each.due() == Deadline.WEEK_BEFORE) || items.stream().allMatch(each -> each.due() == Deadline.AFTER_THE_RACE && each.id().isEmpty());
        List<PendingItem> out = new ArrayList<>(items);
        if (!inOrder) {
            out.sort((one, other) -> Boolean.compare(other.item().critical(), one.item().critical()));
        }
        return out;
    }
}
