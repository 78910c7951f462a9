package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.Draws;
import courseworthy.fit.BuildLoad;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.WorkRules;
import courseworthy.workshop.Workshop;
import courseworthy.workshop.WorkshopGenerator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Starts on several bikes of one workshop that lend each other parts, made by chance and gone through job by job: there, from one start to
 * the next, and back.
 */
class LendingTest {

    private static final Set<PartKind> ON_A_WHEEL = Set.of(PartKind.TYRE, PartKind.INSERT, PartKind.ROTOR, PartKind.CASSETTE);

    /** What is not moved for itself; stem, bar, saddle and pedals go with what carries them. */
    private static final Set<PartKind> GOES_ALONG = Set.of(PartKind.SEALANT, PartKind.BAG);

    private int lent;
    private int wheels;
    private int bled;

    /**
     * Workshops of two or three bikes. No wheel goes in before its tyre is on, or is taken out again; a part goes on only where
     * the place is free and once it is off whatever it was on; each start finds its bike complete, and the way back leaves every bike as it was.
     */
    @Test
    void noPlanLeavesABikeThatAnotherStartNeeds() {
        int starts = 0;
        for (int seed = 0; seed < Draws.of(2_000); seed++) {
            Workshop made = new WorkshopGenerator(seed, seed % 3 * 0.012, seed % 2 * 0.01).withSystems(seed % 5 < 2).of(2 + seed % 2, 40 + seed % 40);
            MountingState home = MountingState.of(made);
            MountingState first = started(made, made.bikes().get(seed % 2), home, seed);
            if (first == null) {
                continue;
            }
            starts++;
            goneThrough(made, home, first, "seed " + seed + ", first start");
            goneThrough(made, first, home, "seed " + seed + ", way back");
            MountingState second = started(made, made.bikes().get(1 - seed % 2), first, seed + 7);
            if (second != null) {
                goneThrough(made, first, second, "seed " + seed + ", from start to start");
                goneThrough(made, second, home, "seed " + seed + ", way back from both");
            }
        }
        assertThat(starts).isGreaterThan(Draws.leastOf(500));
        assertThat(lent).isGreaterThan(Draws.leastOf(200));
        assertThat(wheels).isGreaterThan(Draws.leastOf(500));
        assertThat(bled).as("brakes bled").isGreaterThan(Draws.leastOf(20));
    }

    /** What stands once a bike is built for a ride; null where it cannot be. */
    private MountingState started(Workshop workshop, Part bike, MountingState from, int seed) {
        Workshop stands = workshop.mounted(from.written(), from.ends());
        BuildObjective aims = new BuildObjective(BuildSearchTest.call(seed % 100), BuildSearchTest.returns(seed));
        Map<MountingPlace, Part> build = new BuildSearch(stands, stands.find(bike.name()), new BuildLoad(75.0, 90.0, 0.1), aims).solve();
        if (build == null) {
            return null;
        }
        Map<MountingPlace, Part> parts = new HashMap<>();
        build.forEach((place, part) -> parts.put(place, workshop.find(part.name())));
        lent += (int) parts.values().stream().filter(each -> from.bike(each) != null && from.bike(each) != bike).count();
        MountingState out = from.with(bike, parts);
        Map<MountingPlace, Part> places = out.places(bike);
        for (MountingPlace place : MountingPlace.values()) {
            assertThat(!workshop.needs(bike, place) || places.containsKey(place)).as(seed + ": " + bike + " without " + place).isTrue();
        }
        return out;
    }

    private void goneThrough(Workshop workshop, MountingState before, MountingState after, String where) {
        List<Build.Swap> swaps = WorkOrder.all(workshop.bikes().get(0), workshop, before, after);
        MountingState now = before.copy();
        Set<String> out = new HashSet<>();
        Set<String> in = new HashSet<>();
        for (WorkJob job : WorkPlan.jobs(WorkGraph.of(swaps, before, WorkRules.shipped()))) {
            String place = where + ", " + job.bike() + " " + job.end();
            boolean onBike = job.bike().kind() == PartKind.BIKE;
            if (job.kind().equals("wheel out")) {
                assertThat(out.add(place)).as(place + " out twice").isTrue();
                assertThat(in).as(place + " taken out again").doesNotContain(place);
                now.put(workshop.find(job.wheels().iterator().next()), null);
            } else if (job.kind().equals("wheel in")) {
                assertThat(in.add(place)).as(place + " in twice").isTrue();
                wheels++;
            }
            if (job.kind().equals("bleed the brake")) {
                bled++;
                assertThat(in).as(place + " bled with the wheel in").doesNotContain(place);
                assertThat(out.contains(place) || !before.places(job.bike()).containsKey("front".equals(job.end()) ? MountingPlace.FRONT_WHEEL : MountingPlace.REAR_WHEEL))
                        .as(place + " bled before the wheel is out").isTrue();
            }
            Build.Swap swap = job.swap();
            if (swap == null) {
                backIn(job, workshop, now);
                continue;
            }
            if (onBike && ON_A_WHEEL.contains(swap.place().kind())) {
                assertThat(in).as(place + ": " + swap.what() + " once the wheel is in").doesNotContain(place);
            }
            swapped(swap, now, after, where);
        }
        for (Part each : workshop.parts()) {
            MountingPlace place = after.place(each) == null ? before.place(each) : after.place(each);
            // An insert of a bike whose wheels are not listed is on the bike, in no place.
            boolean nowhere = after.on(each) != null && after.place(each) == null;
            boolean carried = place != null && place.host() == null && WorkOrder.carrier(place) != null;
            if (place != null && !nowhere && !carried && !GOES_ALONG.contains(each.kind())) {
                assertThat(now.bike(each)).as(where + ": " + each).isEqualTo(after.bike(each));
            }
        }
    }

    private static void backIn(WorkJob job, Workshop workshop, MountingState now) {
        if (job.kind().equals(WorkRules.WHEEL_IN)) {
            now.put(workshop.find(job.wheels().iterator().next()), job.bike());
        }
    }

    /** One part off and another on, by hand. */
    private static void swapped(Build.Swap swap, MountingState now, MountingState after, String where) {
        boolean gone = swap.off() != null && now.on(swap.off()) == after.on(swap.off());
        if (swap.off() != null && !gone) {
            now.put(swap.off(), null);
        }
        Part on = swap.on();
        if (on == null) {
            return;
        }
        Part bike = now.bike(on);
        boolean free = bike == null || bike == swap.bike() || bike == swap.from();
        assertThat(free).as(where + ": " + swap.what() + ", which is on " + bike).isTrue();
        now.put(on, null);
        Part host = after.on(on);
        List<Part> there = swap.place() == MountingPlace.LIGHTS || swap.place().host() == null && WorkOrder.carrier(swap.place()) != null ? List.of() : now.carried(host).stream()
                .filter(each -> now.place(each) == (host.kind() == PartKind.BIKE ? swap.place() : after.place(on)) && now.on(each) == host).toList();
        assertThat(there).as(where + ": " + swap.what() + " where something still is").isEmpty();
        now.put(on, after.on(on));
    }
}
