package courseworthy.demand;

import courseworthy.ride.Range;

/**
 * Sweat lost in an hour of riding, L. The middle goes through what was measured in 13 riders of a mountain bike race of two hours at
 * 23.8 °C: 1.4 L/h (0.9 to 2.4) (Capitan and others, Int. J. Exerc. Sci. Conf. Proc. 11(2)). Their power is not told and taken as 180 W,
 * 2.2 W/kg (practice). It goes with power, as the heat to be lost does at a steady efficiency: power times (1 / efficiency - 1). With temperature it
 * rises by a straight line to the middle of what riders lose in the cool, 0.75 L/h at 10 °C (practice: 0.4 to 1.2), which also fits what
 * they drank and how much lighter they were at 6 to 21 °C (Rose and Peters 2010, Br. J. Sports Med. 44:430: about 0.7 L/h). Beyond 24 °C
 * nothing is published outdoors, and the line goes on (practice). The textbook equations are fitted at walking air speeds and fail at
 * riding speed, so none is used.
 */
final class SweatRate {

    /** Two points of the line: °C, and L/h measured in riders at the first (source above) and usual in the cool (practice). */
    private static final double WARM = 23.8;
    private static final double COOL = 10;
    private static final double MEASURED = 1.4;
    private static final double IN_THE_COOL = 0.75;
    private static final double PER_DEGREE = (MEASURED - IN_THE_COOL) / (WARM - COOL);
    /** Lost in any cold, L/h at the same power (practice). */
    private static final double LEAST = 0.3;
    private static final double AT_WATTS = 180;
    /** The least rider turns the pedals somewhere and keeps warm, W (practice). */
    private static final double LEAST_WATTS = 50;
    /** Standard deviation of the 13 riders over their mean. */
    static final double SPREAD = 0.4 / MEASURED;
    /** The least and the most of the 13 riders over their mean. */
    private static final Range PEOPLE_DIFFER = new Range(0.9 / MEASURED, 1, 2.4 / MEASURED);
    /** Where no temperature is forecast, °C (practice). */
    static final Range UNKNOWN = Range.within(20, 10);

    private final Double stated;
    private final double watts;

    /**
     * The rate of a rider on a ride.
     *
     * @param stated L/h, the rider's own; null where not known
     * @param watts  mean power of the ride, coasting included
     */
    SweatRate(Double stated, double watts) {
        this.stated = stated;
        this.watts = Math.max(LEAST_WATTS, watts);
    }

    /** L/h at a temperature, °C; null for one that is not known. The rider's own rate stands for the estimate at any temperature. */
    Range at(Double temperature) {
        if (stated != null) {
            return Range.exact(stated);
        }
        if (temperature == null) {
            return new Range(at(UNKNOWN.low()).low(), at(UNKNOWN.mid()).mid(), at(UNKNOWN.high()).high());
        }
        double still = Math.max(LEAST, MEASURED + PER_DEGREE * (temperature - WARM));
        return PEOPLE_DIFFER.times(still * watts / AT_WATTS);
    }
}
