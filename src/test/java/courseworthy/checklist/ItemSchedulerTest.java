package courseworthy.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.checklist.Checklist.ChecklistItem;
import courseworthy.claim.Deadline;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * When work that needs hours has to be done, with times worked out by hand on the clock: evening work is done by nine, and two things
 * done at one sitting lie at most three hours apart (common practice, no source).
 */
class ItemSchedulerTest {

    private static final long HOUR = 60 * 60;

    /** From 21:00 to a start at 07:00 are 10 h; a whole day more from two days before. */
    @ParameterizedTest
    @CsvSource({"0, NIGHT_BEFORE", "36000, NIGHT_BEFORE", "36001, TWO_DAYS_BEFORE", "122400, TWO_DAYS_BEFORE", "122401, WEEK_BEFORE"})
    void eachSectionLeavesTheHoursOfTheClock(long needs, Deadline due) {
        assertThat(timed(LocalTime.of(7, 0), item("a", Deadline.NIGHT_BEFORE, needs))).containsExactly(due);
    }

    /** An unknown start is taken as nine: from 21:00 those are 12 h (judgement, no source). */
    @ParameterizedTest
    @CsvSource({"43200, NIGHT_BEFORE", "43201, TWO_DAYS_BEFORE", "129600, TWO_DAYS_BEFORE", "129601, WEEK_BEFORE"})
    void anUnknownStartIsAtNine(long needs, Deadline due) {
        assertThat(timed(null, item("a", Deadline.NIGHT_BEFORE, needs))).containsExactly(due);
    }

    /** Work of the morning is done an hour before the start, work at the start has no time left. */
    @ParameterizedTest
    @CsvSource({"RACE_MORNING, 3600, RACE_MORNING", "RACE_MORNING, 3601, NIGHT_BEFORE", "AT_THE_START, 1, RACE_MORNING", "AT_THE_START, 0, AT_THE_START"})
    void theMorningLeavesAnHour(Deadline written, long needs, Deadline due) {
        assertThat(timed(LocalTime.of(7, 0), item("a", written, needs))).containsExactly(due);
    }

    @Test
    void whatIsDoneAfterwardsWaitsForNothing() {
        assertThat(timed(LocalTime.of(7, 0), item("a", Deadline.AFTER_THE_RACE, 500 * HOUR))).containsExactly(Deadline.AFTER_THE_RACE);
    }

    @ParameterizedTest
    @CsvSource({"10800, NIGHT_BEFORE", "10801, TWO_DAYS_BEFORE"})
    void whatTakesUpToThreeHoursIsDoneInTheEveningOfWhatWaitsForIt(long needs, Deadline due) {
        assertThat(timed(LocalTime.of(7, 0), item("glue", Deadline.NIGHT_BEFORE, needs), item("ride", Deadline.NIGHT_BEFORE, 0, "glue")))
                .containsExactly(due, Deadline.NIGHT_BEFORE);
    }

    /** Nothing that needs time is done on the morning of what waits for it: half an hour is too long. */
    @Test
    void theMorningIsNoSitting() {
        assertThat(timed(LocalTime.of(7, 0), item("glue", Deadline.RACE_MORNING, HOUR / 2), item("ride", Deadline.RACE_MORNING, 0, "glue")))
                .containsExactly(Deadline.NIGHT_BEFORE, Deadline.RACE_MORNING);
    }

    /** Written for after the race, needed the night before with 10 h to dry: two days before, a day ahead. */
    @Test
    void whatIsWrittenLaterThanWhatWaitsForItComesAheadWithItsHours() {
        assertThat(timed(LocalTime.of(7, 0), item("seal", Deadline.AT_THE_START, 10 * HOUR), item("ride", Deadline.NIGHT_BEFORE, 0, "seal")))
                .containsExactly(Deadline.TWO_DAYS_BEFORE, Deadline.NIGHT_BEFORE);
        assertThat(timed(LocalTime.of(7, 0), item("seal", Deadline.AT_THE_START, 0), item("ride", Deadline.NIGHT_BEFORE, 0, "seal")))
                .containsExactly(Deadline.NIGHT_BEFORE, Deadline.NIGHT_BEFORE);
    }

    /** From two days before to the night before is 24 h: what takes longer is done in the week before. */
    @ParameterizedTest
    @CsvSource({"86400, TWO_DAYS_BEFORE", "86401, WEEK_BEFORE"})
    void betweenTwoEveningsIsADay(long needs, Deadline due) {
        assertThat(timed(LocalTime.of(7, 0), item("cure", Deadline.NIGHT_BEFORE, needs), item("ride", Deadline.NIGHT_BEFORE, 0, "cure")))
                .containsExactly(due, Deadline.NIGHT_BEFORE);
    }

    private static List<Deadline> timed(LocalTime start, PendingItem... items) {
        return new ItemScheduler(start).timed(List.of(items)).stream().map(PendingItem::due).toList();
    }

    private static PendingItem item(String id, Deadline due, long needs, String... after) {
        return new PendingItem(new ChecklistItem(id, "Done", "Why.", false, "tyres", id, null), id, due, needs, List.of(after));
    }
}
