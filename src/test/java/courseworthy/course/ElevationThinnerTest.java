package courseworthy.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** What is left out of a height line, against what the whole says at every point. */
class ElevationThinnerTest {

    private static ElevationLine line(double[] distance, double[] elevation) {
        return new ElevationLine(distance, elevation, true, true);
    }

    @Test
    void aStraightRampIsItsTwoEnds() {
        ElevationLine thin = ElevationThinner.thinned(line(new double[] {0, 20, 40, 60}, new double[] {10, 12, 14, 16}), 0.01);
        assertThat(thin.distance()).containsExactly(0, 60);
        assertThat(thin.elevation()).containsExactly(10, 16);
    }

    @Test
    void aBumpHigherThanTheToleranceStaysAndALowerOneDoesNot() {
        double[] at = {0, 10, 20, 30, 40};
        assertThat(ElevationThinner.thinned(line(at, new double[] {0, 0, 5, 0, 0}), 4.9).distance()).contains(20);
        assertThat(ElevationThinner.thinned(line(at, new double[] {0, 0, 5, 0, 0}), 5.1).distance()).containsExactly(0, 40);
    }

    @Test
    void aBreakBetweenPiecesStays() {
        ElevationLine thin = ElevationThinner.thinned(line(new double[] {0, 50, 100, 100, 150, 200}, new double[] {0, 0, 0, 80, 80, 80}), 1);
        assertThat(thin.distance()).containsExactly(0, 100, 100, 200);
        assertThat(thin.elevation()).containsExactly(0, 0, 80, 80);
    }

    @Test
    void noPointOfTheWholeIsFurtherOffThanTheTolerance() {
        Random random = new Random(7);
        double[] at = new double[3000];
        double[] height = new double[at.length];
        for (int i = 1; i < at.length; i++) {
            at[i] = at[i - 1] + 20;
            height[i] = height[i - 1] + 2 * random.nextGaussian();
        }
        for (double tolerance : new double[] {0.5, 2, 10}) {
            ElevationLine thin = ElevationThinner.thinned(line(at, height), tolerance);
            assertThat(thin.size()).isLessThan(at.length);
            int next = 1;
            for (int i = 0; i < at.length; i++) {
                while (thin.distance()[next] < at[i]) {
                    next++;
                }
                double part = (at[i] - thin.distance()[next - 1]) / (thin.distance()[next] - thin.distance()[next - 1]);
                double drawn = thin.elevation()[next - 1] + part * (thin.elevation()[next] - thin.elevation()[next - 1]);
                assertThat(Math.abs(drawn - height[i])).isLessThanOrEqualTo(tolerance + 1e-9);
            }
        }
    }
}
