package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.Faults;
import courseworthy.text.YamlReader;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.Workshop;
import courseworthy.workshop.WorkshopReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * What goes with another fork, on an invented hardtail. A fork of 516 mm where the geometry is stated for 506 mm, on 1128 mm of wheelbase at 67.5
 * degrees, turns the bike by asin(10 sin 67.5 / 1128), 0.47 degrees; all figures are worked out by hand from there.
 */
class ForkSwapChecksTest {

    private static final String WORKSHOP = """
            bikes:
              - {name: bike, kind: cross-country hardtail, mass: 2 kg, design fork length: 506 mm, head angle: 67.5 deg, wheelbase: 1128 mm, stack: 606 mm, reach: 428 mm,
                 headset cover: 7 mm, front hose: 820 mm, brake mount: flat, steerer: tapered}
            parts:
              - {name: old fork, kind: fork, on: bike, mass: 2 kg, length: 516 mm, fork offset: 44 mm, steerer: tapered, brake mount: post, remote: lever}
              - {name: new fork, kind: fork, mass: 1.6 kg, length: 506 mm, fork offset: 42 mm, steerer: tapered, brake mount: post, remote: lever, mount rotor: 160 mm}
              - {name: race, kind: crown race, on: old fork, mass: 10 g}
              - {name: lever, kind: lockout remote, on: bike, mass: 40 g, works: [lever]}
              - {name: caliper, kind: brake caliper, on: bike, end: front, mass: 110 g, brake mount: post, hose length: 850 mm}
              - {name: front wheel, kind: wheel, end: front, on: bike, mass: 800 g, bead seat: 622 mm}
              - {name: tyre, kind: tyre, on: front wheel, mass: 700 g, measured width: 58.5 mm}
              - {name: stem, kind: stem, on: bike, mass: 120 g, stem length: 70 mm, stem angle: -8 deg, clamp height: 40 mm}
              - {name: spacers, kind: spacers, on: bike, mass: 12 g, height: 15 mm}
              - {name: bar, kind: bar, on: stem, mass: 245 g, reach: -40 mm, rise: 5 mm}
            """;

    private static Workshop read(String text) {
        Faults faults = new Faults();
        Workshop read = WorkshopReader.decode(YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "w.yaml", faults), "w.yaml", faults);
        faults.throwIfAny();
        return read;
    }

    private static List<String> said(String text) {
        Workshop workshop = read(text);
        Part bike = workshop.bikes().get(0);
        Map<MountingPlace, Part> before = workshop.mounted(bike);
        Map<MountingPlace, Part> after = workshop.mounted(bike);
        after.put(MountingPlace.FORK, workshop.find("new fork"));
        return ForkSwapChecks.of(bike, before, after);
    }

    @Test
    void aForkSwapListsAllThatGoesWithIt() {
        assertThat(said(WORKSHOP)).containsExactly("Move race over to it",
                "Move caliper over to it, on its mount without an adapter; its hose reaches, with 30 mm to spare",
                "Connect lever to it",
                "The bar comes 4 mm lower and 5 mm farther forward, with stem and spacers as they are now",
                "Head angle 67.5 deg, 0.5 deg steeper than now; trail 108 mm, 1 mm less than now");
    }

    /** What is not listed is on the bike all the same, and what is not measured is asked for. */
    @Test
    void withNothingListedItSaysWhatToSeeTo() {
        String bare = WORKSHOP.replaceAll("(?m)^ +- \\{name: (race|lever|caliper),.*\n", "").replace("length: 516 mm, ", "").replace("remote: lever, mount rotor: 160 mm", "lockout: remote");
        assertThat(said(bare)).containsExactly("The crown race of your headset goes on it",
                "Move the front brake over to it: see that its hose reaches with the bar turned either way",
                "Its lockout remote goes on the bar",
                "Measure the height of the bar before, and set it again after",
                "Head angle and trail are not known: measure both forks from axle to crown");
    }

    @Test
    void aForkWithoutALockoutLeavesTheRemoteIdle() {
        assertThat(said(WORKSHOP.replace("remote: lever, mount rotor", "mount rotor"))).contains("lever has nothing to work on it");
        assertThat(said(WORKSHOP.replace("length: 516 mm, fork offset: 44 mm", "length: 506 mm, fork offset: 42 mm")))
                .contains("The bar stays where it is", "Head angle 67.5 deg, as now; trail 108 mm, as now");
    }

    /** The crown race is moved before the fork goes in, and moves back with it. */
    @Test
    void theCrownRaceIsMovedFirstAndBack() {
        Workshop workshop = read(WORKSHOP);
        Part bike = workshop.bikes().get(0);
        MountingState before = MountingState.of(workshop);
        Map<MountingPlace, Part> build = workshop.mounted(bike);
        build.put(MountingPlace.FORK, workshop.find("new fork"));
        MountingState after = before.with(bike, build);
        List<Build.Swap> swaps = WorkPlan.inOrder(WorkOrder.on(bike, workshop, before, after), before);
        assertThat(swaps).extracting(Build.Swap::what).containsExactly("Move race across from old fork", "Fit new fork, with its race, in place of old fork");
        assertThat(WorkPlan.inOrder(WorkOrder.all(bike, workshop, after, before), after)).extracting(Build.Swap::what)
                .containsExactly("Move race across from new fork", "Fit old fork, with its race, in place of new fork");
    }
}
