package courseworthy.render.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.util.BitSet;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class LineSimplifierTest {

    @Test
    void pointsOnAStraightLineAreLeftOut() {
        assertThat(LineSimplifier.kept(new double[] {0, 1, 2, 3}, new double[] {0, 1, 2, 3}, 0.1).stream().toArray()).containsExactly(0, 3);
        assertThat(LineSimplifier.kept(new double[] {0, 1, 2, 3}, new double[] {0, 1, 0, 0}, 0.1).stream().toArray()).contains(0, 1, 3);
        assertThat(LineSimplifier.kept(new double[0], new double[0], 0.1).isEmpty()).isTrue();
    }

    /** Measured by the JDK's distance of a point from a segment. */
    @Property(seed = "20261129", tries = 100)
    void nothingLeftOutIsFartherThanTheTolerance(@ForAll long seed, @ForAll @DoubleRange(min = 0.1, max = 5) double tolerance) {
        Random random = new Random(seed);
        int count = 2 + random.nextInt(200);
        double[] x = new double[count];
        double[] y = new double[count];
        for (int i = 1; i < count; i++) {
            x[i] = x[i - 1] + random.nextGaussian();
            y[i] = y[i - 1] + random.nextGaussian();
        }
        BitSet kept = LineSimplifier.kept(x, y, tolerance);
        for (int i = 0; i < count; i++) {
            int before = kept.previousSetBit(i);
            int after = kept.nextSetBit(i);
            assertThat(Line2D.ptSegDist(x[before], y[before], x[after], y[after], x[i], y[i])).isLessThanOrEqualTo(tolerance + 1e-9);
        }
    }
}
