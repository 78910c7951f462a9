package courseworthy.worth;

import java.util.List;

/** Which gear is ridden at a speed: the one whose cadence comes nearest the usual. */
final class GearShifting {

    private final double[] upTo;

    /**
     * @param gears         the easiest first
     * @param usual         cadence at which gears are changed, a minute
     * @param circumference of the wheel, m
     */
    GearShifting(List<Gear> gears, double usual, double circumference) {
        upTo = new double[gears.size() - 1];
        for (int i = 0; i < upTo.length; i++) {
            double easier = gears.get(i).development(circumference);
            double harder = gears.get(i + 1).development(circumference);
            // The speed at which two neighbouring gears miss the usual cadence by as much.
            upTo[i] = 2 * usual / 60 / (1 / easier + 1 / harder);
        }
    }

    /** The place of the gear in the list; speed in m/s. */
    int at(double speed) {
        int gear = 0;
        while (gear < upTo.length && speed > upTo[gear]) {
            gear++;
        }
        return gear;
    }
}
