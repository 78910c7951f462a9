package courseworthy.course;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicMask;

/**
 * Lengths on the WGS84 ellipsoid. The points of a track lie a few metres apart, where the arc is so short that the two radii of
 * curvature half-way along it give its length to well under 0.1 mm; longer or polar steps go to GeographicLib.
 */
public final class GeodesicDistance {

    /** WGS84: equatorial radius, m, and flattening (NGA.STND.0036, 2014). */
    private static final double A = 6_378_137;
    private static final double F = 1 / 298.257223563;
    private static final double E2 = F * (2 - F);

    /** Degrees of latitude and longitude within which a step is short: 0.004° of latitude is 440 m. */
    private static final double SHORT = 0.004;
    /** Beyond this latitude, degrees, meridians run together too fast. */
    private static final double POLAR = 80;

    private GeodesicDistance() {
    }

    /** The length of a geodesic between two places in degrees, m. */
    public static double metres(double lat1, double lon1, double lat2, double lon2) {
        double north = lat2 - lat1;
        double east = lon2 - lon1;
        return Math.abs(north) < SHORT && Math.abs(east) < SHORT && Math.abs(lat1) < POLAR
                ? shortStep(north, east, lat1 + north / 2)
                : Geodesic.WGS84.Inverse(lat1, lon1, lat2, lon2, GeodesicMask.DISTANCE).s12;
    }

    /**
     * By the radii of curvature in the meridian and in the prime vertical (Bomford G, Geodesy, 4th ed. 1980, mid-latitude formula; from
     * memory, and checked against GeographicLib).
     */
    private static double shortStep(double north, double east, double middle) {
        double sine = Math.sin(Math.toRadians(middle));
        double cosine = Math.sqrt(1 - sine * sine);
        double w2 = 1 - E2 * sine * sine;
        double vertical = A / Math.sqrt(w2);
        double meridian = vertical * (1 - E2) / w2;
        double y = Math.toRadians(north) * meridian;
        double x = Math.toRadians(east) * vertical * cosine;
        return Math.sqrt(x * x + y * y);
    }
}
