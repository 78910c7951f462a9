package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;

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
import courseworthy.fit.FitRules;
import courseworthy.problem.Faults;
import courseworthy.text.YamlReader;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.Workshop;
import courseworthy.workshop.WorkshopReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Loose parts serve a decision where they are the least work, on an invented bike (common practice, no source). */
class LoosePartsTest {

    private static final String WORKSHOP = """
            bikes:
              - {name: reed bike, kind: gravel, mass: 3 kg, axle: plain, axle width: 142 mm, tyre clearance: 60 mm, bottom bracket: slim, least chainline: 40 mm, most chainline: 60 mm}
            parts:
              - {name: fork, kind: fork, on: reed bike, axle: plain, axle width: 100 mm, tyre clearance: 60 mm}
              - {name: rear wheel, kind: wheel, end: rear, on: reed bike, axle: plain, axle width: 142 mm, bead seat: 622 mm, rim inner width: 29 mm, least tyre: 40 mm, most tyre: 60 mm, hookless: no, valve length: 50 mm, rim depth: 20 mm}
              - {name: front wheel, kind: wheel, end: front, on: reed bike, axle: plain, axle width: 100 mm, bead seat: 622 mm, rim inner width: 29 mm, least tyre: 40 mm, most tyre: 60 mm, hookless: no, valve length: 50 mm, rim depth: 20 mm}
              - {name: front tyre, kind: tyre, on: front wheel, bead seat: 622 mm, width: 45 mm, tread: fast, casing: light}
              - {name: rear tyre, kind: tyre, on: rear wheel, bead seat: 622 mm, width: 45 mm, tread: fast, casing: light}
              - {name: crank, kind: crank, on: reed bike, bottom bracket: slim, chainline: 45 mm, power meter: no, meter mount: hat, pedal thread: usual}
              - {name: pedals, kind: pedals, on: crank, power meter: no, pedal thread: usual}
            """;
    private static final String METERED_CRANK = "  - {name: metered crank, kind: crank, bottom bracket: slim, chainline: 45 mm, power meter: yes, pedal thread: usual}\n";
    private static final String METERED_PEDALS = "  - {name: metered pedals, kind: pedals, power meter: yes, pedal thread: usual}\n";
    private static final String METER = "  - {name: loose meter, kind: power meter, meter mount: hat}\n";
    private static final String NARROW_RIM = "  - {name: other wheel, kind: wheel, end: rear, axle: plain, axle width: 142 mm, bead seat: 622 mm, rim inner width: 25 mm, hookless: no, valve length: 50 mm, rim depth: 20 mm, mass limit: 130 kg}\n";

    private static Workshop workshop(String text) {
        Faults faults = new Faults();
        Workshop read = WorkshopReader.decode(YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "w.yaml", faults), "w.yaml", faults);
        faults.throwIfAny();
        return read;
    }

    private static Decision prefer(Topic on, String value, Force force) {
        RuleOrigin author = new RuleOrigin("shipped/x", Rank.SHIPPED, 0, force, Evidence.PRACTICE, "", "Because.", new SourceLocation("rules/x.yaml", 1));
        return Settler.settle(on, List.of(Claim.of(author, on, Verb.PREFER, on.option(value), value, List.of())));
    }

    private static Build build(String text, Decision decision) {
        Call call = new Call(new Demands(Map.of(), List.of(), List.of()), Topics.all().stream()
                .map(each -> each == decision.topic() ? decision : Settler.notApplicable(each, List.of(), "Not asked.")).toList(), List.of(), List.of());
        Build build = BuildFinder.of(Recommendation.of(call, null), workshop(text), null, FitRules.load());
        assertThat(build.bike()).as(build.lacking() + " " + build.inTheWay().stream().map(each -> each.fit().words()).toList()).isNotNull();
        return build;
    }

    private static Build metered(String more) {
        return build(WORKSHOP + more, prefer(Topics.POWER_METER, "fitted", Force.MUST));
    }

    private static List<String> done(Build build) {
        List<String> out = new ArrayList<>();
        build.swaps().forEach(swap -> out.add(swap.on() == null ? "off " + swap.off() : swap.on().name()));
        return out;
    }

    /** A meter that bolts to the crank in 15 min goes on before a crank is exchanged, which takes the pedals along. */
    @Test
    void aLooseMeterGoesOnTheCrankThatIsThere() {
        Build build = metered(METERED_CRANK + METER);
        assertThat(done(build)).containsExactly("loose meter");
        assertThat(build.swaps().get(0).why()).containsExactly("power meter fitted");
        assertThat(build.swaps().get(0).work().after()).containsExactly("Bolts as marked, paired with the head unit and zeroed");
        assertThat(build.notMet()).isEmpty();
        assertThat(build.count().total()).isEqualTo(build.count().ofWorks());
        assertThat(build.back()).singleElement().satisfies(back -> assertThat(back.off().name()).isEqualTo("loose meter"));
    }

    /** Where its mount is another, the crank is exchanged; and pedals of 5 min go on before either. */
    @Test
    void whateverIsLeastWorkMeasuresPower() {
        assertThat(done(metered(METERED_CRANK + METER.replace("hat}", "spline}")))).contains("metered crank").doesNotContain("loose meter");
        assertThat(done(metered(METERED_CRANK))).contains("metered crank");
        // Anything under a quarter of an hour counts as one, so the meter's 15 min and the pedals' 5 are the same: the first of equals is taken.
        assertThat(done(metered(METERED_CRANK + METERED_PEDALS))).containsExactly("metered pedals");
        assertThat(done(metered(METERED_CRANK + METERED_PEDALS + METER.replace("hat}", "spline}")))).containsExactly("metered pedals");
        assertThat(done(metered(""))).isEmpty();
    }

    /** A meter that is on the crank stays for lightness' sake, and comes off, with the crank in, where one is not to be had. */
    @Test
    void aMeterThatIsOnComesOffOnlyForAReason() {
        String mounted = METER.replace("kind: power meter", "kind: power meter, on: crank, mass: 95 g");
        assertThat(done(build(WORKSHOP + mounted, prefer(Topics.PEDALS, "flat", Force.MAY)))).isEmpty();
        Build without = build(WORKSHOP + mounted, prefer(Topics.POWER_METER, "none", Force.MUST));
        assertThat(done(without)).containsExactly("off loose meter");
        assertThat(without.swaps().get(0).why()).containsExactly("power meter none");
        assertThat(without.places().stream().filter(each -> each.place() == MountingPlace.METER)).hasSize(1);
    }

    /** The same of whatever a wheel or a bar carries: what is called off comes off, though what carries it stays. */
    @Test
    void whatIsCalledOffComesOffWhatStays() {
        String insert = "  - {name: foam, kind: insert, on: rear wheel, bead seat: 622 mm, least tyre: 30 mm, most tyre: 60 mm}\n";
        assertThat(done(build(WORKSHOP + insert, prefer(Topics.REAR_INSERT, "none", Force.MUST)))).containsExactly("off foam");
        String cockpit = """
                  - {name: stem, kind: stem, on: reed bike, bar clamp: 31.8 mm}
                  - {name: bar, kind: bar, on: stem, bar clamp: 31.8 mm, bar shape: drop, extensions approved: yes}
                  - {name: arms, kind: aero extensions, on: bar, bar clamp: 31.8 mm}
                """;
        assertThat(done(build(WORKSHOP + cockpit, prefer(Topics.AERO_EXTENSIONS, "none", Force.MUST)))).containsExactly("off arms");
    }

    /** 45 mm stands outside the general table for 29 mm inside (50 to 64 mm, from memory), and inside it for 25 mm (44 to 64 mm). */
    @Test
    void aTyreGoesOnTheRimThatTheTableListsItFor() {
        Decision tread = prefer(Topics.REAR_TYRE_TREAD, "fast", Force.MUST);
        String uncharted = WORKSHOP.replaceFirst("(rear wheel, .*)least tyre: 40 mm, most tyre: 60 mm, ", "$1");
        Build build = build(uncharted + NARROW_RIM, tread);
        Build alone = build(uncharted, tread);
        assertThat(build.inPlace().get(MountingPlace.REAR_WHEEL).name()).isEqualTo("other wheel");
        assertThat(build.swaps()).hasSize(2).allSatisfy(swap -> assertThat(swap.why()).as(swap.on().name()).contains("a tyre width that the general table lists for its rim"));
        assertThat(build.toMind().stream().filter(each -> each.origin().rule().endsWith("tyre-on-rim"))).isEmpty();

        assertThat(alone.swaps()).isEmpty();
        assertThat(alone.count().pairs()).singleElement().satisfies(pair -> {
            assertThat(pair.what()).isEqualTo("a tyre outside the general table for its rim");
            assertThat(pair.cost()).isEqualTo(3 * BuildVariables.LOSS);
        });
        assertThat(alone.toMind().stream().filter(each -> each.origin().rule().endsWith("tyre-on-rim"))).singleElement().satisfies(each -> assertThat(each.fit().words())
                .isEqualTo("45 mm is narrower than the 50 to 64 mm that the general table lists for a rim of 29 mm inside: its tread sits flat and the rim stands nearer "
                        + "to the stones, so check the manufacturers' charts"));
        assertThat(build(WORKSHOP + NARROW_RIM, tread).swaps()).as("with the wheel's own chart").isEmpty();
    }

    /** What could realise a decision is looked for: every kind of part that a topic is placed on is among the candidates. */
    @Test
    void everyKindThatADecisionIsPlacedOnIsSearched() {
        Set<MountingPlace> places = EnumSet.of(MountingPlace.CRANK, MountingPlace.PEDALS, MountingPlace.METER, MountingPlace.CHAINRING, MountingPlace.CASSETTE);
        Topics.all().forEach(topic -> TopicPlacement.all(topic).stream().map(TopicPlacement::place).filter(each -> each != null).forEach(places::add));
        assertThat(places).allMatch(BuildVariables::searched);
        assertThat(places.stream().map(MountingPlace::kind)).contains(PartKind.METER, PartKind.INSERT, PartKind.EXTENSIONS);
        Workshop all = workshop(WORKSHOP + METER);
        Map<MountingPlace, List<Part>> open = BuildVariables.candidates(all, all.bikes().get(0));
        assertThat(open.get(MountingPlace.METER)).extracting(each -> each == null ? "none" : each.name()).containsExactlyInAnyOrder("none", "loose meter");
    }
}
