package courseworthy.course.matching;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.BiFunction;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * How much of two mapped courses and of twenty generated routes is matched with the right ground, clean, sparse and with noise, how much is
 * sure, and how often wrongly so. Run by hand; {@code courseworthy.matching.seeds} says how many times each noise is drawn.
 */
class MatchingMeasure {

    private static final int SEEDS = Integer.getInteger("courseworthy.matching.seeds", 10);
    private static final double DRIFT = 100;

    private static MappedRoutes routes;
    private static KnownRoute valley;
    private static KnownRoute rhine;
    private static final List<KnownRoute> GENERATED = new ArrayList<>();

    private record Scores(MatchScore valley, MatchScore rhine, MatchScore generated) {

        MatchScore all() {
            MatchScore all = new MatchScore();
            all.add(valley);
            all.add(rhine);
            all.add(generated);
            return all;
        }
    }

    @BeforeAll
    static void read() throws IOException {
        routes = new MappedRoutes();
        valley = routes.course("course_osm_valley");
        rhine = routes.course("course_osm_rhine");
        for (int i = 0; i < 20; i++) {
            GENERATED.add(routes.generated(1000 + i));
        }
    }

    private static Scores score(String name, int seeds, BiFunction<KnownRoute, Integer, KnownRoute.Recording> recording) {
        Scores scores = new Scores(new MatchScore(), new MatchScore(), new MatchScore());
        long start = System.nanoTime();
        for (int seed = 0; seed < seeds; seed++) {
            routes.match(valley, recording.apply(valley, seed), Set.of(), scores.valley());
            routes.match(rhine, recording.apply(rhine, 100 + seed), Set.of(), scores.rhine());
        }
        for (int i = 0; i < 2 * GENERATED.size() && (seeds > 1 || i < GENERATED.size()); i++) {
            KnownRoute route = GENERATED.get(i % GENERATED.size());
            routes.match(route, recording.apply(route, 1000 + i), Set.of(), scores.generated());
        }
        print(name, scores, start);
        return scores;
    }

    private static void print(String name, Scores scores, long start) {
        double seconds = (System.nanoTime() - start) / 1e9;
        System.out.printf(Locale.ROOT, "%s%n  valley    %s%n  rhine     %s%n  generated %s%n  %s%n  %.2f s for 50 km%n", name, scores.valley(),
                scores.rhine(), scores.generated(), scores.all().byKind(), seconds / scores.all().kilometres() * 50);
    }

    @Test
    void cleanTracksAreMatchedWhole() {
        for (Scores scores : List.of(score("clean", 1, (route, seed) -> route.clean()), score("every 50 m", 1, (route, seed) -> route.thinned(50)))) {
            assertThat(scores.valley().right()).isGreaterThan(0.995);
            assertThat(scores.rhine().right()).isGreaterThan(0.995);
            assertThat(scores.generated().right()).isGreaterThan(0.995);
            assertThat(scores.valley().surfaceError()).isLessThan(0.01);
            assertThat(scores.rhine().surfaceError()).isLessThan(0.01);
        }
        score("every 100 m", 1, (route, seed) -> route.thinned(100));
    }

    @Test
    void noiseOfFiveMetres() {
        Scores scores = score("5 m", SEEDS, (route, seed) -> route.noisy(5, DRIFT, seed));
        assertThat(scores.all().sure()).isGreaterThan(0.70);
        assertThat(scores.all().wrongOfSure()).isLessThan(0.005);
        assertThat(scores.valley().surfaceError()).isLessThan(0.01);
        assertThat(scores.rhine().surfaceError()).isLessThan(0.01);
    }

    /** What a prototype reached was 0.891 and 0.952; a third of its error has to go. */
    @Test
    void noiseOfFifteenMetres() {
        Scores scores = score("15 m", SEEDS, (route, seed) -> route.noisy(15, DRIFT, seed));
        assertThat(scores.valley().right()).isGreaterThan(1 - (1 - 0.891) * 2 / 3);
        assertThat(scores.rhine().right()).isGreaterThan(1 - (1 - 0.952) * 2 / 3);
        assertThat(scores.all().sure()).isGreaterThan(0.55);
        assertThat(scores.all().wrongOfSure()).isLessThan(0.005);
    }

    /** What a prototype reached was 0.789 and 0.671. */
    @Test
    void noiseOfThirtyMetres() {
        Scores scores = score("30 m", SEEDS, (route, seed) -> route.noisy(30, DRIFT, seed));
        assertThat(scores.valley().right()).isGreaterThan(0.789);
        assertThat(scores.rhine().right()).isGreaterThan(0.671);
        assertThat(scores.all().sure()).isLessThan(0.02);
    }

    @Test
    void noiseWithoutDrift() {
        score("15 m, independent", 2, (route, seed) -> route.noisy(15, 0, seed));
    }

    @Test
    void noiseThatDriftsSlowly() {
        score("8 m, over 400 m", 2, (route, seed) -> route.noisy(8, 400, seed));
    }

    /** A third of the ways is removed at a time, so that each is once. */
    @Test
    void waysThatAreNotOnTheMap() {
        Scores scores = new Scores(new MatchScore(), new MatchScore(), new MatchScore());
        long start = System.nanoTime();
        for (int third = 0; third < 3; third++) {
            for (int seed = 0; seed < Math.max(1, SEEDS / 3); seed++) {
                routes.match(valley, valley.noisy(5, DRIFT, seed), third(valley, third), scores.valley());
                routes.match(rhine, rhine.noisy(5, DRIFT, 100 + seed), third(rhine, third), scores.rhine());
            }
            for (KnownRoute route : GENERATED) {
                routes.match(route, route.noisy(5, DRIFT, third), third(route, third), scores.generated());
            }
        }
        print("5 m, ways removed", scores, start);
        assertThat(scores.all().goneButSure()).isLessThan(0.12);
    }

    private static Set<Long> third(KnownRoute route, int third) {
        List<Long> ids = Arrays.stream(route.way()).map(way -> way.id()).distinct().toList();
        Set<Long> out = new HashSet<>();
        for (int i = third; i < ids.size(); i += 3) {
            out.add(ids.get(i));
        }
        return out;
    }
}
