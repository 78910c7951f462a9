package courseworthy.event;

import courseworthy.problem.Spelling;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.util.List;

/** Directions that the wind comes from, as points of the compass or as an angle clockwise from north. */
public final class WindDirection {

    /** The compass, clockwise from north in steps of 22.5 degrees. */
    public static final List<String> COMPASS = List.of("N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE", "S", "SSW", "SW", "WSW", "W",
            "WNW", "NW", "NNW");

    private static final double POINT = 22.5;
    private static final String EXPECTED = "a direction the wind comes from, such as SW or 225 deg";

    private WindDirection() {
    }

    /** The direction under a key in degrees; null where there is none. */
    static Double read(FieldReader from, String key) {
        Node.Scalar value = from.scalar(key, EXPECTED);
        if (value == null) {
            return null;
        }
        int point = COMPASS.indexOf(value.text());
        if (point >= 0) {
            return point * POINT;
        }
        try {
            double degrees = Amount.parse(value.text(), Dimension.ANGLE).inBase();
            if (degrees >= 0 && degrees <= 360) {
                return degrees % 360;
            }
        } catch (Amount.NotAnAmount e) {
            // Neither a point of the compass nor an angle.
        }
        from.fault(key, value.describe(), EXPECTED, Spelling.didYouMean(value.text(), COMPASS));
        return null;
    }

    /** The nearest point of the compass to a direction in degrees. */
    public static String word(double degrees) {
        return COMPASS.get((int) Math.round(degrees / POINT) % COMPASS.size());
    }
}
