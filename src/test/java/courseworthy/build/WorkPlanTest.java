package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.Draws;
import courseworthy.build.Build.Swap;
import courseworthy.event.Travel;
import courseworthy.event.WorkHours;
import courseworthy.fit.BuildLoad;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.Workshop;
import courseworthy.workshop.WorkshopGenerator;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The plan of work for builds of workshops made by chance, there and back, gone through step by step as a mechanic would. */
class WorkPlanTest {

    private static final Set<PartKind> ON_A_WHEEL = Set.of(PartKind.TYRE, PartKind.INSERT, PartKind.ROTOR, PartKind.CASSETTE);

    /** No wheel goes in before all is on it, none goes out twice, and in the end everything is where the build wants it. */
    @Test
    void aWheelGoesInOnceAndComplete() {
        int plans = 0;
        int wheels = 0;
        for (int seed = 0; seed < Draws.of(2_000); seed++) {
            Workshop made = new WorkshopGenerator(seed, seed % 4 * 0.012, seed % 2 * 0.01).withSystems(seed % 3 == 0).of(1 + seed % 2, 34 + seed % 40);
            BuildObjective aims = new BuildObjective(BuildSearchTest.call(seed % 100), BuildSearchTest.returns(seed));
            Part bike = made.bikes().get(0);
            Map<MountingPlace, Part> build = new BuildSearch(made, bike, new BuildLoad(75.0, 90.0, 0.1), aims).solve();
            if (build == null) {
                continue;
            }
            plans++;
            MountingState before = MountingState.of(made);
            MountingState after = before.with(bike, build);
            wheels += goneThrough(WorkOrder.on(bike, made, before, after), before, bike, "seed " + seed);
            goneThrough(WorkOrder.all(bike, made, after, before), after, bike, "seed " + seed + ", back");
            wantedIsMounted(WorkOrder.on(bike, made, before, after), build, before, bike, "seed " + seed);
        }
        assertThat(plans).isGreaterThan(Draws.leastOf(500));
        assertThat(wheels).isGreaterThan(Draws.leastOf(300));
    }

    private static int goneThrough(List<Swap> swaps, MountingState before, Part bike, String where) {
        Set<String> wentIn = new HashSet<>();
        Set<String> out = new HashSet<>();
        List<Swap> done = new ArrayList<>();
        for (WorkJob job : WorkPlan.jobs(swaps, before)) {
            String place = job.bike() + " " + job.end();
            if (job.kind().equals("wheel out")) {
                assertThat(out.add(place)).as(where + ": out twice, " + place).isTrue();
                assertThat(wentIn).as(where + ": out again, " + place).doesNotContain(place);
            }
            if (job.kind().equals("wheel in")) {
                assertThat(wentIn.add(place)).as(where + ": in twice, " + place).isTrue();
            }
            Swap swap = job.swap();
            if (swap != null && ON_A_WHEEL.contains(swap.place().kind()) && job.bike().kind() == PartKind.BIKE) {
                assertThat(wentIn).as(where + ": " + swap.what() + " once the wheel is in").doesNotContain(place);
                Part wheel = before.places(job.bike()).get(swap.place().host());
                boolean mounted = swap.off() != null && wheel != null && before.isOn(swap.off(), wheel);
                assertThat(!mounted || out.contains(place)).as(where + ": " + swap.what() + " with the wheel in").isTrue();
            }
            if (swap != null && swap.place().kind() == PartKind.FORK && before.places(job.bike()).containsKey(MountingPlace.FRONT_WHEEL)) {
                assertThat(out).as(where + ": fork").contains(job.bike() + " front");
            }
            if (swap != null) {
                done.add(swap);
            }
        }
        assertThat(new LinkedHashSet<>(done)).as(where).hasSameElementsAs(swaps);
        for (String each : out) {
            boolean left = swaps.stream().anyMatch(swap -> swap.place().kind() == PartKind.WHEEL && swap.on() == null);
            assertThat(left || wentIn.contains(each)).as(where + ": left out, " + each).isTrue();
        }
        return wentIn.size();
    }

    /** Each step is done by hand: what stands in a place afterwards is what the build has there. */
    private static void wantedIsMounted(List<Swap> swaps, Map<MountingPlace, Part> build, MountingState before, Part bike, String where) {
        Map<MountingPlace, Part> stands = new HashMap<>(before.places(bike));
        for (Swap swap : WorkPlan.inOrder(swaps, before)) {
            stands.values().remove(swap.on());
            if (swap.on() == null) {
                stands.remove(swap.place());
                continue;
            }
            if (swap.place().kind() == PartKind.WHEEL || swap.place().kind() == PartKind.CRANK) {
                stands.keySet().removeIf(place -> place.host() == swap.place() && !swap.with().contains(stands.get(place)));
                for (Part each : swap.with()) {
                    build.forEach((place, part) -> stands.compute(place, (any, there) -> part == each ? part : there));
                }
            }
            stands.put(swap.place(), swap.on());
        }
        build.forEach((place, part) -> {
            if (place.host() == null || build.containsKey(place.host())) {
                assertThat(stands.get(place)).as(where + " " + place).isEqualTo(part);
            }
        });
    }

    /**
     * A tyre on evenings of different length, counted back by hand from a bike that leaves on Friday 12 June: Wednesday is the last evening, and has
     * no time; the test ride of 45 min goes to Tuesday, since Monday has an hour and Tuesday too, and the tyre to the evening before.
     */
    @Test
    void eveningsMayDifferAndABikeMayLeaveEarly() {
        Workshop made = new WorkshopGenerator(1, 0, 0).of(1, 60);
        MountingState before = MountingState.of(made);
        List<Swap> swaps = List.of(tyre(made, before));
        Travel travel = new Travel(LocalDate.of(2026, 6, 12), null);
        WorkHours hours = new WorkHours(null, 60, Map.of(DayOfWeek.WEDNESDAY, 0), Map.of(LocalDate.of(2026, 6, 8), 20));
        WorkPlan plan = WorkPlan.of(swaps, before, WorkDeadline.of(LocalDate.of(2026, 6, 14), travel, hours));
        assertThat(plan.evenings()).extracting(WorkPlan.WorkEvening::date).as("22 min do not fit into Monday's 20").containsExactly(LocalDate.of(2026, 6, 7), LocalDate.of(2026, 6, 9));
        assertThat(plan.evenings()).extracting(WorkPlan.WorkEvening::minutes).containsExactly(22, 45);
        WorkHours late = new WorkHours(LocalDate.of(2026, 6, 9), 60, Map.of(), Map.of());
        WorkPlan packed = WorkPlan.of(swaps, before, WorkDeadline.of(LocalDate.of(2026, 6, 12), Travel.NONE, late));
        assertThat(packed.evenings()).extracting(WorkPlan.WorkEvening::date).containsExactly(LocalDate.of(2026, 6, 9), LocalDate.of(2026, 6, 10));
        late = new WorkHours(LocalDate.of(2026, 6, 10), 60, Map.of(), Map.of());
        packed = WorkPlan.of(swaps, before, WorkDeadline.of(LocalDate.of(2026, 6, 12), Travel.NONE, late));
        assertThat(packed.evenings()).extracting(WorkPlan.WorkEvening::date).as("the evening of packing too").containsExactly(LocalDate.of(2026, 6, 10), LocalDate.of(2026, 6, 11));
        late = new WorkHours(LocalDate.of(2026, 6, 11), 60, Map.of(), Map.of());
        packed = WorkPlan.of(swaps, before, WorkDeadline.of(LocalDate.of(2026, 6, 12), Travel.NONE, late));
        assertThat(packed.fits()).as("a tyre holds overnight before it is ridden").isFalse();
    }

    /** The rotor, whose bolts need three hours, is done first where the brakes are bedded in on the same evening. */
    @Test
    void whatHasToSetIsBegunEarly() {
        int[][] waits = {{-1, -1, -1}, {-1, -1, 180}, {-1, -1, -1}};
        WorkScheduler plan = new WorkScheduler(new int[] {150, 10, 15}, waits, new int[3], EveningTimes.of(240));
        assertThat(plan.order()).containsExactly(1, 0, 2);
        assertThat(plan.starts()).containsExactly(19 * 60, 19 * 60 + 10, 19 * 60 + 190);
    }

    private static Swap tyre(Workshop made, MountingState before) {
        Part bike = made.bikes().get(0);
        Part off = before.places(bike).get(MountingPlace.FRONT_TYRE);
        Part on = made.parts().stream().filter(each -> each.kind() == PartKind.TYRE && each.on() == null).findFirst().orElseThrow();
        return new Swap(bike, MountingPlace.FRONT_TYRE, off, on, List.of(), null, null, null, new Build.SwapWork(20, List.of(), List.of(), false), List.of());
    }

    /** A tyre and its overnight wait, worked out by hand: out, tyre and in on the first evening, the ride on the second. */
    @Test
    void aTyreIsRiddenTheEveningAfter() {
        Workshop made = new WorkshopGenerator(1, 0, 0).of(1, 60);
        Part bike = made.bikes().get(0);
        MountingState before = MountingState.of(made);
        Part wheel = before.places(bike).get(MountingPlace.FRONT_WHEEL);
        Part off = before.places(bike).get(MountingPlace.FRONT_TYRE);
        Part on = made.parts().stream().filter(each -> each.kind() == PartKind.TYRE && each.on() == null).findFirst().orElseThrow();
        Swap swap = new Swap(bike, MountingPlace.FRONT_TYRE, off, on, List.of(), null, null, null, new Build.SwapWork(20, List.of(), List.of(), false), List.of());
        WorkPlan plan = WorkPlan.of(List.of(swap), before, WorkDeadline.of(LocalDate.of(2026, 6, 14), Travel.NONE, WorkHours.every(90)));
        assertThat(wheel).isNotNull();
        assertThat(plan.evenings()).extracting(WorkPlan.WorkEvening::number).containsExactly(1, 2);
        assertThat(plan.evenings().get(0).steps()).extracting(WorkPlan.Step::what).containsExactly("Take the front wheel out of bike 0", swap.what(),
                "Put the front wheel back into bike 0, axle as marked");
        assertThat(plan.evenings().get(0).steps().get(1)).isEqualTo(new WorkPlan.Step("bike 0", swap.what(), on.name(), 19 * 60 + 1, 20, 720, "test ride"));
        assertThat(plan.evenings().get(0).minutes()).isEqualTo(22);
        assertThat(plan.evenings().get(1).steps()).extracting(WorkPlan.Step::minutes).containsExactly(45);
        assertThat(plan.evenings().get(0).date()).as("ridden two days before, so the tyre is on three days before").isEqualTo("2026-06-11");
    }
}
