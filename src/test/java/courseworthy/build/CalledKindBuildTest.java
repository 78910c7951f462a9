package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.call.Call;
import courseworthy.fit.BuildLoad;
import courseworthy.topic.Topics;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.Workshop;
import courseworthy.workshop.WorkshopGenerator;
import courseworthy.worth.WorthCalculator;
import org.junit.jupiter.api.Test;

/** Where the workshop has a bike of the kind that is called and it can be built whole, the build is on such a bike, whatever parts lose. */
class CalledKindBuildTest {

    @Test
    void aBikeOfTheKindThatIsCalledGoesFirst() {
        int ofTheKind = 0;
        int cheaperElsewhere = 0;
        int another = 0;
        for (int seed = 0; seed < 120; seed++) {
            Workshop workshop = new WorkshopGenerator(seed, 0.005, 0).of(3, 70);
            Call call = BuildSearchTest.call(seed);
            String kind = call.on(Topics.BIKE).text();
            WorthCalculator worths = new WorthCalculator(call, null);
            BuildObjective aims = new BuildObjective(call, TimeSavings.NONE);
            BuildLoad load = new BuildLoad(null, null, null);
            long best = Long.MAX_VALUE;
            long bestOther = Long.MAX_VALUE;
            for (Part bike : workshop.bikes()) {
                Build build = BuildFinder.parts(Recommendation.of(call, worths), workshop, bike.name());
                boolean is = kind.equals(bike.word(PartDetail.KIND));
                long cost = build.bike() == null ? Long.MAX_VALUE : new BruteForce(workshop, bike, load, aims).costOf(build.inPlace());
                if (build.bike() != null && is && build.loss() < BuildObjective.EMPTY) {
                    best = Math.min(best, cost);
                } else if (build.bike() != null) {
                    bestOther = Math.min(bestOther, cost);
                }
            }
            Build build = BuildFinder.parts(Recommendation.of(call, worths), workshop, null);
            long cost = build.bike() == null ? Long.MAX_VALUE : new BruteForce(workshop, build.bike(), load, aims).costOf(build.inPlace());
            if (best < Long.MAX_VALUE) {
                ofTheKind++;
                cheaperElsewhere += bestOther < best ? 1 : 0;
                assertThat(build.bike().word(PartDetail.KIND)).as("seed %d", seed).isEqualTo(kind);
                assertThat(cost).isEqualTo(best);
            } else if (bestOther < Long.MAX_VALUE) {
                another++;
                assertThat(cost).as("seed %d", seed).isEqualTo(bestOther);
            }
        }
        assertThat(ofTheKind).isGreaterThan(10);
        assertThat(cheaperElsewhere).isGreaterThan(3);
        assertThat(another).isGreaterThan(10);
    }

    /** A kind of bike that a limit rules out is never cheaper than one that is only worse, however much worse it is. */
    @Test
    void aKindThatALimitForbidsIsTheDearest() {
        long allowed = BuildFinder.withKind(40 * BuildVariables.LOSS, 900);
        assertThat(allowed).isEqualTo(940 * BuildVariables.LOSS);
        for (long loss : new long[] {BuildObjective.FORBIDDEN, BuildObjective.FORBIDDEN - 1, BuildObjective.FORBIDDEN / 2}) {
            assertThat(BuildFinder.withKind(0, loss)).as("loss %d", loss).isGreaterThan(allowed);
            assertThat(BuildFinder.withKind(5, loss)).isGreaterThanOrEqualTo(BuildFinder.withKind(1, loss));
        }
    }
}
