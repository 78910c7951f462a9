package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.call.Call;
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
            long best = Long.MAX_VALUE;
            long bestOther = Long.MAX_VALUE;
            for (Part bike : workshop.bikes()) {
                Build build = BuildFinder.parts(call, workshop, worths, bike.name());
                boolean is = kind.equals(bike.word(PartDetail.KIND));
                if (build.bike() != null && is && build.loss() < BuildObjective.EMPTY) {
                    best = Math.min(best, build.loss());
                } else if (build.bike() != null) {
                    bestOther = Math.min(bestOther, build.loss());
                }
            }
            Build build = BuildFinder.parts(call, workshop, worths, null);
            if (best < Long.MAX_VALUE) {
                ofTheKind++;
                cheaperElsewhere += bestOther < best ? 1 : 0;
                assertThat(build.bike().word(PartDetail.KIND)).as("seed %d", seed).isEqualTo(kind);
                assertThat(build.loss()).isEqualTo(best);
            } else if (bestOther < Long.MAX_VALUE) {
                another++;
                assertThat(build.loss()).as("seed %d", seed).isEqualTo(bestOther);
            }
        }
        assertThat(ofTheKind).isGreaterThan(10);
        assertThat(cheaperElsewhere).isGreaterThan(3);
        assertThat(another).isGreaterThan(10);
    }
}
