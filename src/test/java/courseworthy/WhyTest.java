package courseworthy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.checklist.ChecklistMaker;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.demand.StretchFacts;
import courseworthy.demand.StretchMeasure;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.ShippedRules;
import courseworthy.event.Event;
import courseworthy.problem.BadInput;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import courseworthy.render.MarkdownRenderer;
import courseworthy.render.TerminalRenderer;
import courseworthy.report.ExampleBrief;
import courseworthy.report.WhyReport;
import courseworthy.report.json.JsonWhy;
import courseworthy.report.json.OutputSchema;
import courseworthy.rider.Rider;
import courseworthy.sheet.Sheet;
import courseworthy.sheet.SheetReader;
import courseworthy.task.Brief;
import courseworthy.task.BriefAssembler;
import courseworthy.task.WhyResult;
import courseworthy.task.WhyTask;
import courseworthy.topic.Topics;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Why and why not, in full, for a sheet of seven rows and a day of eight measures, worked out by hand. */
class WhyTest {

    private static final String SHEET = """
            sheet: Seven
            author: a coach
            advice:
              - id: rough-hundred
                when: {distance: at least 80 km, roughness: at least rough}
                say: {bike: prefer cross-country hardtail}
                because: Rough ground all day is ridden on sprung forks.
              - id: wide
                when: {decided: {bike: cross-country hardtail}, worst roughness: over 2.5}
                say: {front tyre width: prefer 57 mm}
                force: must
                because: Rugged pieces want width.
              - id: narrow
                when: {role: race}
                say: {front tyre width: prefer 50 mm}
                because: Narrow tyres are light.
              - id: clear
                say: {front tyre width: at most tyre clearance}
                because: It must fit.
              - id: allowed
                say: {front tyre width: at most tyre width allowed}
                because: The event says so.
              - id: mud
                when:
                  going: at least damp
                  any of: [{mud: over 10 %}, {any stretch: {surface: mud, length: over 2 km}}]
                  none of: [{hours: under 3 h}]
                say: {front tyre width: prefer 45 mm}
                because: Mud needs room.
              - id: sand
                when: {share of course: {where: {surface: sand}, is: over 20 %}, group share: under 5 %}
                say: {front tyre width: prefer 60 mm}
                because: Sand wants width.
            """;

    @TempDir
    private Path folder;

    private DroolsRules rules;
    private Call call;
    private Brief brief;

    @BeforeEach
    void makeTheCall() throws IOException {
        Faults faults = new Faults();
        Sheet sheet = SheetReader.read(Files.writeString(folder.resolve("seven.yaml"), SHEET), "seven.yaml", 0, faults);
        faults.throwIfAny();
        rules = new DroolsRules(sheet.rows(), new ShippedRules(List.of(), ShippedRules.load().pairs(), ShippedRules.load().joins()));
        Map<Measure, MeasureValue> day = new EnumMap<>(Measure.class);
        day.put(Measure.DISTANCE, MeasureValue.exact(800));
        day.put(Measure.ROUGHNESS, new MeasureValue(18, 20, 24));
        day.put(Measure.WORST_ROUGHNESS, MeasureValue.exact(32));
        day.put(Measure.ROLE, MeasureValue.exact(1));
        day.put(Measure.TYRE_CLEARANCE, MeasureValue.exact(60));
        day.put(Measure.GOING, MeasureValue.exact(0));
        day.put(Measure.MUD, MeasureValue.exact(4));
        day.put(Measure.HOURS, MeasureValue.exact(240));
        StretchFacts sand = new StretchFacts(Map.of(StretchMeasure.LENGTH, 10L, StretchMeasure.SURFACE, position("sand")));
        StretchFacts gravel = new StretchFacts(Map.of(StretchMeasure.LENGTH, 90L, StretchMeasure.SURFACE, position("gravel")));
        call = CallMaker.call(rules, new Demands(day, List.of(sand, gravel), List.of()));
        brief = BriefAssembler.of(new ExampleBrief().course(), Rider.UNKNOWN, Event.UNKNOWN, call, ChecklistMaker.of(call, Event.UNKNOWN));
    }

    private static long position(String surface) {
        return StretchMeasure.SURFACE.scale().words().indexOf(surface);
    }

    private WhyResult why(String not, String rule) {
        Long value = not == null ? null : WhyTask.value(Topics.FRONT_TYRE_WIDTH, not);
        return new WhyTask(rules, call, Topics.FRONT_TYRE_WIDTH, Progress.UNSEEN).of(brief, value, rule);
    }

    private static String text(WhyResult result) {
        return new TerminalRenderer(TerminalRenderer.STANDARD_WIDTH, false).render(WhyReport.of(result));
    }

    private static String markdown(WhyResult result) {
        return new MarkdownRenderer().render(WhyReport.of(result));
    }

    /** The must for 57 mm weighs 4, the should for 50 mm weighs 2: two thirds of the vote. */
    @Test
    void theWholeChain() {
        assertThat(text(why(null, null))).isEqualTo("""
                front tyre width: 57 mm                                           firmness: thin
                Heather Ridge, set up for the race

                HOW FIRM IT IS
                  Thin. One person's view is not yet a habit of the trade.
                  - Best evidence: one person's view, Seven/wide
                  - Advice: most of it agrees
                  - Assumed under it: no rules of the event
                  What is published on it:
                  - Published: A larger mountain bike tyre was faster over a technical section
                    and took impacts off the rider (Macdermid, Miller, Macdermid and Fink 2015,
                    Shock and Vibration 191075); a wider tyre of the same type rolls about 10 %
                    lighter (Rothhämel 2023, Int. J. Vehicle Systems Modelling and Testing
                    17(1):67-80); width and pressure both bear on vibration at bar and saddle
                    (Crenna et al. 2025, Eng 6(9):245). On all but good roads what the roughness
                    costs is more than rolling, and of the bike only its vertical stiffness
                    counts for it, which wide tyres at low pressure lower (a model: Turner 2024,
                    arXiv:2405.00019).
                  - Not found: A rolling resistance of bicycle tyres by width on gravel, sand or
                    mud. The widths for each ground are common practice.

                FROM MEASURES TO DECISION
                  - bike: cross-country hardtail
                    - prefer cross-country hardtail: Seven/rough-hundred, should
                      - distance: 80.0 km, needs at least 80 km
                      - roughness: rough (2.0), needs at least rough (could differ within the
                        present uncertainty)
                  - front tyre width: 57 mm
                    - prefer 57 mm: Seven/wide, must
                      - decided: bike: cross-country hardtail, needs cross-country hardtail
                      - worst roughness: rugged (3.2), needs over 2.5
                    - at most tyre clearance = 60 mm: Seven/clear, should
                      - tyre clearance: 60 mm
                    - prefer 50 mm: Seven/narrow, should; outvoted by Seven/wide
                      - role: race, needs race

                RULES THAT DID NOT APPLY
                  - at most tyre width allowed: Seven/allowed
                    It did not apply: its value comes from tyre width allowed, which is unknown.
                  - prefer 45 mm: Seven/mud
                    - going: dry, needs at least damp: not met (short by 1 step)
                    - any of: not met
                      - mud: 4 %, needs over 10 %: not met (short by 7 %)
                      - any stretch: none such, needs surface mud, length over 2 km: not met
                  - prefer 60 mm: Seven/sand
                    - share of course: surface sand: 10 %, needs over 20 %: not met (short by
                      11 %)
                    - group share: unknown, needs under 5 %: unknown

                WHAT WOULD CHANGE IT
                  - distance from 80.0 km to 79.9 km: 50 mm
                  - roughness from rough (2.0) to mixed (1.9): 50 mm (mixed (1.9) is within the
                    present uncertainty)
                  - tyre clearance from 60 mm to 56 mm: 56 mm
                  - worst roughness from rugged (3.2) to rough (2.5): 50 mm
                  One figure changed at a time; everything else, the stretches included, kept as
                  it is.
                """);
    }

    @Test
    void aRuleThatDidNotApply() {
        assertThat(text(why(null, "Seven/mud"))).isEqualTo("""
                front tyre width: 57 mm                                           firmness: thin
                Heather Ridge, set up for the race

                Seven/mud
                  prefer 45 mm; should
                  Mud needs room. (Seven; an opinion)
                  It did not apply: its conditions are not all met.
                  - going: dry, needs at least damp: not met (short by 1 step)
                  - any of: not met
                    - mud: 4 %, needs over 10 %: not met (short by 7 %)
                    - any stretch: none such, needs surface mud, length over 2 km: not met
                  - none of: met
                    - hours: 4:00 h, needs under 3 h: not met (over by 1:01 h)
                  seven.yaml:23
                """);
    }

    @Test
    void aRuleThatAppliedAndOneThatLacksItsValue() {
        assertThat(text(why(null, "Seven/wide"))).contains("""
                  prefer 57 mm; must
                  Rugged pieces want width. (Seven; an opinion)
                  It applied.
                  - decided: bike: cross-country hardtail, needs cross-country hardtail: met
                  - worst roughness: rugged (3.2), needs over 2.5: met
                """);
        assertThat(text(why(null, "Seven/allowed"))).contains("""
                  It did not apply: its value comes from tyre width allowed, which is unknown.
                  seven.yaml:20
                """);
    }

    @Test
    void aValueThatWasOutvoted() {
        assertThat(text(why("50 mm", null))).isEqualTo("""
                front tyre width: 57 mm                                           firmness: thin
                Heather Ridge, set up for the race

                WHY NOT 50 MM
                  Preferred over it:
                  - prefer 57 mm: Seven/wide, must
                    - decided: bike: cross-country hardtail, needs cross-country hardtail
                    - worst roughness: rugged (3.2), needs over 2.5
                    Rugged pieces want width.
                  Rules that recommended it:
                  - prefer 50 mm: Seven/narrow, should; outvoted by Seven/wide
                    - role: race, needs race
                  The smallest single change that would lead to it: distance from 80.0 km to
                  79.9 km.
                  One figure changed at a time; everything else, the stretches included, kept as
                  it is.
                """);
    }

    @Test
    void aValueThatIsRuledOut() {
        assertThat(text(why("62 mm", null))).isEqualTo("""
                front tyre width: 57 mm                                           firmness: thin
                Heather Ridge, set up for the race

                WHY NOT 62 MM
                  Ruled out by:
                  - at most tyre clearance = 60 mm: Seven/clear, should
                    - tyre clearance: 60 mm
                    It must fit.
                  No change to a single figure would lead to it.
                  One figure changed at a time; everything else, the stretches included, kept as
                  it is.
                """);
    }

    @Test
    void aValueThatARuleWouldPreferWhichDidNotApply() {
        assertThat(text(why("45 mm", null))).contains("""
                  Rules that would recommend it, but did not apply:
                  - prefer 45 mm: Seven/mud
                    - going: dry, needs at least damp: not met (short by 1 step)
                    - any of: not met
                      - mud: 4 %, needs over 10 %: not met (short by 7 %)
                      - any stretch: none such, needs surface mud, length over 2 km: not met
                  The smallest single change that would lead to it: tyre clearance from 60 mm to
                  45 mm.
                """);
    }

    @Test
    void whereNothingLeadsToItTheNearestIsNamed() {
        assertThat(text(why("70 mm", null))).contains("""
                  No change to a single figure would lead to it.
                """);
        assertThat(text(why("55.5 mm", null))).contains("WHY NOT 56 MM");
    }

    @Test
    void markdownSaysTheSame() {
        assertThat(markdown(why(null, "Seven/sand"))).isEqualTo("""
                # front tyre width: 57 mm, firmness: thin

                Heather Ridge, set up for the race

                ## Seven/sand

                prefer 60 mm; should

                Sand wants width. (Seven; an opinion)

                **It did not apply: its conditions are not all met.**

                - share of course: surface sand: 10 %, needs over 20 %: **not met** (short by 11 %)
                - group share: unknown, needs under 5 %: **unknown**

                *seven.yaml:30*
                """);
        assertThat(markdown(why("45 mm", null))).contains("## Why not 45 mm", "\n- prefer 45 mm: Seven/mud\n",
                "\n  - any of: **not met**\n", "    - mud: 4 %, needs over 10 %: **not met** (short by 7 %)\n");
    }

    @Test
    void jsonSaysTheSame() {
        JsonNode whole = json(why(null, null));
        assertThat(whole.get("chain")).hasSize(1);
        assertThat(whole.get("chain").get(0).get("topic").asText()).isEqualTo("bike");
        assertThat(whole.get("decisions").get(0).get("text").asText()).isEqualTo("57 mm");
        assertThat(whole.get("silent")).hasSize(3);
        JsonNode sand = whole.get("silent").get(2);
        assertThat(sand.get("holds").asText()).isEqualTo("false");
        assertThat(sand.get("tests").get(1).toString()).isEqualTo(
                "{\"depth\":0,\"what\":\"group share\",\"value\":\"unknown\",\"asked\":\"under 5 %\",\"holds\":\"unknown\",\"off\":\"\"}");
        assertThat(whole.get("flips").get(1).toString()).isEqualTo("{\"measure\":\"roughness\",\"from\":2,\"to\":1.9,\"unit\":\"\","
                + "\"way\":\"down\",\"text\":\"roughness from rough (2.0) to mixed (1.9)\",\"in_range\":true,\"decision\":"
                + "{\"status\":\"settled\",\"value\":50,\"unit\":\"mm\",\"text\":\"50 mm\"}}");
        JsonNode not = json(why("50 mm", "Seven/mud"));
        assertThat(not.get("not").get(0).get("preferred").get(0).get("rule").asText()).isEqualTo("Seven/wide");
        assertThat(not.get("not").get(0).get("brought_by").get(0).get("to").decimalValue()).isEqualByComparingTo("79900");
        assertThat(not.get("rules").get(0).get("tests")).hasSize(6);
    }

    private static JsonNode json(WhyResult reasoning) {
        String json = JsonWhy.of(reasoning);
        assertThat(OutputSchema.faultsOfWhy(json)).isEmpty();
        return OutputSchema.tree(json);
    }

    @Test
    void whatIsAskedWrongIsRefused() {
        refused("45", null, """
                --not: found "45", expected a length with its unit, such as 84 km, 52 mi, 1900 m, 6200 ft, 57 mm or 2.25 in
                    The default of front tyre width is 40 mm.""");
        refused("120 mm", null, "--not: found \"120 mm\", expected a value from 23 mm to 75 mm");
        refused("57 mm", null, "--not: found \"57 mm\", which is the decision, expected a value that was not chosen");
        refused("2.25 in", null, "--not: found \"57 mm\", which is the decision, expected a value that was not chosen");
        refused(null, "Seven/wid", "--rule: found \"Seven/wid\", expected the id of a rule on front tyre width\n    Did you mean \"Seven/wide\"?");
        refused(null, "mud", "--rule: found \"mud\", expected the id of a rule on front tyre width\n    Did you mean \"Seven/mud\"?");
        refused(null, "shipped/any", "--rule: found \"shipped/any\", expected the id of a rule on front tyre width\n"
                + "    'courseworthy rules --topic \"front tyre width\"' lists the shipped ones.");
        assertThatThrownBy(() -> WhyTask.value(Topics.SEATPOST, "droper")).isInstanceOf(BadInput.class)
                .hasMessage("--not: found \"droper\", expected one of: rigid, dropper\n    Did you mean \"dropper\"?");
        assertThat(WhyTask.value(Topics.EASIEST_GEAR, "34x50")).isEqualTo(680);
        assertThatThrownBy(() -> WhyTask.value(Topics.EASIEST_GEAR, "34/50")).isInstanceOf(BadInput.class)
                .hasMessage("--not: found \"34/50\", expected a gear as a ratio or as ring by sprocket, such as 0.68 or 34x50\n    Did you mean \"34x50\"?");
    }

    private void refused(String not, String rule, String message) {
        assertThatThrownBy(() -> why(not, rule)).isInstanceOf(BadInput.class).hasMessage(message);
    }
}
