package courseworthy.ride;

/**
 * The temperature at an hour and a height. At the start's height it runs between the lowest and the highest of the day along the mean of two
 * published {@linkplain DiurnalCurve curves}, which differ by up to a third of the day's range in the morning; with height it falls as in the
 * standard atmosphere (6.5 K per km; on a clear dawn the bottom of a valley may be colder than its sides).
 */
public final class DayTemperature {

    /** s; and how finely the curve is kept (computing). */
    private static final double HOUR = 3600;
    private static final double STEP = 300;

    private final double low;
    private final double high;
    private final double[] shape;
    private final double[] apart;

    /**
     * A day.
     *
     * @param start   s after midnight
     * @param seconds the ride lasts at most, s
     * @param low     lowest of the day, °C
     * @param high    highest of the day, °C
     * @param rise    sunrise, s after midnight; NaN where not known
     * @param set     sunset, s after midnight; NaN where not known
     */
    public DayTemperature(double start, double seconds, double low, double high, double rise, double set) {
        this.low = Math.min(low, high);
        this.high = Math.max(low, high);
        shape = new double[(int) Math.ceil(seconds / STEP) + 2];
        apart = new double[shape.length];
        boolean sun = DiurnalCurve.fits(rise / HOUR, set / HOUR);
        for (int i = 0; i < shape.length; i++) {
            double hour = (start + i * STEP) / HOUR;
            double one = sun ? DiurnalCurve.COLORADO.at(hour, rise / HOUR, set / HOUR) : DiurnalCurve.byTheClock(hour);
            double other = sun ? DiurnalCurve.CAROLINA.at(hour, rise / HOUR, set / HOUR) : one;
            shape[i] = (one + other) / 2;
            apart[i] = Math.abs(one - other) / 2;
        }
    }

    /**
     * A day of which the temperature is known by the hour.
     *
     * @param seconds the ride lasts at most, s
     */
    public DayTemperature(HourlyWeather weather, double seconds) {
        low = 0;
        high = 1;
        shape = new double[(int) Math.ceil(seconds / STEP) + 2];
        apart = new double[shape.length];
        for (int i = 0; i < shape.length; i++) {
            shape[i] = weather.temperature(i * STEP);
        }
    }

    /**
     * Temperature, °C.
     *
     * @param seconds     from the start
     * @param heightAbove the start's, m
     */
    public double temperature(double seconds, double heightAbove) {
        return low + (high - low) * at(shape, seconds) - Air.LAPSE * heightAbove;
    }

    /** How far either curve is from their mean, °C. */
    public double unsure(double seconds) {
        return (high - low) * at(apart, seconds);
    }

    private static double at(double[] table, double seconds) {
        double place = Math.max(0, Math.min(table.length - 1.001, seconds / STEP));
        int below = (int) place;
        return table[below] + (table[below + 1] - table[below]) * (place - below);
    }
}
