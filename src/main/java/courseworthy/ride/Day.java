package courseworthy.ride;

/**
 * The temperature at an hour and a height. At the start's height it runs between the forecast's lowest and highest of the ride along a
 * cosine of the day with its top at 15:00 local time and its bottom at 3:00 (a common simplification, no source); with height it falls as in
 * the standard atmosphere (6.5 K per km).
 */
public final class Day {

    private static final double WARMEST = 15 * 3600.0;
    private static final double A_DAY = 24 * 3600.0;
    private static final double STEP = 300;

    private final double start;
    private final double low;
    private final double high;
    private final double[] shape;

    /**
     * A day.
     *
     * @param start   s after midnight
     * @param seconds the ride lasts at most, s
     * @param low     lowest of the ride, °C
     * @param high    highest of the ride, °C
     */
    public Day(double start, double seconds, double low, double high) {
        this.start = start;
        this.low = Math.min(low, high);
        this.high = Math.max(low, high);
        this.shape = shape(seconds);
    }

    /** Where each five minutes of the ride lie between its coldest and warmest, 0 to 1. */
    private double[] shape(double seconds) {
        double[] out = new double[(int) Math.ceil(seconds / STEP) + 2];
        double least = 1;
        double most = -1;
        for (int i = 0; i < out.length; i++) {
            out[i] = Math.cos(2 * Math.PI * (start + i * STEP - WARMEST) / A_DAY);
            least = Math.min(least, out[i]);
            most = Math.max(most, out[i]);
        }
        for (int i = 0; i < out.length; i++) {
            out[i] = (out[i] - least) / (most - least);
        }
        return out;
    }

    /**
     * Temperature, °C.
     *
     * @param seconds     from the start
     * @param heightAbove the start's, m
     */
    public double temperature(double seconds, double heightAbove) {
        double place = Math.max(0, Math.min(shape.length - 1.001, seconds / STEP));
        int below = (int) place;
        double part = shape[below] + (shape[below + 1] - shape[below]) * (place - below);
        return low + (high - low) * part - Air.LAPSE * heightAbove;
    }
}
