package courseworthy.ride;

/**
 * Where the temperature of a day lies between its lowest (0) and its highest (1), by the hour.
 *
 * <p>Where sunrise and sunset are known: Parton and Logan (1981), Agric. Meteorol. 23:205-216. With Y the hours from sunrise to sunset and Z
 * those of the night, from c after sunrise to sunset sin(pi m / (Y + 2 (a - c))), m hours since sunrise + c; by night what that is at sunset
 * times exp(-b n / (Z + c)), n hours since sunset. The night's curve ends 11 % above the lowest; over its last hour it is led down to it, so
 * that there is no step at dawn. The form with Y + 2 a and Z, which is found too, is nearly the same for a c near 0 and wrong for another.
 *
 * <p>Where they are not, or the day is under 6 h or over 20 h long, for which nothing was fitted: by the clock alone,
 * 0.44 - 0.46 sin(w t + 0.9) + 0.11 sin(2 w t + 0.9), w = pi / 12, t in hours (Campbell and Norman 1998), held between 0 and 1.
 */
final class DiurnalCurve {

    /** Colorado, air at 150 cm: a, b and c (Parton and Logan 1981; c is the one near 0, though b and c stand exchanged in one manual). */
    static final DiurnalCurve COLORADO = new DiurnalCurve(1.86, 2.20, -0.17);
    /** Five places of North Carolina (Wann and others 1985, Agric. For. Meteorol. 34:121). */
    static final DiurnalCurve CAROLINA = new DiurnalCurve(2.59, 2.20, 1.55);

    /** h: of a day, and of the shortest and longest daylight the curves are used for (judgement). */
    private static final double A_DAY = 24;
    private static final double SHORTEST = 6;
    private static final double LONGEST = 20;
    /** Hours before the lowest over which the night is led down to it. */
    private static final double LED_DOWN = 1;

    private final double a;
    private final double b;
    private final double c;

    private DiurnalCurve(double a, double b, double c) {
        this.a = a;
        this.b = b;
        this.c = c;
    }

    /** Whether a day of these times is one for which the curve was made; NaN for what is not known. */
    static boolean fits(double rise, double set) {
        return set - rise >= SHORTEST && set - rise <= LONGEST;
    }

    /**
     * The share at an hour.
     *
     * @param hour any, of this or another day
     * @param rise hour of sunrise
     * @param set  hour of sunset
     */
    double at(double hour, double rise, double set) {
        double day = set - rise;
        double since = ((hour - rise - c) % A_DAY + A_DAY) % A_DAY;
        double lit = day - c;
        if (since <= lit) {
            return sine(since, day);
        }
        double night = A_DAY - lit;
        double dark = since - lit;
        double left = Math.min(1, (night - dark) / LED_DOWN);
        return sine(lit, day) * Math.exp(-b * dark / night) * left;
    }

    private double sine(double since, double day) {
        return Math.sin(Math.PI * since / (day + 2 * (a - c)));
    }

    /** The share by the clock alone. */
    static double byTheClock(double hour) {
        double w = Math.PI / 12;
        return Math.max(0, Math.min(1, 0.44 - 0.46 * Math.sin(w * hour + 0.9) + 0.11 * Math.sin(2 * w * hour + 0.9)));
    }
}
