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

    /** What bears either of two loads; what only one of them knows counts. */
    public BuildLoad orMore(BuildLoad other) {
        return new BuildLoad(more(rider, other.rider), more(system, other.system), more(ledge, other.ledge));
    }

    private static Double more(Double one, Double other) {
        return one == null ? other : other == null ? one : Double.valueOf(Math.max(one, other));
    }
}
