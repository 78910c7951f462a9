package courseworthy.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import courseworthy.claim.Claim;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision.Status;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Settling against its table of cases; the table is ours, written from the policy that {@link Settler} states. */
class SettlerTest {

    static Stream<SettlingTable.Case> cases() {
        return SettlingTable.cases().stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void settlesAsTheTableSays(SettlingTable.Case one) {
        Decision decision = Settler.settle(one.topic(), one.claims());
        assertThat(decision.text()).isEqualTo(one.gives());
        assertThat(decision.consensus() == null ? null : decision.consensus().word()).isEqualTo(one.consensus());
        assertThat(inWords(decision.lost())).isEqualTo(one.lost());
        assertThat(decision.why()).isEqualTo(one.why() == null ? "" : one.why());
        List<Claim> others = new ArrayList<>(one.claims());
        others.removeIf(claim -> one.lost().containsKey(claim.origin().rule()));
        assertThat(decision.taken()).containsExactlyInAnyOrderElementsOf(others);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theOrderOfClaimsHasNoBearing(SettlingTable.Case one) {
        String first = Settler.settle(one.topic(), one.claims()).toString();
        List<Claim> claims = new ArrayList<>(one.claims());
        for (int seed = 0; seed < 120; seed++) {
            Collections.shuffle(claims, new Random(seed));
            assertThat(Settler.settle(one.topic(), claims)).hasToString(first);
        }
    }

    @Test
    void sentencesOfTheTableAreUnique() {
        List<String> sentences = cases().map(SettlingTable.Case::sentence).toList();
        assertThat(new TreeSet<>(sentences)).hasSameSizeAs(sentences);
    }

    @Test
    void theTableHoldsEveryKindOfOutcome() {
        Map<String, Integer> seen = new HashMap<>();
        cases().forEach(one -> {
            Decision decision = Settler.settle(one.topic(), one.claims());
            seen.merge(decision.consensus() == null ? decision.status().words() : decision.consensus().word(), 1, Integer::sum);
            decision.lost().forEach(lost -> seen.merge(lost.how().words(), 1, Integer::sum));
        });
        assertThat(seen).containsOnlyKeys("unanimous", "majority", "divided", "bounds alone", "default", "none possible", "overruled", "outvoted",
                "set aside");
    }

    @Test
    void aClaimGivenTwiceCountsOnce() {
        Topic width = topic("width");
        Claim light = SettlingTable.claim("a", width, "shipped should prefer 38 mm");
        Claim heavy = SettlingTable.claim("b", width, "shipped may prefer 50 mm");
        assertThat(Settler.settle(width, List.of(light, heavy, heavy, heavy)).text()).isEqualTo("38 mm");
    }

    @Test
    void claimsAreListedByRankForceAndId() {
        Topic width = topic("width");
        List<Claim> claims = List.of(SettlingTable.claim("d", width, "shipped must at least 30 mm"),
                SettlingTable.claim("b", width, "coach 2 should at least 30 mm"),
                SettlingTable.claim("a", width, "coach 1 should at least 30 mm"),
                SettlingTable.claim("c", width, "coach 1 must at least 30 mm"),
                SettlingTable.claim("e", width, "limit may at least 30 mm"));
        assertThat(Settler.settle(width, claims).taken()).extracting(claim -> claim.origin().rule())
                .containsExactly("e", "c", "a", "b", "d");
    }

    @Test
    void whatDoesNotApplyKeepsItsClaims() {
        Topic width = topic("width");
        List<Claim> claims = List.of(SettlingTable.claim("b", width, "shipped should prefer 38 mm"),
                SettlingTable.claim("a", width, "coach 1 should at least 40 mm"));
        Decision decision = Settler.notApplicable(width, claims, "The bike is a road bike.");
        assertThat(decision.status()).isEqualTo(Status.NOT_APPLICABLE);
        assertThat(decision.value()).isNull();
        assertThat(decision.text()).isEqualTo("not applicable");
        assertThat(decision.why()).isEqualTo("The bike is a road bike.");
        assertThat(inWords(decision.lost())).isEqualTo(Map.of("a", "set aside by nothing", "b", "set aside by nothing"));
        assertThat(decision.lost().get(0).claim().origin().rule()).isEqualTo("a");
    }

    @Test
    void verbsThatDoNotFitTheTopicAreRefused() {
        refused("bike", Verb.AT_LEAST, Rank.SHIPPED, "a cannot say at least [1] of bike when bike is settled");
        refused("bike", Verb.AT_MOST, Rank.SHIPPED, "a cannot say at most [1] of bike when bike is settled");
        refused("width", Verb.AVOID, Rank.SHIPPED, "a cannot say avoid [1] of width when width is settled");
        refused("width", Verb.RULE_OUT, Rank.SHIPPED, "a cannot say rule out [1] of width when width is settled");
        refused("width", Verb.ONE_OF, Rank.COACH, "a cannot say one of [1] of width when width is settled");
        Claim other = SettlingTable.claim("a", topic("sag"), "shipped should prefer 20 %");
        assertThatThrownBy(() -> Settler.settle(topic("width"), List.of(other))).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a cannot say prefer [20] of sag when width is settled");
    }

    /** A limit is shown as one, and the bar's height by where it is. */
    @ParameterizedTest
    @CsvSource({"pad thickness, AT_LEAST, 12, at least 1.2 mm", "sealant age, AT_MOST, 30, at most 30 days", "largest step, PREFER, 20, at most 20 %",
        "battery reserve, AT_LEAST, 30, at least 30 %", "bar height, PREFER, -25, 25 mm below the saddle", "bar height, PREFER, 10, 10 mm above the saddle",
        "bar height, PREFER, 0, level with the saddle", "bar width, PREFER, 740, 740 mm"})
    void aValueIsShownByWhatItMeans(String name, Verb verb, long ticks, String shown) {
        Topic topic = Topics.of(name);
        Claim claim = Claim.of(SettlingTable.origin("a", Rank.SHIPPED, 0, Force.MUST), topic, verb, ticks, topic.text(ticks), List.of());
        assertThat(Settler.settle(topic, List.of(claim)).phrase()).isEqualTo(shown);
    }

    private static void refused(String name, Verb verb, Rank rank, String message) {
        Topic topic = topic(name);
        Claim claim = Claim.of(SettlingTable.origin("a", rank, 0, Force.MUST), topic, verb, 1, "1", List.of());
        assertThatThrownBy(() -> Settler.settle(topic, List.of(claim))).isInstanceOf(IllegalArgumentException.class)
                .hasMessage(message);
    }

    private static Topic topic(String name) {
        return cases().map(SettlingTable.Case::topic).filter(topic -> topic.name().equals(name)).findFirst().orElseThrow();
    }

    private static Map<String, String> inWords(List<Decision.LosingClaim> lost) {
        Map<String, String> out = new HashMap<>();
        for (Decision.LosingClaim one : lost) {
            String by = one.by().isEmpty() ? "nothing" : String.join(" and ", one.by());
            out.put(one.claim().origin().rule(), one.how().words() + " by " + by);
        }
        return out;
    }
}
