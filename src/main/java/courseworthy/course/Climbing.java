package courseworthy.course;

/**
 * The metres climbed and descended on one lap.
 *
 * @param ascent       m climbed, by the stated method
 * @param descent      m descended
 * @param ascentRange  between what the metres climbed lie by other smoothings of the track; null where they are written, not measured
 * @param descentRange the same of the metres descended
 */
public record Climbing(double ascent, double descent, Interval ascentRange, Interval descentRange) {

    /** Climbing as written. */
    public static Climbing written(double ascent, double descent) {
        return new Climbing(ascent, descent, null, null);
    }

    /** Both together, m. */
    public double total() {
        return ascent + descent;
    }
}
