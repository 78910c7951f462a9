package courseworthy.call;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.GeneratedRequest;
import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.decision.Decision;
import courseworthy.demand.Survey;
import courseworthy.engine.RuleSet;
import courseworthy.event.Event;
import courseworthy.problem.Faults;
import courseworthy.rider.Bike;
import courseworthy.rider.Rider;
import courseworthy.rider.RiderReader;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two riders who differ in one thing, on drawn days and on every shipped course: what the one never gets less of than the other, and gets more of
 * somewhere. All common practice. Decisions are compared where both riders take the same kind of bike.
 */
class RiderDirectionsTest {

    private static final int DAYS = 80;
    private static final RuleSet SHIPPED = ShippedRuleSet.read();
    private static final List<String> SPARE_THE_HANDS = List.of("front tyre width", "rear tyre width", "front rotor", "rear rotor", "bar height", "compression");

    @TempDir
    Path folder;

    /** How often a topic came out higher for the one than for the other. */
    private final Map<String, Integer> higher = new LinkedHashMap<>();

    /** @param one,other lines of a rider's file */
    private void never(String one, String than, List<String> lower, List<String> topics) throws IOException {
        for (int n = 0; n < DAYS; n++) {
            compare("day " + n, drawn(n, one), drawn(n, than), lower, topics);
        }
        try (Stream<Path> files = Files.list(Path.of("course-profiles")).sorted()) {
            for (Path file : files.filter(each -> each.toString().endsWith(".yaml")).toList()) {
                for (String kind : Topics.BIKE.options()) {
                    String role = (file.toString().length() + kind.length()) % 2 == 0 ? "race" : "training";
                    String where = file.getFileName() + " on a " + kind + " bike, " + role;
                    compare(where, shipped(file, kind, role, one), shipped(file, kind, role, than), lower, topics);
                }
            }
        }
        for (String topic : topics) {
            assertThat(higher.getOrDefault(topic, 0)).as("%s that differs somewhere for %s", topic, one).isPositive();
        }
    }

    /** On no bike at hand: kinds are in the order in which they take more rough ground. */
    @Test
    void aNoviceNeverIsSentOutOnABikeThatForgivesLess() throws IOException {
        int more = 0;
        try (Stream<Path> files = Files.list(Path.of("course-profiles")).sorted()) {
            for (Path file : files.filter(each -> each.toString().endsWith(".yaml")).toList()) {
                for (String role : List.of("race", "training")) {
                    Long novice = shipped(file, null, role, "skill: novice").on(Topics.BIKE).value();
                    Long expert = shipped(file, null, role, "skill: expert").on(Topics.BIKE).value();
                    assertThat(novice).as("%s, %s", file.getFileName(), role).isGreaterThanOrEqualTo(expert);
                    more += novice > expert ? 1 : 0;
                }
            }
        }
        assertThat(more).isPositive();
    }

    private void compare(String where, Call one, Call other, List<String> lower, List<String> topics) {
        if (one.on(Topics.BIKE).value() == null || !one.on(Topics.BIKE).value().equals(other.on(Topics.BIKE).value())) {
            return;
        }
        for (String name : topics) {
            Topic topic = Topics.of(name);
            Decision a = one.on(topic);
            Decision b = other.on(topic);
            if (a.value() != null && b.value() != null) {
                long up = (lower.contains(name) ? -1 : 1) * (a.value() - b.value());
                assertThat(up).as("%s: %s %s against %s", where, name, a, b).isNotNegative();
                higher.merge(name, up > 0 ? 1 : 0, Integer::sum);
            }
        }
    }

    private Call drawn(int n, String lines) {
        GeneratedRequest drawn = GeneratedRequest.nth(n);
        drawn.skill = lines.contains("skill:") ? null : "good";
        drawn.mass = lines.contains("mass:") ? null : drawn.mass;
        drawn.watts = 200.0;
        drawn.riderLines.addAll(lines.lines().toList());
        return CallMaker.call(SHIPPED, drawn.read(folder).demands());
    }

    private Call shipped(Path file, String kind, String role, String lines) throws IOException {
        Faults faults = new Faults();
        Course course = CourseReader.read(file, file.toString(), null, faults);
        String mass = lines.contains("mass:") ? "" : "mass: 72 kg\n";
        Path written = Files.writeString(folder.resolve("rider.yaml"), mass + "power: 220 W\nheld for: 1:00 h\n" + lines + "\n"
                + (kind == null ? "" : "bike: {kind: " + kind + "}\n"));
        Rider rider = RiderReader.read(written, "rider.yaml", faults);
        faults.throwIfAny();
        Event event = Event.builder().role(role).date(LocalDate.of(2026, 6, 20)).build();
        Bike bike = rider.bike();
        return CallMaker.call(SHIPPED, Survey.of(course, rider, event, bike));
    }

    @Test
    void aNoviceNeverGetsLessTravelNarrowerTyresOrLessBrakeThanAnExpert() throws IOException {
        never("skill: novice", "skill: expert", List.of(),
                List.of("fork travel", "rear travel", "front tyre width", "rear tyre width", "front rotor", "rear rotor", "bar height"));
    }

    @Test
    void lessSkillNeverGetsLess() throws IOException {
        never("skill: fair", "skill: good", List.of(), List.of("fork travel", "front tyre width", "rear tyre width", "front rotor", "rear rotor"));
    }

    @Test
    void weakHandsNeverGetLessBrakeOrFirmerDamping() throws IOException {
        never("hand strength: weak", "hand strength: strong", List.of(), List.of("front rotor", "rear rotor", "compression"));
    }

    @Test
    void comfortNeverGetsNarrowerTyresALowerBarOrFirmerDampingThanSpeed() throws IOException {
        never("preference: comfort", "preference: speed", List.of(), List.of("front tyre width", "rear tyre width", "bar height", "compression"));
    }

    @Test
    void injuredHandsNeverGetLessOfWhatSparesThem() throws IOException {
        never("injuries: [hands]", "injuries: []", List.of(), SPARE_THE_HANDS);
    }

    @Test
    void anInjuredBackIsNeverBentMoreOrShakenMore() throws IOException {
        never("injuries: [back]", "injuries: []", List.of(), List.of("front tyre width", "rear tyre width", "bar height", "compression"));
    }

    @Test
    void injuredKneesNeverGetAHarderGear() throws IOException {
        never("injuries: [knees]", "injuries: []", List.of("easiest gear"), List.of("easiest gear"));
    }

    @Test
    void aHeavierRiderNeverGetsNarrowerTyresSmallerRotorsOrQuickerRebound() throws IOException {
        never("mass: 110 kg", "mass: 55 kg", List.of("rebound"), List.of("front tyre width", "rear tyre width", "front rotor", "rear rotor", "rebound"));
    }

    @Test
    void aTallerRiderNeverGetsAShorterDropperOrAHigherBar() throws IOException {
        never("height: 1.90 m", "height: 1.55 m", List.of("bar height"), List.of("dropper travel", "bar height"));
    }

    @Test
    void widerShouldersNeverGetANarrowerDropBar() throws IOException {
        never("shoulder width: 430 mm", "shoulder width: 360 mm", List.of(), List.of("bar width"));
    }
}
