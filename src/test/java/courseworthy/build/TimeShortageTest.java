package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.event.Travel;
import courseworthy.event.WorkHours;
import courseworthy.fit.FitRules;
import courseworthy.problem.Faults;
import courseworthy.text.YamlReader;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.Workshop;
import courseworthy.workshop.WorkshopGenerator;
import courseworthy.workshop.WorkshopReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is made of a build where there is no time for all of it. */
class TimeShortageTest {

    private static final LocalDate RIDE = LocalDate.of(2026, 7, 18);

    private static WorkDeadline evenings(int days, int minutes) {
        return WorkDeadline.of(RIDE, Travel.NONE, new WorkHours(RIDE.minusDays(days), minutes, Map.of(), Map.of()));
    }

    /** Of workshops by chance and short evenings: whatever is made fits into them, and what is left out is on the bike as it was. */
    @Test
    void whatIsMadeFitsIntoTheTime() {
        FitRules rules = FitRules.load();
        int scarce = 0;
        int some = 0;
        for (int seed = 0; seed < 500; seed++) {
            Workshop workshop = new WorkshopGenerator(seed, 0.01, 0).of(1, 34);
            Recommendation wanted = Recommendation.of(BuildSearchTest.call(seed), null);
            Build build = BuildFinder.of(wanted, workshop, evenings(2, 10 + seed % 5 * 15), rules, null);
            if (build.bike() != null && build.leftOut() != null) {
                scarce++;
                some += build.swaps().isEmpty() ? 0 : 1;
                assertThat(build.plan().fits()).as("seed " + seed + " " + build.swaps()).isTrue();
                Map<MountingPlace, Part> stood = workshop.mounted(build.bike());
                Map<MountingPlace, Part> whole = BuildFinder.of(wanted, workshop, null, rules).inPlace();
                String where = "seed " + seed + " ";
                build.inPlace().forEach((place, part) -> assertThat(part).as(where + place).isIn(stood.get(place), whole.get(place)));
            }
        }
        assertThat(scarce).as("short of time").isGreaterThan(15);
        assertThat(some).as("with some of it made").isGreaterThan(5);
    }

    private static final String BRAKES = """
            bikes:
              - {name: grey bike, kind: gravel, mass: 3 kg, pad shape: flat, axle: plain, most rotor: 200 mm}
            parts:
              - {name: front wheel, kind: wheel, end: front, on: grey bike, rotor mount: bolts}
              - {name: rear wheel, kind: wheel, end: rear, on: grey bike, rotor mount: bolts}
              - {name: disc front, kind: rotor, on: front wheel, diameter: 160 mm, rotor mount: bolts, pads permitted: [organic, sintered]}
              - {name: disc rear, kind: rotor, on: rear wheel, diameter: 160 mm, rotor mount: bolts, pads permitted: [organic, sintered]}
              - {name: organic front, kind: brake pads, end: front, on: grey bike, compound: organic, pad shape: flat}
              - {name: organic rear, kind: brake pads, end: rear, on: grey bike, compound: organic, pad shape: flat, left: 2 mm, least left: 0.5 mm}
              - {name: sintered one, kind: brake pads, compound: sintered, pad shape: flat}
              - {name: sintered two, kind: brake pads, compound: sintered, pad shape: flat}
            """;

    /** Of two ends there is time for one, 8 min in 70 with a wheel out and in, bedding in and a test ride: pads stay of one compound, unless one end is worn out. */
    @ParameterizedTest
    @CsvSource({"70, 2 mm, 0", "70, 0.4 mm, 1", "80, 2 mm, 2"})
    void padsOfTwoCompoundsAreNotForWantOfTime(int minutes, String left, int changed) {
        String text = BRAKES.replace("left: 2 mm,", "left: " + left + ",");
        Faults faults = new Faults();
        Workshop workshop = WorkshopReader.decode(YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "w.yaml", faults), "w.yaml", faults);
        faults.throwIfAny();
        Build build = BuildFinder.of(Recommendation.of(BrakesTest.call("pad compound", "sintered"), null), workshop, evenings(1, minutes), FitRules.load(), null);
        List<String> fitted = build.swaps().stream().map(each -> each.on().name()).toList();
        assertThat(fitted).hasSize(changed);
        assertThat(build.plan().fits()).isTrue();
    }
}
