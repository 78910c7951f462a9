package courseworthy.course.extract;

/**
 * Turns the coordinates of a block of a PBF file into units of 10<sup>-7</sup> degree, in which the map itself keeps them (1.1 cm of latitude).
 *
 * <p>Source: OpenStreetMap wiki, "PBF Format": latitude = 10<sup>-9</sup> (lat_offset + granularity * lat), and longitude alike.
 */
final class Coordinates {

    /** Nanodegrees in a unit of 10<sup>-7</sup> degree. */
    static final int E7 = 100;

    private static final long QUARTER_CIRCLE = 90_000_000_000L;

    private long granularity = E7;
    private long latitudeOffset;
    private long longitudeOffset;
    private long leastLatitude;
    private long mostLatitude;
    private long leastLongitude;
    private long mostLongitude;
    /** Whether raw coordinates are in units of 10<sup>-7</sup> degree already, as in nearly all files. */
    private boolean inUnits = true;

    /** Takes the scale of a block, nanodegrees. */
    void scale(long granularity, long latitudeOffset, long longitudeOffset) {
        if (granularity < 1 || granularity > Integer.MAX_VALUE || isFar(latitudeOffset) || isFar(longitudeOffset)) {
            throw RefusedExtract.damaged("a scale of coordinates that is not of the earth");
        }
        this.granularity = granularity;
        this.latitudeOffset = latitudeOffset;
        this.longitudeOffset = longitudeOffset;
        inUnits = granularity == E7 && latitudeOffset == 0 && longitudeOffset == 0;
        leastLatitude = -Math.floorDiv(QUARTER_CIRCLE + latitudeOffset, granularity);
        mostLatitude = Math.floorDiv(QUARTER_CIRCLE - latitudeOffset, granularity);
        leastLongitude = -Math.floorDiv(2 * QUARTER_CIRCLE + longitudeOffset, granularity);
        mostLongitude = Math.floorDiv(2 * QUARTER_CIRCLE - longitudeOffset, granularity);
    }

    private static boolean isFar(long offset) {
        return offset < -4 * QUARTER_CIRCLE || offset > 4 * QUARTER_CIRCLE;
    }

    int latitude(long raw) {
        if (raw < leastLatitude || raw > mostLatitude) {
            throw outside();
        }
        return inUnits ? (int) raw : e7(latitudeOffset + raw * granularity);
    }

    int longitude(long raw) {
        if (raw < leastLongitude || raw > mostLongitude) {
            throw outside();
        }
        return inUnits ? (int) raw : e7(longitudeOffset + raw * granularity);
    }

    private static int e7(long nano) {
        return (int) ((nano < 0 ? nano - E7 / 2 : nano + E7 / 2) / E7);
    }

    private static RefusedExtract outside() {
        return RefusedExtract.damaged("a node outside the earth's degrees");
    }
}
