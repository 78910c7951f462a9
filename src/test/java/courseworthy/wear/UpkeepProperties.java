package courseworthy.wear;

import static courseworthy.wear.ExampleWorkshop.HOUR;
import static courseworthy.wear.ExampleWorkshop.START;
import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.ride.Range;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What holds for any rides, parts and intervals. */
class UpkeepProperties {

    private static final List<String> GOINGS = List.of("dry", "damp", "wet");
    private static final DirtFactors DIRT = IntervalTable.shipped().dirt();
    private static final LocalDate FROM = START.plusDays(20);

    /** More hours never make anything due later. */
    @Property(tries = 300, seed = "20261130")
    void moreHoursAreNeverDueLater(@ForAll long seed, @ForAll @IntRange(min = 1, max = 50) int size) {
        Random random = new Random(seed);
        List<RideUse> uses = uses(random, size);
        List<RideUse> more = new ArrayList<>(uses);
        int changed = random.nextInt(size);
        RideUse use = more.get(changed);
        more.set(changed, with(use, use.hours().mid() + random.nextInt(20) * HOUR, use.going(), use.mud()));
        everyRow(random, (row, start) -> neverLater(row, start, uses, more));
    }

    /** Neither dirt nor more mud makes anything last longer. */
    @Property(tries = 300, seed = "20261130")
    void dirtNeverLengthens(@ForAll long seed, @ForAll @IntRange(min = 1, max = 50) int size) {
        Random random = new Random(seed);
        List<RideUse> uses = uses(random, size);
        List<RideUse> dirtier = new ArrayList<>();
        for (RideUse use : uses) {
            int going = use.going() == null ? 0 : GOINGS.indexOf(use.going());
            String worse = use.going() == null ? "wet" : GOINGS.get(going + random.nextInt(GOINGS.size() - going));
            dirtier.add(with(use, use.hours().mid(), worse, Math.min(1, (use.mud() == null ? 0 : use.mud()) + random.nextDouble())));
        }
        everyRow(random, (row, start) -> neverLater(row, start, uses, dirtier));
    }

    /** What was just done is due as on a part that was never ridden before, and never earlier than if it had not been done. */
    @Property(tries = 300, seed = "20261130")
    void aServiceResets(@ForAll long seed, @ForAll @IntRange(min = 1, max = 50) int size) {
        Random random = new Random(seed);
        List<RideUse> uses = uses(random, size);
        LocalDate day = START.plusDays(random.nextInt(60));
        List<RideUse> after = uses.stream().filter(each -> each.date().isAfter(day)).toList();
        everyRow(random, (row, start) -> {
            ServiceStart done = ServiceStart.done(day, row.job());
            ServiceClock.Due fresh = new ServiceClock(row, done, DIRT).due(uses, FROM);
            assertThat(fresh).isEqualTo(new ServiceClock(row, done, DIRT).due(after, FROM));
            if (start.day() == null || !start.day().isAfter(day)) {
                ServiceClock.Due kept = new ServiceClock(row, start, DIRT).due(uses, FROM);
                // By its age only where the day is known from which it counts.
                notBefore(start.day() == null && row.every().days() != null && fresh.byAge() ? null : fresh.due(), kept.due(), row);
            }
        });
    }

    /** A plan has no safety job after its day, none before the plan begins, no evening over its time, none late unless it says so, and nothing twice in a day. */
    @Property(tries = 100, seed = "20261130")
    void aPlanKeepsItsDaysAndEvenings(@ForAll long seed, @ForAll @IntRange(min = 0, max = 120) int aDay, @ForAll @IntRange(min = 1, max = 30) int weeks) {
        Random random = new Random(seed);
        ExampleWorkshop shop = ExampleWorkshop.with("{name: f, kind: fork, on: b, mass: 2 kg, travel: 120 mm, hours used: " + random.nextInt(60) + " h}",
                "{name: w, kind: wheel, on: b, end: rear, mass: 1 kg, hours used: " + random.nextInt(300) + " h}", "{name: t, kind: tyre, on: w, mass: 600 g}",
                "{name: s, kind: sealant, on: w, mass: 60 g, added: 2026-02-01}", "{name: c, kind: chain, on: b, mass: 250 g, hours used: " + random.nextInt(200) + " h}",
                "{name: p, kind: brake pads, on: b, end: rear, mass: 20 g, compound: organic}");
        shop.ride(START, 1 + random.nextInt(8), GOINGS.get(random.nextInt(3))).weekly(1 + random.nextInt(14), GOINGS.get(random.nextInt(3)));
        LocalDate race = START.plusDays(1 + random.nextInt(7 * weeks));
        UpkeepPlan plan = shop.plan(weeks, List.of(ExampleWorkshop.event(race, 6, "b", "f", "w", "t", "s", "c", "p")), List.of(), aDay);
        LocalDate from = START.plusDays(1);
        Map<LocalDate, Integer> minutes = new HashMap<>();
        Map<String, LocalDate> last = new HashMap<>();
        for (ServiceWork work : plan.work()) {
            assertThat(work.due()).isBetween(from, START.plusWeeks(weeks));
            assertThat(work.evening().date()).isBetween(from, START.plusWeeks(weeks));
            boolean before = work.evening().date().isBefore(work.due()) || work.due().equals(from);
            assertThat(before || work.evening().late() || !work.safety() && (work.latest() == null || work.evening().date().isBefore(work.latest()))).as(work.toString()).isTrue();
            assertThat(work.evening().late()).as(work.toString()).isEqualTo(work.why().contains("; late: ") || work.why().contains("; no evening has "));
            if (work.evening().found()) {
                assertThat(work.evening().begin()).isEqualTo(minutes.getOrDefault(work.evening().date(), 0));
                minutes.merge(work.evening().date(), work.minutes(), Integer::sum);
            }
            LocalDate earlier = last.put(work.what(), work.due());
            assertThat(earlier == null || earlier.isBefore(work.due())).as(work.toString()).isTrue();
        }
        minutes.forEach((day, sum) -> assertThat(sum).as("evening of " + day).isLessThanOrEqualTo(aDay));
    }

    private interface Check {
        void of(ServiceInterval row, ServiceStart start);
    }

    private static void everyRow(Random random, Check check) {
        for (ServiceInterval row : IntervalTable.shipped().rows()) {
            LocalDate day = random.nextBoolean() ? null : START.plusDays(random.nextInt(30));
            Double used = row.gauge() == null || random.nextBoolean() ? null : Double.valueOf(random.nextDouble());
            check.of(row, new ServiceStart(day, random.nextInt(40) * HOUR, used, true, "serviced"));
        }
    }

    private static void neverLater(ServiceInterval row, ServiceStart start, List<RideUse> less, List<RideUse> more) {
        ServiceClock.Due first = new ServiceClock(row, start, DIRT).due(less, FROM);
        ServiceClock.Due second = new ServiceClock(row, start, DIRT).due(more, FROM);
        notBefore(first.due(), second.due(), row);
        notBefore(first.latest(), second.latest(), row);
    }

    /** Whether the one is not before the other; null is never. */
    private static void notBefore(LocalDate one, LocalDate other, ServiceInterval row) {
        assertThat(one == null || other != null && !other.isAfter(one)).as(row.id() + ": " + one + ", " + other).isTrue();
    }

    private static List<RideUse> uses(Random random, int size) {
        List<RideUse> out = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            String going = random.nextInt(4) == 0 ? null : GOINGS.get(random.nextInt(3));
            Double mud = random.nextBoolean() ? null : Double.valueOf(random.nextDouble());
            double hours = random.nextInt(30) * HOUR / 2;
            out.add(new RideUse(START.plusDays(random.nextInt(90)), "b", Set.of("b", "p"), new Range(hours * 0.8, hours, hours * 1.3), null, going, mud, null));
        }
        out.sort(Comparator.comparing(RideUse::date));
        return out;
    }

    private static RideUse with(RideUse use, double hours, String going, Double mud) {
        return new RideUse(use.date(), use.bike(), use.parts(), new Range(Math.max(use.hours().low(), hours * 0.8), Math.max(use.hours().mid(), hours),
                Math.max(use.hours().high(), hours * 1.3)), use.length(), going, mud, use.event());
    }
}
