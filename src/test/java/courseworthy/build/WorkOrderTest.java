package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.build.Build.Swap;
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

/** What each step does to the weight of a bike, and what comes off for it, on an invented hardtail; grams are added up by hand. */
class WorkOrderTest {

    private static final String WORKSHOP = """
            bikes:
              - {name: bike, kind: cross-country hardtail, mass: 2 kg}
            parts:
              - {name: old fork, kind: fork, on: bike, mass: 2 kg}
              - {name: new fork, kind: fork, mass: 1600 g}
              - {name: race, kind: crown race, on: old fork, mass: 10 g}
              - {name: spacers, kind: spacers, on: old fork, mass: 12 g, height: 15 mm}
              - {name: old stem, kind: stem, on: old fork, mass: 120 g}
              - {name: new stem, kind: stem, mass: 135 g}
              - {name: bar, kind: bar, on: old stem, mass: 300 g}
              - {name: wide bar, kind: bar, mass: 350 g}
              - {name: lever, kind: lockout remote, on: bar, mass: 40 g}
              - {name: old crank, kind: crank, on: bike, mass: 600 g}
              - {name: new crank, kind: crank, mass: 500 g}
              - {name: ring, kind: chainring, on: old crank, mass: 70 g}
              - {name: wheel, kind: wheel, on: bike, end: rear, mass: 1 kg}
              - {name: tyre, kind: tyre, on: wheel, mass: 800 g}
              - {name: light wheel, kind: wheel, end: rear, mass: 700 g}
              - {name: thin tyre, kind: tyre, on: light wheel, mass: 600 g}
              - {name: old sealant, kind: sealant, on: light wheel, mass: 60 g, added: 2026-03-02}
            """;

    private final Workshop workshop;
    private final Part bike;
    private final MountingState before;
    private final Map<MountingPlace, Part> build;

    WorkOrderTest() {
        Faults faults = new Faults();
        workshop = WorkshopReader.decode(YamlReader.read(WORKSHOP.getBytes(StandardCharsets.UTF_8), "w.yaml", faults), "w.yaml", faults);
        faults.throwIfAny();
        bike = workshop.bikes().get(0);
        before = MountingState.of(workshop);
        build = workshop.mounted(bike);
    }

    private void put(MountingPlace place, String part) {
        build.put(place, workshop.find(part));
    }

    private List<String> there() {
        return said(WorkOrder.on(bike, workshop, before, before.with(bike, build)));
    }

    private List<String> back() {
        MountingState after = before.with(bike, build);
        return said(WorkOrder.all(bike, workshop, after, before));
    }

    private static List<String> said(List<Swap> swaps) {
        return swaps.stream().map(each -> each.what() + ": " + each.grams()).toList();
    }

    /** Stem, spacers, bar and lever stay with the bike: the fork alone makes it lighter, 1600 for 2000, and no stem is left on a fork that lies loose. */
    @Test
    void aForkIsWeighedWithoutTheStemOnIt() {
        put(MountingPlace.FORK, "new fork");
        assertThat(there()).containsExactly("Move race across from old fork: -10", "Fit new fork, with its race, in place of old fork: -390");
        assertThat(back()).containsExactly("Move race across from new fork: -10", "Fit old fork, with its race, in place of new fork: 410");
    }

    /** The bar and what is clamped to it go over to the other stem: 135 g for 120. */
    @Test
    void aStemIsWeighedWithoutTheBarInIt() {
        put(MountingPlace.STEM, "new stem");
        assertThat(there()).containsExactly("Fit new stem in place of old stem: 15");
        assertThat(back()).containsExactly("Fit old stem in place of new stem: -15");
    }

    @Test
    void forkAndStemGoBackAsTwoSwaps() {
        put(MountingPlace.FORK, "new fork");
        put(MountingPlace.STEM, "new stem");
        assertThat(back()).containsExactly("Move race across from new fork: -10", "Fit old fork, with its race, in place of new fork: 410",
                "Fit old stem in place of new stem: -15");
    }

    /** A stem that goes back on has no second bar in it: the bar is swapped after it, at its own weight. */
    @Test
    void aStemGoesBackWithoutASecondBar() {
        put(MountingPlace.STEM, "new stem");
        put(MountingPlace.BAR, "wide bar");
        assertThat(back()).containsExactly("Fit old stem in place of new stem: -15", "Fit bar in place of wide bar: -90", "Move lever across from wide bar: 40");
    }

    /** A race is pressed off a fork that is out, and a ring unbolted from a crank that is off. */
    @Test
    void whatCarriesThemIsTakenOffForARaceAndARing() {
        put(MountingPlace.FORK, "new fork");
        put(MountingPlace.CRANK, "new crank");
        List<Swap> swaps = WorkOrder.on(bike, workshop, before, before.with(bike, build));
        assertThat(swaps).filteredOn(each -> each.place() == MountingPlace.CROWN_RACE).first().extracting(each -> each.work().along()).isEqualTo(List.of("Take old fork out of bike for it"));
        assertThat(swaps).filteredOn(each -> each.place() == MountingPlace.CHAINRING).first().extracting(each -> each.work().along()).isEqualTo(List.of("Take old crank off bike for it"));
    }

    /** With another tyre on its wheel the old sealant is gone: the wheel does not come with it. Untouched, it does. */
    @Test
    void oldSealantGoesWithItsTyre() {
        put(MountingPlace.REAR_WHEEL, "light wheel");
        put(MountingPlace.REAR_TYRE, "thin tyre");
        assertThat(there()).anyMatch(each -> each.startsWith("Fit light wheel, with its thin tyre and old sealant, in place of wheel"));
        put(MountingPlace.REAR_TYRE, "tyre");
        assertThat(there()).anyMatch(each -> each.startsWith("Fit light wheel, with its tyre, in place of wheel"));
    }
}
