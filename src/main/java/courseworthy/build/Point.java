package courseworthy.build;

/**
 * A place on a bike in its middle plane, seen from the right, the bike upright on level ground.
 *
 * @param forward m in front of the bottom bracket; negative behind it
 * @param up      m above the bottom bracket; negative below it
 */
public record Point(double forward, double up) {

    static final Point BOTTOM_BRACKET = new Point(0, 0);

    /** A step of a length, m, in a direction that rises by an angle, degrees, from straight ahead. */
    Point step(double length, double rising) {
        return new Point(forward + length * Math.cos(Math.toRadians(rising)), up + length * Math.sin(Math.toRadians(rising)));
    }

    /** A step ahead and up, m. */
    Point plus(double ahead, double higher) {
        return new Point(forward + ahead, up + higher);
    }

    /** The whole bike turned about the bottom bracket by an angle, degrees; the front rises where it is positive. */
    Point turned(double degrees) {
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = Math.sin(Math.toRadians(degrees));
        return new Point(forward * cos - up * sin, forward * sin + up * cos);
    }

    /** Distance, m. */
    double to(Point other) {
        return Math.hypot(forward - other.forward, up - other.up);
    }
}
