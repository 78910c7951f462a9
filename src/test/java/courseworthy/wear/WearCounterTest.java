package courseworthy.wear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.wear.WearCounter.Outlook;
import courseworthy.workshop.Workshop;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Sealant dries in 60 to 120 days (common practice, no source; the interval table), so its life goes by days, ridden or not. */
class WearCounterTest {

    private static final LocalDate ADDED = ExampleWorkshop.START;
    /** The day a part is fitted may count as a day of its life or not. */
    private static final double A_DAY = 1.001 / 60;

    private static Outlook sealant(LocalDate first, int days) {
        return sealant(first, days, Set.of());
    }

    private static Outlook sealant(LocalDate first, int days, Set<String> fresh) {
        Workshop made = ExampleWorkshop.with("{name: w, kind: wheel, end: front, on: b}", "{name: t, kind: tyre, on: w}",
                "{name: s, kind: sealant, on: w, added: " + ADDED + "}").made();
        List<RideUse> rides = IntStream.range(0, days).mapToObj(day -> ExampleWorkshop.event(first.plusDays(day), 3, "b", "w", "t", "s")).toList();
        List<Outlook> found = WearCounter.of(List.of(made.find("s")), rides, made, fresh);
        assertThat(found).singleElement().satisfies(each -> assertThat(each.interval().job()).isEqualTo("top up"));
        return found.get(0);
    }

    @Test
    void whatAgesIsUsedUpByDaysToo() {
        for (int after : new int[] {1, 30, 90, 150}) {
            LocalDate first = ADDED.plusDays(after);
            Outlook outlook = sealant(first, 6);
            double last = ChronoUnit.DAYS.between(ADDED, first.plusDays(5));
            assertThat(outlook.before().high()).isCloseTo(after / 60.0, within(A_DAY));
            assertThat(outlook.before().low()).isCloseTo(after / 120.0, within(A_DAY));
            assertThat(outlook.used().high()).isCloseTo(last / 60, within(A_DAY));
            assertThat(outlook.used().low()).isCloseTo(last / 120, within(A_DAY));
        }
    }

    /** What goes in anew in the week before the race is a week old at most on its first day. */
    @Test
    void whatIsRenewedBeforeTheRaceIsFresh() {
        Outlook outlook = sealant(ADDED.plusDays(150), 6, Set.of("s"));
        assertThat(outlook.before().high()).isCloseTo(7 / 60.0, within(A_DAY));
        assertThat(outlook.known()).isTrue();
        assertThat(outlook.due()).isEmpty();
        assertThat(sealant(ADDED.plusDays(150), 6, Set.of("t")).due()).isNotEmpty();
    }

    /** Due on the evening before the first day on which it may have come to its least life, and not before. */
    @Test
    void itIsDueWhenItsLeastLifeIsUsedUp() {
        assertThat(sealant(ADDED.plusDays(40), 6).due()).isEmpty();
        assertThat(sealant(ADDED.plusDays(57), 6).due()).hasSize(1).allSatisfy(day -> assertThat(day).isBetween(2, 3));
        assertThat(sealant(ADDED.plusDays(70), 6).due()).containsExactly(0);
    }
}
