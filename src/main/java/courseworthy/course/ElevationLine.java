package courseworthy.course;

/**
 * The elevation along a course at even steps: cleaned and smoothed where there is a track, drawn from the stretches' ascent and descent
 * where there is none (then short ramps are not in it).
 *
 * @param distance  m from the start, rising; equal neighbours mark a break between pieces that is not ridden
 * @param elevation m above sea level; above the start where {@code absolute} is false
 * @param measured  true where it comes from a track
 * @param absolute  whether the height above sea level is known
 */
public record ElevationLine(double[] distance, double[] elevation, boolean measured, boolean absolute) {

    public int size() {
        return distance.length;
    }
}
