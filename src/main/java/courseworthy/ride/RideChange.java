package courseworthy.ride;

import java.util.Arrays;
import java.util.List;

/**
 * A change to bike, load, position or grip, as the ride feels it. Start from {@link #NONE} and name what differs.
 *
 * @param mass       added, kg; negative where taken off
 * @param dragArea   added, m²
 * @param dragFactor factor on the drag area, before what is added
 * @param dragOn     share of each step of a lap on which the drag changes, 0 to 1; empty for all of it
 * @param rolling    factor on the rolling resistance coefficient: one for all stretches, or one for each
 * @param gearing    the gears there are; null where they do not limit the ride
 * @param dryPace    whether descents and bends are taken as fast as on dry ground, however wet it is
 */
public record RideChange(double mass, double dragArea, double dragFactor, double[] dragOn, List<Double> rolling, Gearing gearing, boolean dryPace) {

    private static final double[] ALL_OF_IT = {};

    /** No change: all gears, nothing added. */
    public static final RideChange NONE = new RideChange(0, 0, 1, ALL_OF_IT, List.of(1.0), null, false);

    public RideChange {
        rolling = List.copyOf(rolling);
        if (rolling.isEmpty() || !(dragFactor > 0)) {
            throw new IllegalArgumentException(rolling + " " + dragFactor);
        }
    }

    public RideChange withMass(double kilograms) {
        return new RideChange(kilograms, dragArea, dragFactor, dragOn, rolling, gearing, dryPace);
    }

    public RideChange withDragArea(double squareMetres) {
        return new RideChange(mass, squareMetres, dragFactor, dragOn, rolling, gearing, dryPace);
    }

    public RideChange withDragFactor(double factor) {
        return new RideChange(mass, dragArea, factor, dragOn, rolling, gearing, dryPace);
    }

    /** The drag changes on these shares of the steps of {@link RideEstimate#way()} alone. */
    public RideChange withDragOn(double[] shares) {
        return new RideChange(mass, dragArea, dragFactor, shares.clone(), rolling, gearing, dryPace);
    }

    public RideChange withRolling(double factor) {
        return withRolling(List.of(factor));
    }

    /** A factor for each stretch of the course. */
    public RideChange withRolling(List<Double> factors) {
        return new RideChange(mass, dragArea, dragFactor, dragOn, factors, gearing, dryPace);
    }

    public RideChange withGearing(Gearing gears) {
        return new RideChange(mass, dragArea, dragFactor, dragOn, rolling, gears, dryPace);
    }

    /** Descents and bends taken as fast as on dry ground: all that grip can give back in the wet. */
    public RideChange withDryPace() {
        return new RideChange(mass, dragArea, dragFactor, dragOn, rolling, gearing, true);
    }

    /** Factor on the rolling resistance coefficient of a stretch. */
    double rollingOn(int stretch) {
        return rolling.get(rolling.size() == 1 ? 0 : stretch);
    }

    /** Drag area on a step of which a share is ridden changed. */
    double dragArea(double unchanged, double share) {
        return unchanged + share * (unchanged * (dragFactor - 1) + dragArea);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof RideChange c && mass == c.mass && dragArea == c.dragArea && dragFactor == c.dragFactor
                && Arrays.equals(dragOn, c.dragOn) && rolling.equals(c.rolling) && dryPace == c.dryPace
                && (gearing == null ? c.gearing == null : gearing.equals(c.gearing));
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(dragOn) + 31 * rolling.hashCode() + Double.hashCode(mass + 7 * dragArea + 11 * dragFactor);
    }
}
