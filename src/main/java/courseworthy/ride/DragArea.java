package courseworthy.ride;

/**
 * Drag area (CdA) by kind of bike, body mass and company. Published anchors: upright 0.299, dropped 0.276, aero 0.262 m² (Grappe,
 * Candau, Belli, Rouillon 1997, Ergonomics 40:1299-1311); mountain-bike rider seated 0.357 ± 0.023 m² (Bertucci, Rogier, Reiser 2013,
 * J. Sports Sci. 31:1606-1613, from memory); on the hoods 0.400 m² (Gross, Kyle, Malewicki 1983, Sci. Am. 249(6)).
 */
public final class DragArea {

    /** Body mass the drag areas of {@link BikeKind} are for, kg. */
    private static final double REFERENCE_MASS = 75;
    /** Frontal area grows with mass to this power (Heil 2001, Eur. J. Appl. Physiol. 85:358-366, from memory). */
    private static final double MASS_EXPONENT = 0.762;
    /** Share of drag that is the body's (published 0.60 to 0.82). */
    private static final double BODY_SHARE = 0.7;
    /**
     * Drag saved while riding in a group, as a share. Oxygen cost fell 18 % at 32 km/h and 27 % at 40 km/h behind one rider and 39 %
     * inside a group (McCole, Claney, Conte, Anderson, Hagberg 1990, J. Appl. Physiol. 68:748-753, from memory); turns at the front
     * and loose gravel, where gaps are kept, take some of it back (common practice, no source).
     */
    public static final Range SAVED_IN_A_GROUP = new Range(0.15, 0.30, 0.40);

    private DragArea() {
    }

    /** Drag area alone, m². */
    public static Range alone(BikeKind kind, double riderMass) {
        double body = Math.pow(riderMass / REFERENCE_MASS, MASS_EXPONENT);
        return kind.dragArea().times(1 - BODY_SHARE + BODY_SHARE * body);
    }

    /** Drag area over a ride of which a share, 0 to 1, is ridden in a group, m². */
    public static Range over(Range alone, double groupShare) {
        return new Range(alone.low() * (1 - groupShare * SAVED_IN_A_GROUP.high()),
                alone.mid() * (1 - groupShare * SAVED_IN_A_GROUP.mid()),
                alone.high() * (1 - groupShare * SAVED_IN_A_GROUP.low()));
    }

    /** Drag area while in the group, m². */
    public static Range inTheGroup(Range alone) {
        return over(alone, 1);
    }
}
