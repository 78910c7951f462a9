package courseworthy.checklist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import courseworthy.call.Call;
import courseworthy.checklist.Checklist.ChecklistItem;
import courseworthy.checklist.Checklist.ChecklistSection;
import courseworthy.claim.Deadline;
import courseworthy.claim.Task;
import courseworthy.decision.Decision.Consensus;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.event.Event;
import courseworthy.report.ExampleBrief;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Rules of checklist design: Degani and Wiener 1990, NASA CR 177549; WHO 2009, Implementation manual, Surgical Safety Checklist. */
class ChecklistMakerTest {

    private final ExampleBrief example = new ExampleBrief();

    /** Degani and Wiener, guideline 1: the response states the desired value, not "checked". 1 bar is 14.504 psi (NIST SP 811). */
    @Test
    void anItemStatesTheDecidedValue() {
        example.decided("front tyre pressure", 31, Consensus.UNANIMOUS, List.of(), List.of());
        example.task("shipped/p", "Pump", "Front {front tyre pressure}, rear {rear tyre pressure}", Deadline.RACE_MORNING, 0, true, "tyres");
        assertThat(only().find()).isEqualTo("Front 1.55 bar (22 psi), rear 2.00 bar (29 psi)");
    }

    @Test
    void anItemMayNameAMeasure() {
        example.demand(Measure.LOWER_MARKED_PRESSURE, 70, 70, 70);
        example.task("shipped/p", "Pump", "At most {lower marked pressure}; gauge zeroed", Deadline.RACE_MORNING, 0, false, "tyres");
        assertThat(only().find()).isEqualTo("At most 3.5 bar; gauge zeroed");
    }

    @Test
    void aClauseOnWhatTheBikeHasNotIsLeftOut() {
        example.notApplicable("rear sag");
        example.task("shipped/s", "Set sag", "Rear {rear sag}, rings clean; front {front sag}", Deadline.WEEK_BEFORE, 0, false, "suspension");
        assertThat(only().find()).isEqualTo("Rings clean; front 20 %");
    }

    @Test
    void anItemThatAsksForNothingOnThisBikeIsLeftOut() {
        example.notApplicable("front sag");
        example.task("shipped/s", "Set sag", "Front {front sag}", Deadline.WEEK_BEFORE, 0, false, "suspension");
        example.task("shipped/t", "Set {front sag} of sag", "Ring at the mark", Deadline.WEEK_BEFORE, 0, false, "suspension");
        assertThat(of(Event.UNKNOWN).sections()).isEmpty();
    }

    @Test
    void whatSafetyHangsOnStaysEvenWithoutAValue() {
        example.notApplicable("light run time");
        example.nonePossible("front tyre pressure", "limits clash");
        example.task("shipped/l", "Charge for {light run time}", "Good for {light run time}", Deadline.RACE_MORNING, 0, true, "a");
        example.task("shipped/p", "Pump", "Front {front tyre pressure}", Deadline.RACE_MORNING, 0, true, "b");
        List<ChecklistItem> items = of(Event.UNKNOWN).sections().get(0).items();
        assertThat(items).extracting(ChecklistItem::what).containsExactly("Charge for light run time", "Pump");
        assertThat(items).extracting(ChecklistItem::find).containsExactly("In order", "Front none possible (see the brief)");
    }

    @Test
    void bracesThatNameNothingStayAsWritten() {
        example.task("shipped/p", "Pump {the {tyre", "Front {tyre feel}, set", Deadline.RACE_MORNING, 0, false, "tyres");
        assertThat(only().what()).isEqualTo("Pump {the {tyre");
        assertThat(only().find()).isEqualTo("Front {tyre feel}, set");
    }

    /** A start at seven leaves ten hours after nine in the evening. */
    @Test
    void whatNeedsMoreHoursThanItsSectionLeavesComesEarlier() {
        example.task("shipped/fits", "Charge", "Full", Deadline.NIGHT_BEFORE, 10, false, "a");
        example.task("shipped/late", "Seal", "Dry", Deadline.NIGHT_BEFORE, 11, false, "b");
        example.task("shipped/morning", "Soak", "Soft", Deadline.RACE_MORNING, 2, false, "c");
        example.task("shipped/week", "Break in", "Quiet", Deadline.AT_THE_START, 100, false, "d");
        Checklist checklist = of(at(LocalTime.of(7, 0)));
        assertThat(when(checklist, "Charge")).isEqualTo("night before");
        assertThat(when(checklist, "Seal")).isEqualTo("two days before");
        assertThat(when(checklist, "Soak")).isEqualTo("night before");
        assertThat(when(checklist, "Break in")).isEqualTo("week before");
    }

    @Test
    void anEarlyStartLeavesAShorterNight() {
        example.task("shipped/c", "Charge", "Full", Deadline.NIGHT_BEFORE, 9, false, "a");
        assertThat(when(of(at(LocalTime.of(7, 0))), "Charge")).isEqualTo("night before");
        assertThat(when(of(at(LocalTime.of(5, 0))), "Charge")).isEqualTo("two days before");
    }

    @Test
    void whatMustComeBeforeComesBefore() {
        example.task("shipped/z-first", "Mount", "On", Deadline.RACE_MORNING, 0, false, "z");
        example.task("shipped/a-then", "Check", "Tight", Deadline.NIGHT_BEFORE, 0, true, "a", "shipped/z-first");
        assertThat(of(Event.UNKNOWN).sections()).hasSize(1);
        assertThat(items()).containsExactly("Mount", "Check");
    }

    @Test
    void whatMustComeHoursBeforeComesInAnEarlierSection() {
        example.task("shipped/seal", "Seal", "Dry", Deadline.NIGHT_BEFORE, 8, false, "tyres");
        example.task("shipped/ride", "Ride it", "No loss", Deadline.NIGHT_BEFORE, 0, false, "tyres", "shipped/seal");
        Checklist checklist = of(Event.UNKNOWN);
        assertThat(when(checklist, "Seal")).isEqualTo("two days before");
        assertThat(when(checklist, "Ride it")).isEqualTo("night before");
    }

    @Test
    void aChainOfThingsMovesAsAWhole() {
        example.task("shipped/a", "A", "x", Deadline.AFTER_THE_RACE, 0, false, "", "shipped/nobody");
        example.task("shipped/b", "B", "x", Deadline.RACE_MORNING, 0, false, "", "shipped/a");
        example.task("shipped/c", "C", "x", Deadline.WEEK_BEFORE, 0, false, "", "shipped/b");
        assertThat(of(Event.UNKNOWN).sections()).hasSize(1);
        assertThat(items()).containsExactly("A", "B", "C");
    }

    @Test
    void aCircleEndsSomewhere() {
        example.task("shipped/a", "A", "x", Deadline.NIGHT_BEFORE, 4, false, "", "shipped/b");
        example.task("shipped/b", "B", "x", Deadline.NIGHT_BEFORE, 4, false, "", "shipped/a");
        assertThat(items()).containsExactlyInAnyOrder("A", "B");
    }

    /** Degani and Wiener, from memory: the most critical items as near the start as possible; chunks by system or function. */
    @Test
    void criticalThingsComeFirstAndOnePartStaysTogether() {
        example.task("shipped/1", "Tape", "x", Deadline.NIGHT_BEFORE, 0, false, "cockpit");
        example.task("shipped/2", "Stem", "x", Deadline.NIGHT_BEFORE, 0, true, "cockpit");
        example.task("shipped/3", "Pads", "x", Deadline.NIGHT_BEFORE, 0, true, "brakes");
        example.task("shipped/4", "Bell", "x", Deadline.NIGHT_BEFORE, 0, false, "extras");
        example.task("shipped/5", "Lever", "x", Deadline.NIGHT_BEFORE, 0, true, "brakes");
        example.task("shipped/6", "Grips", "x", Deadline.NIGHT_BEFORE, 0, false, "cockpit");
        assertThat(items()).containsExactly("Pads", "Lever", "Stem", "Tape", "Grips", "Bell");
    }

    @Test
    void amongEqualsWhatNeedsHoursComesFirst() {
        example.task("shipped/1", "Tape", "x", Deadline.NIGHT_BEFORE, 0, false, "cockpit");
        example.task("shipped/2", "Charge", "x", Deadline.NIGHT_BEFORE, 3, false, "electronics");
        assertThat(items()).containsExactly("Charge", "Tape");
    }

    /** WHO 2009: five to nine items a section. */
    @Test
    void aLongSectionIsCutIntoNumberedOnesAndNothingIsDropped() {
        for (int i = 0; i < 22; i++) {
            example.task("shipped/" + (char) ('a' + i), "Do " + i, "x", Deadline.NIGHT_BEFORE, 0, i % 5 == 0, "part " + i / 4);
        }
        List<ChecklistSection> sections = of(Event.UNKNOWN).sections();
        assertThat(sections).extracting(ChecklistSection::when).containsExactly("night before, 1 of 3", "night before, 2 of 3", "night before, 3 of 3");
        assertThat(sections).allSatisfy(s -> assertThat(s.items()).hasSizeBetween(4, Checklist.MOST_ITEMS));
        assertThat(items()).hasSize(22).doesNotHaveDuplicates();
        assertThat(sections.get(0).items().subList(0, 5)).allMatch(ChecklistItem::critical);
    }

    @Test
    void anyNumberOfItemsFits() {
        for (int n = 1; n <= 60; n++) {
            ExampleBrief many = new ExampleBrief();
            for (int i = 0; i < n; i++) {
                many.task("shipped/" + i, "Do " + i, "x", Deadline.NIGHT_BEFORE, 0, false, "part " + i * i % 7);
            }
            List<ChecklistSection> sections = ChecklistMaker.of(many.call(), Event.UNKNOWN).sections();
            assertThat(sections).hasSize((n + 8) / 9).allMatch(s -> !s.items().isEmpty() && s.items().size() <= 9);
            assertThat(sections.stream().mapToInt(s -> s.items().size()).sum()).isEqualTo(n);
        }
    }

    /** Degani and Wiener, from memory: a completion call as the last item. */
    @Test
    void everySectionEndsWithACallThatItIsDone() {
        example.task("shipped/1", "Tape", "x", Deadline.NIGHT_BEFORE, 0, false, "cockpit");
        assertThat(of(Event.UNKNOWN).sections().get(0).done()).isEqualTo("All done? Say: \"night before, complete.\"");
    }

    @Test
    void aTrainingRideHasTitlesOfItsOwn() {
        example.demand(Measure.ROLE, 0, 0, 0);
        for (Deadline due : Deadline.values()) {
            example.task("shipped/" + due, "Do " + due, "x", due, 0, false, "");
        }
        Checklist checklist = of(Event.UNKNOWN);
        assertThat(checklist.role()).isEqualTo("training");
        assertThat(checklist.sections()).extracting(ChecklistSection::when).containsExactly("week before the ride", "two days before the ride",
                "night before the ride", "morning of the ride", "before setting off", "after the ride");
    }

    @Test
    void theDateIsTheEvents() {
        assertThat(of(at(LocalTime.NOON)).date()).isEqualTo(LocalDate.of(2025, 6, 14));
        assertThat(of(Event.UNKNOWN).date()).isNull();
    }

    @Test
    void whatTheEventRequiresIsPackedAndABagHandedIn() {
        Event.Rules rules = new Event.Rules(null, null, null, null, null, List.of("foil blanket", "whistle"), "2025", null);
        Event event = Event.builder().name("Moor Loop").file("e.yaml").role("race")
                .support(List.of(new Event.Support(41_000, true, true, true, 0), new Event.Support(60_000, true, false, false, 0))).supportKnown(true)
                .rules(rules).build();
        List<ChecklistItem> items = of(event).sections().get(0).items();
        assertThat(items).extracting(ChecklistItem::what).containsExactly("Pack what the event requires: foil blanket",
                "Pack what the event requires: whistle", "Pack the bag that waits at km 41");
        assertThat(items.get(0).because()).isEqualTo("The event requires it (rules of 2025).");
    }

    @Test
    void theSameThingAskedTwiceIsDoneOnceAndCriticalIfEitherSaysSo() {
        example.task("shipped/a", "Charge", "Full", Deadline.NIGHT_BEFORE, 0, false, "x");
        example.task("shipped/b", "Charge", "Full", Deadline.NIGHT_BEFORE, 0, true, "x");
        assertThat(only().critical()).isTrue();
    }

    @Test
    void twoThingsOfOneRuleAreBothKept() {
        example.task("shipped/a", "Left", "x", Deadline.NIGHT_BEFORE, 0, false, "x");
        example.task("shipped/a", "Right", "x", Deadline.NIGHT_BEFORE, 0, false, "x");
        assertThat(items()).containsExactly("Left", "Right");
    }

    /** The event's list keeps its order, past nine things and past the ten that one digit can number. */
    @Test
    void whatTheEventRequiresStaysInItsOrder() {
        List<String> kit = new ArrayList<>();
        for (int i = 1; i <= 12; i++) {
            kit.add("thing " + i);
        }
        Event.Rules rules = new Event.Rules(null, null, null, null, null, kit, "", null);
        Event event = Event.builder().name("Moor Loop").file("e.yaml").role("race").supportKnown(true).rules(rules).build();
        List<ChecklistItem> items = of(event).sections().stream().flatMap(section -> section.items().stream()).toList();
        assertThat(items).extracting(ChecklistItem::what).containsExactlyElementsOf(kit.stream().map(each -> "Pack what the event requires: " + each).toList());
        assertThat(items.get(0).because()).isEqualTo("The event requires it; check its newest rules.");
    }

    /** Where nothing says what the bike is set up for, it is a ride and no race. */
    @Test
    void withoutARoleItIsTraining() {
        Call call = new Call(new Demands(Map.of(), List.of(), List.of()), List.of(), List.of(), List.of());
        assertThat(ChecklistMaker.of(call, Event.UNKNOWN).role()).isEqualTo("training");
        assertThat(of(Event.UNKNOWN).role()).isEqualTo("race");
    }

    /** What a saved brief keeps: the tasks that are on the list, with names where values would stand. */
    @Test
    void listedTasksAreThoseOnTheList() {
        example.notApplicable("front sag");
        example.task("shipped/s", "Set sag", "Front {front sag}", Deadline.WEEK_BEFORE, 0, false, "suspension");
        example.task("shipped/p", "Pump {front tyre width}", "Front {front tyre pressure}", Deadline.RACE_MORNING, 0, true, "tyres");
        assertThat(ChecklistMaker.listed(example.call())).extracting(Task::what, Task::find)
                .containsExactly(tuple("Pump front tyre width", "Front front tyre pressure"));
    }

    private Checklist of(Event event) {
        return ChecklistMaker.of(example.call(), event);
    }

    private static Event at(LocalTime start) {
        return Event.builder().role("race").date(LocalDate.of(2025, 6, 14)).start(start).build();
    }

    private List<String> items() {
        List<String> out = new ArrayList<>();
        of(Event.UNKNOWN).sections().forEach(section -> section.items().forEach(item -> out.add(item.what())));
        return out;
    }

    private ChecklistItem only() {
        List<ChecklistSection> sections = of(Event.UNKNOWN).sections();
        assertThat(sections).hasSize(1);
        assertThat(sections.get(0).items()).hasSize(1);
        return sections.get(0).items().get(0);
    }

    private static String when(Checklist checklist, String what) {
        return checklist.sections().stream().filter(s -> s.items().stream().anyMatch(i -> i.what().equals(what))).findFirst().orElseThrow()
                .when();
    }
}
