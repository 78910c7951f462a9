package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.call.Call;
import courseworthy.claim.Claim;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.SourceLocation;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.decision.Settler;
import courseworthy.demand.Demands;
import courseworthy.fit.BuildLoad;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.Workshop;
import courseworthy.workshop.WorkshopGenerator;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The search against brute force, and its builds against the rules of fit, over workshops made by chance. */
class BuildSearchTest {

    /** A call by chance: every topic preferred or bounded somewhere. */
    static Call call(long seed) {
        Random random = new Random(seed);
        List<Decision> decisions = new ArrayList<>();
        for (Topic topic : Topics.all()) {
            List<Claim> claims = new ArrayList<>();
            for (int i = 0; i < random.nextInt(3); i++) {
                Verb verb = topic.kind() == Topic.Kind.OPTIONS ? Verb.PREFER : List.of(Verb.PREFER, Verb.AT_LEAST, Verb.AT_MOST).get(random.nextInt(3));
                Force force = Force.values()[random.nextInt(3)];
                long value = topic.least() + (long) (random.nextDouble() * (topic.most() - topic.least() + 1));
                RuleOrigin author = new RuleOrigin("shipped/r" + i, Rank.SHIPPED, 0, force, Evidence.PRACTICE, "", "Because.", new SourceLocation("rules/x.yaml", 1));
                claims.add(Claim.of(author, topic, verb, value, topic.text(value), List.of()));
            }
            decisions.add(Settler.settle(topic, claims));
        }
        return new Call(new Demands(Map.of(), List.of(), List.of()), decisions, List.of(), List.of());
    }

    /** Times by chance: some departures cost none, some a minute and more. */
    static TimeSavings returns(long seed) {
        return new TimeSavings() {
            @Override
            public long apart(Topic topic, long one, long other) {
                long each = new Random(seed + topic.name().hashCode()).nextInt(4) * 7L;
                return Math.min(90, each * Math.abs(one - other));
            }

            @Override
            public long perKilogram() {
                return seed % 5 * 60;
            }
        };
    }

    /** Seven hundred and fifty small workshops: no combination is cheaper, and one is found exactly where there is one. */
    @Test
    void nothingIsCheaper() {
        int found = 0;
        for (int seed = 0; seed < 750; seed++) {
            Workshop workshop = new WorkshopGenerator(seed, seed % 4 * 0.012, seed % 2 * 0.01).of(1, 26 + seed % 8);
            BuildObjective aims = new BuildObjective(call(seed), returns(seed));
            BuildLoad load = new BuildLoad(75.0, 90.0 + seed % 50, 0.1 * (seed % 7));
            Part bike = workshop.bikes().get(0);
            BuildSearch search = new BuildSearch(workshop, bike, load, aims);
            Map<MountingPlace, Part> best = search.solve();
            long brute = new BruteForce(workshop, bike, load, aims).least();
            assertThat(best == null ? Long.MAX_VALUE : search.cost()).as("seed " + seed).isEqualTo(brute);
            if (best != null) {
                found++;
                assertThat(new BruteForce(workshop, bike, load, aims).costOf(best)).as("seed " + seed).isEqualTo(brute);
            }
        }
        assertThat(found).isBetween(100, 490);
    }

    /** Ten thousand workshops: no build breaks a rule, uses a part twice, or takes what stays elsewhere. */
    @Test
    void noBuildViolatesALimit() {
        int builds = 0;
        for (int seed = 0; seed < 10_000; seed++) {
            Workshop workshop = new WorkshopGenerator(seed, seed % 5 * 0.02, seed % 3 * 0.01).of(1 + seed % 3, 30 + seed % 50);
            BuildLoad load = new BuildLoad(75.0, 90.0 + seed % 50, 0.1 * (seed % 7));
            Part bike = workshop.bikes().get(seed % workshop.bikes().size());
            Map<MountingPlace, Part> build = new BuildSearch(workshop, bike, load, new BuildObjective(call(seed % 50), returns(seed))).solve();
            if (build != null) {
                builds++;
                String wrong = IndependentCheck.of(bike, build, load);
                assertThat(wrong).as("seed " + seed + " " + build).isEmpty();
            }
        }
        assertThat(builds).isGreaterThan(3_000);
    }

    /**
     * Five bikes and four hundred parts within a hundred thousand choices tried, of the astronomically many there are (42,341
     * at most when this was written). How long it takes is measured by hand: {@link BuildSearchMeasure}.
     */
    @Test
    void aFullWorkshopTakesFewChoices() {
        long most = 0;
        int builds = 0;
        for (int seed = 0; seed < 20; seed++) {
            Workshop workshop = full(seed);
            BuildObjective aims = new BuildObjective(call(seed), returns(seed));
            long tried = 0;
            for (Part bike : workshop.bikes()) {
                BuildSearch search = new BuildSearch(workshop, bike, new BuildLoad(75.0, 95.0, 0.1), aims);
                builds += search.solve() == null ? 0 : 1;
                tried += search.nodes();
            }
            most = Math.max(most, tried);
        }
        assertThat(builds).isGreaterThan(30);
        assertThat(most).as("choices tried").isLessThan(100_000);
    }

    static Workshop full(int seed) {
        return new WorkshopGenerator(seed, 0.04 + seed % 3 * 0.04, 0.005).of(5, 400);
    }
}
