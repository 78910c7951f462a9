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
import courseworthy.fit.BuildLoad;
import courseworthy.problem.Faults;
import courseworthy.text.YamlReader;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.Workshop;
import courseworthy.workshop.WorkshopReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How time weighs beside force: by the rule as docs/explanation/build.md tells it, on the shipped workshop with a part or two changed. */
class TimeWeighsTest {

    private String workshop;
    private final List<Decision> decisions = new ArrayList<>();
    private long perKilogram;
    private final Map<String, Long> apart = new java.util.HashMap<>();

    TimeWeighsTest() throws IOException {
        // Forks that nothing has to come along with, so that a swap is one swap.
        workshop = Files.readString(Path.of("docs/examples/workshops/cellar.yaml")).replaceAll("(?m)^.*kind: crown race.*\n", "").replaceAll(", mount rotor: [0-9]+ mm", "");
        change("name: plain post,", "name: plain post, owned: no,");
    }

    private void change(String from, String to) {
        assertThat(workshop.contains(from)).as(from).isTrue();
        workshop = workshop.replace(from, to);
    }

    private void prefer(String topic, Force force, String value) {
        Topic on = Topics.of(topic);
        long ticks = on.kind() == Topic.Kind.QUANTITY ? Long.parseLong(value) : on.option(value);
        RuleOrigin author = new RuleOrigin("shipped/" + topic, Rank.SHIPPED, 0, force, Evidence.PRACTICE, "", "Because.", new SourceLocation("rules/x.yaml", 1));
        decisions.add(Settler.settle(on, List.of(Claim.of(author, on, Verb.PREFER, ticks, value, List.of()))));
    }

    private Map<MountingPlace, Part> build() {
        Faults faults = new Faults();
        Workshop read = WorkshopReader.decode(YamlReader.read(workshop.getBytes(StandardCharsets.UTF_8), "w.yaml", faults), "w.yaml", faults);
        faults.throwIfAny();
        TimeSavings returns = new TimeSavings() {
            @Override
            public long apart(Topic topic, long one, long other) {
                return apart.getOrDefault(topic.name() + " " + topic.text(one) + " to " + topic.text(other), 0L);
            }

            @Override
            public long perKilogram() {
                return perKilogram;
            }
        };
        Call call = new Call(new Demands(Map.of(), List.of(), List.of()), decisions, List.of(), List.of());
        return new BuildSearch(read, read.find("hardtail"), new BuildLoad(70.0, 85.0, 0.1), new BuildObjective(call, returns)).solve();
    }

    private String in(MountingPlace place) {
        return build().get(place).name();
    }

    /** 150 g: at 133 s for each kg 19.95 s, at 134 s for each kg 20.1 s; a post and the saddle that moves over to it are two swaps. */
    @ParameterizedTest
    @CsvSource({"0, dropper 125", "133, dropper 125", "134, light dropper 100"})
    void aLighterPartGoesOnFromTenSecondsASwap(long seconds, String post) {
        perKilogram = seconds;
        assertThat(in(MountingPlace.SEATPOST)).isEqualTo(post);
    }

    @Test
    void whatIsNewOrNotWeighedNeverGoesOnForLightness() {
        perKilogram = 134;
        change("name: light dropper 100, kind: seatpost, mass: 425 g", "name: light dropper 100, kind: seatpost, mass: 425 g, hours used: 4.9 h");
        assertThat(in(MountingPlace.SEATPOST)).isEqualTo("dropper 125");
        change("hours used: 4.9 h", "hours used: 5 h");
        assertThat(in(MountingPlace.SEATPOST)).isEqualTo("light dropper 100");
        change("kind: seatpost, mass: 425 g", "kind: seatpost");
        assertThat(in(MountingPlace.SEATPOST)).isEqualTo("dropper 125");
    }

    /** 115 g of pedals and 60 g of crank at 500 s for each kg are 57 and 30 s, and stay off all the same. */
    @Test
    void whatTheRiderTouchesStays() {
        perKilogram = 500;
        change("  # Lights and bags\n", "  - {name: other crank, kind: crank, mass: 545 g, bottom bracket: wide thread, ring mount: three lugs,"
                + " chainline: 53 mm, crank length: 170 mm, power meter: no, pedal thread: standard thread}\n");
        assertThat(in(MountingPlace.PEDALS)).isEqualTo("hardtail pedals");
        assertThat(in(MountingPlace.CRANK)).isEqualTo("hardtail crank");
    }

    /** Both are a step from the standard legs that are wanted; the one that is nearer by the notch that a short swap has to be worth is taken. */
    @Test
    void ofTwoDeparturesTheOneThatIsLessTimeApart() {
        change("fork: 50 min", "fork: 5 min");
        prefer("fork chassis", Force.MAY, "standard");
        assertThat(in(MountingPlace.FORK)).isEqualTo("stout fork 120");
        apart.put("fork chassis standard to stiff", 9L);
        assertThat(in(MountingPlace.FORK)).as("nine seconds are no notch").isEqualTo("stout fork 120");
        apart.put("fork chassis standard to stiff", 10L);
        assertThat(in(MountingPlace.FORK)).isEqualTo("slim fork 110");
        apart.put("fork chassis standard to light", 10L);
        assertThat(in(MountingPlace.FORK)).isEqualTo("stout fork 120");
    }

    /** Force and time multiply: 10 s against what should be count twice, 30 s against what may be three times. */
    @Test
    void forceAndTimeMultiply() {
        change("fork: 50 min", "fork: 0 min");
        prefer("lockout", Force.SHOULD, "remote");
        prefer("fork chassis", Force.MAY, "light");
        apart.put("fork chassis light to stiff", 40L);
        assertThat(in(MountingPlace.FORK)).isEqualTo("slim fork 110");
        change("chassis: light, lockout: remote", "chassis: light, lockout: at the fork/shock");
        assertThat(in(MountingPlace.FORK)).as("2 x 2 for another lockout and 1 for the swap, 2 + 4 for the legs").isEqualTo("slim fork 110");
        apart.put("lockout remote to at the fork/shock", 10L);
        assertThat(in(MountingPlace.FORK)).as("2 x (2 + 1) and 1 against 2 + 4").isEqualTo("stout fork 120");
    }

    /** A fork that is one notch nearer, of advice that may, is worth a quarter of an hour and not a minute more; advice that must, an hour. */
    @ParameterizedTest
    @CsvSource({"MAY, 15, slim fork 110", "MAY, 16, stout fork 120", "SHOULD, 30, slim fork 110", "SHOULD, 31, stout fork 120", "MUST, 60, slim fork 110",
            "MUST, 61, stout fork 120"})
    void aNotchIsWorthAQuarterOfAnHour(Force force, int minutes, String fork) {
        change("fork: 50 min", "fork: " + minutes + " min");
        change("chassis: light, lockout", "chassis: standard, lockout");
        prefer("fork chassis", force, "light");
        assertThat(in(MountingPlace.FORK)).isEqualTo(fork);
    }

    /** Of root tyres the pair goes on as it was, A in front; with the rear one gone, no pair is a reason to swap. */
    @Test
    void aPairGoesOnAsItWas() {
        prefer("front rim material", Force.MUST, "carbon");
        prefer("rear rim material", Force.MUST, "carbon");
        prefer("front tyre tread", Force.MUST, "all-round");
        prefer("rear tyre tread", Force.MUST, "all-round");
        Map<MountingPlace, Part> build = build();
        assertThat(build.get(MountingPlace.FRONT_TYRE)).hasToString("root tyre 58 A");
        assertThat(build.get(MountingPlace.REAR_TYRE)).hasToString("root tyre 58 B");
    }
}
