package courseworthy.fit;

/**
 * What a build must bear; null where it is not known.
 *
 * @param rider  rider without kit, kg
 * @param system rider, kit, water and bike, kg
 * @param ledge  the highest ledge that must be ridden, m
 */
public record BuildLoad(Double rider, Double system, Double ledge) {

    public static final BuildLoad UNKNOWN = new BuildLoad(null, null, null);
}
