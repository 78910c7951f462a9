package courseworthy.demand;

import courseworthy.ride.Range;

/**
 * A pressure to start from, and one not to go below, for one tyre.
 *
 * <p>Up to 37 mm on hard ground: the pressure at which the tyre drops by 15 % of its height, past which more pressure no longer pays
 * (Heine J, Bicycle Quarterly, "Optimizing your tire pressure for your weight", with chart points by Berto F; 45 kg on a wheel: 20 mm
 * 125 psi, 23 mm 100, 25 mm 85, 28 mm 68, 32 mm 53, 37 mm 41 to 45, from memory, good to 8 %). It is proportional to the wheel load and
 * falls with width to the power {@value #NARROW_EXPONENT} or so.
 *
 * <p>Wider, and off hard ground at any width: there is no published basis. The relation is carried on as a practice range that falls less
 * steeply with width and changes less with load, because a wide tyre at little pressure must still hold its bead and keep off the rim. Off
 * hard ground the range is wider. Rough ground never lowers the pressure: it raises the floor.
 *
 * <p>The floor is a share of the reference that grows with the roughness of the worst tenth (practice). Both stay under what tyres of a
 * width can be made to bear, which by equal pull in the casing is inverse to width: 5 bar at 28 mm is the hookless limit, ordinary hooked
 * tyres bear about half as much again. Marked limits lead; they are the business of rules, not of this figure.
 */
public final class TyrePressure {

    /** Roughness of the worst tenth where the ground is not known. */
    static final Range UNKNOWN_GROUND = new Range(1, 2.5, 4);

    /** Pa in a psi (exact by definition, to 13 digits) and in a bar. */
    private static final double PSI = 6894.757293168;
    private static final double BAR = 1e5;
    /** The point the relation goes through, kg, m, Pa, and its exponents: fitted to the measured pairs above (from memory) and by the casing's geometry. */
    private static final double REFERENCE_LOAD = 45;
    private static final double REFERENCE_WIDTH = 0.028;
    private static final double REFERENCE_PRESSURE = 69 * PSI;
    static final double NARROW_EXPONENT = 1.72;
    private static final double WIDE_EXPONENT = 1.5;
    /** Widest tyre of the measured relation, m. */
    private static final double MEASURED_TO = 0.037;
    /** From here on load counts for no less, m. */
    private static final double LOAD_COUNTS_LEAST_FROM = 0.057;
    private static final double LOAD_COUNTS_LEAST = 0.65;

    /** How far it may be off, where it rests on measurement (8 %, from memory) and where on practice; what casing and insert do (practice). */
    private static final double MEASURED_OFF = 0.08;
    private static final double PRACTICE_OFF = 0.12;
    private static final double LIGHT_CASING = 1.03;
    private static final double HEAVY_CASING = 0.95;
    private static final double WITH_INSERT = 0.95;
    private static final double INSERT_LOWERS_FLOOR = 0.10;

    /** The floor as a share of the reference, and what each step of roughness adds (practice, no source). */
    private static final double FLOOR_ON_SMOOTH = 0.62;
    private static final double FLOOR_PER_ROUGHNESS = 0.05;
    /** No tyre holds its bead for long below this, and none of the topic's values is lower, Pa. */
    private static final double LEAST_FLOOR = 0.8 * BAR;
    private static final double LEAST_REFERENCE = 0.9 * BAR;
    /** Times width, what ordinary tyres bear, Pa m: 8 bar at 25 mm. */
    private static final double BORNE = 8 * BAR * 0.025;
    private static final double REFERENCE_UNDER_BORNE = 0.95;

    private final double width;
    private final String casing;
    private final boolean insert;
    private final boolean offRoad;

    /**
     * A tyre.
     *
     * @param width   as mounted, m
     * @param casing  light, reinforced or heavy; anything else counts as reinforced
     * @param insert  whether there is an insert
     * @param offRoad whether any ground is not hard
     */
    TyrePressure(double width, String casing, boolean insert, boolean offRoad) {
        this.width = width;
        this.casing = casing;
        this.insert = insert;
        this.offRoad = offRoad;
    }

    /**
     * The pressure to start from, Pa.
     *
     * @param load on the wheel, kg
     */
    Range reference(Range load) {
        double off = measured(width, offRoad) ? MEASURED_OFF : PRACTICE_OFF;
        Range byLoad = Range.of(x -> reference(x[0]), load);
        return byLoad.plus(Range.within(0, off * byLoad.mid()));
    }

    /** The pressure not to go below, Pa, on ground of a roughness; its ends are those of load and roughness. */
    Range floor(Range load, Range roughness) {
        return Range.of(x -> Math.max(LEAST_FLOOR, floorShare(x[1]) * reference(x[0])), load, roughness);
    }

    private double floorShare(double roughness) {
        return FLOOR_ON_SMOOTH + FLOOR_PER_ROUGHNESS * roughness - (insert ? INSERT_LOWERS_FLOOR : 0);
    }

    /** The pressure to start from, Pa, at a load on the wheel, kg. */
    double reference(double load) {
        double counts = loadCounts();
        double factor = 1 - counts + counts * load / REFERENCE_LOAD;
        double wanted = atReferenceLoad(width) * factor * bySidewall();
        return Math.max(LEAST_REFERENCE, Math.min(REFERENCE_UNDER_BORNE * BORNE / width, wanted));
    }

    /** A heavy casing and an insert hold up the same sidewall: with both, one counts, so that a rear tyre with both is not left softer than the front. */
    private double bySidewall() {
        if ("heavy".equals(casing)) {
            return HEAVY_CASING;
        }
        return ("light".equals(casing) ? LIGHT_CASING : 1) * (insert ? WITH_INSERT : 1);
    }

    /** Whether the published relation holds for a tyre, or practice alone. */
    public static boolean measured(double width, boolean offRoad) {
        return width <= MEASURED_TO && !offRoad;
    }

    /** What a tyre of another width asks for, over what one of this width does; widths in m. */
    public static double byWidth(double width, double other) {
        return atReferenceLoad(other) / atReferenceLoad(width);
    }

    /** Pressure of a width under the reference load, Pa. */
    static double atReferenceLoad(double width) {
        double narrow = Math.min(width, MEASURED_TO);
        double measured = REFERENCE_PRESSURE * Math.pow(REFERENCE_WIDTH / narrow, NARROW_EXPONENT);
        return width <= MEASURED_TO ? measured : measured * Math.pow(MEASURED_TO / width, WIDE_EXPONENT);
    }

    private double loadCounts() {
        double part = (width - MEASURED_TO) / (LOAD_COUNTS_LEAST_FROM - MEASURED_TO);
        return 1 - (1 - LOAD_COUNTS_LEAST) * Math.max(0, Math.min(1, part));
    }
}
