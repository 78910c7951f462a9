package courseworthy.ride;

/**
 * Turns of a trail that are sharper than its track can show. A receiver's points lie some metres apart and off, so that a right angle of two
 * metres' radius looks like a bend of ten. Where the way turns at one place rather than along a curve, the turn is taken for as sharp as
 * trails are built: turn radius 3 to 8 ft and tread 1 to 3 ft on the developed and moderately developed trails of the Bicycle Design
 * Parameters, Forest Service Handbook 2309.18, section 23.13 (2008, from memory). That trails of technical grade 1 and above turn so, and
 * those of grade 0 wide, is how the grades are worded (OpenStreetMap {@code mtb:scale}, from memory).
 */
public final class TrailCorner {

    /** Radius of the inner edge, m, from sharp to wide. */
    public static final Range INSIDE = new Range(0.9, 1.5, 2.4);
    /** Width of the tread that a rider has to cut the corner with, m. */
    public static final Range TREAD = new Range(0.3, 0.55, 0.9);
    /** From this technical grade on. */
    private static final double GRADE = 1;
    private static final double ROUNDING = 1e-9;
    /** Less of a turn may be the receiver's error, radians: points that are 1 m off make 0.2 of two chords of 10 m (standard deviation). */
    private static final double LEAST = Math.toRadians(30);
    /** A turn has a place of its own where two steps away the way turns the same way by at most this share of it (judgement, no source). */
    private static final double ALONE = 0.5;

    private TrailCorner() {
    }

    /** Whether a trail is graded, and hard enough for turns sharper than a track shows, at a place so many grades harder. */
    static boolean on(Double mtbScale, double harder) {
        return mtbScale != null && mtbScale + harder >= GRADE - ROUNDING;
    }

    /** Whether a step turns at one place, given by how much the way heads otherwise after each step than before it, radians, signed. */
    static boolean at(double[] turned, int step) {
        double turn = Math.abs(turned[step]);
        return turn >= LEAST && turn >= sameWay(turned, step, -1) && turn > sameWay(turned, step, 1)
                && sameWay(turned, step, -2) <= ALONE * turn && sameWay(turned, step, 2) <= ALONE * turn;
    }

    private static double sameWay(double[] turned, int step, int away) {
        int other = step + away;
        return other < 0 || other >= turned.length ? 0 : Math.signum(turned[step]) * turned[other];
    }

    /**
     * How much of the tread's width goes into the radius of the widest line through a turn: touching its outer edge before and after and its
     * inner edge at the apex, that radius is the inner one plus the width times this (plane geometry).
     *
     * @param turn radians, above 0
     */
    static double cut(double turn) {
        return 1 / (1 - Math.cos(0.5 * turn));
    }
}
