package courseworthy.course;

import java.util.Arrays;

/**
 * What climbing comes to by each way of measuring it that is in use: no standard fixes one, common practice is 10 to 50 m of smoothing or
 * a threshold of 2 to 10 m (from memory), and what they make of one track is as far apart as its noise and its small ups and downs leave
 * it open. The line is taken at steps of 10 m, as it is and by its running median over 30 and 50 m, and counted with none and with each threshold.
 */
final class AscentMethods {

    /** Widths of the running median in steps of {@link ElevationCleaner#STEP}: none, 30 m and 50 m. */
    private static final int[] WIDTHS = {1, 3, 5};
    /** Thresholds of a climb, m; the first as good as none, for smoothing alone. */
    private static final double[] THRESHOLDS = {1e-9, 2, 3, 5, 10};
    /** How far devices of two kinds were apart on the same rides (Menaspà et al. 2014, Int. J. Sports Physiol. Perform. 9:884-886). */
    private static final double DEVICES = 0.03;

    private final double[][] up = new double[WIDTHS.length][THRESHOLDS.length];
    private final double[][] down = new double[WIDTHS.length][THRESHOLDS.length];

    /** Adds one unbroken piece of the line, m at even steps. */
    void add(double[] distance, double[] elevation) {
        for (int w = 0; w < WIDTHS.length; w++) {
            ElevationLine line = new ElevationLine(distance, medians(elevation, WIDTHS[w]), true, true);
            for (int t = 0; t < THRESHOLDS.length; t++) {
                AscentCounter climbing = AscentCounter.along(line, THRESHOLDS[t]);
                up[w][t] += climbing.up();
                down[w][t] += climbing.down();
            }
        }
    }

    /** What was counted, with the figures between which it lies. */
    Climbing around(AscentCounter counted) {
        return new Climbing(counted.up(), counted.down(), around(up, counted.up()), around(down, counted.down()));
    }

    private static Interval around(double[][] found, double stated) {
        double low = stated * (1 - DEVICES);
        double high = stated * (1 + DEVICES);
        for (double[] row : found) {
            for (double metres : row) {
                low = Math.min(low, metres);
                high = Math.max(high, metres);
            }
        }
        return new Interval(low, high);
    }

    /** The running median over an odd number of steps, narrower towards the ends, which stay. */
    static double[] medians(double[] values, int width) {
        double[] out = values.clone();
        for (int i = 1; i < values.length - 1; i++) {
            int reach = Math.min(width / 2, Math.min(i, values.length - 1 - i));
            double[] window = Arrays.copyOfRange(values, i - reach, i + reach + 1);
            Arrays.sort(window);
            out[i] = window[reach];
        }
        return out;
    }
}
