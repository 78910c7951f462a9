package courseworthy.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.checklist.Checklist.ChecklistItem;
import courseworthy.checklist.Checklist.ChecklistSection;
import courseworthy.checklist.RaceChecklistMaker.Extra;
import courseworthy.claim.Deadline;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Checklists of days as one of the race, by hand. */
class RaceChecklistMakerTest {

    private static ChecklistItem item(String what, String find, boolean critical, String rule) {
        return new ChecklistItem(what, find, "Why.", critical, "part", rule, null);
    }

    private static ChecklistSection section(Deadline due, ChecklistItem... items) {
        return new ChecklistSection(due, due.words(), List.of(items), "");
    }

    private static Checklist day(int number, ChecklistSection... sections) {
        return new Checklist("race", LocalDate.of(2026, 7, number), List.of(sections));
    }

    private static List<String> shown(Checklist of) {
        List<String> out = new ArrayList<>();
        of.sections().forEach(section -> section.items().forEach(item -> out.add(section.when() + " | " + (item.critical() ? "! " : "") + item.what() + " | " + item.find())));
        return out;
    }

    @Test
    void whatIsTheSameIsSaidOnceAndWhatDiffersByStage() {
        Checklist one = day(6, section(Deadline.WEEK_BEFORE, item("Measure the chain", "Within its limit", false, "a/chain")),
                section(Deadline.TWO_DAYS_BEFORE, item("Write down the clicks", "70 % open", false, "a/clicks"), item("Set sag", "20 %", false, "a/sag")),
                section(Deadline.NIGHT_BEFORE, item("Pack the food", "45 g/h", false, "a/food"), item("Pull the brakes", "They hold", true, "a/brakes")),
                section(Deadline.AFTER_THE_RACE, item("Look for damage", "None", true, "a/damage"), item("Put the old fork back", "Tight", false, "")));
        Checklist two = day(7, section(Deadline.WEEK_BEFORE, item("Measure the chain", "Within its limit", false, "a/chain"), item("Try the food", "It stays down", false, "a/try")),
                section(Deadline.TWO_DAYS_BEFORE, item("Write down the clicks", "85 % open", false, "a/clicks"), item("Set sag", "20 %", false, "a/sag")),
                section(Deadline.NIGHT_BEFORE, item("Pack the food", "60 g/h", false, "a/food"), item("Pull the brakes", "They hold", true, "a/brakes"), item("Fit the mudguard", "It clears", false, "a/guard")),
                section(Deadline.AFTER_THE_RACE, item("Look for damage", "None", true, "a/damage"), item("Put the old fork back", "Tight", false, "")));
        Extra renew = new Extra(Deadline.NIGHT_BEFORE, item("Before stage 2: renew: pads", "Done", true, ""));
        assertThat(shown(RaceChecklistMaker.of(List.of(one, two), List.of(renew)))).containsExactly(
                "week before the race | Measure the chain | Within its limit",
                "week before the race | Try the food | It stays down",
                "two days before the race | Set sag | 20 %",
                "evening before each stage | ! Pull the brakes | They hold",
                "evening before each stage | ! Before stage 2: renew: pads | Done",
                "evening before each stage | Write down the clicks | Stage 1: 70 % open; stage 2: 85 % open",
                "evening before each stage | Pack the food | Stage 1: 45 g/h; stage 2: 60 g/h",
                "evening before each stage | Stage 2: fit the mudguard | It clears",
                "after each stage | ! Look for damage | None",
                "after the last stage | Put the old fork back | Tight");
    }

    /** At most nine items a section (WHO 2009), and none dropped. */
    @Test
    void longSectionsAreCut() {
        List<ChecklistItem> items = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            items.add(item("Thing " + i, "Done", false, "a/" + i));
        }
        Checklist race = RaceChecklistMaker.of(List.of(day(6, section(Deadline.RACE_MORNING, items.toArray(ChecklistItem[]::new)))), List.of());
        assertThat(race.sections()).hasSize(3).allSatisfy(each -> assertThat(each.items()).hasSizeLessThanOrEqualTo(Checklist.MOST_ITEMS));
        assertThat(race.sections().stream().flatMap(each -> each.items().stream()).map(ChecklistItem::what)).hasSize(20).doesNotHaveDuplicates();
        assertThat(race.sections().get(0).when()).isEqualTo("morning of each stage, 1 of 3");
    }
}
