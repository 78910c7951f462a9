package courseworthy.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.checklist.Checklist.ChecklistItem;
import courseworthy.checklist.Checklist.ChecklistSection;
import courseworthy.claim.Deadline;
import courseworthy.claim.Task;
import courseworthy.event.Event;
import courseworthy.report.ExampleBrief;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What holds for any set of tasks. */
class ChecklistProperties {

    @Property(tries = 300, seed = "20261129")
    void nothingIsDroppedNorTooLongNorBeforeWhatItWaitsFor(@ForAll long seed, @ForAll @IntRange(min = 1, max = 70) int size) {
        ExampleBrief example = generated(seed, size);
        Checklist checklist = ChecklistMaker.of(example.call(), Event.UNKNOWN);
        Map<String, Integer> places = places(checklist);
        assertThat(places).hasSize(size);
        assertThat(checklist.sections()).allMatch(s -> s.items().size() <= Checklist.MOST_ITEMS);
        for (Task task : example.tasks) {
            for (String before : task.after()) {
                assertThat(places.get(before)).isLessThan(places.get(task.origin().rule()));
            }
        }
        assertThat(checklist.sections()).extracting(ChecklistSection::due).isSorted();
    }

    /** Critical items lead each due time but for what they wait for. */
    @Property(tries = 300, seed = "20261129")
    void criticalItemsLead(@ForAll long seed, @ForAll @IntRange(min = 1, max = 40) int size) {
        ExampleBrief example = generated(seed, size);
        example.tasks.replaceAll(t -> new Task(t.origin(), t.what(), t.find(), t.due(), t.needs(), t.critical(), t.part(), List.of(),
                t.grounds()));
        for (Deadline due : Deadline.values()) {
            List<Boolean> critical = new ArrayList<>();
            for (ChecklistSection section : ChecklistMaker.of(example.call(), Event.UNKNOWN).sections()) {
                if (section.due() == due) {
                    section.items().forEach(item -> critical.add(item.critical()));
                }
            }
            assertThat(critical).isSortedAccordingTo(Collections.reverseOrder());
        }
    }

    @Property(tries = 100, seed = "20261129")
    void theOrderOfTheTasksDoesNotMatter(@ForAll long seed, @ForAll @IntRange(min = 1, max = 40) int size) {
        ExampleBrief example = generated(seed, size);
        Checklist first = ChecklistMaker.of(example.call(), Event.UNKNOWN);
        Collections.shuffle(example.tasks, new Random(seed + 1));
        assertThat(ChecklistMaker.of(example.call(), Event.UNKNOWN)).isEqualTo(first);
    }

    private static ExampleBrief generated(long seed, int size) {
        Random random = new Random(seed);
        ExampleBrief out = new ExampleBrief();
        for (int i = 0; i < size; i++) {
            String[] after = i == 0 || random.nextInt(3) > 0 ? new String[0] : new String[] {"shipped/" + random.nextInt(i)};
            out.task("shipped/" + i, "Do " + i, "Done", Deadline.values()[random.nextInt(6)], random.nextInt(4) == 0 ? random.nextInt(60) : 0,
                    random.nextInt(3) == 0, "part " + random.nextInt(5), after);
        }
        return out;
    }

    private static Map<String, Integer> places(Checklist checklist) {
        Map<String, Integer> out = new HashMap<>();
        for (ChecklistSection section : checklist.sections()) {
            for (ChecklistItem item : section.items()) {
                out.put(item.rule(), out.size());
            }
        }
        return out;
    }
}
