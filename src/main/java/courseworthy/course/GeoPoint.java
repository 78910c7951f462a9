package courseworthy.course;

/**
 * A place on the earth, WGS84.
 *
 * @param latitude  degrees, north positive
 * @param longitude degrees, east positive
 */
public record GeoPoint(double latitude, double longitude) {
}
