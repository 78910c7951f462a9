package courseworthy.engine;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.claim.Claim;
import courseworthy.claim.Rank;
import courseworthy.claim.TestedFact;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.demand.StretchFacts;
import courseworthy.demand.StretchMeasure;
import courseworthy.problem.Faults;
import courseworthy.sheet.Condition;
import courseworthy.sheet.Row;
import courseworthy.sheet.Sheet;
import courseworthy.sheet.SheetReader;
import courseworthy.sheet.Stage;
import courseworthy.sheet.Threshold;
import courseworthy.sheet.Truth;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import courseworthy.topic.SettledTopic;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What rows say, when they say it, on which grounds, and when they cannot tell. */
class RowsTest {

    private final Map<Measure, MeasureValue> known = new EnumMap<>(Measure.class);
    private List<StretchFacts> stretches = List.of();

    private static Row row(String when, String say) {
        return row("    when: " + when + "\n    say: " + say + "\n");
    }

    private static Row row(String lines) {
        Faults faults = new Faults();
        String text = "sheet: S\nauthor: me\nadvice:\n  - id: r\n" + lines + "    because: So.\n";
        Node.Mapping tree = YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "s.yaml", faults);
        Sheet sheet = SheetReader.decode(tree, "s.yaml", Rank.COACH, 0, faults);
        assertThat(faults.faults()).isEmpty();
        return sheet.rows().get(0);
    }

    private Stage stage(int layer, SettledTopic... settled) {
        Map<Topic, SettledTopic> all = new java.util.LinkedHashMap<>();
        for (SettledTopic one : settled) {
            all.put(one.topic(), one);
        }
        return new Stage(layer, new Demands(known, stretches, List.of()), all);
    }

    private static SettledTopic settled(String topic, long value) {
        return new SettledTopic(Topics.of(topic), true, value);
    }

    private static List<Claim> claims(Row row, Stage stage) {
        try (RuleSet.Firing firing = new PlainRules(List.of(row)).open()) {
            return firing.fire(stage).claims();
        }
    }

    private static List<UndeterminedRule> undetermined(Row row, Stage stage) {
        try (RuleSet.Firing firing = new PlainRules(List.of(row)).open()) {
            firing.fire(stage);
            return firing.undetermined();
        }
    }

    @Test
    void aMeasureTimesAFactorIsExactThenRoundedHalfUp() {
        Row row = row("    say: {easiest gear: at most 0.95 x ratio needed on the last climb}\n");
        known.put(Measure.RATIO_NEEDED_ON_THE_LAST_CLIMB, MeasureValue.exact(710));
        Claim claim = claims(row, stage(0)).get(0);
        assertThat(claim.value()).as("0.95 x 0.710 = 0.6745").isEqualTo(675);
        assertThat(claim.written()).isEqualTo("0.95 x ratio needed on the last climb");
        assertThat(claim.grounds()).extracting(TestedFact::measure).containsExactly("ratio needed on the last climb");
    }

    @Test
    void aMeasureValueIsConvertedAndNeverShrunkToWhatIsSensible() {
        Row row = row("    say: {light run time: at least 1.5 x dark hours}\n");
        known.put(Measure.DARK_HOURS, MeasureValue.exact(21));
        assertThat(claims(row, stage(0)).get(0).value()).as("1.5 x 1:45 h = 157.5 min = 10.5 quarters, halves up").isEqualTo(11);
        known.put(Measure.DARK_HOURS, MeasureValue.exact(600));
        assertThat(claims(row, stage(0)).get(0).value()).as("1.5 x 50 h, beyond the 16 h that are sensible")
                .isEqualTo(300);
    }

    @Test
    void aClaimWaitsForItsMeasureWhileTheOthersDoNot() {
        Row row = row("    say: {front tyre pressure: prefer front reference pressure, front tyre width: prefer 40 mm}\n");
        PlainRules rules = new PlainRules(List.of(row));
        try (RuleSet.Firing firing = rules.open()) {
            assertThat(firing.fire(stage(0)).claims()).extracting(c -> c.topic().name()).containsExactly("front tyre width");
            known.put(Measure.FRONT_REFERENCE_PRESSURE, MeasureValue.exact(33));
            assertThat(firing.fire(stage(5)).claims()).extracting(Claim::value).containsExactly(33L);
            assertThat(firing.fire(stage(6)).claims()).isEmpty();
            assertThat(firing.undetermined()).isEmpty();
        }
    }

    @Test
    void withoutItsMeasureARowCannotTellOnThatTopicAlone() {
        Row row = row("    say: {easiest gear: at most ratio needed on the last climb, fork travel: prefer 120 mm}\n");
        assertThat(claims(row, stage(0))).extracting(c -> c.topic().name()).containsExactly("fork travel");
        assertThat(undetermined(row, stage(0))).extracting(UndeterminedRule::topics).containsExactly(List.of("easiest gear"));
        assertThat(undetermined(row, stage(0)).get(0).wanting()).containsExactly("ratio needed on the last climb");
    }

    @Test
    void anUnknownConditionKeepsSilentAndSaysForWantOfWhat() {
        Row row = row("{roughness: at least rough, hours: over 4:00 h, any stretch: {sharp stones: yes, sand: no, length: over 1 km}}",
                "{fork travel: prefer 120 mm}");
        known.put(Measure.HOURS, MeasureValue.exact(300));
        stretches = List.of(new StretchFacts(Map.of(StretchMeasure.LENGTH, 150L, StretchMeasure.SAND, 0L)));
        assertThat(claims(row, stage(0))).isEmpty();
        assertThat(undetermined(row, stage(0)).get(0).wanting()).containsExactly("roughness", "sharp stones");
        known.put(Measure.HOURS, MeasureValue.exact(240));
        assertThat(undetermined(row, stage(0))).as("false whatever the ground").isEmpty();
    }

    @Test
    void aTopicThatDoesNotApplyKeepsARowSilentWithoutAWord() {
        Row row = row("{roughness: at least rough, decided: {fork travel: over 100 mm}}", "{lubricant: prefer wet}");
        SettledTopic none = new SettledTopic(Topics.FORK_TRAVEL, false, 0);
        assertThat(undetermined(row, stage(2, none))).isEmpty();
        assertThat(undetermined(row, stage(2, settled("fork travel", 120)))).hasSize(1);
        Row unless = row("{none of: [{decided: {fork travel: over 100 mm}}]}", "{lubricant: prefer wet}");
        assertThat(claims(unless, stage(2, none))).isEmpty();
        assertThat(claims(unless, stage(2, settled("fork travel", 100)))).hasSize(1);
    }

    @Test
    void noneOfDecidedWaitsForTheTopic() {
        Row row = row("{none of: [{decided: {bike: road}}]}", "{lubricant: prefer wet}");
        PlainRules rules = new PlainRules(List.of(row));
        try (RuleSet.Firing firing = rules.open()) {
            assertThat(firing.fire(stage(0)).claims()).isEmpty();
            assertThat(firing.fire(stage(1, settled("bike", 1))).claims()).hasSize(1);
        }
    }

    @Test
    void groundsNameWhatWasTestedAndFound() {
        Row row = row("{roughness: at least rough, decided: {bike: [gravel, road]}, any stretch: {sharp stones: yes, length: over 1 km}, "
                + "share of course: {where: {surface: sand}, is: over 10 %}}", "{fork travel: prefer 120 mm}");
        known.put(Measure.ROUGHNESS, MeasureValue.exact(24));
        long sand = StretchMeasure.SURFACE.scale().words().indexOf("sand");
        stretches = List.of(new StretchFacts(Map.of(StretchMeasure.LENGTH, 150L, StretchMeasure.SHARP_STONES, 1L, StretchMeasure.SURFACE, sand)));
        assertThat(claims(row, stage(1, settled("bike", 1))).get(0).grounds()).containsExactly(
                new TestedFact("roughness", "rough (2.4)", new java.math.BigDecimal("2.4"), "", "at least rough", true, false),
                new TestedFact("decided: bike", "gravel", null, "", "one of [gravel, road]", true, false),
                new TestedFact("any stretch: sharp stones, length", "1.50 km", new java.math.BigDecimal("1500"), "m",
                        "sharp stones yes, length over 1 km", true, false),
                new TestedFact("share of course: surface sand", "100 %", new java.math.BigDecimal("1"), "", "over 10 %", true, false));
    }

    @Test
    void aClaimRestsOnARangeOnlyWhereTheWholeConditionWouldTurn() {
        Row plain = row("{roughness: at least rough}", "{fork travel: prefer 120 mm}");
        known.put(Measure.ROUGHNESS, new MeasureValue(19, 24, 26));
        assertThat(claims(plain, stage(0)).get(0).restsOnRange()).isTrue();
        Row either = row("{any of: [{roughness: at least rough}, {hours: over 4:00 h}]}", "{fork travel: prefer 120 mm}");
        known.put(Measure.HOURS, MeasureValue.exact(300));
        assertThat(claims(either, stage(0)).get(0).restsOnRange()).isFalse();
        known.put(Measure.ROUGHNESS, new MeasureValue(20, 24, 26));
        assertThat(claims(plain, stage(0)).get(0).restsOnRange()).isFalse();
    }

    @Test
    void shareOfCourseIsUnknownOnlyWhereTheUnknownPartDecides() {
        Row row = row("{share of course: {where: {surface: sand}, is: over 10 %}}", "{fork travel: prefer 120 mm}");
        long sand = StretchMeasure.SURFACE.scale().words().indexOf("sand");
        StretchFacts open = new StretchFacts(Map.of(StretchMeasure.LENGTH, 10L));
        StretchFacts gravel = new StretchFacts(Map.of(StretchMeasure.LENGTH, 90L, StretchMeasure.SURFACE, sand - 1));
        stretches = List.of(open, gravel);
        assertThat(row.condition().on(stage(0))).as("at most 10 %").isEqualTo(Truth.FALSE);
        stretches = List.of(open, gravel, new StretchFacts(Map.of(StretchMeasure.LENGTH, 5L, StretchMeasure.SURFACE, sand)));
        assertThat(row.condition().on(stage(0))).as("5 % to 14 %").isEqualTo(Truth.UNKNOWN);
        stretches = List.of(open, new StretchFacts(Map.of(StretchMeasure.LENGTH, 20L, StretchMeasure.SURFACE, sand)));
        assertThat(row.condition().on(stage(0))).isEqualTo(Truth.TRUE);
    }

    @Test
    void thresholdsAreListedAndMoved() {
        Condition condition = row("{hours: between 4:00 h and 6:00 h, any of: [{roughness: at least rough}, {role: race}], laps: 3}",
                "{fork travel: prefer 120 mm}").condition();
        assertThat(condition.thresholds()).extracting(Threshold::tick).containsExactly(240L, 360L, 20L, 3L);
        assertThat(condition.withThreshold(1, 361).canonical()).contains("hours[240..361]");
        assertThat(condition.withThreshold(2, 21).canonical()).contains("roughness[21..]");
        assertThat(condition.withThreshold(3, 4).canonical()).contains("laps[4..4]");
        assertThat(condition.withThreshold(0, 240)).isEqualTo(condition);
    }

    @Test
    void equalConditionsHaveOneCanonicalText() {
        assertThat(row("{descent per km: over 18 m, role: race}", "{fork travel: prefer 120 mm}").condition().canonical())
                .isEqualTo(row("{role: race, descent per km: at least 18.1 m}", "{rear travel: prefer 120 mm}").condition().canonical());
    }
}
