package courseworthy.fit;

import courseworthy.units.RuleValue;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;

/**
 * Whether fork and shock fit the frame, and what their lengths do to it. Every question is total: whatever is missing makes it
 * unknown, with what to measure. Used by the rules of fit and by the search for a build alike. Sizes are in m, masses in kg, angles in degrees.
 */
public final class SuspensionFit {

    private SuspensionFit() {
    }

    /** In the headset that is listed, else in the head tube as the bike says. @param headset null where none is listed */
    public static FitResult steerer(Part fork, Part headset, Part bike) {
        return FitComparison.label(fork, headset == null ? bike : headset, PartDetail.STEERER);
    }

    public static FitResult headset(Part headset, Part bike) {
        return FitComparison.label(headset, bike, PartDetail.HEADSET_FIT);
    }

    public static FitResult raceOnTheFork(Part race, Part fork) {
        return FitComparison.same(race, fork, PartDetail.RACE_SEAT);
    }

    public static FitResult raceOfTheHeadset(Part race, Part headset) {
        return FitComparison.label(race, headset, PartDetail.LOWER_BEARING);
    }

    /** What is worked from the bar, and by what; a fork or shock that names no remote asks for none. @param remote null for none */
    public static FitResult lockoutRemote(Part worked, Part remote) {
        return RemoteFit.worked(worked, remote);
    }

    public static FitResult forkTravel(Part fork, Part bike) {
        Double travel = fork.number(PartDetail.TRAVEL);
        if (travel == null) {
            return FitResult.unknown("find the travel of " + fork);
        }
        FitResult fit = FitComparison.within(travel, bike.number(PartDetail.LEAST_FORK_TRAVEL), bike.number(PartDetail.MOST_FORK_TRAVEL), "the frame's range of travel");
        return fit.and(FitComparison.known(bike, PartDetail.MOST_FORK_TRAVEL, "find the fork travel that " + bike + " permits"));
    }

    /** The frame's range of fork lengths; within it, how the head angle changes. */
    public static FitResult forkLength(Part fork, Part bike) {
        Double length = fork.number(PartDetail.LENGTH);
        if (length == null) {
            return FitResult.unknown("measure " + fork + " from axle to crown");
        }
        FitResult range = FitComparison.within(length, bike.number(PartDetail.LEAST_FORK_LENGTH), bike.number(PartDetail.MOST_FORK_LENGTH), "the frame's range of length")
                .and(FitComparison.known(bike, PartDetail.MOST_FORK_LENGTH, "find the fork length that " + bike + " permits"));
        Double change = headAngleChange(fork, bike);
        if (!range.fits() || change == null || Math.abs(change) < 0.05) {
            return range;
        }
        return FitResult.mind("head angle " + FitComparison.oneDecimal(Math.abs(change)) + " deg " + (change < 0 ? "slacker" : "steeper") + " than the frame states"
                + raised(fork, bike));
    }

    /** What a longer fork does to the height of the bottom bracket, in words; empty where it is under a millimetre or not known. */
    private static String raised(Part fork, Part bike) {
        Double rise = bottomBracketRise(fork, bike);
        return rise == null || Math.abs(rise) < 0.001 ? "" : ", bottom bracket " + FitComparison.mm(Math.abs(rise)) + (rise > 0 ? " higher" : " lower");
    }

    /**
     * How much higher the bottom bracket comes by a longer fork, m: the bike turns about the rear axle, so by the change of head angle times
     * the chainstay, near enough level. Null where a length or an angle is not known.
     */
    static Double bottomBracketRise(Part fork, Part bike) {
        Double change = headAngleChange(fork, bike);
        Double chainstay = bike.number(PartDetail.CHAINSTAY);
        return change == null || chainstay == null ? null : Double.valueOf(-Math.toRadians(change) * chainstay);
    }

    /**
     * How the head angle differs from the frame's stated one, degrees, negative where slacker: a longer fork turns the bike about the
     * rear axle, by asin(dL sin(head angle) / wheelbase). Null where a length or an angle is not known.
     */
    public static Double headAngleChange(Part fork, Part bike) {
        Double length = fork.number(PartDetail.LENGTH);
        Double design = bike.number(PartDetail.DESIGN_FORK_LENGTH);
        Double angle = bike.number(PartDetail.HEAD_ANGLE);
        Double wheelbase = bike.number(PartDetail.WHEELBASE);
        if (length == null || design == null || angle == null || wheelbase == null) {
            return null;
        }
        return -Math.toDegrees(Math.asin((length - design) * Math.sin(Math.toRadians(angle)) / wheelbase));
    }

    /**
     * How far the front wheel touches the ground behind where the steerer's line meets it, m: (R cos(head angle) - offset) / sin(head angle), by plane
     * trigonometry, the bike standing unladen. Null where an angle or a length is not known.
     *
     * @param headAngle with the fork, degrees
     * @param wheel     the front wheel
     * @param tyre      the tyre on it, taken to be as high as it is wide (common practice, no source)
     */
    public static Double trail(Part fork, Double headAngle, Part wheel, Part tyre) {
        Double offset = fork == null ? null : fork.number(PartDetail.FORK_OFFSET);
        Double bead = wheel == null ? null : wheel.number(PartDetail.BEAD_SEAT);
        Double width = tyre == null ? null : tyre.number(tyre.has(PartDetail.MEASURED_WIDTH) ? PartDetail.MEASURED_WIDTH : PartDetail.WIDTH);
        if (offset == null || headAngle == null || bead == null || width == null) {
            return null;
        }
        double angle = Math.toRadians(headAngle);
        return ((bead / 2 + width) * Math.cos(angle) - offset) / Math.sin(angle);
    }

    public static FitResult travelInBalance(Part fork, Part bike) {
        Double front = fork.number(PartDetail.TRAVEL);
        Double rear = bike.number(PartDetail.REAR_TRAVEL);
        if (front == null || rear == null || rear == 0 || front == 0) {
            return FitResult.FITS;
        }
        double apart = Math.abs(front - rear);
        return apart <= RuleValue.TRAVEL_DIFFERENCE.inBase() + 1e-9 ? FitResult.FITS : FitResult.not("front and rear travel are " + FitComparison.mm(apart) + " apart");
    }

    public static FitResult shock(Part shock, Part bike) {
        return FitComparison.same(shock, bike, PartDetail.SHOCK_LENGTH).and(FitComparison.same(shock, bike, PartDetail.SHOCK_STROKE)).and(FitComparison.label(shock, bike, PartDetail.SHOCK_MOUNT));
    }
}
