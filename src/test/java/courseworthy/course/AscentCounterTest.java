package courseworthy.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Climbing over lines whose climbing is known by calculation. White noise of standard deviation s adds s / sqrt(pi) of climbing a
 * sample to a plain sum (half the mean absolute difference of two normal variates, 2 s / sqrt(pi)).
 */
class AscentCounterTest {

    private static ElevationLine line(double... elevation) {
        double[] distance = new double[elevation.length];
        for (int i = 0; i < distance.length; i++) {
            distance[i] = 10.0 * i;
        }
        return new ElevationLine(distance, elevation, true, true);
    }

    private static double[] noise(double[] clean, double deviation, long seed) {
        Random random = new Random(seed);
        double[] out = clean.clone();
        for (int i = 0; i < out.length; i++) {
            out[i] += deviation * random.nextGaussian();
        }
        return out;
    }

    /** Ten hills of 100 m, up and down as a cosine. */
    private static double[] tenHills() {
        double[] out = new double[10_000];
        for (int i = 0; i < out.length; i++) {
            out[i] = 50 - 50 * Math.cos(2 * Math.PI * 10 * i / (out.length - 1));
        }
        return out;
    }

    @ParameterizedTest
    @CsvSource({"0.5", "2", "10", "50"})
    void aSteadyRampCountsInFull(double threshold) {
        double[] ramp = new double[201];
        for (int i = 0; i < ramp.length; i++) {
            ramp[i] = 400 + i / 2.0;
        }
        AscentCounter up = AscentCounter.along(line(ramp), threshold);
        assertThat(up.up()).isEqualTo(100);
        assertThat(up.down()).isZero();
        assertThat(AscentCounter.deadBand(ramp, threshold)[0]).isBetween(100 - threshold, 100.0);
    }

    @Test
    void onNoiseAPlainSumGrowsWithoutEndAndAThresholdOfSixDeviationsDoesNot() {
        int n = 200_000;
        double[] flat = noise(new double[n], 1, 1);
        double naive = n / Math.sqrt(Math.PI);
        assertThat(AscentCounter.along(line(flat), 1e-9).up()).isCloseTo(naive, within(naive / 100));
        assertThat(AscentCounter.along(line(flat), 6).up()).isLessThan(naive / 50);
        assertThat(AscentCounter.deadBand(flat, 6)[0]).isLessThan(naive / 50);
    }

    @Test
    void tenHillsCountInFull() {
        assertThat(AscentCounter.along(line(tenHills()), 5).up()).isCloseTo(1000, within(0.1));
    }

    /** Each figure was calculated apart from this program, on one draw of the noise: ours must be spread around it. */
    @ParameterizedTest
    @CsvSource({"1, 1e-9, 5700", "1, 5, 1071", "1, 10, 1043", "2, 10, 1121"})
    void tenHillsUnderNoise(double deviation, double threshold, double published) {
        int draws = 40;
        double sum = 0;
        double squares = 0;
        for (int seed = 0; seed < draws; seed++) {
            double up = AscentCounter.along(line(noise(tenHills(), deviation, seed)), threshold).up();
            sum += up;
            squares += up * up;
        }
        double mean = sum / draws;
        double spread = Math.sqrt(squares / draws - mean * mean);
        assertThat(spread).isLessThan(mean * 0.03);
        assertThat(published).isCloseTo(mean, within(3 * spread));
    }

    @Test
    void aSawtoothUnderTheThresholdIsNoClimbing() {
        double[] saw = new double[1001];
        for (int i = 0; i < saw.length; i++) {
            saw[i] = i % 2 * 2;
        }
        assertThat(AscentCounter.along(line(saw), 3).up()).isZero();
        assertThat(AscentCounter.deadBand(saw, 3)[0]).isZero();
        assertThat(AscentCounter.along(line(saw), 2).up()).isEqualTo(1000);
    }

    /** What is gained from end to end is counted, under the threshold too: up less down is the height of the last over the first point. */
    @Test
    void theFirstAndTheLastLegCountWhateverTheirSize() {
        AscentCounter dips = AscentCounter.along(line(10, 9, 30, 28.5, 29), 2);
        assertThat(dips.up()).isEqualTo(21);
        assertThat(dips.down()).isEqualTo(2);
        assertThat(AscentCounter.along(line(0, 1, 0.5, 1.5), 2).up()).isEqualTo(1.5);
        assertThat(AscentCounter.along(line(0, 1, 0.5, 1.5), 2).down()).isZero();
    }

    @Test
    void smallDipsOnAClimbAreNotCountedTwice() {
        assertThat(AscentCounter.along(line(0, 20, 18.5, 40), 2).up()).isEqualTo(40);
        assertThat(AscentCounter.along(line(0, 20, 18, 40), 2).up()).isEqualTo(42);
    }

    @Test
    void breaksAreNeverBridged() {
        ElevationLine broken = new ElevationLine(new double[] {0, 10, 10, 20}, new double[] {0, 5, 100, 103}, true, true);
        AscentCounter climbing = AscentCounter.along(broken, 2);
        assertThat(climbing.up()).isEqualTo(8);
        assertThat(climbing.up(0, 10)).isEqualTo(5);
        assertThat(climbing.up(10, 20)).isEqualTo(3);
        assertThat(climbing.down()).isZero();
    }

    @Property(tries = 300, seed = "20261129")
    void partsAddUpToTheWholeAndTheEndsAgree(@ForAll @Size(min = 2, max = 60) List<@IntRange(min = -50, max = 50) Integer> heights,
            @ForAll @DoubleRange(min = 0, max = 1) double part) {
        double[] elevation = heights.stream().mapToDouble(Integer::doubleValue).toArray();
        AscentCounter climbing = AscentCounter.along(line(elevation), 3);
        double length = 10.0 * (elevation.length - 1);
        double cut = part * length;
        assertThat(climbing.up(0, cut) + climbing.up(cut, length)).isCloseTo(climbing.up(), within(1e-9));
        assertThat(climbing.down(0, cut) + climbing.down(cut, length)).isCloseTo(climbing.down(), within(1e-9));
        assertThat(climbing.up(0, cut)).isNotNegative();
        double net = elevation[elevation.length - 1] - elevation[0];
        assertThat(climbing.up() - climbing.down()).isCloseTo(net, within(1e-9));
        AscentCounter plain = AscentCounter.along(line(elevation), 1e-12);
        assertThat(climbing.up()).isLessThanOrEqualTo(plain.up() + 1e-9);
        assertThat(plain.up() - plain.down()).isCloseTo(net, within(1e-9));
    }
}
