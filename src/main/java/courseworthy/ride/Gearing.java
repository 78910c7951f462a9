package courseworthy.ride;

import java.util.List;

/**
 * The gears there are, for a ride that is limited by them.
 *
 * @param ratios        chainring over sprocket, all of them, in any order
 * @param circumference of the wheel, m
 * @param lowest        cadence below which the rider will not turn for long, per minute
 * @param highest       cadence above which the rider will not turn for long, per minute
 */
public record Gearing(List<Double> ratios, double circumference, double lowest, double highest) {

    public Gearing {
        ratios = List.copyOf(ratios);
        if (ratios.isEmpty() || !(circumference > 0 && lowest > 0 && highest >= lowest)) {
            throw new IllegalArgumentException(ratios + " " + circumference + " " + lowest + " " + highest);
        }
    }

    /** Metres travelled for one turn of the crank in the easiest gear. */
    public double easiest() {
        double least = Double.MAX_VALUE;
        for (double ratio : ratios) {
            least = Math.min(least, ratio);
        }
        return least * circumference;
    }

    /** Metres travelled for one turn of the crank in the hardest gear. */
    public double hardest() {
        double most = 0;
        for (double ratio : ratios) {
            most = Math.max(most, ratio);
        }
        return most * circumference;
    }

    /** Speed of the lowest cadence in the easiest gear, m/s. */
    public double slowest() {
        return easiest() * lowest / 60;
    }

    /** Speed of the highest cadence in the hardest gear, m/s: faster is spun out. */
    public double fastest() {
        return hardest() * highest / 60;
    }
}
