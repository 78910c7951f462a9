package courseworthy.report;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.claim.Claim;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.How;
import courseworthy.decision.Decision.LosingClaim;
import courseworthy.decision.Decision.Consensus;
import courseworthy.decision.Decision.Status;
import courseworthy.task.LeadingReason;
import courseworthy.topic.Topics;
import java.util.List;
import org.junit.jupiter.api.Test;

class LeadingReasonTest {

    private final Claim bound = ExampleBrief.claim("shipped/bound", "front tyre width", Verb.AT_LEAST, 45);
    private final Claim loose = ExampleBrief.claim("shipped/loose", "front tyre width", Verb.AT_LEAST, 30);
    private final Claim exact = ExampleBrief.claim("shipped/exact", "front tyre width", Verb.PREFER, 45);
    private final Claim near = ExampleBrief.claim("shipped/near", "front tyre width", Verb.PREFER, 46);

    @Test
    void theNearestPreferenceLeads() {
        assertThat(LeadingReason.leading(decided(bound, near, exact))).isEqualTo(exact);
        assertThat(LeadingReason.leading(decided(bound, near))).isEqualTo(near);
    }

    @Test
    void elseABoundOnWhichTheValueLies() {
        assertThat(LeadingReason.leading(decided(loose, bound))).isEqualTo(bound);
    }

    /** The bound that lifted the value over what was preferred, and not one that would have let it be. */
    @Test
    void ofTwoBoundsTheOneThatKeepsItFromAPreference() {
        Claim most = ExampleBrief.claim("pairing/most", "front tyre width", Verb.AT_MOST, 45);
        Claim narrow = ExampleBrief.claim("shipped/narrow", "front tyre width", Verb.PREFER, 40);
        Decision decision = new Decision(Topics.FRONT_TYRE_WIDTH, Status.SETTLED, 45L, "", Consensus.DIVIDED, List.of(most, bound),
                List.of(new LosingClaim(narrow, List.of("shipped/bound"), How.OVERRULED)), "");
        assertThat(LeadingReason.leading(decision)).isEqualTo(bound);
        Claim wide = ExampleBrief.claim("shipped/wide", "front tyre width", Verb.PREFER, 50);
        Decision lowered = new Decision(Topics.FRONT_TYRE_WIDTH, Status.SETTLED, 45L, "", Consensus.DIVIDED, List.of(bound, most),
                List.of(new LosingClaim(wide, List.of("pairing/most"), How.OVERRULED)), "");
        assertThat(LeadingReason.leading(lowered)).isEqualTo(most);
    }

    @Test
    void elseTheFirst() {
        assertThat(LeadingReason.leading(decided(loose))).isEqualTo(loose);
        assertThat(LeadingReason.leading(decided())).isNull();
    }

    @Test
    void decisionsOfOneRuleStandTogether() {
        Decision front = decided(near);
        Decision rear = new Decision(Topics.REAR_TYRE_WIDTH, Status.SETTLED, 46L, "", Consensus.UNANIMOUS,
                List.of(ExampleBrief.claim("shipped/near", "rear tyre width", Verb.PREFER, 46)), List.of(), "");
        Decision none = new Decision(Topics.FOOD, Status.SETTLED, 40L, "", Consensus.DEFAULT, List.of(), List.of(), "");
        List<LeadingReason> reasons = LeadingReason.of(List.of(front, none, rear));
        assertThat(reasons).hasSize(1);
        assertThat(reasons.get(0).decisions()).containsExactly(front, rear);
        assertThat(Phrases.values(reasons.get(0).decisions())).isEqualTo("front tyre width 45 mm, rear tyre width 46 mm");
    }

    private static Decision decided(Claim... taken) {
        return new Decision(Topics.FRONT_TYRE_WIDTH, Status.SETTLED, 45L, "", Consensus.UNANIMOUS, List.of(taken), List.of(), "");
    }
}
