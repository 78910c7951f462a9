package courseworthy.worth;

import courseworthy.ride.Range;
import java.util.List;

/**
 * What rings and a cassette give on one course.
 *
 * @param drivetrain    rings and cassette
 * @param circumference of the wheel, m
 * @param climbed       the steep pieces in the easiest gear, those that are known
 * @param use           how long each gear is used, the easiest first; empty where not asked for
 * @param grinding      time in the easiest gear below the rider's lowest cadence, s
 * @param coasting      time without pedalling, s
 * @param walking       time on foot, s
 * @param hardest       what the hardest gear limits
 */
public record DrivetrainResult(Drivetrain drivetrain, double circumference, List<ClimbInGear> climbed, List<GearTime> use, double grinding,
        double coasting, double walking, HardestGear hardest) {

    public DrivetrainResult {
        climbed = List.copyOf(climbed);
        use = List.copyOf(use);
    }

    /**
     * What the hardest gear limits.
     *
     * @param topSpeed where it is spun out, m/s
     * @param alone    spun out alone
     * @param group    spun out in a group
     * @param sprint   the finishing sprint; null where there is none
     */
    public record HardestGear(Range topSpeed, SpunOut alone, SpunOut group, Sprint sprint) {
    }

    /**
     * How long a gear is used.
     *
     * @param gear    ring and sprocket
     * @param seconds over the whole event
     */
    public record GearTime(Gear gear, double seconds) {
    }
}
