package courseworthy.ride;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** One piece of a ride against the same equation integrated by Runge and Kutta's method in a thousand steps, which knows nothing of series and weights. */
class MotionSeriesTest {

    private static final double MASS = 85 + PowerBalance.WHEEL_INERTIA_MASS;
    private static final double AIR = 0.5 * 1.2 * 0.32;

    private static double slope(double v, double watts, double headwind, double steady) {
        double through = v + headwind;
        return (watts / v - AIR * through * Math.abs(through) - steady - PowerBalance.BEARING_SLOPE * v) / (MASS * v);
    }

    /** Speed and seconds at the end of a piece, by distance. */
    private static double[] integrated(double from, double length, double watts, double headwind, double steady) {
        double v = from;
        double seconds = 0;
        double h = length / 1000;
        for (int i = 0; i < 1000; i++) {
            double k1 = slope(v, watts, headwind, steady);
            double k2 = slope(v + h / 2 * k1, watts, headwind, steady);
            double k3 = slope(v + h / 2 * k2, watts, headwind, steady);
            double k4 = slope(v + h * k3, watts, headwind, steady);
            double middle = v + h / 2 * k2;
            double end = v + h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
            seconds += h / 6 * (1 / v + 4 / middle + 1 / end);
            v = end;
        }
        return new double[] {v, seconds};
    }

    /** On short pieces the change of speed is met to 6 % of the share by which speed changes, the time to a quarter of that share's square. */
    @Test
    void errorsFallWithTheSquareOfThePiece() {
        for (double from : new double[] {3, 5, 8, 12}) {
            for (double gradient : new double[] {-0.05, -0.02, 0.02, 0.05}) {
                for (double length : new double[] {1, 2, 4, 6}) {
                    double steady = 85 * PowerBalance.GRAVITY * (0.005 + gradient);
                    double[] exact = integrated(from, length, 220, 1, steady);
                    double share = Math.abs(exact[0] / from - 1);
                    Motion motion = new Motion();
                    motion.start(from, MASS);
                    motion.ride(length, 220, AIR, 1, steady);
                    assertThat(Math.abs(motion.speed() - exact[0]) / from).as("%s m/s, %s, %s m", from, gradient, length).isLessThan(0.06 * share * share + 2e-6);
                    assertThat(Math.abs(motion.seconds / exact[1] - 1)).as("%s m/s, %s, %s m", from, gradient, length).isLessThan(0.25 * share * share + 1e-5);
                }
            }
        }
    }
}
