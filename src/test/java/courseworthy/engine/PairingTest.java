package courseworthy.engine;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.claim.Claim;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.Verb;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.sheet.Stage;
import courseworthy.topic.SettledTopic;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The limits that join topics: what each says once the earlier topic is settled, and that it says nothing before. */
class PairingTest {

    private static final DroolsRules RULES = new DroolsRules(List.of(), ShippedRules.load());

    /** The claims of joins after each layer, when topics settle as given, written {@code topic=value}. */
    private static Map<Integer, List<Claim>> said(String... settled) {
        return said(new Demands(Map.of(), List.of(), List.of()), settled);
    }

    private static Map<Integer, List<Claim>> said(Demands demands, String... settled) {
        Map<Topic, SettledTopic> all = new LinkedHashMap<>();
        for (String one : settled) {
            Topic topic = Topics.of(one.substring(0, one.indexOf('=')));
            String value = one.substring(one.indexOf('=') + 1);
            all.put(topic, value.equals("does not apply") ? new SettledTopic(topic, false, 0)
                    : new SettledTopic(topic, true, topic.kind() == Topic.Kind.QUANTITY ? Long.parseLong(value) : topic.option(value)));
        }
        Map<Integer, List<Claim>> out = new LinkedHashMap<>();
        try (RuleSet.Firing firing = RULES.open()) {
            for (int layer = 0; layer <= Topics.LAST_LAYER; layer++) {
                Map<Topic, SettledTopic> known = new LinkedHashMap<>();
                for (Map.Entry<Topic, SettledTopic> one : all.entrySet()) {
                    if (one.getKey().layer() <= layer) {
                        known.put(one.getKey(), one.getValue());
                    }
                }
                out.put(layer, firing.fire(new Stage(layer, demands, known)).claims());
            }
        }
        return out;
    }

    private static Claim only(String rule, int layer, String... settled) {
        Map<Integer, List<Claim>> said = said(settled);
        List<Claim> own = said.values().stream().flatMap(List::stream).filter(c -> c.origin().rule().equals("pairing/" + rule)).toList();
        assertThat(own).as(rule).hasSize(1);
        assertThat(said.get(layer)).as("after layer " + layer).contains(own.get(0));
        return own.get(0);
    }

    private static List<String> rules(String... settled) {
        return said(settled).values().stream().flatMap(List::stream).map(c -> c.origin().rule()).distinct().sorted().toList();
    }

    private static void says(Claim claim, Verb verb, String topic, long value) {
        assertThat(claim.topic()).isEqualTo(Topics.of(topic));
        assertThat(claim.verb()).isEqualTo(verb);
        assertThat(claim.values()).containsExactly(value);
    }

    @Test
    void nothingSettledNothingSaid() {
        assertThat(rules()).isEmpty();
        assertThat(rules("fork travel=does not apply", "front rotor=does not apply")).isEmpty();
    }

    @Test
    void theRearTyreIsNoWiderThanTheFront() {
        says(only("rear-tyre-no-wider", 2, "front tyre width=45"), Verb.AT_MOST, "rear tyre width", 45);
        assertThat(rules("front tyre width=does not apply")).isEmpty();
    }

    @Test
    void theFrontTreadIsNeverTheFasterOne() {
        Topic tread = Topics.FRONT_TYRE_TREAD;
        says(only("rear-tread-no-grippier", 3, "front tyre tread=fast"), Verb.AT_MOST, "rear tyre tread", tread.option("fast"));
        assertThat(rules("rear tyre tread=mud")).isEmpty();
    }

    @Test
    void theRearRotorIsNoLargerThanTheFront() {
        says(only("rear-rotor-no-larger", 3, "front rotor=180"), Verb.AT_MOST, "rear rotor", 180);
        assertThat(rules("front rotor=does not apply")).isEmpty();
    }

    @Test
    void twoRingsAreRuledOutWhereNoneAreRidden() {
        says(only("two-rings-exist", 1, "bike=trail"), Verb.RULE_OUT, "chainrings", Topics.CHAINRINGS.option("two"));
        assertThat(rules("bike=gravel")).doesNotContain("pairing/two-rings-exist");
        assertThat(rules("chainrings=two")).isEmpty();
    }

    @Test
    void theEasiestGearComesFromRealRingsAndCassettes() {
        Claim claim = only("easiest-gear-exists", 2, "bike=cross-country hardtail", "chainrings=one");
        assertThat(claim.verb()).isEqualTo(Verb.ONE_OF);
        assertThat(claim.topic()).isEqualTo(Topics.EASIEST_GEAR);
        assertThat(claim.labels().get(claim.values().indexOf(680L))).isEqualTo("34x50");
        assertThat(claim.values()).isSorted().doesNotHaveDuplicates();
        assertThat(claim.labels()).hasSameSizeAs(claim.values());
        assertThat(rules("bike=trail", "chainrings=two")).doesNotContain("pairing/easiest-gear-exists");
        assertThat(rules("chainrings=one")).isEmpty();
    }

    @Test
    void theHardestGearGoesWithTheEasiest() {
        Claim claim = only("hardest-gear-exists", 3, "bike=cross-country hardtail", "chainrings=one", "easiest gear=680");
        assertThat(claim.topic()).isEqualTo(Topics.HARDEST_GEAR);
        assertThat(claim.values()).containsExactly(3091L, 3400L);
        assertThat(claim.labels()).containsExactly("34x11", "34x10");
        assertThat(rules("bike=cross-country hardtail", "chainrings=one", "easiest gear=does not apply"))
                .doesNotContain("pairing/hardest-gear-exists");
    }

    /** 53 over 16 teeth is 3.313, over 18 it is 2.944: the sprockets of an 11-32 cassette go 11, 12, 13, 14, 16, 18. */
    @Test
    void underALimitTheHardestGearIsTheHardestOneWithin() {
        assertThat(hardest(3313)).containsExactly(3313L);
        assertThat(hardest(3312)).containsExactly(2944L);
        assertThat(hardest(5500)).containsExactly(4818L);
        assertThat(hardest(1500)).isEmpty();
    }

    /** The hardest gears of 53/39 rings with an easiest gear of 39x32, where an event allows no harder one than given. */
    private static List<Long> hardest(long allowed) {
        Demands limited = new Demands(Map.of(Measure.HARDEST_GEAR_ALLOWED, MeasureValue.exact(allowed)), List.of(), List.of());
        return said(limited, "bike=road", "chainrings=two", "easiest gear=1219").values().stream().flatMap(List::stream)
                .filter(claim -> claim.origin().rule().equals("pairing/hardest-gear-exists")).flatMap(claim -> claim.values().stream()).toList();
    }

    @Test
    void theStrongRiderOnGravelFindsTheRoadRings() {
        Claim easiest = only("easiest-gear-exists", 2, "bike=gravel", "chainrings=two");
        long gear = easiest.values().get(easiest.labels().indexOf("39x32"));
        Claim hardest = only("hardest-gear-exists", 3, "bike=gravel", "chainrings=two", "easiest gear=" + gear);
        assertThat(hardest.labels()).containsExactly("53x11");
    }

    @Test
    void theLargestStepIsThatOfTheCassettesWithBothEnds() {
        Claim claim = only("largest-step-exists", 4, "bike=cross-country hardtail", "chainrings=one", "easiest gear=680", "hardest gear=3400");
        assertThat(claim.topic()).isEqualTo(Topics.LARGEST_STEP);
        assertThat(claim.labels()).containsExactly("12-speed 10-50");
        assertThat(claim.values()).containsExactly(20L);
        assertThat(rules("bike=cross-country hardtail", "chainrings=one", "easiest gear=680", "hardest gear=does not apply"))
                .doesNotContain("pairing/largest-step-exists");
    }

    @Test
    void everyJoinIsALimitWithReasonEvidenceAndPlace() {
        assertThat(RULES.joins()).hasSize(7).allSatisfy(author -> {
            assertThat(author.rule()).startsWith("pairing/");
            assertThat(author.rank()).isEqualTo(Rank.LIMIT);
            assertThat(author.force()).isEqualTo(Force.MUST);
            assertThat(author.evidence()).isEqualTo(Evidence.PRACTICE);
            assertThat(author.because()).endsWith(".").doesNotContain("\"");
            assertThat(author.where().file()).isEqualTo("rules/pairing/pairing.drl");
            assertThat(author.where().line()).isPositive();
        });
    }
}
