package courseworthy.debrief;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.debrief.DebriefReader.DebriefPair;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.render.MarkdownRenderer;
import courseworthy.report.DebriefReport;
import courseworthy.report.json.JsonDebrief;
import courseworthy.task.DebriefReading;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Debriefs: what is read, what is refused, and what a day says of the advice. */
class DebriefTest {

    /** As the tool writes it, cut down to what is held against. */
    private static final String BRIEF = """
            {
              "format" : 1, "role" : "race", "date" : "2026-06-20", "event" : "Moor Cup", "rider" : "Kim",
              "demands" : [ {"name" : "going", "value" : "dry"}, {"name" : "coldest temperature", "value" : 8},
                {"name" : "hottest temperature", "value" : 20} ],
              "ride" : {"total_s" : {"value" : 14400, "low" : 13000, "high" : 16000}},
              "decisions" : [
                {"topic" : "rear tyre casing", "status" : "settled", "value" : "reinforced", "unit" : "", "text" : "reinforced",
                  "for" : [
                    {"rule" : "shipped/no-light", "rank" : "shipped", "where" : "rules/a.yaml:1", "says" : {"verb" : "at least", "value" : "reinforced", "unit" : "", "written" : "reinforced"}, "grounds" : []},
                    {"rule" : "shipped/reinforced", "rank" : "shipped", "where" : "rules/a.yaml:2", "says" : {"verb" : "prefer", "value" : "reinforced", "unit" : "", "written" : "reinforced"}, "grounds" : []},
                    {"rule" : "limit/casing", "rank" : "limit", "where" : "rules/a.yaml:3", "says" : {"verb" : "at least", "value" : "reinforced", "unit" : "", "written" : "reinforced"}, "grounds" : []}],
                  "against" : [
                    {"rule" : "mine/heavy", "rank" : "coach", "where" : "mine.yaml:1", "says" : {"verb" : "prefer", "value" : "heavy", "unit" : "", "written" : "heavy"}, "grounds" : []}]},
                {"topic" : "rear tyre pressure", "status" : "settled", "value" : 150, "unit" : "kPa", "text" : "1.50 bar",
                  "for" : [{"rule" : "shipped/start", "rank" : "shipped", "where" : "rules/a.yaml:4", "says" : {"verb" : "prefer", "value" : 150, "unit" : "kPa", "written" : "1.50 bar"}, "grounds" : []}], "against" : []},
                {"topic" : "front tyre pressure", "status" : "settled", "value" : 140, "unit" : "kPa", "text" : "1.40 bar",
                  "for" : [{"rule" : "shipped/start", "rank" : "shipped", "where" : "rules/a.yaml:4", "says" : {"verb" : "prefer", "value" : 140, "unit" : "kPa", "written" : "1.40 bar"}, "grounds" : []}], "against" : []},
                {"topic" : "food", "status" : "settled", "value" : 60, "unit" : "g/h", "text" : "60 g/h",
                  "for" : [{"rule" : "shipped/food", "rank" : "shipped", "where" : "rules/a.yaml:6", "says" : {"verb" : "prefer", "value" : 60, "unit" : "g/h", "written" : "60 g/h"}, "grounds" : []}], "against" : []},
                {"topic" : "clothing", "status" : "settled", "value" : "summer kit", "unit" : "", "text" : "summer kit",
                  "for" : [{"rule" : "shipped/summer", "rank" : "shipped", "where" : "rules/a.yaml:5", "says" : {"verb" : "prefer", "value" : "summer kit", "unit" : "", "written" : "summer kit"}, "grounds" : [{"measure" : "coldest temperature"}]}], "against" : []},
                {"topic" : "bidon colour", "status" : "settled", "value" : "green", "unit" : "", "text" : "green", "for" : [], "against" : []},
                {"topic" : "fork travel", "status" : "not applicable", "value" : null, "unit" : "mm", "text" : "", "for" : [], "against" : []}
              ]
            }
            """;

    @TempDir
    private Path folder;

    private final Faults faults = new Faults();

    private DebriefPair read(String text) {
        try {
            Files.writeString(folder.resolve("b.json"), BRIEF);
            return DebriefReader.read(Files.writeString(folder.resolve("d.yaml"), text), "x/d.yaml", faults);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private DebriefResult held(String text) {
        DebriefPair pair = read("debrief: Moor Cup\nbrief: b.json\n" + text);
        assertThat(faults.faults()).isEmpty();
        return DebriefResult.of(pair);
    }

    private static Verdict on(DebriefResult held, String topic) {
        return held.verdicts().stream().filter(each -> each.advice().topic().name().equals(topic)).findFirst().orElseThrow();
    }

    private List<String> said() {
        return faults.faults().stream().map(Fault::text).toList();
    }

    @Test
    void whatIsNotToldIsNotHeldAgainstAnything() {
        DebriefResult held = held("");
        assertThat(held.verdicts()).hasSize(5).allSatisfy(each -> assertThat(each.answer()).isEqualTo(AdviceOutcome.UNKNOWN));
        assertThat(held.rules().values()).containsOnly(AdviceOutcome.UNKNOWN);
        assertThat(held.inTime()).isNull();
        assertThat(held.given().advice()).as("a topic of another version and one that does not apply are passed over")
                .extracting(each -> each.topic().name()).containsExactly("rear tyre casing", "rear tyre pressure", "front tyre pressure", "food",
                "clothing");
    }

    /** A cut asks for more casing: who preferred what was ridden was not right, who preferred more was; who asked for at least it says nothing of. */
    @Test
    void aCut() {
        DebriefResult held = held("punctures: [{wheel: rear, cause: cut, at: 33 km, repaired with: plugs}]\n");
        Verdict casing = on(held, "rear tyre casing");
        assertThat(casing.answer()).isEqualTo(AdviceOutcome.NOT);
        assertThat(casing.reasons()).containsExactly("rear puncture at 33 km, cut, repaired with plugs (a stouter casing is cut less easily)");
        assertThat(held.rules()).containsEntry("shipped/reinforced", AdviceOutcome.NOT).containsEntry("shipped/no-light", AdviceOutcome.UNKNOWN)
                .containsEntry("mine/heavy", AdviceOutcome.BORNE_OUT).doesNotContainKey("limit/casing");
        assertThat(casing.rules()).filteredOn(each -> each.said().limit()).extracting(Verdict.RuleVerdict::reason)
                .containsExactly("a limit is not judged by how a day went");
        assertThat(on(held, "rear tyre pressure").answer()).as("a cut says nothing of pressure").isEqualTo(AdviceOutcome.UNKNOWN);
    }

    @Test
    void noFlatBearsOutWhatWasRiddenAndNotMore() {
        DebriefResult held = held("punctures: none\n");
        assertThat(on(held, "rear tyre casing").answer()).isEqualTo(AdviceOutcome.BORNE_OUT);
        assertThat(held.rules()).containsEntry("shipped/reinforced", AdviceOutcome.BORNE_OUT).containsEntry("shipped/no-light", AdviceOutcome.BORNE_OUT)
                .containsEntry("mine/heavy", AdviceOutcome.UNKNOWN);
    }

    /** The rider's own word goes before the outcomes. */
    @Test
    void whatTheRiderWouldChangeGoesFirst() {
        DebriefResult lighter = held("punctures: none\nwould change: {rear tyre casing: light}\n");
        assertThat(on(lighter, "rear tyre casing").answer()).isEqualTo(AdviceOutcome.NOT);
        assertThat(lighter.rules()).containsEntry("shipped/no-light", AdviceOutcome.NOT).containsEntry("mine/heavy", AdviceOutcome.NOT);
        DebriefResult same = held("punctures: [{wheel: rear, cause: cut}]\nwould change: {rear tyre casing: reinforced}\n");
        assertThat(on(same, "rear tyre casing").reasons()).containsExactly("you would take reinforced again");
        assertThat(on(same, "rear tyre casing").answer()).isEqualTo(AdviceOutcome.BORNE_OUT);
    }

    /** 1.35 bar was ridden where 1.5 bar was told: no rim strike then says nothing of 1.5 bar, a rim strike speaks for it. */
    @Test
    void whatWasChangedOnTheDayWasNotTried() {
        DebriefResult well = held("rim strikes: none\nchanged on the day: {rear tyre pressure: 1.35 bar}\n");
        assertThat(on(well, "rear tyre pressure").answer()).isEqualTo(AdviceOutcome.UNKNOWN);
        assertThat(on(well, "rear tyre pressure").reasons()).contains("ridden with 1.35 bar instead");
        DebriefResult struck = held("rim strikes: [rear]\nchanged on the day: {rear tyre pressure: 1.35 bar}\n");
        assertThat(on(struck, "rear tyre pressure").answer()).isEqualTo(AdviceOutcome.BORNE_OUT);
        assertThat(on(held("rim strikes: [rear]\n"), "rear tyre pressure").answer()).isEqualTo(AdviceOutcome.NOT);
    }

    /** A build that had a light casing, and rims whose tyres it did not know: what it had was ridden, not what was told. */
    @Test
    void whatTheBuildHadWasRidden() throws IOException {
        String built = BRIEF.replace("  \"decisions\" : [", "  \"build\" : {\"not_met\" : [{\"topic\" : \"rear tyre casing\", \"got\" : \"light\"}, "
                + "{\"topic\" : \"rear tyre pressure\", \"got\" : \"not known\"}]},\n  \"decisions\" : [");
        Files.writeString(folder.resolve("built.json"), built);
        DebriefResult cut = DebriefResult.of(read("debrief: x\nbrief: built.json\npunctures: [{wheel: rear, cause: cut}]\nrim strikes: none\n"));
        assertThat(faults.faults()).isEmpty();
        Verdict casing = on(cut, "rear tyre casing");
        assertThat(casing.answer()).as("more than light was wanted, and more was told").isEqualTo(AdviceOutcome.BORNE_OUT);
        assertThat(casing.reasons()).contains("ridden with light instead, as the build had it");
        assertThat(cut.rules()).containsEntry("shipped/no-light", AdviceOutcome.BORNE_OUT);
        Verdict pressure = on(cut, "rear tyre pressure");
        assertThat(pressure.answer()).isEqualTo(AdviceOutcome.UNKNOWN);
        assertThat(pressure.reasons()).containsExactly("what was ridden is not known: the build did not say; write it under changed on the day");
        DebriefResult changed = DebriefResult.of(read("debrief: x\nbrief: built.json\nrim strikes: [rear]\nchanged on the day: {rear tyre pressure: 1.4 bar}\n"));
        assertThat(on(changed, "rear tyre pressure").answer()).isEqualTo(AdviceOutcome.BORNE_OUT);
    }

    /** What the build fell short of is written for people: teeth before a ratio, which end it is, what the event allows. */
    @Test
    void whatTheBuildHadIsReadAsItIsWrittenForPeople() throws IOException {
        String gear = BRIEF.replace("  \"decisions\" : [", "  \"build\" : {\"not_met\" : [{\"topic\" : \"hardest gear\", \"got\" : \"28x10 (2.80)\"}, "
                + "{\"topic\" : \"rear tyre casing\", \"got\" : \"light at the rear\"}, "
                + "{\"topic\" : \"food\", \"got\" : \"75 g/h, which is more than anybody takes\"}]},\n  \"decisions\" : [\n    "
                + "{\"topic\" : \"hardest gear\", \"status\" : \"settled\", \"value\" : 3.4, \"unit\" : \"\", \"text\" : \"34x10 (3.40)\", \"for\" : [], \"against\" : []},");
        Files.writeString(folder.resolve("built.json"), gear);
        DebriefResult result = DebriefResult.of(read("debrief: x\nbrief: built.json\nspun out: long\nrim strikes: none\n"));
        assertThat(faults.faults()).isEmpty();
        assertThat(on(result, "hardest gear").reasons()).contains("ridden with a ratio of 2.800 instead, as the build had it");
        assertThat(on(result, "hardest gear").answer()).as("2.80 was spun out, and 3.40 is more").isEqualTo(AdviceOutcome.BORNE_OUT);
        assertThat(on(result, "rear tyre casing").reasons()).contains("ridden with light instead, as the build had it");
        assertThat(on(result, "food").reasons()).contains("ridden with 75 g/h instead, as the build had it");
        Files.writeString(folder.resolve("built.json"), gear.replace("light at the rear", "light at the front"));
        assertThat(on(DebriefResult.of(read("debrief: x\nbrief: built.json\nrim strikes: none\npunctures: none\n")), "rear tyre casing").reasons())
                .contains("ridden with light instead, as the build had it");
    }

    /** What a puncture was repaired with was there when it was needed, whichever it was. */
    @Test
    void whatAPunctureWasRepairedWithWasNeeded() {
        assertThat(OutcomeTable.MENDS).filteredOn(mend -> !OutcomeTable.flat("a puncture", "rear", "hole", mend).isEmpty()).containsExactly("sealant", "plugs", "tubes");
    }

    /** The lines of the day have what was answered: a reason that only repeats it says why alone. */
    @Test
    void aReasonDoesNotRepeatTheDay() {
        assertThat(on(held("clothes: cold\n"), "clothing").reasons()).containsExactly("the rider was cold");
        assertThat(on(held("punctures: [{wheel: rear, cause: cut, at: 33 km}]\n"), "rear tyre casing").reasons())
                .containsExactly("rear puncture at 33 km, cut (a stouter casing is cut less easily)");
    }

    /** Against goes before for: a pinch at a wheel whose rim is said not to have been struck. */
    @Test
    void whatSpeaksAgainstGoesFirst() {
        assertThat(on(held("rim strikes: none\npunctures: [{wheel: rear, cause: pinch}]\n"), "rear tyre pressure").answer()).isEqualTo(AdviceOutcome.NOT);
    }

    /** 4 C off is as foretold, more is another day; so is another ground. */
    /** A rim strike asks for more air (docs/reference/files.md): a wish for less cannot show that the advice was too much. */
    @Test
    void aWishAgainstWhatHappenedCannotTell() {
        Verdict verdict = on(held("rim strikes: [rear]\nwould change: {rear tyre pressure: 1.40 bar}\n"), "rear tyre pressure");
        assertThat(verdict.answer()).isEqualTo(AdviceOutcome.UNKNOWN);
        assertThat(verdict.reasons()).containsExactly("you would take 1.40 bar", "the rim struck the ground", "that points both ways");
        assertThat(on(held("rim strikes: [rear]\nwould change: {rear tyre pressure: 1.60 bar}\n"), "rear tyre pressure").answer()).isEqualTo(AdviceOutcome.NOT);
    }

    @Test
    void adviceForOtherWeatherIsNotJudged() {
        assertThat(on(held("clothes: cold\nweather: {low: 4 C}\n"), "clothing").answer()).isEqualTo(AdviceOutcome.NOT);
        Verdict colder = on(held("clothes: cold\nweather: {low: 3.9 C}\n"), "clothing");
        assertThat(colder.answer()).isEqualTo(AdviceOutcome.UNKNOWN);
        assertThat(colder.reasons()).contains("predicted for 8 C at the coldest, and it was 4 C");
        assertThat(on(held("clothes: cold\nweather: {going: wet}\n"), "clothing").reasons()).contains("predicted for dry going, and it was wet");
        assertThat(on(held("clothes: cold\n"), "clothing").answer()).isEqualTo(AdviceOutcome.NOT);
        assertThat(on(held("punctures: none\nweather: {going: wet}\n"), "rear tyre casing").answer()).as("not of the weather").isEqualTo(AdviceOutcome.BORNE_OUT);
    }

    /** A rule that rested on dry ground is not answered by a wet day, whatever it spoke on; one beside it that did not is. */
    @Test
    void aRuleThatRestedOnOtherWeatherIsNotJudged() throws IOException {
        String resting = BRIEF.replace("\"written\" : \"heavy\"}, \"grounds\" : []", "\"written\" : \"heavy\"}, \"grounds\" : [{\"measure\" : \"ground\"}]");
        assertThat(resting).isNotEqualTo(BRIEF);
        Files.writeString(folder.resolve("dry.json"), resting);
        DebriefResult wet = DebriefResult.of(read("debrief: x\nbrief: dry.json\npunctures: [{wheel: rear, cause: cut}]\nweather: {going: wet}\n"));
        assertThat(wet.rules()).containsEntry("mine/heavy", AdviceOutcome.UNKNOWN).containsEntry("shipped/reinforced", AdviceOutcome.NOT);
        DebriefResult dry = DebriefResult.of(read("debrief: x\nbrief: dry.json\npunctures: [{wheel: rear, cause: cut}]\nweather: {going: dry}\n"));
        assertThat(dry.rules()).containsEntry("mine/heavy", AdviceOutcome.BORNE_OUT);
    }

    @Test
    void theTimeIsHeldAgainstItsRange() {
        assertThat(held("hours: 3:36 h\n").inTime()).isFalse();
        assertThat(held("hours: 3:37 h\n").inTime()).isTrue();
        assertThat(held("hours: 4:26 h\n").inTime()).isTrue();
        assertThat(held("hours: 4:27 h\n").inTime()).isFalse();
    }

    /** Each rule counts once a debrief, and what is not borne out on one topic is not. */
    @Test
    void theRecordOverMany() {
        List<DebriefResult> all = new ArrayList<>();
        all.add(held("punctures: none\nhours: 4 h\n"));
        all.add(held("punctures: [{wheel: rear, cause: cut}]\nhours: 5 h\n"));
        all.add(held("clothes: right\n"));
        RuleRecord keeping = RuleRecord.of(all);
        assertThat(keeping.rules()).extracting(RuleRecord.RuleTally::rule).containsExactly("mine/heavy", "shipped/food", "shipped/no-light", "shipped/reinforced",
                "shipped/start", "shipped/summer");
        assertThat(keeping.rules()).extracting(each -> each.spoke() + " " + each.borneOut() + " " + each.not() + " " + each.unknown())
                .containsExactly("3 1 0 2", "3 0 0 3", "3 1 0 2", "3 1 1 1", "3 0 0 3", "3 1 0 2");
        assertThat(keeping.toLookAt()).extracting(RuleRecord.RuleTally::rule).containsExactly("shipped/reinforced");
        assertThat(keeping.inTime()).isEqualTo(new Proportion(1, 2));
    }

    /** What is mostly borne out needs no look for one bad day: 10 of 11 lie above one half (62 to 98 %), 3 of 4 need not. */
    @Test
    void oneBadDayAmongManyIsNoReasonToLook() {
        List<DebriefResult> all = new ArrayList<>(List.of(held("punctures: [{wheel: rear, cause: cut}]\n")));
        for (int i = 0; i < 3; i++) {
            all.add(held("punctures: none\n"));
        }
        assertThat(RuleRecord.of(all).toLookAt()).hasSize(1);
        for (int i = 0; i < 7; i++) {
            all.add(held("punctures: none\n"));
        }
        assertThat(RuleRecord.of(all).toLookAt()).isEmpty();
        assertThat(RuleRecord.of(all).rules()).filteredOn(each -> each.rule().equals("shipped/reinforced")).extracting(each -> each.share().words())
                .containsExactly("10 of 11, mostly borne out (62 to 98 %)");
    }

    /** One rule on two wheels, wrong at the rear and right in front: it is not borne out. */
    @Test
    void aRuleThatFailsAtOneWheelIsNotBorneOut() {
        DebriefResult held = held("rim strikes: [rear]\n");
        assertThat(on(held, "front tyre pressure").answer()).isEqualTo(AdviceOutcome.BORNE_OUT);
        assertThat(held.rules()).containsEntry("shipped/start", AdviceOutcome.NOT);
    }

    /** Too much for the stomach, and yet it ran out. */
    @Test
    void outcomesThatPointBothWaysCannotTell() {
        DebriefResult held = held("stomach: upset\nran out of: [food]\n");
        assertThat(on(held, "food").answer()).isEqualTo(AdviceOutcome.UNKNOWN);
        assertThat(on(held, "food").reasons()).contains("that points both ways");
        assertThat(on(held("stomach: upset\n"), "food").answer()).isEqualTo(AdviceOutcome.NOT);
        assertThat(on(held("ran out of: [food]\n"), "food").answer()).isEqualTo(AdviceOutcome.NOT);
    }

    /** More or less only where there is an order, another only where there is none; every topic is one. */
    @Test
    void theTableOfOutcomesIsSound() {
        List<ReportedValue> all = new ArrayList<>(OutcomeTable.noPunctures());
        for (String question : OutcomeTable.questions()) {
            for (String answer : OutcomeTable.answers(question)) {
                all.addAll(OutcomeTable.of(question, answer));
            }
        }
        for (String wheel : OutcomeTable.WHEELS) {
            all.addAll(OutcomeTable.rimStrikes(List.of(wheel)));
            all.addAll(OutcomeTable.slid(List.of(wheel)));
            for (String cause : OutcomeTable.CAUSES) {
                for (String mend : OutcomeTable.MENDS) {
                    all.addAll(OutcomeTable.flat("x", wheel, cause, mend));
                }
            }
        }
        all.addAll(OutcomeTable.ranOut(OutcomeTable.runsOut()));
        all.addAll(OutcomeTable.ranOut(List.of()));
        all.addAll(OutcomeTable.neverWalked());
        OutcomeTable.REASONS.forEach(reason -> all.addAll(OutcomeTable.walked("x", reason)));
        assertThat(all).hasSizeGreaterThan(60).allSatisfy(each -> {
            assertThat(Topics.find(each.topic().name())).isNotNull();
            boolean ordered = each.topic().kind() != Topic.Kind.OPTIONS;
            assertThat(each.way() == Direction.RIGHT || ordered == (each.way() != Direction.ANOTHER)).as(each.what()).isTrue();
        });
    }

    @Test
    void everyFaultIsToldAtOnce() {
        read("""
                brief: b.json
                hours: 4
                weather: {going: icy, low: 20 C, high: 10 C}
                punctures:
                  - {cause: nail}
                slid: [left, none]
                walked: [{at: 3 km}]
                ran out of: [patience]
                clothes: warm
                would change: {rear tyre casing: hevy, rear tyre pressur: 2 bar, rear tyre width: 400 mm}
                wether: fine
                """);
        assertThat(said()).containsExactly(
                "x/d.yaml:1: debrief: found nothing, expected its name, such as the event's\n    Add a line \"debrief: ...\".",
                "x/d.yaml:2: hours: found \"4\", expected a time with its unit, such as 6:30 h, 4 h, 45 min or 40 s\n    Add the unit, one of: days, h, min, s.",
                "x/d.yaml:3: going: found \"icy\", expected one of: dry, damp, wet",
                "x/d.yaml:3: low: found \"20 C\", expected no more than high",
                "x/d.yaml:5: wheel: found nothing, expected front or rear\n    Add a line \"wheel: ...\".",
                "x/d.yaml:5: cause: found \"nail\", expected one of: cut, pinch, hole, burp, not known",
                "x/d.yaml:6: slid: found \"left\", expected one of: none, front, rear",
                "x/d.yaml:6: slid: found none beside others, expected none alone, or what there was",
                "x/d.yaml:7: why: found nothing, expected gear, ground, legs or traffic\n    Add a line \"why: ...\".",
                "x/d.yaml:8: ran out of: found \"patience\", expected one of: none, water, food, plugs, tubes, battery, light",
                "x/d.yaml:9: clothes: found \"warm\", expected one of: cold, right, hot",
                "x/d.yaml:10: rear tyre casing: found \"hevy\", expected one of: light, reinforced, heavy\n    Did you mean \"heavy\"?",
                "x/d.yaml:10: would change: found \"rear tyre pressur\", expected a topic and its value, such as {rear tyre casing: heavy}\n"
                        + "    Did you mean \"rear tyre pressure\"?",
                "x/d.yaml:10: rear tyre width: found \"400 mm\", expected a value from 23 mm to 75 mm",
                "x/d.yaml:11: wether: found an unknown key, expected one of: " + String.join(", ", sorted()) + "\n    Did you mean \"weather\"?");
    }

    /** In the order in which the reader asks. */
    private static List<String> sorted() {
        List<String> out = new ArrayList<>(List.of("debrief", "brief", "hours", "weather", "punctures", "rim strikes", "slid"));
        for (String question : OutcomeTable.questions()) {
            out.add(question);
            if (question.equals("spun out")) {
                out.add("spun out at");
            }
        }
        out.addAll(List.of("walked", "ran out of", "changed on the day", "would change", "notes"));
        return out;
    }

    @Test
    void placesAreAListOfDistances() {
        read("debrief: x\nbrief: b.json\nspun out at: {first: 12 km}\n");
        read("debrief: x\nbrief: b.json\nspun out at: [3000 km]\n");
        assertThat(said()).containsExactly(
                "x/d.yaml:3: spun out at: found a block of keys, expected a list of distances, such as [12 km, 40.5 km]",
                "x/d.yaml:3: spun out at: found \"3000 km\", expected a distance from 0 km to 2000 km");
    }

    @Test
    void aTopicThatIsNearlyNoneIsLookedUp() {
        read("debrief: x\nbrief: b.json\nwould change: {umbrella: open}\n");
        assertThat(said()).containsExactly("x/d.yaml:3: would change: found \"umbrella\", expected a topic and its value, such as {rear tyre casing: heavy}\n"
                + "    'courseworthy topics' lists them.");
    }

    @Test
    void aTopicWithoutAdviceIsWarnedOf() {
        read("debrief: x\nbrief: b.json\nwould change: {fork travel: 120 mm}\n");
        assertThat(said()).isEmpty();
        assertThat(faults.warnings()).extracting(Fault::text).containsExactly("x/d.yaml:3: warning: would change: found fork travel, expected a topic on "
                + "which the brief advises something\n    It is not used.");
    }

    @Test
    void aBriefOnAPathThatCannotBeIsRefused() {
        read("debrief: x\nbrief: \"a\\0.json\"\n");
        assertThat(said()).containsExactly("x/d.yaml:2: brief: found \"a\u0000.json\", a path that cannot be, expected the brief as it was saved with --format "
                + "json, beside this file or below it");
    }

    @Test
    void aBriefThatCannotBeUsedIsRefused() throws IOException {
        String expected = ", expected a brief saved with 'courseworthy brief ... --format json -o FILE'";
        read("debrief: x\nbrief: c.json\n");
        Files.writeString(folder.resolve("c.json"), "{\"format\" : 3,\n \"decisions\" : []}");
        read("debrief: x\nbrief: c.json\n");
        Files.writeString(folder.resolve("c.json"), "{\"format\" : 1,\n \"decisions\" : [}");
        read("debrief: x\nbrief: c.json\n");
        Files.writeString(folder.resolve("c.json"), "[1]");
        read("debrief: x\nbrief: c.json\n");
        Files.writeString(folder.resolve("c.json"), "{\"format\" : 1,\n \"format\" : 1}");
        read("debrief: x\nbrief: c.json\n");
        read("debrief: x\nbrief: ../c.json\n");
        read("debrief: x\nbrief: /etc/hosts\n");
        assertThat(said()).containsExactly(
                "x/c.json: found no such file" + expected + "\n    Check the spelling of the path.",
                "x/c.json:1: found another kind of file, or another format of brief" + expected,
                "x/c.json:1: found what is no JSON object" + expected,
                "x/c.json:2: found what cannot be read as JSON" + expected,
                "x/d.yaml:2: brief: found \"../c.json\", which lies outside the debrief's folder, expected the brief as it was saved with --format json, "
                        + "beside this file or below it\n    Put the brief beside the debrief.",
                "x/d.yaml:2: brief: found \"/etc/hosts\", which lies outside the debrief's folder, expected the brief as it was saved with --format json, "
                        + "beside this file or below it\n    Put the brief beside the debrief.");
    }

    /** Slips of every sort in debrief and brief: a fault in plain words, or a reading; never an exception. */
    @Test
    void spoiltFilesAreToldOf() throws IOException {
        String text = Files.readString(Path.of("docs", "examples", "debriefs", "heather-ridge.yaml")).replace("heather-ridge.json", "b.json");
        Random random = new Random(5);
        for (int i = 0; i < 600; i++) {
            boolean inBrief = i % 2 == 0;
            Files.writeString(folder.resolve("b.json"), inBrief ? spoilt(BRIEF, random) : BRIEF);
            Files.writeString(folder.resolve("d.yaml"), inBrief ? text : spoilt(text, random));
            Faults found = new Faults();
            DebriefPair pair = DebriefReader.read(folder.resolve("d.yaml"), "d.yaml", found);
            assertThat(pair != null || found.stop()).isTrue();
            if (pair != null) {
                DebriefResult held = DebriefResult.of(pair);
                DebriefReading reading = new DebriefReading(held, "", null);
                assertThat(JsonDebrief.of(reading) + new MarkdownRenderer().render(DebriefReport.of(reading))).doesNotContain("NaN");
            }
            found.faults().forEach(fault -> assertThat(fault.text()).doesNotContain("Exception", "java."));
        }
    }

    private static String spoilt(String text, Random random) {
        StringBuilder out = new StringBuilder(text);
        for (int n = 1 + random.nextInt(3); n > 0; n--) {
            int at = random.nextInt(out.length());
            String junk = List.of("", "[", "]", "{", "}", ",", ": ", "null", "\"", "9e999", "-", "\n", "none", "x").get(random.nextInt(14));
            out.replace(at, Math.min(out.length(), at + random.nextInt(6)), junk);
        }
        return out.toString();
    }
}
