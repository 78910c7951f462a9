package courseworthy.ride;

/**
 * Walking beside the bike: when, how fast, and what it costs. One home for all of it, so that the estimate, the gears and the plan walk at
 * one speed. Nothing was found that was measured of pushing a bicycle uphill; what is pushed is counted as carried.
 */
public final class Walking {

    /**
     * Walking uphill beside the bike, m/s. The ends are what Tobler's function 6 exp(-3.5 |s + 0.05|) km/h gives on a path at slopes s of
     * 15 % (0.83) and 5 % (1.17), the middle lies by what it gives at 10 % (0.99) (Tobler W, 1993, NCGIA report 93-1, as quoted); one speed
     * for all slopes is common practice, no source.
     */
    public static final Range SPEED = new Range(0.83, 0.95, 1.17);
    /** Slower than this a bicycle is hard to balance, so no gear is asked for, m/s (4.5 km/h; common practice, no source). */
    public static final double BALANCED = 1.25;
    /**
     * Gradients from which walking costs less than riding: without a load, and carrying what a bicycle weighs (Ardigò LP, Saibene F, Minetti
     * AE, 2003, Eur. J. Appl. Physiol. 90:365-371: 13 to 15 %, and about 20 % of one subject). Below the first a rider gets off only when it
     * goes no more; from the second on as soon as balance or cadence goes; between them in proportion (practice).
     */
    public static final double CHEAPER = 0.13;
    public static final double CHEAPER_LOADED = 0.20;
    /** The curve of cost by gradient is high near the level, where 1.64 was measured for its 2.50: from this gradient on it is used. */
    private static final double CURVE_FROM = 0.05;
    private static final double CURVE_TO = 0.45;
    /** Pandolf's equation reads low by 12 to 33 % (comparisons in later work, at second hand): the high end of what walking costs. */
    private static final double READS_LOW = 1.33;

    private Walking() {
    }

    /** How much there is to be said for walking on a gradient: 0 where riding costs less, 1 where walking does with the bike. */
    static double favoured(double gradient) {
        return Math.max(0, Math.min(1, (gradient - CHEAPER) / (CHEAPER_LOADED - CHEAPER)));
    }

    /** Below this speed a rider gets off on a gradient, m/s. */
    public static double below(double gradient) {
        return below(SPEED.mid(), favoured(gradient));
    }

    static double below(double walking, double favoured) {
        return walking + favoured * (BALANCED - walking);
    }

    /**
     * What walking without a load uses, J for each kg and m: Minetti AE and others (2002) J. Appl. Physiol. 93:1039-1046, fitted from -0.45
     * to 0.45.
     */
    static double cost(double gradient) {
        double i = Math.max(-CURVE_TO, Math.min(CURVE_TO, gradient));
        return ((((280.5 * i - 58.7) * i - 76.8) * i + 51.9) * i + 19.6) * i + 2.5;
    }

    /**
     * What walking with a load uses, W: Pandolf KB, Givoni B, Goldman RF (1977) J. Appl. Physiol. 43:577-581, on firm ground.
     *
     * @param body     kg
     * @param load     kg
     * @param speed    m/s
     * @param gradient 0 or more
     */
    static double pandolf(double body, double load, double speed, double gradient) {
        double both = body + load;
        double share = load / body;
        return 1.5 * body + 2 * both * share * share + both * (1.5 * speed * speed + 35 * speed * gradient);
    }

    /**
     * What walking beside the bike uses of a body's energy, W: from 5 % up Minetti's cost, more by a load in the proportion that Pandolf's
     * equation gives; on flatter ground that equation. The low end is without the load.
     *
     * @param body     the rider, kg
     * @param load     bike and all that is on it, kg
     * @param gradient rise over length
     */
    public static Range power(double body, double load, double gradient) {
        double up = Math.max(0, gradient);
        double alone = pandolf(body, 0, SPEED.mid(), up);
        double loaded = pandolf(body, load, SPEED.mid(), up);
        double unloaded = gradient < CURVE_FROM ? alone : cost(gradient) * body * SPEED.mid();
        double mid = unloaded * loaded / alone;
        return new Range(unloaded, mid, mid * READS_LOW);
    }
}
