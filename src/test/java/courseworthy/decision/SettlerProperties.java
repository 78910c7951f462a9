package courseworthy.decision;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.claim.Claim;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision.Status;
import courseworthy.topic.Topic;
import courseworthy.topic.Topic.Kind;
import courseworthy.topic.Topic.Safe;
import courseworthy.topic.TopicGroup;
import courseworthy.topic.Work;
import courseworthy.units.Resolution;
import courseworthy.units.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tuple;
import net.jqwik.api.Tuple.Tuple2;

/** Settling against a second opinion, and under any order of claims, over small topics full of ties and clashes. */
class SettlerProperties {

    private static final int MOST = 12;
    private static final List<String> OPTIONS = List.of("v", "w", "x", "y", "z");

    @Property(seed = "20260601", tries = 20_000, shrinking = ShrinkingMode.BOUNDED)
    void agreesWithTheSecondOpinion(@ForAll("situations") Tuple2<Topic, List<Claim>> situation) {
        Decision decision = Settler.settle(situation.get1(), situation.get2());
        SlowSettling second = new SlowSettling(situation.get1(), situation.get2());
        assertThat(decision.text()).isEqualTo(second.value);
        assertThat(decision.consensus() == null ? "null" : decision.consensus().word()).isEqualTo(second.consensus);
        assertThat(lost(decision)).isEqualTo(second.lost);
    }

    @Property(seed = "20260601", tries = 5_000)
    void theOrderOfClaimsHasNoBearing(@ForAll("situations") Tuple2<Topic, List<Claim>> situation, @ForAll long seed) {
        List<Claim> shuffled = new ArrayList<>(situation.get2());
        Collections.shuffle(shuffled, new Random(seed));
        assertThat(Settler.settle(situation.get1(), shuffled)).hasToString(
                Settler.settle(situation.get1(), situation.get2()).toString());
    }

    @Property(seed = "20260601", tries = 5_000)
    void everyClaimIsOnOneSideAndWhatPrevailsHolds(@ForAll("situations") Tuple2<Topic, List<Claim>> situation) {
        Decision decision = Settler.settle(situation.get1(), situation.get2());
        List<Claim> both = new ArrayList<>(decision.taken());
        decision.lost().forEach(lost -> both.add(lost.claim()));
        assertThat(both).containsExactlyInAnyOrderElementsOf(situation.get2());
        if (decision.status() == Status.SETTLED) {
            assertThat(decision.taken()).allMatch(claim -> kept(claim, decision.value()));
            assertThat(decision.lost()).noneMatch(lost -> lost.claim().origin().rank() == Rank.LIMIT
                    && lost.claim().verb() != Verb.PREFER && lost.claim().verb() != Verb.AVOID);
            for (Decision.LosingClaim lost : decision.lost()) {
                assertThat(kept(lost.claim(), decision.value())).as("%s", lost).isFalse();
            }
        }
        assertThat(decision.lost()).allMatch(lost -> !lost.by().contains(lost.claim().origin().rule()));
    }

    /**
     * Whether a value keeps to a claim, read off the words of the claim: a quantity that is preferred may be rounded by less than a step,
     * or by one tick where that is the step.
     */
    private static boolean kept(Claim claim, long value) {
        return switch (claim.verb()) {
            case AT_LEAST -> value >= claim.value();
            case AT_MOST -> value <= claim.value();
            case ONE_OF -> claim.values().contains(value);
            case AVOID, RULE_OUT -> value != claim.value();
            case PREFER -> claim.value() == value
                    || claim.topic().kind() == Kind.QUANTITY && Math.abs(claim.value() - value) < Math.max(2, claim.topic().step());
        };
    }

    @Property(seed = "20260601", tries = 5_000)
    void theStandingFollowsFromWhatIsForAndAgainst(@ForAll("situations") Tuple2<Topic, List<Claim>> situation) {
        Decision decision = Settler.settle(situation.get1(), situation.get2());
        boolean against = decision.lost().stream().anyMatch(lost -> lost.claim().origin().rank() == voting(situation.get2()));
        if (decision.consensus() == Decision.Consensus.UNANIMOUS) {
            assertThat(against).isFalse();
        } else if (decision.consensus() == Decision.Consensus.MAJORITY) {
            assertThat(against).isTrue();
        }
    }

    private static Rank voting(List<Claim> claims) {
        return claims.stream().filter(claim -> claim.verb() == Verb.PREFER).map(claim -> claim.origin().rank()).sorted().findFirst()
                .orElse(null);
    }

    @Property(seed = "20260601", tries = 5_000)
    void aClaimIsOverruledByWhatIsNotWeaker(@ForAll("situations") Tuple2<Topic, List<Claim>> situation) {
        Decision decision = Settler.settle(situation.get1(), situation.get2());
        Map<String, RuleOrigin> authors = new TreeMap<>();
        situation.get2().forEach(claim -> authors.put(claim.origin().rule(), claim.origin()));
        for (Decision.LosingClaim lost : decision.lost()) {
            boolean bound = lost.claim().verb() != Verb.PREFER && lost.claim().verb() != Verb.AVOID;
            if (bound && lost.how() == Decision.How.OVERRULED) {
                assertThat(lost.by()).isNotEmpty().allSatisfy(by -> assertThat(strength(authors.get(by)))
                        .isLessThanOrEqualTo(strength(lost.claim().origin())));
            }
        }
    }

    private static int strength(RuleOrigin author) {
        return author.rank().ordinal() * 100 + author.force().ordinal() * 10 + (author.rank() == Rank.COACH ? 9 - author.sheet() : 0);
    }

    @Provide
    Arbitrary<Tuple2<Topic, List<Claim>>> situations() {
        return topics().flatMap(topic -> drafts(topic).list().ofMaxSize(8).map(drafts -> Tuple.of(topic, named(topic, drafts))));
    }

    private static Arbitrary<Topic> topics() {
        Arbitrary<Safe> safe = Arbitraries.of(Safe.class);
        Arbitrary<Topic> quantities = Combinators.combine(safe, Arbitraries.of(1, 3), Arbitraries.integers().between(0, MOST))
                .as((side, step, standard) -> new Topic("width", "", Kind.QUANTITY, Resolution.of(Unit.MM, "1"), step, 0, MOST,
                        List.of(), standard, 1, side, List.of(), TopicGroup.BIKE, Work.BIKE, Set.of(), false, 1));
        Arbitrary<Topic> ordered = Combinators.combine(safe, Arbitraries.integers().between(0, 4))
                .as((side, standard) -> new Topic("casing", "", Kind.ORDERED, null, 1, 0, 4, OPTIONS, standard, 1, side, List.of(), TopicGroup.BIKE, Work.BIKE, Set.of(), false, 1));
        Arbitrary<Topic> options = Arbitraries.integers().between(0, 4)
                .map(standard -> new Topic("bike", "", Kind.OPTIONS, null, 1, 0, 4, OPTIONS, standard, 1, Safe.NONE, List.of(), TopicGroup.BIKE, Work.BIKE, Set.of(), false, 1));
        return Arbitraries.oneOf(quantities, ordered, options);
    }

    private record Draft(Rank rank, int sheet, Force force, Verb verb, List<Long> values) {
    }

    private static Arbitrary<Draft> drafts(Topic topic) {
        Arbitrary<Rank> ranks = Arbitraries.frequency(Tuple.of(1, Rank.LIMIT), Tuple.of(1, Rank.RIDER), Tuple.of(3, Rank.COACH),
                Tuple.of(3, Rank.SHIPPED));
        Arbitrary<List<Long>> values = Arbitraries.longs().between(0, topic.most()).list().ofMinSize(1).ofMaxSize(4)
                .map(list -> List.copyOf(new TreeSet<>(list)));
        return Combinators.combine(ranks, Arbitraries.integers().between(0, 2), Arbitraries.of(Force.class), verbs(topic), values)
                .as((rank, sheet, force, verb, list) -> new Draft(verb == Verb.ONE_OF ? Rank.LIMIT : rank, sheet, force, verb,
                        verb == Verb.ONE_OF ? list : list.subList(0, 1)));
    }

    private static Arbitrary<Verb> verbs(Topic topic) {
        Tuple2<Integer, Verb> exists = Tuple.of(1, Verb.ONE_OF);
        Tuple2<Integer, Verb> prefer = Tuple.of(6, Verb.PREFER);
        return switch (topic.kind()) {
            case QUANTITY -> Arbitraries.frequency(exists, prefer, Tuple.of(4, Verb.AT_LEAST), Tuple.of(4, Verb.AT_MOST));
            case ORDERED -> Arbitraries.frequency(exists, prefer, Tuple.of(2, Verb.AT_LEAST), Tuple.of(2, Verb.AT_MOST),
                    Tuple.of(2, Verb.AVOID), Tuple.of(2, Verb.RULE_OUT));
            case OPTIONS -> Arbitraries.frequency(exists, prefer, Tuple.of(4, Verb.AVOID), Tuple.of(4, Verb.RULE_OUT));
        };
    }

    private static List<Claim> named(Topic topic, List<Draft> drafts) {
        List<Claim> out = new ArrayList<>();
        for (Draft draft : drafts) {
            RuleOrigin author = SettlingTable.origin("r" + out.size(), draft.rank(), draft.sheet(), draft.force());
            out.add(new Claim(author, topic, draft.verb(), draft.values(), List.of(), "as written", List.of()));
        }
        return out;
    }

    private static Map<String, String> lost(Decision decision) {
        Map<String, String> out = new TreeMap<>();
        decision.lost().forEach(lost -> out.put(lost.claim().origin().rule(), lost.how().words()));
        return out;
    }
}
