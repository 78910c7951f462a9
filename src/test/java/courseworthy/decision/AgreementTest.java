package courseworthy.decision;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.claim.Claim;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.SourceLocation;
import courseworthy.claim.Verb;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When a value that is decided is what somebody wished for. */
class AgreementTest {

    private static Claim claim(Topic topic, Verb verb, long value) {
        RuleOrigin author = new RuleOrigin("a", Rank.SHIPPED, 0, Force.SHOULD, Evidence.PRACTICE, "", "Why.", new SourceLocation("s.yaml", 1));
        return Claim.of(author, topic, verb, value, topic.text(value), List.of());
    }

    private static boolean met(String topic, Verb verb, long wished, long value) {
        return new Agreement(Topics.of(topic), value).met(claim(Topics.of(topic), verb, wished));
    }

    /**
     * From 14 to 15 teeth, about the closest step that cassettes have, is 1 in 14: 7.1 %. Half of it is 3.5 %: of a gear of 1.000, 0.035, of the
     * hardest of 5.000, 0.175 (common practice, no source).
     */
    @ParameterizedTest
    @CsvSource({"1000, 1035, true", "1000, 1036, false", "1000, 965, true", "1000, 964, false", "5000, 5175, true", "5000, 5176, false", "700, 724, true", "700, 725, false"})
    void gearsAreAlikeWithinHalfATooth(long wished, long value, boolean alike) {
        assertThat(met(wished < 2000 ? "easiest gear" : "hardest gear", Verb.PREFER, wished, value)).isEqualTo(alike);
    }

    /** 121 mm of travel is met by 120 and by 130 mm, 160 mm of rotor not by 180 mm; 1 mm of tyre and 0.05 bar no gauge tells apart. Plugs are counted. */
    @ParameterizedTest
    @CsvSource({"fork travel, 121, 120, true", "fork travel, 121, 130, true", "fork travel, 120, 130, false", "front rotor, 160, 180, false", "front rotor, 160, 179, true",
        "front tyre width, 40, 41, true", "front tyre width, 40, 42, false", "front tyre pressure, 40, 39, true", "front tyre pressure, 40, 38, false", "plugs, 2, 3, false",
        "plugs, 2, 2, true", "bike, 1, 1, true", "bike, 1, 2, false", "lights, 1, 2, false"})
    void whatIsMeasuredIsMetWithinAStep(String topic, long wished, long value, boolean alike) {
        assertThat(met(topic, Verb.PREFER, wished, value)).isEqualTo(alike);
    }

    @Test
    void boundsAndDislikesAreKeptOrNot() {
        assertThat(met("front tyre width", Verb.AT_LEAST, 40, 39)).isFalse();
        assertThat(met("front tyre width", Verb.AT_LEAST, 40, 40)).isTrue();
        assertThat(met("front tyre width", Verb.AT_MOST, 40, 41)).isFalse();
        assertThat(met("bike", Verb.AVOID, 1, 1)).isFalse();
        assertThat(met("bike", Verb.AVOID, 1, 2)).isTrue();
        assertThat(met("bike", Verb.RULE_OUT, 1, 1)).isFalse();
        assertThat(met("bike", Verb.RULE_OUT, 1, 2)).isTrue();
    }

    /** A value that is given is not settled: what it meets is for it, the rest is set aside. */
    @Test
    void aGivenValueKeepsItsClaims() {
        Topic width = Topics.of("front tyre width");
        Decision given = Settler.given(width, List.of(claim(width, Verb.PREFER, 45), claim(width, Verb.AT_LEAST, 38), claim(width, Verb.AT_LEAST, 38)), 40);
        assertThat(given.value()).isEqualTo(40);
        assertThat(given.consensus()).isEqualTo(Decision.Consensus.BOUNDS_ALONE);
        assertThat(given.taken()).extracting(Claim::verb).containsExactly(Verb.AT_LEAST);
        assertThat(given.lost()).hasSize(1);
        assertThat(given.lost().get(0).how()).isEqualTo(Decision.How.SET_ASIDE);
    }
}
