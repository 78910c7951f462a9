package courseworthy.wear;

import static courseworthy.wear.ExampleWorkshop.HOUR;
import static courseworthy.wear.ExampleWorkshop.START;
import static courseworthy.wear.ExampleWorkshop.event;
import static courseworthy.wear.ExampleWorkshop.with;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.wear.ServiceEvening.Timing;
import courseworthy.wear.UpkeepPlanner.TyreChange;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.RideLog.Conditions;
import courseworthy.workshop.RideLog.LoggedRide;
import courseworthy.workshop.RideLog.Service;
import courseworthy.workshop.Workshop;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What falls due, when, and in which week: hours added up by hand, intervals those of the table (common practice, no source) or written here. */
class UpkeepPlannerTest {

    private static final String FORK = "{name: f, kind: fork, on: b, mass: 2 kg, travel: 120 mm, hours used: 0 h, intervals: [{job: oil and seals, hours: 50 h}]}";
    private static final String WHEEL = "{name: w, kind: wheel, on: b, end: rear, mass: 1 kg}";
    private static final String TYRE = "{name: t, kind: tyre, on: w, mass: 600 g}";
    private static final String SEALANT = "{name: s, kind: sealant, on: w, mass: 60 g, added: 2026-03-02}";

    private static List<ServiceWork> of(UpkeepPlan plan, String part, String job) {
        return plan.work().stream().filter(each -> each.part().equals(part) && each.job().equals(job)).toList();
    }

    /** 50 h as the manufacturer states, 10 h ridden, 7 h a week: an hour a day from 3 March, so the 40th day, 11 April, is the one that fills it. */
    @Test
    void aStatedIntervalIsDueOnTheDayThatFillsIt() {
        UpkeepPlan plan = with(FORK).ride(START, 10, "dry").weekly(7, "dry").plan(10);
        ServiceWork first = of(plan, "f", "oil and seals").get(0);
        assertThat(first.due()).isEqualTo(LocalDate.of(2026, 4, 11));
        assertThat(first.latest()).isEqualTo(first.due());
        assertThat(first.evening()).isEqualTo(new ServiceEvening(LocalDate.of(2026, 4, 10), 0, Timing.BEFORE));
        assertThat(first.week()).isEqualTo(LocalDate.of(2026, 4, 6));
        assertThat(first.bike()).isEqualTo("b");
        assertThat(first.minutes()).isEqualTo(60);
        assertThat(first.why()).isEqualTo("50 h by then, the manufacturer states 50 h");
    }

    /** Half as many hours in the wet: 1.5 to 2.5 times as much, 1.94 in the middle of the ratio. */
    @Test
    void wetHoursCountMore() {
        ServiceWork dry = of(with(FORK).ride(START, 20, "dry").weekly(7, "dry").plan(20), "f", "oil and seals").get(0);
        ServiceWork wet = of(with(FORK).ride(START, 20, "wet").weekly(7, "dry").plan(20), "f", "oil and seals").get(0);
        // 30 dry hours are left of 50, and 50 less 20 times 1.94 are 11.3.
        assertThat(dry.due()).isEqualTo(START.plusDays(30));
        assertThat(wet.due()).isEqualTo(START.plusDays(12));
        assertThat(wet.why()).contains("20 h of it in the wet or mud");
    }

    /** The manufacturer's days and hours: whichever comes first, from the day it was fitted. */
    @Test
    void ageCountsFromTheDayItWasFitted() {
        String fork = "{name: f, kind: fork, on: b, mass: 2 kg, travel: 120 mm, fitted: 2026-03-01, intervals: [{job: full service, hours: 200 h, days: 60}]}";
        ServiceWork work = of(with(fork).ride(START, 2, "dry").weekly(3, "dry").plan(12, List.of(), List.of(), 150), "f", "full service").get(0);
        assertThat(work.due()).isEqualTo(LocalDate.of(2026, 4, 29));
        assertThat(work.why()).isEqualTo("fitted 2026-03-01, the manufacturer states 60 days");
    }

    /** What a log says was done counts from the rides after it, and so does what is done with it. */
    @Test
    void aServiceResetsItsJobAndWhatIsDoneWithIt() {
        ServiceWork none = of(with(FORK).ride(START, 40, "dry").weekly(7, "dry").plan(20), "f", "oil and seals").get(0);
        ServiceWork oil = of(with(FORK).ride(START, 40, "dry").service(START, "f", "oil and seals").weekly(7, "dry").plan(20), "f", "oil and seals").get(0);
        ServiceWork full = of(with(FORK).ride(START, 40, "dry").service(START, "f", "full service").weekly(7, "dry").plan(20), "f", "oil and seals").get(0);
        ServiceWork renewed = of(with(FORK).ride(START, 40, "dry").service(START, "f", "renew").weekly(7, "dry").plan(20), "f", "oil and seals").get(0);
        assertThat(none.due()).isEqualTo(START.plusDays(10));
        assertThat(oil.due()).isEqualTo(START.plusDays(50));
        assertThat(full.due()).isEqualTo(oil.due());
        assertThat(renewed.due()).isEqualTo(oil.due());
        assertThat(renewed.why()).contains("since it was renewed 2026-03-02");
    }

    /** A chain measured at its limit is due at once, however few hours it has; half worn, after half of its life. */
    @Test
    void aMeasuredLimitComesFirst() {
        String chain = "{name: c, kind: chain, on: b, mass: 250 g, hours used: 2 h, wear: 0.2 %, wear limit: 0.5 %}";
        Service worn = new Service(START, "c", null, Map.of(PartDetail.WEAR, 0.005), 1);
        ServiceWork now = of(with(chain).ride(START, 1, "dry").service(worn).weekly(7, "dry").plan(10), "c", "renew").get(0);
        assertThat(now.due()).isEqualTo(START.plusDays(1));
        assertThat(now.overdue()).isTrue();
        assertThat(now.why()).isEqualTo("at its wear limit on 2026-03-02");
        Service half = new Service(START, "c", null, Map.of(PartDetail.WEAR, 0.0025), 1);
        ServiceWork later = of(with(chain).ride(START, 1, "dry").service(half).weekly(7, "dry").plan(30), "c", "renew").get(0);
        // Half of 126.5 h, the middle of 80 to 200 h as a ratio, at an hour a day; overdue after half of 200 h.
        assertThat(later.due()).isEqualTo(START.plusDays(64));
        assertThat(later.latest()).isEqualTo(START.plusDays(100));
    }

    /** Sealant of 2 March is due after 60 to 120 days; with a tyre changed on 1 April it is 30 days younger. */
    @Test
    void sealantStartsFromZeroWithAnotherTyre() {
        ExampleWorkshop kept = with(WHEEL, TYRE, SEALANT).ride(START, 1, "dry").weekly(3, "dry");
        LocalDate before = of(kept.plan(30), "s", "top up").get(0).due();
        assertThat(before).isEqualTo(START.minusDays(1).plusDays(Math.round(Math.sqrt(60 * 120))));
        LocalDate april = LocalDate.of(2026, 4, 1);
        ServiceWork changed = of(with(WHEEL, TYRE, SEALANT).ride(START, 1, "dry").service(april, "t", "renew").weekly(3, "dry").plan(30), "s", "top up").get(0);
        assertThat(changed.due()).isEqualTo(april.plusDays(85));
        // Changed for a race: the work is done two days before it.
        List<RideUse> race = List.of(event(april, 4, "b", "w", "t", "s"));
        UpkeepPlan raced = with(WHEEL, TYRE, SEALANT).ride(START, 1, "dry").weekly(3, "dry").plan(30, race, List.of(new TyreChange(april, "w")), 120);
        assertThat(of(raced, "s", "top up").get(0).due()).isEqualTo(april.minusDays(2).plusDays(85));
        assertThat(of(raced, "s", "top up").get(0).why()).startsWith("renewed 2026-03-30");
    }

    /** Sealant that dries up in a wheel that hangs on the wall is not topped up, when that wheel gets another tyre before it is ridden. */
    @Test
    void sealantThatGoesWithItsTyreIsNotToppedUp() {
        String loose = WHEEL.replace("on: b, ", "");
        LocalDate june = LocalDate.of(2026, 6, 20);
        List<RideUse> race = List.of(event(june, 4, "b", "w", "t", "s"));
        ExampleWorkshop made = with(loose, TYRE, SEALANT).ride(START, 1, "dry").weekly(3, "dry");
        assertThat(of(made.plan(20, race, List.of(), 120), "s", "top up")).extracting(ServiceWork::due).containsExactly(june.minusDays(2));
        assertThat(of(made.plan(20, race, List.of(new TyreChange(june, "w")), 120), "s", "top up")).isEmpty();
        // Ridden in May on the old sealant, it is topped up for that.
        List<RideUse> both = List.of(event(LocalDate.of(2026, 5, 30), 2, "b", "w", "t", "s"), race.get(0));
        assertThat(of(made.plan(20, both, List.of(new TyreChange(june, "w")), 120), "s", "top up")).isNotEmpty();
    }

    /** A tyre that the plan renews takes fresh sealant with it. */
    @Test
    void aPlannedTyreResetsItsSealant() {
        String tyre = "{name: t, kind: tyre, on: w, mass: 600 g, hours used: 110 h}";
        UpkeepPlan plan = with(WHEEL, tyre, SEALANT).ride(START, 1, "dry").weekly(7, "dry").plan(25);
        ServiceWork renewed = of(plan, "t", "renew").get(0);
        assertThat(renewed.due()).isBefore(of(plan, "s", "top up").get(0).due());
        assertThat(of(plan, "s", "top up").get(0).due()).isAfterOrEqualTo(renewed.week().plusDays(80));
    }

    /** What falls due during a race is done two days before it, and what lies loose not before it is ridden. */
    @Test
    void aRaceIsStartedOnWhatLastsIt() {
        LocalDate race = LocalDate.of(2026, 4, 18);
        List<RideUse> events = List.of(event(race, 12, "b", "f"));
        ServiceWork work = of(with(FORK).ride(START, 40, "dry").plan(10, events, List.of(), 120), "f", "oil and seals").get(0);
        assertThat(work.due()).isEqualTo(race.minusDays(2));
        assertThat(work.evening().date()).isEqualTo(race.minusDays(3));
        assertThat(of(with(FORK.replace("on: b, ", "")).ride(START, 40, "dry").plan(10), "f", "oil and seals")).isEmpty();
    }

    /** An event up to the last day of the log has been ridden: it counts once, as logged. */
    @Test
    void anEventThatIsLoggedCountsOnce() {
        List<RideUse> events = List.of(event(START, 30, "b", "f"));
        assertThat(of(with(FORK).ride(START, 30, "dry").weekly(7, "dry").plan(20, events, List.of(), 120), "f", "oil and seals").get(0).due())
                .isEqualTo(START.plusDays(20));
    }

    /** Other parts in the place of those mounted get the hours, and those mounted do not. */
    @Test
    void whatStoodInItsPlaceGetsTheHours() {
        String other = "{name: w2, kind: wheel, end: rear, mass: 1 kg}";
        String tyre = "{name: t2, kind: tyre, on: w2, mass: 600 g}";
        LoggedRide ride = new LoggedRide(START, START, 5 * HOUR, null, new Conditions("b", "dry", null, List.of("w2")));
        UpkeepPlan plan = with(WHEEL, TYRE, other, tyre, FORK).ride(START.minusDays(1), 3, "dry").ride(ride).plan(1);
        assertThat(plan.hours()).extracting(PartHours::part, each -> each.hours() / HOUR)
                .containsExactlyInAnyOrder(org.assertj.core.groups.Tuple.tuple("b", 8.0), org.assertj.core.groups.Tuple.tuple("w", 3.0),
                        org.assertj.core.groups.Tuple.tuple("t", 3.0), org.assertj.core.groups.Tuple.tuple("w2", 5.0),
                        org.assertj.core.groups.Tuple.tuple("t2", 5.0), org.assertj.core.groups.Tuple.tuple("f", 8.0));
    }

    /** Hours since it was fitted and since it was serviced: what was ridden before the log, and the rides of the log. */
    @Test
    void hoursAreCountedSinceFittedAndSinceServiced() {
        String chain = "{name: c, kind: chain, on: b, mass: 250 g, hours used: 20 h}";
        UpkeepPlan plan = with(FORK, chain).ride(START, 3, "dry").service(START, "f", "oil and seals").ride(START.plusDays(2), 4, "wet")
                .service(START.plusDays(3), "c", "renew").ride(START.plusDays(4), 1, "dry").plan(1);
        PartHours fork = plan.hours().stream().filter(each -> each.part().equals("f")).findFirst().orElseThrow();
        assertThat(fork.hours()).isCloseTo(8 * HOUR, within(1.0));
        assertThat(fork.service()).isCloseTo(5 * HOUR, within(1.0));
        assertThat(fork.serviced()).isEqualTo(START);
        PartHours renewed = plan.hours().stream().filter(each -> each.part().equals("c")).findFirst().orElseThrow();
        assertThat(renewed.hours()).isCloseTo(HOUR, within(1.0));
        assertThat(renewed.complete()).isTrue();
        assertThat(plan.hours().get(0).complete()).isFalse();
    }

    /** Where the evenings of the week before are full, what can wait goes onto a later one before it is overdue, what safety hangs on onto an earlier one. */
    @Test
    void workGoesOntoEveningsThatHaveTime() {
        String fork = "{name: f, kind: fork, on: b, mass: 2 kg, travel: 120 mm, hours used: 0 h}";
        Workshop made = with(fork, WHEEL.replace("mass: 1 kg", "mass: 1 kg, hours used: 30 h")).ride(START, 1, "dry").weekly(7, "dry").made();
        // Free but for the weeks of 6 and 13 April: the fork is due after 42 h of 30 to 60 h, the wheel's spokes after 80 h with 31 h ridden.
        Map<LocalDate, Integer> taken = new HashMap<>();
        for (int i = 0; i < 14; i++) {
            taken.put(LocalDate.of(2026, 4, 6).plusDays(i), 60);
        }
        UpkeepPlan plan = UpkeepPlanner.of(made, List.of(), List.of(), new WorkTime(60, taken), START.plusWeeks(16));
        ServiceWork oil = of(plan, "f", "oil and seals").get(0);
        assertThat(oil.due()).isEqualTo(START.plusDays(42));
        assertThat(oil.evening()).isEqualTo(new ServiceEvening(LocalDate.of(2026, 4, 20), 0, Timing.WITHIN));
        assertThat(oil.why()).endsWith("; the evenings of the week before have no time");
        assertThat(oil.latest()).isEqualTo(START.plusDays(59));
        ServiceWork spokes = of(plan, "w", "true and check the spokes").get(0);
        assertThat(spokes.due()).isEqualTo(START.plusDays(49));
        assertThat(spokes.evening()).isEqualTo(new ServiceEvening(LocalDate.of(2026, 4, 5), 15, Timing.BEFORE));
        assertThat(plan.work()).noneMatch(each -> each.evening().late());
    }

    /** With no time at all everything is still there, in the week before it is due, and says so. */
    @Test
    void withoutTimeItIsSaid() {
        UpkeepPlan plan = with(FORK).ride(START, 10, "dry").weekly(7, "dry").plan(10, List.of(), List.of(), 0);
        ServiceWork work = of(plan, "f", "oil and seals").get(0);
        assertThat(work.week()).isEqualTo(LocalDate.of(2026, 4, 6));
        assertThat(work.evening().timing()).isEqualTo(Timing.NONE);
        assertThat(work.evening().found()).isFalse();
        assertThat(work.why()).endsWith("; no evening has 60 min for it, nor any time at all: give it a free day in \"time for work\"");
    }

    /** A job longer than every evening says so, and by how much, and what would do: evenings for what can rest half done, else a day. */
    @Test
    void aJobLongerThanEveryEveningSaysWhatWouldDo() {
        UpkeepPlan plan = with(FORK).ride(START, 10, "dry").weekly(7, "dry").plan(30, List.of(), List.of(), 45);
        assertThat(of(plan, "f", "oil and seals").get(0).why()).endsWith("; no evening has 60 min for it, the longest has 45 min: it is done in one go, so give it a free "
                + "day in \"time for work\"");
        // 150 min of work in evenings of 45 min are four.
        assertThat(of(plan, "f", "full service").get(0).why()).endsWith("; no evening has 150 min for it, the longest has 45 min: it can rest half done, so spread it over "
                + "4 evenings, or give it a free day in \"time for work\"");
        assertThat(of(plan, "f", "full service").get(0).evening().found()).isFalse();
    }

    /** Evenings that would be long enough, and are full until the end. */
    @Test
    void aJobThatFindsOnlyFullEveningsSaysSo() {
        Map<LocalDate, Integer> taken = new HashMap<>();
        START.datesUntil(START.plusWeeks(11)).forEach(day -> taken.put(day, 80));
        Workshop made = with(FORK).ride(START, 10, "dry").weekly(7, "dry").made();
        UpkeepPlan plan = UpkeepPlanner.of(made, List.of(), List.of(), new WorkTime(120, taken), START.plusWeeks(10));
        assertThat(of(plan, "f", "oil and seals").get(0).why()).endsWith("; no evening has 60 min left for it: give one more time, or give it a free day in \"time for work\"");
    }

    /** Due on 11 April with no time until the 14th: as the manufacturer states it exactly, it cannot wait, so it is late. */
    @Test
    void whatFindsNoEveningInTimeIsLate() {
        Map<LocalDate, Integer> taken = new HashMap<>();
        START.datesUntil(LocalDate.of(2026, 4, 14)).forEach(day -> taken.put(day, 1));
        Workshop made = with(FORK).ride(START, 10, "dry").weekly(7, "dry").made();
        ServiceWork work = of(UpkeepPlanner.of(made, List.of(), List.of(), new WorkTime(60, taken), START.plusWeeks(10)), "f", "oil and seals").get(0);
        assertThat(work.due()).isEqualTo(LocalDate.of(2026, 4, 11));
        assertThat(work.evening()).isEqualTo(new ServiceEvening(LocalDate.of(2026, 4, 14), 0, Timing.LATE));
        assertThat(work.why()).endsWith("; late: no evening before it is due has the time");
    }

    /** Two jobs share an evening as long as both fit, one after the other and after what is there already; the third goes onto the one before. */
    @Test
    void anEveningIsFilledAndNeverOverfilled() {
        EveningFinder evenings = new EveningFinder(new WorkTime(day -> 90, Map.of(START.plusDays(5), 10)), START, START.plusDays(9));
        LocalDate day = START.plusDays(5);
        assertThat(evenings.take(40, false, day, null, each -> false)).isEqualTo(new ServiceEvening(day, 10, Timing.BEFORE));
        assertThat(evenings.take(40, false, day, null, each -> false)).isEqualTo(new ServiceEvening(day, 50, Timing.BEFORE));
        assertThat(evenings.take(1, false, day, null, each -> false)).isEqualTo(new ServiceEvening(day.minusDays(1), 0, Timing.BEFORE));
        assertThat(evenings.take(91, false, day, null, each -> false)).isEqualTo(new ServiceEvening(day, 0, Timing.NONE, new ServiceEvening.Shortage(91, 90, false)));
    }

    /** Without a usual week, a log of four weeks and more says how much is ridden: 8 h in 28 days are 2 h a week. */
    @Test
    void theLogSaysWhatAUsualWeekIs() {
        UpkeepPlan plan = with(FORK).ride(START, 4, "dry").ride(START.plusDays(27), 4, "dry").plan(4);
        assertThat(plan.notes()).contains("Between the events: 2 h a week on b, the mean of the log.");
        UpkeepPlan brief = with(FORK).ride(START, 4, "dry").plan(4);
        assertThat(brief.notes()).contains("Between the events nothing is ridden: the log gives no usual week and is too short to work one out.");
    }

    @Test
    void aWorkshopWithoutALogHasNoPlan() {
        Workshop none = new ExampleWorkshop("bikes:\n  - {name: b, mass: 9 kg}\n").made().with(null);
        assertThat(UpkeepPlanner.of(none, List.of(), List.of(), new WorkTime(60, Map.of()), START)).isEqualTo(UpkeepPlan.NONE);
    }

    /** A time that the workshop gives for a change is the time of a renewal. */
    @Test
    void minutesOfTheWorkshopCount() {
        String text = "minutes: {chain: 7 min}\nbikes:\n  - {name: b, mass: 9 kg}\nparts:\n"
                + "  - {name: c, kind: chain, on: b, mass: 250 g, hours used: 120 h}\n";
        ServiceWork work = of(new ExampleWorkshop(text).ride(START, 1, "dry").weekly(7, "dry").plan(10), "c", "renew").get(0);
        assertThat(work.minutes()).isEqualTo(7);
    }

    @Test
    void usualRidesOfOneBikeAreOne() {
        UpkeepPlan one = with(FORK).ride(START, 10, "dry").weekly(7, "dry").plan(30);
        assertThat(with(FORK).ride(START, 10, "dry").weekly(3, "dry").weekly(4, "dry").plan(30)).isEqualTo(one);
        assertThat(one.weeks()).isNotEmpty();
    }
}
