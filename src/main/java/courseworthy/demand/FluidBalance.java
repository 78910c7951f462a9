package courseworthy.demand;

/**
 * How far drinking keeps up with sweat, piece by piece from the start. A rider drinks by thirst, which leaves a part unmet, until the loss
 * comes to 2 % of body mass, and from there on as much as is sweated. Above 2 % riders do worse in heat: blinded, at 31 °C, a time trial took
 * 1008 s instead of 903 at a loss of 3 % (Funnell and others 2019). In the cool at a pace of one's own that is disputed: no loss of time to
 * 4 % (Goulet 2011, Br. J. Sports Med. 45:1149).
 */
public final class FluidBalance {

    /** Share of body mass that may be lost. */
    public static final double ALLOWED = 0.02;
    /** A little under the 1.05 L/h that a stomach is shown to pass (Ryan and others 1989, Med. Sci. Sports Exerc. 21:51-58), of more nothing is known. */
    public static final double STOMACH = 1.0;
    /** What is carried for a puncture or a wrong turn on the way to the tap: 15 % more (practice). */
    public static final double RESERVE = 1.15;
    /**
     * Share of the sweat that thirst makes good: 0.43 in a race of two hours (0.6 of 1.4 L/h, Capitan and others) to about 0.8 over nine
     * (0.7 L/h drunk and 1.4 kg lost, Knechtle and others 2009, Clin. J. Sport Med. 19:415-420).
     */
    private static final double THIRST = 0.6;
    /** What riders drink in the cool, L/h, where they sweat as much (Rose and Peters 2010, Br. J. Sports Med. 44:430: 0.34 to 0.55). */
    private static final double IN_THE_COOL = 0.35;

    private final double allowed;
    private double behind;

    /** @param mass of the body, kg */
    public FluidBalance(double mass) {
        allowed = ALLOWED * mass;
    }

    /** Water to have for a piece in which so much is sweated, L: whatever a stomach passes, since the rest cools as well poured over the head. */
    double have(double sweat, double hours) {
        double water = wanted(sweat, hours);
        behind += sweat - water;
        return water;
    }

    /** Water to drink over a piece, L: never more than is sweated, nor than a stomach is shown to pass. */
    public double drink(double sweat, double hours) {
        double water = Math.min(STOMACH * hours, wanted(sweat, hours));
        behind += sweat - water;
        return water;
    }

    private double wanted(double sweat, double hours) {
        double thirst = Math.min(sweat, Math.max(THIRST * sweat, IN_THE_COOL * hours));
        return Math.max(thirst, sweat - Math.max(0, allowed - behind));
    }

    /** Loss so far, kg. */
    public double behind() {
        return behind;
    }
}
