package courseworthy.ride;

/** The density of air by height along a course, in steps of 25 m and linear between (computing): the error is below 1e-6 of it. */
final class DensityByHeight {

    /** Between heights of the table, m (computing). */
    private static final double STEP = 25;
    private final double least;
    private final double[] table;

    DensityByHeight(DiscretisedCourse way, RideAssumptions.WeatherAssumptions weather) {
        double low = Double.MAX_VALUE;
        double high = -Double.MAX_VALUE;
        for (int i = 0; i < way.size(); i++) {
            low = Math.min(low, way.height(i));
            high = Math.max(high, way.height(i));
        }
        least = low;
        table = new double[(int) Math.max(0, Math.ceil((high - low) / STEP)) + 2];
        for (int i = 0; i < table.length; i++) {
            table[i] = weather.density(low + i * STEP);
        }
    }

    double at(double height) {
        double place = (height - least) / STEP;
        int below = (int) place;
        return table[below] + (table[below + 1] - table[below]) * (place - below);
    }
}
