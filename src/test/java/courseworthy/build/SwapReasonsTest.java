package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.build.Build.Swap;
import courseworthy.call.Call;
import courseworthy.claim.Claim;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.SourceLocation;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.decision.Settler;
import courseworthy.demand.Demands;
import courseworthy.fit.BuildLoad;
import courseworthy.fit.FitRules;
import courseworthy.problem.Faults;
import courseworthy.text.YamlReader;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.Workshop;
import courseworthy.workshop.WorkshopGenerator;
import courseworthy.workshop.WorkshopReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Each swap serves something that is worth its minutes, and says what. Named cases on the shipped workshop, then workshops made by chance. */
class SwapReasonsTest {

    private String workshop;
    private final List<Decision> decisions = new ArrayList<>();

    SwapReasonsTest() throws IOException {
        workshop = Files.readString(Path.of("docs/examples/workshops/cellar.yaml"));
    }

    private void change(String from, String to) {
        assertThat(workshop.contains(from)).as(from).isTrue();
        workshop = workshop.replace(from, to);
    }

    private void add(String part) {
        change("  # Lights and bags\n", "  - " + part + "\n  # Lights and bags\n");
    }

    private void prefer(String topic, Force force, String value) {
        decisions.add(preferred(topic, force, value));
    }

    private static Decision preferred(String topic, Force force, String value) {
        Topic on = Topics.of(topic);
        long ticks = on.kind() == Topic.Kind.QUANTITY ? Long.parseLong(value) : on.option(value);
        RuleOrigin author = new RuleOrigin("shipped/x", Rank.SHIPPED, 0, force, Evidence.PRACTICE, "", "Because.", new SourceLocation("rules/x.yaml", 1));
        return Settler.settle(on, List.of(Claim.of(author, on, Verb.PREFER, ticks, value, List.of())));
    }

    private static Call call(List<Decision> made) {
        Map<Topic, Decision> by = made.stream().collect(Collectors.toMap(Decision::topic, each -> each));
        List<Decision> all = new ArrayList<>();
        Topics.all().forEach(topic -> all.add(by.getOrDefault(topic, Settler.notApplicable(topic, List.of(), "not asked"))));
        return new Call(new Demands(Map.of(), List.of(), List.of()), all, List.of(), List.of());
    }

    private Workshop read() {
        Faults faults = new Faults();
        Workshop read = WorkshopReader.decode(YamlReader.read(workshop.getBytes(StandardCharsets.UTF_8), "w.yaml", faults), "w.yaml", faults);
        faults.throwIfAny();
        return read;
    }

    private Build build(String kind, String bike) {
        List<Decision> all = new ArrayList<>(decisions);
        all.add(preferred("bike", Force.MUST, kind));
        return BuildFinder.of(Recommendation.of(call(all), null), read(), WorkDeadline.of(null), FitRules.load(), bike);
    }

    private static List<String> swaps(Build build) {
        return build.swaps().stream().map(each -> each.place().words() + ": " + each.on() + " for " + String.join(", ", each.why())).toList();
    }

    /** The crank is not exchanged for one with a power meter that nobody asked for and that weighs 100 g more, or less. */
    @Test
    void noPowerMeterWhereNoneIsRecommended() {
        prefer("power meter", Force.SHOULD, "none");
        add("{name: measuring crank, kind: crank, mass: 505 g, bottom bracket: wide thread, ring mount: three lugs, chainline: 53 mm, crank length: 170 mm,"
                + " power meter: yes, pedal thread: standard thread}");
        assertThat(swaps(build("cross-country hardtail", "hardtail"))).isEmpty();
        change("mass: 505 g, bottom", "mass: 705 g, bottom");
        assertThat(swaps(build("cross-country hardtail", "hardtail"))).isEmpty();
    }

    /** A meter that is mounted is not exchanged for a crank without: a minute of power on the stem does no harm that a notch counts. */
    @Test
    void aPowerMeterThatIsRecommendedGoesOnForThat() {
        prefer("power meter", Force.SHOULD, "fitted");
        assertThat(swaps(build("cross-country hardtail", "hardtail"))).containsExactly("pedals: power pedals for power meter fitted");
    }

    /** An easier gear, a larger rotor and a longer dropper than recommended meet the recommendation. */
    @Test
    void whatMeetsTheRecommendationStays() {
        prefer("easiest gear", Force.SHOULD, "700");
        prefer("hardest gear", Force.SHOULD, "2600");
        prefer("front rotor", Force.MUST, "160");
        prefer("dropper travel", Force.MUST, "100");
        prefer("seatpost", Force.MUST, "dropper");
        Build build = build("cross-country hardtail", "hardtail");
        assertThat(swaps(build)).isEmpty();
        assertThat(build.notMet()).isEmpty();
    }

    @Test
    void whatDoesNotMeetItGoes() {
        prefer("front rotor", Force.SHOULD, "180");
        change("name: everyday rotor 180, kind: rotor, on: everyday wheel front, stays: yes, mass: 160 g, diameter: 180 mm",
                "name: everyday rotor 180, kind: rotor, on: everyday wheel front, stays: yes, mass: 160 g, diameter: 160 mm");
        add("{name: loose rotor, kind: rotor, mass: 165 g, diameter: 180 mm, rotor mount: six bolts, pads permitted: [organic]}");
        assertThat(swaps(build("cross-country hardtail", "hardtail"))).containsExactly("front rotor: loose rotor for front rotor 180 mm");
    }

    /** A wheel that comes with the tyre that is wanted says so, and never how much lighter it happens to be. */
    @Test
    void aWheelSaysWhatItBrings() {
        prefer("rear tyre tread", Force.MUST, "fast");
        prefer("front tyre tread", Force.MUST, "fast");
        List<String> swaps = swaps(build("cross-country hardtail", "hardtail"));
        assertThat(swaps).containsExactly("front wheel: light wheel front for front tyre tread fast", "rear wheel: light wheel rear for rear tyre tread fast");
    }

    /** What has to come along says with what it goes, and what that serves. */
    @Test
    void whatComesAlongSaysForWhat() {
        prefer("fork chassis", Force.MUST, "light");
        List<String> swaps = swaps(build("cross-country full suspension", "borrowed bike"));
        assertThat(swaps).containsExactly("fork: slim fork 110 for fork chassis light", "spacers: jar of spacers for slim fork 110 and borrowed stem 45, with which "
                + "borrowed spacers cannot be used: the steerer is 8 mm too short, fork chassis light",
                "lockout remote: lockout lever for slim fork 110, which cannot be fitted without it, fork chassis light",
                "front brake adapter: adapter for 180 for borrowed rotor front and slim fork 110, which do not fit together without it, fork chassis light");
    }

    /** A ring on a crank that comes without one is chosen for its gear, not because the crank is bare: the old ring could move over. */
    @Test
    void aRingOnAnotherCrankSaysItsGear() {
        change("cleat: two bolts, power meter: yes, rider limit: 110 kg", "cleat: two bolts, power meter: no, rider limit: 110 kg");
        add("{name: measuring crank, kind: crank, mass: 605 g, bottom bracket: wide thread, ring mount: three lugs, chainline: 53 mm, crank length: 170 mm,"
                + " power meter: yes, pedal thread: standard thread, hours used: 40 h}");
        prefer("power meter", Force.MUST, "fitted");
        List<String> moved = swaps(build("cross-country hardtail", "hardtail"));
        assertThat(moved).contains("chainring: ring 30 for measuring crank, which has none of its own, power meter fitted");
        prefer("hardest gear", Force.MUST, "3600");
        assertThat(swaps(build("cross-country hardtail", "hardtail"))).anyMatch(each -> each.startsWith("chainring: ring 36 for hardest gear"))
                .noneMatch(each -> each.contains("no chainring otherwise"));
    }

    /** A gear that falls short is named by its teeth, as rings and sprockets are sold, and by their quotient. */
    @Test
    void aGearThatFallsShortIsNamedByItsTeeth() {
        prefer("hardest gear", Force.MUST, "4200");
        prefer("easiest gear", Force.MUST, "420");
        assertThat(build("cross-country hardtail", "hardtail").notMet()).filteredOn(each -> each.topic().endsWith("gear"))
                .extracting(each -> each.topic() + " " + each.got()).containsExactlyInAnyOrder("hardest gear 36x10 (3.60)", "easiest gear 36x51 (0.71)");
    }

    /** What comes along names what it goes with and what that serves, and not what hangs on it at a third remove. */
    @Test
    void whatComesAlongDoesNotSpeakForTheWheels() {
        prefer("fork chassis", Force.MUST, "light");
        prefer("front rim material", Force.MUST, "carbon");
        change("mount rotor: 160 mm, race seat: 39.8 mm, remote: pull lever", "mount rotor: 160 mm, race seat: 39.8 mm, remote: thumb lever");
        change("lockout: remote, axle: 15 mm screwed, axle width: 110 mm, tyre clearance: 60 mm", "lockout: remote, axle: fine bolt, axle width: 110 mm, tyre clearance: 60 mm");
        add("{name: thumb lever, kind: lockout remote, mass: 40 g, works: [thumb lever]}\n"
                + "  - {name: fine wheel, kind: wheel, end: front, mass: 585 g, bead seat: 622 mm, rim inner width: 28 mm, rim depth: 26 mm, rim material: carbon, hookless: yes,"
                + " tubeless: yes, marked pressure: 2.8 bar, valve length: 46 mm, least tyre: 50 mm, most tyre: 62 mm, axle: fine bolt, axle width: 110 mm, rotor mount: six bolts,"
                + " mass limit: 130 kg}\n  - {name: fine rotor, kind: rotor, on: fine wheel, mass: 110 g, diameter: 160 mm, rotor mount: six bolts, pads permitted: [organic, sintered]}\n"
                + "  - {name: fine tyre, kind: tyre, on: fine wheel, mass: 695 g, bead seat: 622 mm, width: 58 mm, measured width: 58 mm, casing: reinforced, tread: fast, tubeless: yes,"
                + " hookless: yes, marked pressure: 2.9 bar, hours used: 22 h}");
        List<String> swaps = swaps(build("cross-country hardtail", "hardtail"));
        assertThat(swaps).anyMatch(each -> each.startsWith("front wheel: fine wheel for front rim material carbon"));
        assertThat(swaps).contains("lockout remote: thumb lever for slim fork 110, with which lockout lever cannot be used: lockout lever does not work slim fork 110, which is worked by thumb lever, fork "
                + "chassis light");
    }

    /** A flat bar gets no drop bar's width: nothing is said of it, and no other flat bar goes on in its place. */
    @Test
    void aFlatBarNeverGetsADropBarsWidth() {
        change("name: flared bar 440, kind: bar, on: lane stem 90, mass: 310 g, width: 440 mm, bar clamp: 31.8 mm, bar shape: drop",
                "name: flared bar 440, kind: bar, on: lane stem 90, mass: 310 g, width: 700 mm, bar clamp: 31.8 mm, bar shape: flat");
        change("name: lane levers, kind: shifter, on: steel bike, mass: 510 g, speeds: 10, drivetrain: lane ten, bar shape: drop",
                "name: lane levers, kind: shifter, on: steel bike, mass: 510 g, speeds: 10, drivetrain: lane ten, bar shape: flat");
        add("{name: narrow flat bar, kind: bar, mass: 300 g, width: 620 mm, bar clamp: 31.8 mm, bar shape: flat, extensions approved: no, reach: 0 mm, rise: 0 mm}");
        prefer("bar width", Force.MUST, "420");
        Build build = build("gravel", "steel bike");
        assertThat(swaps(build)).isEmpty();
        assertThat(build.notMet()).isEmpty();
    }

    /** Without a bike of the recommended kind, the one that is ridden is set up for its own kind: tyres, bar and gears of no other. */
    @Test
    void decisionsOfAnotherKindOfBikeAreNotTakenOver() {
        List<Decision> road = List.of(preferred("bike", Force.MUST, "road"), preferred("bar width", Force.MUST, "420"), preferred("front tyre width", Force.MUST, "28"));
        List<Decision> own = List.of(preferred("bike", Force.MUST, "cross-country hardtail"), preferred("bar width", Force.MUST, "740"));
        Recommendation recommended = new Recommendation(call(road), null, kind -> kind.equals("cross-country hardtail") ? Recommendation.of(call(own), null)
                : Recommendation.of(call(List.of(preferred("bike", Force.MUST, kind))), null));
        Build build = BuildFinder.of(recommended, read(), WorkDeadline.of(null), FitRules.load(), "hardtail");
        assertThat(swaps(build)).containsExactly("bar: old bar 740 for bar width 740 mm");
        assertThat(build.notMet()).extracting(Build.UnmetDecision::topic).containsExactly("bike");
    }

    /**
     * Two thousand workshops: every swap has a reason, what a bike cannot be ridden without is never empty, and no swap that can be taken back
     * loses less by it than its work is worth.
     */
    @Test
    void everySwapIsWorthItsWork() {
        int swaps = 0;
        int takenBack = 0;
        for (int seed = 0; seed < 2_000; seed++) {
            Workshop made = new WorkshopGenerator(seed, seed % 4 * 0.012, seed % 2 * 0.01).withSystems(seed % 3 == 1).of(1 + seed % 2, 34 + seed % 20);
            BuildObjective aims = new BuildObjective(BuildSearchTest.call(seed % 100), BuildSearchTest.returns(seed));
            BuildLoad load = new BuildLoad(75.0, 90.0 + seed % 50, 0.1 * (seed % 7));
            Part bike = made.bikes().get(0);
            Map<MountingPlace, Part> build = new BuildSearch(made, bike, load, aims).solve();
            if (build == null) {
                continue;
            }
            String where = "seed " + seed;
            for (MountingPlace place : MountingPlace.values()) {
                assertThat(build.containsKey(place) || !made.needs(bike, place)).as(where + " " + place).isTrue();
            }
            BruteForce cost = new BruteForce(made, bike, load, aims);
            SwapReasons reasons = new SwapReasons(made, aims, load, bike, build);
            MountingState before = MountingState.of(made);
            for (Swap swap : WorkOrder.on(bike, made, before, before.with(bike, build))) {
                if (swap.place() == MountingPlace.LIGHTS) {
                    continue;
                }
                swaps++;
                boolean moves = swap.over() != null && swap.off() == null;
                assertThat(moves ? reasons.ofMove(swap.place(), build.get(WorkOrder.carrier(swap.place()))) : reasons.of(swap.place(), swap.off(), swap.with()))
                        .as(where + " " + swap.what()).isNotEmpty().doesNotContain("");
                Map<MountingPlace, Part> back = new EnumMap<>(build);
                if (swap.off() == null) {
                    back.remove(swap.place());
                } else {
                    back.put(swap.place(), swap.off());
                }
                if (cost.allows(back)) {
                    takenBack++;
                    assertThat(cost.costOf(back)).as(where + " " + swap.what()).isGreaterThanOrEqualTo(cost.costOf(build));
                }
            }
        }
        assertThat(swaps).isGreaterThan(3_000);
        assertThat(takenBack).isGreaterThan(1_000);
    }
}
