package courseworthy.course.matching;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Two mapped courses and two generated routes, matched with the map they come from. Limits lie a little under what {@link MatchingMeasure} shows
 * over many more draws of noise; how errors of receivers drift (100 m) is a judgement.
 */
class MappedRoutesTest {

    private static final double DRIFT = 100;

    private static MappedRoutes routes;
    private static KnownRoute valley;
    private static KnownRoute rhine;
    private static List<KnownRoute> generated;

    @BeforeAll
    static void read() throws IOException {
        routes = new MappedRoutes();
        valley = routes.course("course_osm_valley");
        rhine = routes.course("course_osm_rhine");
        generated = List.of(routes.generated(1003), routes.generated(1008));
    }

    private static MatchScore noisy(KnownRoute route, double sigma, int draws) {
        MatchScore score = new MatchScore();
        for (int seed = 0; seed < draws; seed++) {
            routes.match(route, route.noisy(sigma, DRIFT, 1 + seed), Set.of(), score);
        }
        return score;
    }

    @Test
    void cleanAndSparseTracksGetTheGroundTheyHave() {
        MatchScore clean = new MatchScore();
        MatchScore sparse = new MatchScore();
        for (KnownRoute route : List.of(valley, rhine, generated.get(0), generated.get(1))) {
            routes.match(route, route.clean(), Set.of(), clean);
            routes.match(route, route.thinned(50), Set.of(), sparse);
        }
        assertThat(clean.right()).isGreaterThan(0.998);
        assertThat(clean.wrongOfSure()).isLessThan(0.001);
        assertThat(clean.sure()).isGreaterThan(0.9);
        assertThat(clean.surfaceError()).isLessThan(0.002);
        assertThat(sparse.right()).isGreaterThan(0.995);
        assertThat(sparse.surfaceError()).isLessThan(0.005);
    }

    @Test
    void noiseOfFiveMetresCostsLittle() {
        MatchScore score = noisy(valley, 5, 2);
        score.add(noisy(rhine, 5, 2));
        generated.forEach(route -> score.add(noisy(route, 5, 1)));
        assertThat(score.right()).isGreaterThan(0.985);
        assertThat(score.sure()).isGreaterThan(0.85);
        assertThat(score.wrongOfSure()).isLessThan(0.005);
        assertThat(score.noise()).isBetween(4.0, 6.5);
    }

    @Test
    void withFifteenMetresMostIsRightAndLittleOfWhatIsSureIsWrong() {
        MatchScore valleys = noisy(valley, 15, 3);
        MatchScore rhines = noisy(rhine, 15, 3);
        assertThat(valleys.right()).isGreaterThan(0.94);
        assertThat(rhines.right()).isGreaterThan(0.96);
        valleys.add(rhines);
        assertThat(valleys.sure()).isGreaterThan(0.55);
        assertThat(valleys.wrongOfSure()).isLessThan(0.005);
        assertThat(valleys.noise()).isBetween(12.0, 18.0);
    }

    @Test
    void withThirtyMetresNothingIsSure() {
        MatchScore score = noisy(valley, 30, 1);
        score.add(noisy(rhine, 30, 1));
        assertThat(score.right()).isGreaterThan(0.75);
        assertThat(score.noise()).isGreaterThan(20);
        assertThat(score.sure()).isZero();
    }

    @Test
    void aWayThatIsNotOnTheMapIsSeldomMistakenForAnotherWithConfidence() {
        MatchScore score = new MatchScore();
        // The longest way of each: beside one of them runs another at some fifteen metres.
        routes.match(rhine, rhine.noisy(5, DRIFT, 1), Set.of(170617132L), score);
        routes.match(valley, valley.noisy(5, DRIFT, 1), Set.of(901981450L), score);
        assertThat(score.goneButSure()).isLessThan(0.12);
    }
}
