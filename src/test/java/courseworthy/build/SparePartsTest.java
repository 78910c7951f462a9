package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.text.YamlReader;
import courseworthy.workshop.Part;
import courseworthy.workshop.Workshop;
import courseworthy.workshop.WorkshopReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is packed for a build, on an invented bike. */
class SparePartsTest {

    private static final String WORKSHOP = """
            bikes:
              - {name: bike, kind: gravel, mass: 2 kg, pad shape: square}
            parts:
              - {name: front wheel, kind: wheel, end: front, on: bike, mass: 800 g, rotor mount: bolts, spoke lengths: [288 mm, 290 mm]}
              - {name: rotor, kind: rotor, on: front wheel, mass: 120 g, rotor mount: bolts, pads permitted: [organic]}
              - {name: pads, kind: brake pads, on: bike, end: front, mass: 20 g, compound: organic, pad shape: square}
              - {name: derailleur, kind: derailleur, on: bike, mass: 300 g, drivetrain: hill, shifting: electronic}
              - {name: first cell, kind: battery, on: bike, mass: 25 g, drivetrain: hill}
              - {name: box A, kind: spokes, spoke length: 288 mm, quantity: 4}
              - {name: box B, kind: spokes, spoke length: 289 mm, quantity: 9}
              - {name: box C, kind: spokes, spoke length: 290 mm, quantity: 0}
              - {name: good pads, kind: brake pads, mass: 20 g, compound: organic, pad shape: square}
              - {name: hard pads, kind: brake pads, mass: 20 g, compound: sintered, pad shape: square}
              - {name: round pads, kind: brake pads, mass: 20 g, compound: organic, pad shape: round}
              - {name: rear pads, kind: brake pads, end: rear, mass: 20 g, compound: organic, pad shape: square}
              - {name: second cell, kind: battery, mass: 25 g, drivetrain: hill}
              - {name: lane cell, kind: battery, mass: 25 g, drivetrain: lane}
            """;

    private static Workshop read(String text, Faults faults) {
        return WorkshopReader.decode(YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "w.yaml", faults), "w.yaml", faults);
    }

    @Test
    void whatGoesWithTheBuildIsListedAndWhatLacksIsSaid() {
        Faults faults = new Faults();
        Workshop workshop = read(WORKSHOP, faults);
        faults.throwIfAny();
        Part bike = workshop.bikes().get(0);
        assertThat(SpareParts.of(workshop, bike, workshop.mounted(bike))).containsExactly(
                "Spokes for front wheel: 288 mm (4 in box A), 290 mm (none in the workshop)", "Pads for the front: good pads", "A second battery: second cell");
    }

    /** Spokes lie in a box: they have no mass to weigh, and are mounted on nothing. */
    @Test
    void spokesAreMountedNowhere() {
        Faults faults = new Faults();
        read("parts:\n  - {name: box, kind: spokes, spoke length: 290 mm, quantity: 4, on: wheel}\n", faults);
        assertThat(faults.faults()).extracting(Fault::text)
                .containsExactly("w.yaml:2: on: found an unknown key, expected one of: kind, name, spoke length, quantity");
        assertThat(faults.warnings()).isEmpty();
        Faults minutes = new Faults();
        read("minutes: {spokes: 5 min}\n", minutes);
        assertThat(minutes.faults()).singleElement().satisfies(each -> assertThat(each.text()).contains("spokes: found an unknown key"));
        Faults lengths = new Faults();
        read("parts:\n  - {name: wheel, kind: wheel, end: front, mass: 1 kg, spoke lengths: [29 mm]}\n", lengths);
        assertThat(lengths.faults()).singleElement().satisfies(each -> assertThat(each.text()).contains("expected lengths from 150 mm to 350 mm"));
    }
}
