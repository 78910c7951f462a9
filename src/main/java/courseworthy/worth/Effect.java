package courseworthy.worth;

import courseworthy.ride.Range;

/**
 * What a change of parts does to the ride, each independent of the others.
 *
 * @param mass    added, kg
 * @param drag    added, as a share of the drag area
 * @param rolling added, as a share of the rolling resistance
 */
public record Effect(Range mass, Range drag, Range rolling) {

    /** No difference (exact). */
    private static final Range NOTHING = Range.exact(0);

    /** No change. */
    public static final Effect NONE = new Effect(NOTHING, NOTHING, NOTHING);

    static Effect mass(double low, double mid, double high) {
        return new Effect(new Range(low, mid, high), NOTHING, NOTHING);
    }

    static Effect drag(double low, double mid, double high) {
        return new Effect(NOTHING, new Range(low, mid, high), NOTHING);
    }

    static Effect rolling(double low, double mid, double high) {
        return new Effect(NOTHING, NOTHING, Range.around(low, mid, high));
    }

    /** Both, independent of each other. */
    public Effect and(Effect other) {
        return new Effect(mass.plus(other.mass), drag.plus(other.drag), rolling.plus(other.rolling));
    }

    /** Both, of the same make, so that one is off as the other is. */
    public Effect alike(Effect other) {
        return new Effect(summed(mass, other.mass), summed(drag, other.drag), summed(rolling, other.rolling));
    }

    private static Range summed(Range a, Range b) {
        return new Range(a.low() + b.low(), a.mid() + b.mid(), a.high() + b.high());
    }

    /** So many times, one hanging on the other; below 0 the other way round. */
    public Effect times(double factor) {
        return new Effect(scaled(mass, factor), scaled(drag, factor), scaled(rolling, factor));
    }

    private static Range scaled(Range range, double factor) {
        // Adding 0 makes a negative zero a plain one.
        return Range.around(range.low() * factor + 0.0, range.mid() * factor + 0.0, range.high() * factor + 0.0);
    }

    public boolean none() {
        // Not by the record's own equals: generated code costs every run some milliseconds the first time it is used.
        return mass.equals(NOTHING) && drag.equals(NOTHING) && rolling.equals(NOTHING);
    }
}
