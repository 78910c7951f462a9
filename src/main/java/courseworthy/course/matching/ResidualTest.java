package courseworthy.course.matching;

/**
 * Tells where a track lies beside its ways for longer, or farther, than its own error would explain: there the true way may be missing from
 * the map. Over a window of several lengths the mean distance across the way is held against the standard deviation that the mean of a
 * Gauss-Markov process has there.
 */
final class ResidualTest {

    /** Lengths of the windows, m: short ones find ways far off, long ones find ways close by. */
    private static final double[] WINDOWS = {150, 400, 1000, 2500};
    /** Standard deviations beyond which a mean counts as out of order. */
    private static final double MOST = 2.5;

    private final double[] at;
    private final double[] sums;
    private final int[] runStart;
    private final int[] runEnd;
    private final double sigma;

    /**
     * @param at     m along the track of each sample
     * @param across m by which each sample lies beside its way; NaN off the network
     * @param sigma  standard deviation of the error, m
     */
    ResidualTest(double[] at, double[] across, double sigma) {
        this.at = at;
        this.sigma = sigma;
        int n = at.length;
        sums = new double[n + 1];
        runStart = new int[n];
        runEnd = new int[n];
        for (int i = 0; i < n; i++) {
            sums[i + 1] = sums[i] + (Double.isNaN(across[i]) ? 0 : across[i]);
            runStart[i] = i > 0 && !Double.isNaN(across[i - 1]) ? runStart[i - 1] : i;
        }
        for (int i = n - 1; i >= 0; i--) {
            runEnd[i] = i < n - 1 && !Double.isNaN(across[i + 1]) ? runEnd[i + 1] : i;
        }
    }

    /** Whether the distances around a sample are such as the error explains. */
    boolean passes(int sample) {
        int from = sample;
        int to = sample;
        for (double window : WINDOWS) {
            while (from > runStart[sample] && at[sample] - at[from - 1] <= window / 2) {
                from--;
            }
            while (to < runEnd[sample] && at[to + 1] - at[sample] <= window / 2) {
                to++;
            }
            double mean = (sums[to + 1] - sums[from]) / (to - from + 1);
            if (Math.abs(mean) > MOST * sigma * meanDeviation(at[to] - at[from])) {
                return false;
            }
        }
        return true;
    }

    /** Standard deviation of the mean over a length, as a share of that of a single value (integral of the autocovariance). */
    static double meanDeviation(double length) {
        double x = length / EmissionModel.CORRELATION;
        return x < 1e-3 ? 1 : Math.sqrt(2 / x * (1 - (1 - Math.exp(-x)) / x));
    }
}
