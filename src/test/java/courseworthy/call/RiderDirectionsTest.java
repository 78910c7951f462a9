package courseworthy.call;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.Draws;
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
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two riders who differ in one thing, on drawn days and on every shipped course: what the one never gets less of than the other, and gets more of
 * somewhere. All common practice. Decisions are compared where both riders take the same kind of bike.
 */
class RiderDirectionsTest {

    private static final int DAYS = Draws.of(80);
    private static final RuleSet SHIPPED = ShippedRuleSet.read();
    private static final List<String> SPARE_THE_HANDS = List.of("front tyre width", "rear tyre width", "front rotor", "rear rotor", "bar height", "compression");

    @TempDir
    Path folder;

    /** Outcomes by scene and rider: the other rider of one pair is often that of another pair. */
    private static final Map<String, Outcome> KNOWN = new HashMap<>();

    /** Of the event. */
    private Event.Rules rules = Event.Rules.NONE;

    /** How often a topic came out higher for the one than for the other. */
    private final Map<String, Integer> higher = new LinkedHashMap<>();
    /** On which kinds of bike. */
    private final Map<String, Set<String>> higherOn = new LinkedHashMap<>();

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
                    Long novice = shipped(file, null, role, "skill: novice").on(Topics.BIKE);
                    Long expert = shipped(file, null, role, "skill: expert").on(Topics.BIKE);
                    assertThat(novice).as("%s, %s", file.getFileName(), role).isGreaterThanOrEqualTo(expert);
                    more += novice > expert ? 1 : 0;
                }
            }
        }
        assertThat(more).isPositive();
    }

    private void compare(String where, Outcome one, Outcome other, List<String> lower, List<String> topics) {
        if (one.on(Topics.BIKE) == null || !one.on(Topics.BIKE).equals(other.on(Topics.BIKE))) {
            return;
        }
        for (String name : topics) {
            Topic topic = Topics.of(name);
            Long a = one.on(topic);
            Long b = other.on(topic);
            if (a != null && b != null) {
                long up = (lower.contains(name) ? -1 : 1) * (a - b);
                assertThat(up).as("%s: %s %s against %s", where, name, topic.phrase(a), topic.phrase(b)).isNotNegative();
                higher.merge(name, up > 0 ? 1 : 0, Integer::sum);
                if (up > 0) {
                    higherOn.computeIfAbsent(name, key -> new TreeSet<>()).add(Topics.BIKE.text(one.on(Topics.BIKE)));
                }
            }
        }
    }

    /** What is decided, in ticks or positions; topics on which nothing is decided are left out. */
    private record Outcome(Map<Topic, Long> values) {

        static Outcome of(Call call) {
            Map<Topic, Long> values = new HashMap<>();
            for (Decision decision : call.decisions()) {
                if (decision.value() != null) {
                    values.put(decision.topic(), decision.value());
                }
            }
            return new Outcome(values);
        }

        Long on(Topic topic) {
            return values.get(topic);
        }
    }

    private Outcome drawn(int n, String lines) {
        return KNOWN.computeIfAbsent("day " + n + rules + lines, key -> drawnNow(n, lines));
    }

    private Outcome drawnNow(int n, String lines) {
        GeneratedRequest drawn = GeneratedRequest.nth(n);
        drawn.skill = lines.contains("skill:") ? null : "good";
        drawn.mass = lines.contains("mass:") ? null : drawn.mass;
        drawn.watts = 200.0;
        drawn.riderLines.addAll(lines.lines().toList());
        if (rules.gearLimit() != null) {
            drawn.eventLines.add("rules: {longest development: " + rules.gearLimit().development() + " m, longest development to age: " + rules.gearLimit().toAge() + "}");
        }
        return Outcome.of(CallMaker.call(SHIPPED, drawn.read(folder).demands()));
    }

    private Outcome shipped(Path file, String kind, String role, String lines) throws IOException {
        String key = file + " " + kind + " " + role + rules + lines;
        if (!KNOWN.containsKey(key)) {
            KNOWN.put(key, shippedNow(file, kind, role, lines));
        }
        return KNOWN.get(key);
    }

    private Outcome shippedNow(Path file, String kind, String role, String lines) throws IOException {
        Faults faults = new Faults();
        Course course = CourseReader.read(file, file.toString(), null, faults);
        String mass = lines.contains("mass:") ? "" : "mass: 72 kg\n";
        Path written = Files.writeString(folder.resolve("rider.yaml"), mass + "power: 220 W\nheld for: 1:00 h\n" + lines + "\n"
                + (kind == null ? "" : "bike: {kind: " + kind + "}\n"));
        Rider rider = RiderReader.read(written, "rider.yaml", faults);
        faults.throwIfAny();
        Event event = Event.builder().role(role).date(LocalDate.of(2026, 6, 20)).rules(rules).build();
        Bike bike = rider.bike();
        return Outcome.of(CallMaker.call(SHIPPED, Survey.of(course, rider, event, bike)));
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
    void widerShouldersNeverGetANarrowerBar() throws IOException {
        never("shoulder width: 440 mm", "shoulder width: 360 mm", List.of(), List.of("bar width"));
        assertThat(higherOn.get("bar width")).containsExactlyInAnyOrderElementsOf(Topics.BIKE.options());
    }

    @Test
    void anInjuredNeckOrShoulderIsNeverBentMore() throws IOException {
        rules = new Event.Rules(true, null, null, null, null, List.of(), "", null);
        never("injuries: [neck]", "injuries: []", List.of("aero extensions"), List.of("bar height", "aero extensions"));
        never("injuries: [shoulders]", "injuries: []", List.of("aero extensions"), List.of("bar height", "aero extensions"));
    }

    @Test
    void aSoreSeatNeverGetsNarrowerTyres() throws IOException {
        never("injuries: [seat]", "injuries: []", List.of(), List.of("front tyre width", "rear tyre width"));
    }

    /** No habit of the trade takes brake away from strong hands, or gives them other things than usual ones. */
    @Test
    void strongHandsGetWhatUsualOnesGet() throws IOException {
        for (int n = 0; n < DAYS; n++) {
            assertThat(drawn(n, "hand strength: strong")).as("day " + n).isEqualTo(drawn(n, "hand strength: usual"));
        }
        never("hand strength: weak", "hand strength: usual", List.of(), List.of("front rotor", "rear rotor", "compression"));
    }

    @Test
    void aBalancedRiderIsBetweenComfortAndSpeed() throws IOException {
        never("preference: comfort", "preference: balanced", List.of(), List.of("front tyre width", "rear tyre width", "bar height", "compression"));
        never("preference: balanced", "preference: speed", List.of(), List.of("bar height", "compression"));
    }

    @Test
    void aHeavierRiderNeverGetsALighterForkOrALighterCasing() throws IOException {
        never("mass: 110 kg", "mass: 55 kg", List.of(), List.of("fork chassis", "front tyre casing", "rear tyre casing"));
    }

    /** A limit of 6.10 m up to sixteen: who is under it is never given more, and nobody over that age is given less for it. */
    @Test
    void aYoungerRiderNeverGetsAHarderGearUnderALimit() throws IOException {
        rules = new Event.Rules(null, null, null, null, null, List.of(), "", new Event.GearLimit(6.10, 16));
        never("year of birth: 2011", "year of birth: 1990", List.of("hardest gear"), List.of("hardest gear"));
        for (int n = 0; n < DAYS; n++) {
            assertThat(drawn(n, "year of birth: 2009")).as("day " + n).isEqualTo(drawn(n, "year of birth: 1990"));
        }
    }
}
