package courseworthy.ride;

import java.util.function.IntToDoubleFunction;

/**
 * What the steps of a lap have, added up along it, so that the sum over any part of a ride is found at once. A step counts where its middle
 * is passed, on every lap on which it is.
 */
final class LapSums {

    private final double lap;
    private final double[] middle;
    /** Over the steps before each, and at the end over all. */
    private final double[] sum;

    /** @param of what a step has */
    LapSums(DiscretisedCourse way, IntToDoubleFunction of) {
        lap = way.length();
        middle = new double[way.size()];
        sum = new double[way.size() + 1];
        for (int i = 0; i < middle.length; i++) {
            middle[i] = way.along(i) - 0.5 * way.length(i);
            sum[i + 1] = sum[i] + of.applyAsDouble(i);
        }
    }

    /** The sum between two distances from the start over all laps, m. */
    double between(double from, double to) {
        return until(to) - until(from);
    }

    private double until(double distance) {
        double laps = Math.floor(distance / lap);
        double rest = distance - laps * lap;
        int low = 0;
        int high = middle.length;
        while (low < high) {
            int between = (low + high) >>> 1;
            if (middle[between] <= rest) {
                low = between + 1;
            } else {
                high = between;
            }
        }
        return laps * sum[middle.length] + sum[low];
    }
}
