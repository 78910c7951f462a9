package courseworthy.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.checklist.Checklist.ChecklistItem;
import courseworthy.checklist.Checklist.ChecklistSection;
import courseworthy.checklist.ChecklistSchedule.ScheduledSection;
import courseworthy.claim.Deadline;
import courseworthy.event.Event;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Times worked out by hand: four minutes a check, one at the line, evenings end at nine (common practice, no source). */
class ChecklistScheduleTest {

    /** A Saturday, so that the days of the week before can be read off a calendar. */
    private static final LocalDate SATURDAY = LocalDate.of(2026, 6, 20);
    private static final double FOUR_HOURS = 4 * 3600;

    @Test
    void eachSectionHasItsTime() {
        List<ScheduledSection> slots = schedule(LocalTime.of(8, 0), section(Deadline.WEEK_BEFORE, 9), section(Deadline.WEEK_BEFORE, 5), section(Deadline.TWO_DAYS_BEFORE, 7),
                section(Deadline.NIGHT_BEFORE, 5), section(Deadline.NIGHT_BEFORE, 5), section(Deadline.RACE_MORNING, 8), section(Deadline.AT_THE_START, 7),
                section(Deadline.AFTER_THE_RACE, 5), section(Deadline.AFTER_THE_RACE, 4)).slots();

        assertThat(slots).extracting(slot -> slot.number() + " " + slot.from() + " " + slot.to()).containsExactly(
                "1 2026-06-13T20:20 2026-06-13T21:00", "2 2026-06-14T20:40 2026-06-14T21:00", "1 2026-06-18T20:30 2026-06-18T21:00",
                "1 2026-06-19T20:20 2026-06-19T20:40", "2 2026-06-19T20:40 2026-06-19T21:00", "1 2026-06-20T06:25 2026-06-20T07:00",
                "1 2026-06-20T07:50 2026-06-20T08:00", "1 2026-06-20T12:00 2026-06-20T12:20", "2 2026-06-20T12:20 2026-06-20T12:36");
    }

    @Test
    void theRideLastsToTheSlowEstimate() {
        ChecklistSchedule schedule = schedule(LocalTime.of(22, 30));
        assertThat(schedule.start()).isEqualTo(SATURDAY.atTime(22, 30));
        assertThat(schedule.finish()).isEqualTo(SATURDAY.plusDays(1).atTime(2, 30));
        assertThat(schedule.slots()).isEmpty();
    }

    @Test
    void workThatTakesLongerHasLonger() {
        ChecklistItem ride = new ChecklistItem("Test-ride", "Nothing moved", "Why.", true, "swaps", "", null, 60);
        ChecklistSection section = new ChecklistSection(Deadline.WEEK_BEFORE, "week before", List.of(ride, check(), check()), "done");
        ScheduledSection slot = schedule(LocalTime.of(8, 0), section).slots().get(0);
        assertThat(Duration.between(slot.from(), slot.to())).isEqualTo(Duration.ofMinutes(70));
    }

    /** What needs hours was put into a section because the scheduler of items counts on them: the clock has to leave them. */
    @ParameterizedTest
    @ValueSource(strings = {"00:00", "00:30", "05:00", "08:00", "12:00", "18:00", "20:59", "21:00", "23:59"})
    void everySectionLeavesTheHoursThatItemsWerePlacedBy(String clock) {
        LocalTime start = LocalTime.parse(clock);
        ItemScheduler counted = new ItemScheduler(start);
        ChecklistSection[] all = Arrays.stream(Deadline.values()).filter(due -> due != Deadline.AFTER_THE_RACE).map(due -> section(due, 9)).toArray(ChecklistSection[]::new);
        for (ScheduledSection slot : schedule(start, all).slots()) {
            LocalDateTime ride = SATURDAY.atTime(start);
            assertThat(Duration.between(slot.to(), ride).toSeconds()).as(slot.section().due() + " " + clock).isGreaterThanOrEqualTo(counted.lead(slot.section().due()));
            assertThat(slot.from()).isBefore(slot.to());
        }
    }

    private static ChecklistSchedule schedule(LocalTime start, ChecklistSection... sections) {
        return ChecklistSchedule.of(new Checklist("race", SATURDAY, List.of(sections)), Event.builder().date(SATURDAY).start(start).build(), FOUR_HOURS);
    }

    private static ChecklistSection section(Deadline due, int items) {
        return new ChecklistSection(due, due.words(), Collections.nCopies(items, check()), "done");
    }

    private static ChecklistItem check() {
        return new ChecklistItem("Look", "In order", "Why.", false, "tyres", "", null);
    }
}
