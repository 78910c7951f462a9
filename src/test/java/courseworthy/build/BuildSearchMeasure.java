package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.fit.BuildLoad;
import courseworthy.workshop.Part;
import courseworthy.workshop.Workshop;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What the search takes in a full workshop. */
class BuildSearchMeasure {

    /** Five bikes and four hundred parts in less than a second, once the classes are warm. */
    @Test
    void aFullWorkshopIsQuick() {
        double slowest = 0;
        for (int seed = 0; seed < 20; seed++) {
            Workshop workshop = BuildSearchTest.full(seed);
            BuildObjective aims = new BuildObjective(BuildSearchTest.call(seed), BuildSearchTest.returns(seed));
            long start = System.nanoTime();
            for (Part bike : workshop.bikes()) {
                new BuildSearch(workshop, bike, new BuildLoad(75.0, 95.0, 0.1), aims).solve();
            }
            if (seed > 0) {
                slowest = Math.max(slowest, (System.nanoTime() - start) / 1e9);
            }
        }
        System.out.printf(Locale.ROOT, "five bikes and four hundred parts: %.2f s at the slowest%n", slowest);
        assertThat(slowest).as("s").isLessThan(1);
    }
}
