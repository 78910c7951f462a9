package courseworthy.course;

import java.util.List;

/**
 * A line on the ground: pieces that are never bridged. Distances are WGS84 geodesics, summed over pieces.
 *
 * @param pieces    the pieces in order, each with at least two points
 * @param elevation what is known of the elevation
 */
public record Track(List<TrackPiece> pieces, Elevation elevation) {

    /** Whether the elevation can be used. */
    public enum Elevation {
        /** Measured and cleaned. */
        KNOWN,
        /** Not in the file. */
        MISSING,
        /** Taken from elevation tiles in place of the file's, and cleaned. */
        FROM_TILES,
        /** In the file but not believable: all zero, constant, or mostly missing. */
        BOGUS
    }

    /**
     * One unbroken piece, as cleaned.
     *
     * @param lat       degrees
     * @param lon       degrees
     * @param distance  m from the start of the course, rising; the first of a piece equals the last of the piece before
     * @param elevation m, cleaned; NaN throughout where the elevation is neither {@link Elevation#KNOWN} nor {@link Elevation#FROM_TILES}
     */
    public record TrackPiece(double[] lat, double[] lon, double[] distance, double[] elevation) {
        public int size() {
            return distance.length;
        }
    }

    /** Length in m. */
    public double length() {
        TrackPiece last = pieces.get(pieces.size() - 1);
        return last.distance()[last.size() - 1];
    }
}
