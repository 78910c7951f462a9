package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.build.Build.UnmetDecision;
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
import courseworthy.problem.Faults;
import courseworthy.text.YamlReader;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.workshop.Part;
import courseworthy.workshop.Workshop;
import courseworthy.workshop.WorkshopReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a build holds of lights, by cases worked by hand: a main light that lasts, a rear light, a backup apart from the main one. */
class LightSelectionTest {

    private static final String LONG = "{name: long light, kind: lights, mass: 300 g, light kind: to see by, run time: 5:00 h}";
    private static final String SHORT = "{name: short light, kind: lights, mass: 150 g, light kind: to see by, run time: 3:45 h}";
    private static final String SILENT = "{name: silent light, kind: lights, mass: 90 g, light kind: to see by}";
    private static final String BEHIND = "{name: red light, kind: lights, on: other bike, end: rear, mass: 30 g, light kind: to be seen, run time: 12:00 h}";
    private static final String BLINKER = "{name: blinker, kind: lights, on: the bike, mass: 25 g, light kind: to be seen}";

    private Workshop workshop;

    private LightSelection lights(String decided, String runTime, String... parts) {
        Faults faults = new Faults();
        String text = "bikes:\n  - {name: the bike, mass: 2 kg}\n  - {name: other bike, mass: 2 kg}\nparts:\n  - " + String.join("\n  - ", parts) + "\n";
        workshop = WorkshopReader.decode(YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "w.yaml", faults), "w.yaml", faults);
        faults.throwIfAny();
        List<Decision> decisions = new ArrayList<>();
        if (decided != null) {
            Topic topic = Topics.LIGHTS;
            decisions.add(decision(topic, topic.option(decided), decided));
        }
        if (runTime != null) {
            Topic topic = Topics.LIGHT_RUN_TIME;
            decisions.add(decision(topic, Long.parseLong(runTime), runTime));
        }
        return LightSelection.of(new Call(new Demands(Map.of(), List.of(), List.of()), decisions, List.of(), List.of()), workshop, workshop.find("the bike"));
    }

    private static Decision decision(Topic topic, long value, String text) {
        RuleOrigin author = new RuleOrigin("limit/a", Rank.LIMIT, 0, Force.MUST, Evidence.PRACTICE, "", "Because.", new SourceLocation("rules/x.yaml", 1));
        return Settler.settle(topic, List.of(Claim.of(author, topic, Verb.AT_LEAST, value, text, List.of()),
                Claim.of(author, topic, Verb.AT_MOST, value, text, List.of())));
    }

    private static String quarters(int hours) {
        return String.valueOf(hours * 60 / 15);
    }

    private static List<String> missing(LightSelection lights) {
        return lights.missing().stream().map(each -> each.topic() + ": " + each.got() + "; " + each.part()).toList();
    }

    private static List<String> names(LightSelection lights) {
        return lights.carried().stream().map(Part::name).toList();
    }

    @Test
    void theMainLightIsTheOneThatLasts() {
        LightSelection lights = lights("to see by with a backup", quarters(4), SHORT, LONG, BEHIND);
        assertThat(names(lights)).containsExactly("long light", "short light", "red light");
        assertThat(lights.missing()).isEmpty();
        assertThat(lights.serves(workshop.find("long light"))).isEqualTo("the main light, lights to see by with a backup, run time 4:00 h");
        assertThat(lights.serves(workshop.find("short light"))).startsWith("the backup, apart from the main light");
        assertThat(lights.serves(workshop.find("red light"))).startsWith("the light at the rear");
    }

    @Test
    void aLightIsNeverItsOwnBackup() {
        LightSelection lights = lights("to see by with a backup", quarters(4), LONG, BEHIND);
        assertThat(names(lights)).containsExactly("long light", "red light");
        assertThat(missing(lights)).containsExactly("lights: no backup apart from the main light; a second front light to see by");
        assertThat(lights.missing()).extracting(UnmetDecision::wanted).containsExactly("to see by with a backup");
    }

    @Test
    void whatRunsTooShortOrIsNotKnownIsSaid() {
        assertThat(missing(lights("to see by", quarters(4), SHORT, BEHIND)))
                .containsExactly("light run time: 3:45 h; a front light to see by that runs 4:00 h at the mode used");
        assertThat(missing(lights("to see by", quarters(4), SILENT, BEHIND)))
                .containsExactly("light run time: that of silent light not known; a front light to see by that runs 4:00 h at the mode used");
        assertThat(names(lights("to see by", quarters(4), SHORT, SILENT, BEHIND))).as("not known may last, too short does not")
                .containsExactly("silent light", "red light");
    }

    /** Unknown never counts: a light that does not say which end it is for is neither a rear light nor one to be seen in front. */
    @Test
    void whichEndHasToBeKnown() {
        assertThat(missing(lights("to be seen", null, BLINKER))).containsExactly(
                "lights: no light to be seen in front; a front light to be seen", "lights: no light at the rear; a rear light to be seen");
        assertThat(missing(lights("to be seen", null, LONG, BLINKER.replace("mass", "end: rear, mass")))).isEmpty();
        assertThat(missing(lights("to see by", null, BLINKER.replace("mass", "end: front, mass"), BEHIND)))
                .containsExactly("lights: no light to see by in front; a front light to see by");
    }

    @Test
    void byDaylightTheyComeOffAndUndecidedTheyStay() {
        assertThat(names(lights("none", null, BLINKER))).isEmpty();
        assertThat(names(lights(null, null, BLINKER))).containsExactly("blinker");
    }

    @Test
    void whatIsOnAWishListOrStaysElsewhereIsNotTaken() {
        assertThat(missing(lights("to be seen", null, LONG.replace("mass", "owned: no, mass"), BEHIND.replace("end: rear", "end: rear, stays: yes"))))
                .hasSize(2);
    }
}
