package courseworthy.scout;

import courseworthy.course.GeoPoint;

/**
 * A piece of a course whose ground is not known for sure.
 *
 * @param from  m from the start
 * @param to    m from the start, above {@code from}
 * @param place where it begins; null where the course has no track
 * @param way   name or number of the way; empty where it is not known
 */
public record UnknownPiece(double from, double to, GeoPoint place, String way) {

    /** Length in m. */
    public double length() {
        return to - from;
    }
}
