package courseworthy.ride;

/**
 * How power is shared out over slopes and wind: harder where it buys most time, easing where it buys little. What is held over a ride is
 * compared as a fourth-power mean (see {@link RideEstimate}); for a given one of these the total time is least where on every piece a little
 * more power buys as much time for what it costs. With e the relative gain in steady speed for a relative gain in power, that is where
 * the fourth power of the power goes with e / (4 - e): worked out by hand from the least of the sum of (1 + λP⁴)/v(P). Uphill e is near
 * 1, on the flat near 1/3, down a steep descent near 0, so that flat ground is ridden at about seven tenths of the power uphill on a
 * hilly course, and a flat course at one power. That varying power so on hills and in wind saves time at the same effort is published:
 * Swain DP (1997) Med. Sci. Sports Exerc. 29:1104-1108; Atkinson G, Peacock O, Passfield L (2007) J. Sports Sci. 25:1001-1009 (both
 * from memory).
 */
final class Pacing {

    /** What e / (4 - e) is at e = 1. */
    private static final double UPHILL = 1.0 / 3;
    private static final int ROUNDS = 2;

    private Pacing() {
    }

    /**
     * Power on a piece as a share of power uphill, 0 to 1.
     *
     * @param uphill   power uphill at the wheel, W
     * @param air      half density times drag area, kg/m
     * @param headwind m/s
     * @param steady   forces that do not change with speed, N
     * @param guess    a speed to begin with, m/s
     */
    static double share(double uphill, double air, double headwind, double steady, double guess) {
        double share = 1;
        for (int round = 0; round < ROUNDS; round++) {
            double v = PowerBalance.steadySpeed(uphill * share, air, headwind, steady, PowerBalance.BEARING_SLOPE, guess);
            double size = Math.abs(v + headwind);
            double force = uphill * share / v;
            double falls = 2 * air * size + PowerBalance.BEARING_SLOPE;
            double gain = force / (force + v * falls);
            share = Math.sqrt(Math.sqrt(gain / (4 - gain) / UPHILL));
        }
        return share;
    }
}
