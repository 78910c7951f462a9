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
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a workshop does with brakes, on an invented bike (common practice, no source). */
class BrakesTest {

    private static final String WORKSHOP = """
            bikes:
              - {name: grey bike, kind: gravel, mass: 3 kg, pad shape: flat, axle: plain, most rotor: 200 mm}
            parts:
              - {name: fork, kind: fork, on: grey bike, axle: plain, most rotor: 200 mm}
              - {name: front wheel, kind: wheel, end: front, on: grey bike, axle: plain, rotor mount: bolts}
              - {name: rear wheel, kind: wheel, end: rear, on: grey bike, axle: plain, rotor mount: bolts}
              - {name: small front, kind: rotor, on: front wheel, diameter: 160 mm, rotor mount: bolts, pads permitted: [organic, sintered]}
              - {name: small rear, kind: rotor, on: rear wheel, diameter: 160 mm, rotor mount: bolts, pads permitted: [organic, sintered]}
              - {name: organic front, kind: brake pads, end: front, on: grey bike, compound: organic, pad shape: flat}
              - {name: organic rear, kind: brake pads, end: rear, on: grey bike, compound: organic, pad shape: flat}
              - {name: chain, kind: chain, on: grey bike}
            """;
    private static final String LOOSE = """
              - {name: large rotor, kind: rotor, diameter: 180 mm, rotor mount: bolts, pads permitted: [organic, sintered]}
              - {name: sintered one, kind: brake pads, compound: sintered, pad shape: flat}
              - {name: sintered two, kind: brake pads, compound: sintered, pad shape: flat}
            """;

    private static final String MOUNTS = WORKSHOP.replace("axle: plain, most rotor: 200 mm}", "axle: plain, most rotor: 200 mm, brake mount: post, mount rotor: 160 mm}");
    private static final String ADAPTER = "  - {name: step up, kind: brake adapter, end: front, brake mount: post, caliper mount: post, mount rotor: 160 mm, diameter: 180 mm}\n";

    private static Workshop workshop(String text) {
        Faults faults = new Faults();
        Workshop read = WorkshopReader.decode(YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "w.yaml", faults), "w.yaml", faults);
        faults.throwIfAny();
        return read;
    }

    private static Build build(Workshop workshop, String topic, String value) {
        return BuildFinder.of(Recommendation.of(call(topic, value), null), workshop, null, FitRules.load());
    }

    /** A call that decides one topic and no other. */
    static Call call(String topic, String value) {
        Topic on = Topics.of(topic);
        long ticks = on.kind() == Topic.Kind.QUANTITY ? Long.parseLong(value) : on.option(value);
        RuleOrigin author = new RuleOrigin("shipped/x", Rank.SHIPPED, 0, Force.MUST, Evidence.PRACTICE, "", "Because.", new SourceLocation("rules/x.yaml", 1));
        Decision decision = Settler.settle(on, List.of(Claim.of(author, on, Verb.PREFER, ticks, value, List.of())));
        return new Call(new Demands(Map.of(), List.of(), List.of()), Topics.all().stream()
                .map(each -> each == on ? decision : Settler.notApplicable(each, List.of(), "Not asked.")).toList(), List.of(), List.of());
    }

    private static String in(Build build, MountingPlace place) {
        Part part = build.inPlace().get(place);
        return part == null ? "" : part.name();
    }

    /** One compound for both ends: never sintered at one and organic at the other while the workshop has two pairs. */
    @Test
    void padsOfBothEndsAreOfTheDecidedCompound() {
        Build build = build(workshop(WORKSHOP + LOOSE), "pad compound", "sintered");
        assertThat(in(build, MountingPlace.FRONT_PADS)).startsWith("sintered");
        assertThat(in(build, MountingPlace.REAR_PADS)).startsWith("sintered");
        assertThat(build.notMet()).isEmpty();
        // Loose pads that go to either end are fitted at one, and come off again from there.
        assertThat(build.swaps().stream().filter(each -> each.place().kind() == PartKind.PADS).map(Build.Swap::what))
                .containsExactlyInAnyOrder("Fit sintered two in place of organic front", "Fit sintered one in place of organic rear");
        assertThat(build.back().stream().filter(each -> each.place().kind() == PartKind.PADS).map(Build.Swap::what))
                .containsExactlyInAnyOrder("Fit organic front in place of sintered two", "Fit organic rear in place of sintered one");
        Workshop next = workshop(WORKSHOP + LOOSE).mounted(build.after().written(), build.after().ends());
        assertThat(next.mounted(next.bikes().get(0)).get(MountingPlace.REAR_PADS).name()).isEqualTo("sintered one");
        assertThat(build(next, "pad compound", "sintered").swaps()).as("on the next day").isEmpty();
    }

    /** Where one end cannot have it, the reason stands with the build. */
    @Test
    void anEndThatCannotHaveTheCompoundIsNamed() {
        String text = WORKSHOP.replace("small rear, kind: rotor, on: rear wheel, diameter: 160 mm, rotor mount: bolts, pads permitted: [organic, sintered]",
                "small rear, kind: rotor, on: rear wheel, diameter: 160 mm, rotor mount: bolts, pads permitted: [organic]");
        Build build = build(workshop(text + LOOSE.replaceFirst(".*large rotor.*\n", "")), "pad compound", "sintered");
        assertThat(in(build, MountingPlace.FRONT_PADS)).startsWith("sintered");
        assertThat(in(build, MountingPlace.REAR_PADS)).isEqualTo("organic rear");
        assertThat(build.notMet()).singleElement().satisfies(each -> {
            assertThat(each.got()).isEqualTo("organic at the rear");
            assertThat(each.part()).contains("rear brake pads").contains("a rotor that permits them in place of small rear");
        });
    }

    /** A caliper sits over one size of rotor. */
    @ParameterizedTest
    @ValueSource(strings = {"- {name: large rotor, kind: rotor, diameter: 180 mm, rotor mount: bolts, pads permitted: [organic]}",
        "- {name: other wheel, kind: wheel, end: front, axle: plain, rotor mount: bolts}\n"
                + "  - {name: large rotor, kind: rotor, on: other wheel, diameter: 180 mm, rotor mount: bolts, pads permitted: [organic]}"})
    void anotherSizeOfRotorAsksForItsMount(String loose) {
        Build build = build(workshop(WORKSHOP + "  " + loose + "\n"), "front rotor", "180");
        assertThat(in(build, MountingPlace.FRONT_ROTOR)).isEqualTo("large rotor");
        assertThat(build.swaps()).flatExtracting(swap -> swap.work().along())
                .anySatisfy(text -> assertThat(text).contains("180 mm rotor in place of 160 mm").contains("caliper mount or adapter"));
    }

    /** The adapter goes on with the rotor that needs it, for the decision that the rotor serves, and both come off again. */
    @Test
    void aLargerRotorBringsItsAdapterAndTakesItBack() {
        Build build = build(workshop(MOUNTS + LOOSE + ADAPTER), "front rotor", "180");
        assertThat(in(build, MountingPlace.FRONT_ROTOR)).isEqualTo("large rotor");
        assertThat(in(build, MountingPlace.FRONT_ADAPTER)).isEqualTo("step up");
        assertThat(build.swaps()).filteredOn(swap -> swap.place() == MountingPlace.FRONT_ADAPTER).singleElement()
                .satisfies(swap -> assertThat(swap.why()).containsExactly("large rotor and fork, which do not fit together without it", "front rotor 180 mm"));
        assertThat(build.swaps()).flatExtracting(swap -> swap.work().along())
                .containsExactly("A 180 mm rotor in place of 160 mm: the front caliper goes on step up, 10 mm farther out than now");
        assertThat(build.back()).extracting(Build.Swap::what).contains("Remove step up");
        assertThat(build.back()).flatExtracting(swap -> swap.work().along())
                .containsExactly("A 160 mm rotor in place of 180 mm: the front caliper goes on the mount of fork itself, without an adapter, 10 mm farther in than now");
    }

    /** Where none fits, the rotor stays off and the missing adapter is named: none there, one for the rear, one for another mount. */
    @ParameterizedTest
    @ValueSource(strings = {"", "end: rear", "mount rotor: 140 mm", "brake mount: flat", "diameter: 200 mm"})
    void withoutAnAdapterThatFitsTheRotorStaysOff(String instead) {
        String key = instead.isEmpty() ? "" : instead.substring(0, instead.indexOf(':'));
        String adapter = instead.isEmpty() ? "" : ADAPTER.replaceFirst("(?<!caliper )" + key + ": [a-z0-9 ]+", instead);
        Build build = build(workshop(MOUNTS + LOOSE + adapter), "front rotor", "180");
        assertThat(in(build, MountingPlace.FRONT_ROTOR)).isEqualTo("small front");
        assertThat(build.notMet()).singleElement().satisfies(each -> assertThat(each.part())
                .endsWith("and an adapter for it on the mount of fork, which is made for 160 mm: no adapter in the workshop fits"));
    }

    /** One that is listed says nothing of the other end: few write down a brake that stays. */
    @Test
    void aCaliperAtOneEndAsksForNoneAtTheOther() {
        String caliper = "  - {name: caliper, kind: brake caliper, end: front, on: grey bike, brake mount: post, pad shape: flat}\n";
        Build build = build(workshop(MOUNTS + caliper), "pad compound", "organic");
        assertThat(in(build, MountingPlace.FRONT_CALIPER)).isEqualTo("caliper");
        assertThat(build.notMet()).isEmpty();
    }

    /** Where nothing is decided of pads, a loose pair of the other end's compound is worth a swap, and a reason is said where there is none. */
    @Test
    void padsOfOneCompoundAreChosenAndTwoAreSaid() {
        String mixed = WORKSHOP.replace("name: organic rear, kind: brake pads, end: rear, on: grey bike, compound: organic",
                "name: sintered rear, kind: brake pads, end: rear, on: grey bike, compound: sintered");
        Build alone = build(workshop(mixed), "front rotor", "160");
        assertThat(alone.notMet()).singleElement().satisfies(each -> {
            assertThat(each.got()).isEqualTo("organic in front and sintered at the rear");
            assertThat(each.part()).isEqualTo("rear brake pads with organic pad compound");
        });
        Build paired = build(workshop(mixed + "  - {name: spare, kind: brake pads, compound: organic, pad shape: flat}\n"), "front rotor", "160");
        assertThat(in(paired, MountingPlace.REAR_PADS)).isEqualTo("spare");
        assertThat(paired.swaps()).singleElement().satisfies(swap -> assertThat(swap.why()).containsExactly("one compound with organic front"));
        assertThat(paired.notMet()).isEmpty();
    }

    @Test
    void aRotorOfTheSameSizeAsksForNoOtherMount() {
        Build build = build(workshop(WORKSHOP.replace("160 mm", "180 mm").replace("small front, kind: rotor", "small front, kind: rotor, owned: no")
                + LOOSE), "front rotor", "180");
        assertThat(build.swaps()).isNotEmpty().flatExtracting(swap -> swap.work().along()).isEmpty();
    }

    /** Taken for another bike, what a bike cannot be ridden without leaves no build, and what is gone is named. */
    @ParameterizedTest
    @CsvSource({"small rear, rear rotor", "small front, front rotor", "rear wheel, rear wheel", "chain, chain", "organic rear, rear brake pads"})
    void aBikeThatLacksWhatItNeedsIsNoBuild(String taken, String gone) {
        Workshop all = workshop(WORKSHOP);
        assertThat(build(all, "pad compound", "organic").bike()).isNotNull();
        Build build = build(all.without(Set.of(taken)), "pad compound", "organic");
        assertThat(build.bike()).isNull();
        assertThat(build.lacking()).contains("no " + gone + " is left for grey bike, and it cannot be ridden without");
    }

    /** A rotor that is not written at one end, while the other end's is, is not there; where none is written they may be. */
    @Test
    void oneEndWrittenAsksForTheOther() {
        assertThat(build(workshop(WORKSHOP.replaceFirst(".*small rear.*\n", "")), "pad compound", "organic").bike()).isNull();
        assertThat(build(workshop(WORKSHOP.replaceFirst(".*small rear.*\n", "").replaceFirst(".*small front.*\n", "")), "pad compound", "organic")
                .bike()).isNotNull();
    }
}
