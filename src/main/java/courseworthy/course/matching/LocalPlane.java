package courseworthy.course.matching;

/**
 * Metres east and north in the surroundings of a place, on the plane that touches the WGS84 ellipsoid there: over the few hundred metres
 * of a search the error is less than a centimetre.
 */
final class LocalPlane {

    /** WGS84: equatorial radius, m, and square of the eccentricity (NGA.STND.0036, 2014). */
    private static final double A = 6_378_137;
    private static final double E2 = 0.00669437999014;
    /** Meridians are taken to run no closer than at this latitude, degrees: no way is ridden beyond. */
    private static final double POLAR = 89;

    private LocalPlane() {
    }

    /** Metres in a degree of latitude. */
    static double northScale(double latitude) {
        double sine = Math.sin(Math.toRadians(latitude));
        double w2 = 1 - E2 * sine * sine;
        return Math.toRadians(A * (1 - E2) / (w2 * Math.sqrt(w2)));
    }

    /** Metres in a degree of longitude. */
    static double eastScale(double latitude) {
        double phi = Math.toRadians(Math.min(POLAR, Math.abs(latitude)));
        double sine = Math.sin(phi);
        return Math.toRadians(A / Math.sqrt(1 - E2 * sine * sine) * Math.cos(phi));
    }

    /** The short way round from one longitude to another, degrees. */
    static double east(double from, double to) {
        double degrees = to - from;
        return degrees > 180 ? degrees - 360 : degrees < -180 ? degrees + 360 : degrees;
    }

    /** Length of a short line, m. */
    static double metres(double lat1, double lon1, double lat2, double lon2) {
        double middle = (lat1 + lat2) / 2;
        double x = east(lon1, lon2) * eastScale(middle);
        double y = (lat2 - lat1) * northScale(middle);
        return Math.sqrt(x * x + y * y);
    }
}
