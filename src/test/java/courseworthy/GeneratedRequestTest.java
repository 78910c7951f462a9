package courseworthy;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.demand.Measure;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What tests draw can be read and surveyed, is the same each time, and is of every kind. */
class GeneratedRequestTest {

    private static final int DRAWN = 120;

    @TempDir
    Path folder;

    @Test
    void theSameNumberDrawsTheSame() {
        for (long n = 0; n < DRAWN; n++) {
            assertThat(GeneratedRequest.nth(n)).hasToString(GeneratedRequest.nth(n).toString());
            assertThat(GeneratedRequest.nth(n).course()).isNotEqualTo(GeneratedRequest.nth(n + 1).course());
        }
    }

    @Test
    void allAreReadAndSurveyed() {
        Set<String> kinds = new HashSet<>();
        Set<Long> grounds = new HashSet<>();
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (long n = 0; n < DRAWN; n++) {
            GeneratedRequest.Read read = GeneratedRequest.nth(n).read(folder);
            kinds.add(read.bike().kind());
            var demands = read.demands();
            grounds.add(demands.known(Measure.GOING) ? demands.get(Measure.GOING).mid() : null);
            double hours = demands.get(Measure.HOURS).mid();
            least = Math.min(least, hours);
            most = Math.max(most, hours);
        }
        assertThat(kinds).containsNull().hasSize(6);
        assertThat(grounds).hasSize(4);
        // In minutes: from an hour or so to a long day.
        assertThat(least).isLessThan(120);
        assertThat(most).isGreaterThan(600);
    }
}
