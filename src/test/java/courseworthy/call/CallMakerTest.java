package courseworthy.call;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import courseworthy.claim.Claim;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.SourceLocation;
import courseworthy.claim.Task;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Status;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.engine.FiringResult;
import courseworthy.engine.PlainRules;
import courseworthy.engine.RuleSet;
import courseworthy.engine.UndeterminedRule;
import courseworthy.problem.Faults;
import courseworthy.sheet.Row;
import courseworthy.sheet.Sheet;
import courseworthy.sheet.SheetReader;
import courseworthy.sheet.Stage;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CallMakerTest {

    private static final String SHEET = """
            sheet: Layers
            author: a test
            advice:
              - id: rough-asks-for-full-suspension
                when: {roughness: over 2.0}
                say: {bike: prefer cross-country full suspension}
                because: It does.
              - id: smooth-asks-for-a-road-bike
                when: {roughness: under 0.5}
                say: {bike: prefer road}
                because: It does.
              - id: travel-for-full-suspension
                when:
                  decided: {bike: cross-country full suspension}
                say: {fork travel: prefer 120 mm}
                because: It does.
              - id: travel-anyway
                say: {fork travel: at least 100 mm}
                because: It does.
              - id: stout-for-long-travel
                when:
                  decided: {fork travel: at least 120 mm}
                say: {fork chassis: prefer stiff}
                because: It does.
              - id: slim-for-all-other-travel
                when:
                  none of: [{decided: {fork travel: at least 120 mm}}]
                say: {fork chassis: prefer light, gloves: prefer none}
                because: It does.
              - id: look-at-the-post
                when:
                  decided: {seatpost: rigid}
                do: {what: Look at the post, find: It holds, by: night before}
                because: It matters.
              - id: a-look-in-the-morning
                do: {what: Look again, find: It holds, by: race morning}
                because: It matters.
              - id: also-at-night
                do: {what: Sleep, find: Rested, by: night before}
                because: It matters.
            """;

    @TempDir
    private Path folder;

    @Test
    void laterLayersTestWhatEarlierOnesSettled() {
        Call call = call(Map.of(Measure.ROUGHNESS, MeasureValue.exact(25)));
        assertThat(text(call, "bike")).isEqualTo("cross-country full suspension");
        assertThat(text(call, "fork travel")).isEqualTo("120 mm");
        assertThat(text(call, "fork chassis")).isEqualTo("stiff");
        assertThat(text(call, "gloves")).isEqualTo("short");
    }

    @Test
    void whatDoesNotApplyKeepsItsClaimsAndSaysWhy() {
        Call call = call(Map.of(Measure.ROUGHNESS, MeasureValue.exact(1)));
        Decision travel = call.on(Topics.FORK_TRAVEL);
        assertThat(travel.status()).isEqualTo(Status.NOT_APPLICABLE);
        assertThat(travel.why()).isEqualTo("Applies where bike is cross-country hardtail or cross-country full suspension or trail; "
                + "here it is road.");
        assertThat(travel.lost()).extracting(lost -> lost.claim().origin().rule() + " " + lost.how().words())
                .containsExactly("Layers/travel-anyway set aside");
        assertThat(call.on(Topics.DROPPER_TRAVEL).why()).isEqualTo("Applies where seatpost is dropper; here it is rigid.");
    }

    @Test
    void whatDoesNotApplyIsUnknownToLaterLayers() {
        Call call = call(Map.of(Measure.ROUGHNESS, MeasureValue.exact(1)));
        assertThat(call.on(Topics.FORK_CHASSIS).lost()).isEmpty();
        assertThat(text(call, "gloves")).isEqualTo("short");
    }

    @Test
    void whatIsUnknownLeavesTheDefaultAndIsTold() {
        Call call = call(Map.of());
        assertThat(text(call, "bike")).isEqualTo("gravel");
        assertThat(call.on(Topics.BIKE).consensus()).isEqualTo(Decision.Consensus.DEFAULT);
        assertThat(call.undetermined()).extracting(untold -> untold.origin().rule() + " " + untold.wanting())
                .containsExactly("Layers/rough-asks-for-full-suspension [roughness]", "Layers/smooth-asks-for-a-road-bike [roughness]");
    }

    @Test
    void thingsToDoComeByTimeAndId() {
        assertThat(call(Map.of()).tasks()).extracting(task -> task.origin().rule())
                .containsExactly("Layers/also-at-night", "Layers/look-at-the-post", "Layers/a-look-in-the-morning");
    }

    @Test
    void decisionsComeInTheOrderOfTheCatalogue() {
        assertThat(call(Map.of()).decisions()).extracting(Decision::topic).isEqualTo(Topics.all());
    }

    @Test
    void theOrderOfRowsHasNoBearing() {
        Demands demands = demands(Map.of(Measure.ROUGHNESS, new MeasureValue(15, 25, 30)));
        List<Row> rows = new ArrayList<>(rows());
        String first = CallMaker.call(new PlainRules(rows), demands).decisions().toString();
        for (int seed = 0; seed < 50; seed++) {
            Collections.shuffle(rows, new Random(seed));
            Call call = CallMaker.call(new PlainRules(rows), demands);
            assertThat(call.decisions()).hasToString(first);
        }
    }

    @Test
    void changedMeasuresCanBeCalledAnew() {
        Demands rough = demands(Map.of(Measure.ROUGHNESS, MeasureValue.exact(25)));
        Call before = CallMaker.call(new PlainRules(rows()), rough);
        Call after = CallMaker.call(new PlainRules(rows()), before.demands().with(Map.of(Measure.ROUGHNESS, MeasureValue.exact(1))));
        assertThat(text(after, "bike")).isEqualTo("road");
        assertThat(text(before, "bike")).isEqualTo("cross-country full suspension");
    }

    @Test
    void aCircleIsRefusedWhenTheSheetIsRead() throws IOException {
        Faults faults = new Faults();
        read("""
                sheet: Circle
                author: a test
                advice:
                  - id: the-hen
                    when:
                      decided: {fork travel: over 100 mm}
                    say: {bike: prefer trail}
                    because: It does.
                """, faults);
        assertThat(faults.faults()).singleElement().satisfies(fault -> assertThat(fault.text()).contains("fork travel")
                .contains("settled in layer 2").contains("bike, which is in layer 1"));
    }

    @Test
    void stagesComeInOrderEachWithAllThatIsSettled() {
        Recorder recorder = new Recorder();
        CallMaker.call(recorder, demands(Map.of(Measure.HOURS, MeasureValue.exact(300))));
        assertThat(recorder.stages).extracting(Stage::layer)
                .containsExactlyElementsOf(java.util.stream.IntStream.rangeClosed(0, Topics.LAST_LAYER).boxed().toList());
        for (Stage stage : recorder.stages) {
            assertThat(stage.settled().keySet()).containsExactlyInAnyOrderElementsOf(
                    Topics.all().stream().filter(topic -> topic.layer() <= stage.layer()).toList());
        }
        assertThat(recorder.closed).isTrue();
    }

    @Test
    void derivedMeasuresAreNeverTakenFromTheCaller() {
        Recorder recorder = new Recorder();
        Measure derived = java.util.Arrays.stream(Measure.values()).filter(Measure::derived).findFirst().orElseThrow();
        CallMaker.call(recorder, demands(Map.of(derived, MeasureValue.exact(1))));
        assertThat(recorder.stages.get(0).demands().known(derived)).isFalse();
    }

    @Test
    void whatHangsOnATopicWithoutAnAnswerDoesNotApply() {
        Recorder recorder = new Recorder();
        Topic bike = Topics.BIKE;
        for (int option = 0; option < bike.options().size(); option++) {
            recorder.claims.add(Claim.of(origin("limit/none-" + option, Rank.LIMIT), bike, Verb.RULE_OUT, option, "", List.of()));
        }
        Call call = CallMaker.call(recorder, demands(Map.of()));
        assertThat(call.on(bike).status()).isEqualTo(Status.NONE_POSSIBLE);
        assertThat(call.on(Topics.FORK_TRAVEL).why()).isEqualTo("Hangs on bike, which is none possible.");
        assertThat(recorder.stages.get(1).settled().get(bike).known()).isFalse();
    }

    @Test
    void aRuleThatSpeaksTooLateIsRefusedAndTheAskingClosed() {
        Recorder late = new Recorder();
        late.from = 1;
        late.claims.add(Claim.of(origin("shipped/late", Rank.SHIPPED), Topics.BIKE, Verb.PREFER, 0, "road", List.of()));
        assertThatThrownBy(() -> CallMaker.call(late, demands(Map.of()))).isInstanceOf(IllegalStateException.class)
                .hasMessage("shipped/late says something on bike once it is settled");
        assertThat(late.closed).isTrue();
    }

    @Test
    void rulesThatCouldNotTellComeById() {
        Recorder recorder = new Recorder();
        recorder.undetermined.add(new UndeterminedRule(origin("shipped/b", Rank.SHIPPED), List.of("bike"), List.of("mud")));
        recorder.undetermined.add(new UndeterminedRule(origin("shipped/a", Rank.SHIPPED), List.of("bike"), List.of("sand")));
        assertThat(CallMaker.call(recorder, demands(Map.of())).undetermined()).extracting(untold -> untold.origin().rule())
                .containsExactly("shipped/a", "shipped/b");
    }

    /** Says what it was told to say at one stage, and remembers what it was asked. */
    private static final class Recorder implements RuleSet, RuleSet.Firing {
        private final List<Stage> stages = new ArrayList<>();
        private final List<Claim> claims = new ArrayList<>();
        private final List<Task> tasks = new ArrayList<>();
        private final List<UndeterminedRule> undetermined = new ArrayList<>();
        private int from;
        private boolean closed;

        @Override
        public Firing open() {
            return this;
        }

        @Override
        public FiringResult fire(Stage stage) {
            stages.add(stage);
            return stage.layer() == from ? new FiringResult(claims, tasks) : new FiringResult(List.of(), List.of());
        }

        @Override
        public List<UndeterminedRule> undetermined() {
            return undetermined;
        }

        @Override
        public void close() {
            closed = true;
        }
    }

    private static RuleOrigin origin(String rule, Rank rank) {
        return new RuleOrigin(rule, rank, 0, Force.SHOULD, Evidence.PRACTICE, "", "Because.", new SourceLocation("x.yaml", 1));
    }

    private Call call(Map<Measure, MeasureValue> values) {
        return CallMaker.call(new PlainRules(rows()), demands(values));
    }

    private static Demands demands(Map<Measure, MeasureValue> values) {
        return new Demands(values, List.of(), List.of());
    }

    private static String text(Call call, String topic) {
        return call.on(Topics.of(topic)).text();
    }

    private List<Row> rows() {
        Faults faults = new Faults();
        try {
            Sheet sheet = read(SHEET, faults);
            faults.throwIfAny();
            return sheet.rows();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private Sheet read(String text, Faults faults) throws IOException {
        Path file = folder.resolve("sheet.yaml");
        Files.writeString(file, text);
        return SheetReader.read(file, "sheet.yaml", 0, faults);
    }
}
