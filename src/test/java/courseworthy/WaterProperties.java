package courseworthy;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Water to carry never falls with heat, with a longer gap or with a higher sweat rate, over drawn courses, riders and days. */
class WaterProperties {

    private static final int DRAWN = Draws.of(1000);
    private static final List<Measure> WATER = List.of(Measure.WATER_AT_THE_START, Measure.WATER_OVER_THE_HOTTEST_GAP);

    @TempDir
    private Path folder;

    /** Each request in turn: hotter, then a longer gap, then more sweat, each on top of the one before. */
    @Test
    void neverLessWithHeatALongerGapOrMoreSweat() {
        int[] more = new int[3];
        for (long n = 0; n < DRAWN; n++) {
            GeneratedRequest drawn = GeneratedRequest.nth(n);
            Random random = new Random(n);
            Demands before = drawn.read(folder).demands();
            List<Consumer<GeneratedRequest>> changes = List.of(each -> hotter(each, 1 + random.nextInt(14)), WaterProperties::remoter,
                    each -> each.sweat = each.sweat == null ? 0.8 : each.sweat + 0.3);
            for (int i = 0; i < changes.size(); i++) {
                boolean estimated = i == 2 && drawn.sweat == null;
                changes.get(i).accept(drawn);
                Demands after = drawn.read(folder).demands();
                if (!estimated) {
                    more[i] += compare(before, after, i + "\n" + drawn);
                }
                before = after;
            }
        }
        assertThat(Math.min(more[0], Math.min(more[1], more[2]))).isGreaterThan(DRAWN / 10);
    }

    private static void hotter(GeneratedRequest request, int by) {
        if (request.low != null) {
            request.low += by;
            request.high += by;
        }
    }

    /** Leaves a tap out, the first in every other request; on laps start and finish stay. */
    private static void remoter(GeneratedRequest request) {
        if (request.water != null && !request.water.isEmpty()) {
            request.water = new ArrayList<>(request.water);
            request.water.remove(request.number % 2 == 0 ? 0 : request.water.size() - 1);
        }
    }

    /** 1 where some of it is more. */
    private static int compare(Demands before, Demands after, String what) {
        int more = 0;
        for (Measure measure : WATER) {
            MeasureValue was = before.get(measure);
            MeasureValue is = after.get(measure);
            assertThat(is == null).as(what).isEqualTo(was == null);
            if (is != null) {
                assertThat(is.mid()).as("%s: %s", measure, what).isGreaterThanOrEqualTo(was.mid());
                assertThat(is.high()).as("%s, high end: %s", measure, what).isGreaterThanOrEqualTo(was.high());
                more = is.mid() > was.mid() ? 1 : more;
            }
        }
        return more;
    }
}
