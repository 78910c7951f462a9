package courseworthy.call;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.claim.Claim;
import courseworthy.claim.Rank;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.LosingClaim;
import courseworthy.decision.Decision.Consensus;
import courseworthy.decision.Decision.Status;
import courseworthy.engine.DroolsRules;
import courseworthy.topic.Topic;
import courseworthy.units.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * On every shipped course, alone and with every shipped rider: what is listed for a decision the value keeps to, what is listed against
 * it the value does not. The words of a claim are read here by themselves, without the code that settles.
 */
class ForAndAgainstTest {

    private static final DroolsRules SHIPPED = ShippedRuleSet.read();

    static List<ShippedDays> days() {
        return ShippedDays.all();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("days")
    void forAndAgainstFollowFromTheValue(ShippedDays day) {
        for (Decision decision : CallMaker.call(SHIPPED, day.demands()).decisions()) {
            if (decision.status() == Status.SETTLED) {
                for (Claim claim : decision.taken()) {
                    assertThat(keeps(claim, decision)).as("%s %s for %s", decision.topic(), claim, decision.text()).isTrue();
                }
                for (LosingClaim lost : decision.lost()) {
                    assertThat(keeps(lost.claim(), decision)).as("%s %s against %s", decision.topic(), lost, decision.text()).isFalse();
                }
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("days")
    void settledMeansThatNobodyWhoVotedIsAgainst(ShippedDays day) {
        for (Decision decision : CallMaker.call(SHIPPED, day.demands()).decisions()) {
            Rank voting = voting(decision);
            boolean against = decision.lost().stream().anyMatch(lost -> lost.claim().origin().rank() == voting);
            if (decision.consensus() == Consensus.UNANIMOUS) {
                assertThat(against).as("%s", decision).isFalse();
            } else if (decision.consensus() == Consensus.MAJORITY) {
                assertThat(against).as("%s", decision).isTrue();
            }
        }
    }

    /** A heavy rider's rotor of 180 mm has had the wish for 160 mm listed for it. */
    @Test
    void aRotorOfAnotherSizeIsNeverAmongTheReasonsForOne() {
        long others = days().stream().flatMap(day -> CallMaker.call(SHIPPED, day.demands()).decisions().stream())
                .filter(decision -> decision.topic().name().endsWith("rotor")).flatMap(decision -> decision.taken().stream()
                        .filter(claim -> claim.verb() == Verb.PREFER && claim.value() != decision.value()))
                .count();
        assertThat(others).isZero();
    }

    private static Rank voting(Decision decision) {
        Rank out = null;
        for (Claim claim : decision.taken()) {
            boolean higher = claim.verb() == Verb.PREFER && (out == null || claim.origin().rank().compareTo(out) < 0);
            out = higher ? claim.origin().rank() : out;
        }
        return out;
    }

    private static boolean keeps(Claim claim, Decision decision) {
        long value = decision.value();
        return switch (claim.verb()) {
            case AT_LEAST -> value >= claim.value();
            case AT_MOST -> value <= claim.value();
            case ONE_OF -> claim.values().contains(value);
            case AVOID, RULE_OUT -> value != claim.value();
            case PREFER -> meets(claim.value(), decision);
        };
    }

    /** The very option or number; of what is measured less than a step beside it, or one finest tick; a gear within 3.5 %. */
    private static boolean meets(long wish, Decision decision) {
        Topic topic = decision.topic();
        long apart = Math.abs(wish - decision.value());
        if (topic.kind() != Topic.Kind.QUANTITY || topic.resolution().unit() == Unit.ONE) {
            return apart == 0;
        }
        return apart < Math.max(2, topic.step()) || topic.resolution().unit() == Unit.RATIO && apart * 1000 <= wish * 35;
    }
}
