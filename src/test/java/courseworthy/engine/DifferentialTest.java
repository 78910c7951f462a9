package courseworthy.engine;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.Draws;
import courseworthy.claim.Claim;
import courseworthy.claim.RuleOrigin;
import courseworthy.sheet.Row;
import courseworthy.sheet.Stage;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The rule network against a plain loop over the same predicates: same claims, same things to do, same silence for want of knowledge.
 * An index or a shared node gone wrong loses or doubles claims only in large sets of rules, hence the sizes.
 */
class DifferentialTest {

    private static final Comparator<Claim> ORDER = Comparator.comparing((Claim c) -> c.origin().rule())
            .thenComparing(c -> c.topic().name()).thenComparing(Claim::verb).thenComparingLong(Claim::value).thenComparing(Claim::written);

    private static final ShippedRules NO_SHIPPED = new ShippedRules(List.of(), new GearPairs(List.of()), ShippedRules.load().joins());

    @ParameterizedTest(name = "{0} rows in {1} situations")
    @CsvSource({"3, 20000", "30, 20000", "300, 5000", "3000, 1000"})
    void networkAndLoopAgree(int size, int situations) {
        GeneratedSituations generated = new GeneratedSituations(20_000 + size);
        List<Row> rows = generated.rows(size, size < 300 ? 0 : 3);
        int drawn = Draws.of(situations);
        agree(rows, generated, drawn, size > 3 ? drawn / 10 : 1);
    }

    @Test
    void networkAndLoopAgreeOnTheShippedRules() {
        agree(ShippedRules.rules(), new GeneratedSituations(7), Draws.of(500), 1);
    }

    private static void agree(List<Row> rows, GeneratedSituations generated, int situations, long leastClaims) {
        List<Row> shuffled = new ArrayList<>(rows);
        Collections.shuffle(shuffled, new Random(rows.size()));
        PlainRules loop = new PlainRules(rows);
        DroolsRules network = new DroolsRules(shuffled, NO_SHIPPED);
        long claims = 0;
        for (int i = 0; i < situations; i++) {
            claims += compare(loop, network, generated.situation());
        }
        assertThat(claims).as("a comparison of silence proves nothing").isGreaterThanOrEqualTo(leastClaims);
    }

    private static long compare(PlainRules loop, DroolsRules network, GeneratedSituations.Situation situation) {
        long claims = 0;
        Set<String> joins = network.joins().stream().map(RuleOrigin::rule).collect(Collectors.toSet());
        try (RuleSet.Firing expected = loop.open(); RuleSet.Firing actual = network.open()) {
            for (int layer = 0; layer <= Topics.LAST_LAYER; layer++) {
                Stage stage = situation.after(layer);
                List<Claim> wanted = sorted(expected.fire(stage).claims());
                FiringResult heard = actual.fire(stage);
                List<Claim> said = sorted(heard.claims().stream().filter(c -> !joins.contains(c.origin().rule())).toList());
                if (!wanted.equals(said)) {
                    assertThat(said).containsExactlyInAnyOrderElementsOf(wanted);
                }
                claims += said.size();
            }
            if (!expected.undetermined().equals(actual.undetermined())) {
                assertThat(actual.undetermined()).containsExactlyElementsOf(expected.undetermined());
            }
        }
        return claims;
    }

    private static List<Claim> sorted(List<Claim> claims) {
        return claims.stream().sorted(ORDER).toList();
    }
}
