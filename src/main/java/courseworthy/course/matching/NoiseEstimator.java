package courseworthy.course.matching;

import java.util.Arrays;

/**
 * Estimates how accurate a track is from how far its samples lie beside their ways, by medians of absolute values as Newson and Krumm (2009)
 * do. How much that distance changes over some hundred metres is what counts: where the true way is missing and the track is matched with one
 * that runs beside it, the distance itself is large but steady.
 */
final class NoiseEstimator {

    /** Median of the absolute value of a normal variable, in standard deviations. */
    private static final double MEDIAN = 0.6745;
    /** Metres over which changes are taken: twice the distance over which errors are related. */
    private static final double LAG = 2 * EmissionModel.CORRELATION;
    /**
     * What estimates from changes are too small by, since matches follow the error (measured with 5, 15 and 30 m on mapped ways: 4.9, 13.6 and
     * 25.5 without it).
     */
    private static final double BIAS = 1.1;

    private double[] distances = new double[256];
    private int distanceCount;
    private double[] changes = new double[256];
    private int changeCount;

    /**
     * Adds the samples of a part of the track.
     *
     * @param at     m along the track
     * @param across m by which each lies to the right of its way; NaN off the network
     */
    void add(double[] at, double[] across) {
        int ahead = 0;
        for (int i = 0; i < at.length; i++) {
            if (Double.isNaN(across[i])) {
                continue;
            }
            addDistance(Math.abs(across[i]));
            while (ahead < at.length && at[ahead] - at[i] < LAG) {
                ahead++;
            }
            if (ahead < at.length && !Double.isNaN(across[ahead])) {
                double related = Math.exp(-(at[ahead] - at[i]) / EmissionModel.CORRELATION);
                addChange(Math.abs(across[ahead] - across[i]) / Math.sqrt(2 * (1 - related)));
            }
        }
    }

    private void addDistance(double metres) {
        if (distanceCount == distances.length) {
            distances = Arrays.copyOf(distances, distanceCount * 2);
        }
        distances[distanceCount++] = metres;
    }

    private void addChange(double metres) {
        if (changeCount == changes.length) {
            changes = Arrays.copyOf(changes, changeCount * 2);
        }
        changes[changeCount++] = metres;
    }

    /** Standard deviation of the track's own error per axis, m; NaN where nothing lies on the network. */
    double noise() {
        return changeCount > 0 ? BIAS * deviation(changes, changeCount) : misfit();
    }

    /** The same from the distances themselves: also large where the map lacks ways or lies askew; NaN where nothing lies on the network. */
    double misfit() {
        return deviation(distances, distanceCount);
    }

    private static double deviation(double[] values, int count) {
        double[] sorted = Arrays.copyOf(values, count);
        Arrays.sort(sorted);
        return count == 0 ? Double.NaN : sorted[count / 2] / MEDIAN;
    }
}
