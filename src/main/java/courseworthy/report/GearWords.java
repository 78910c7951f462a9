package courseworthy.report;

import courseworthy.ride.Range;
import courseworthy.worth.ClimbInGear;
import courseworthy.worth.DrivetrainResult;
import courseworthy.worth.GearChoice;
import courseworthy.worth.Sprint;
import courseworthy.worth.SpunOut;
import java.util.ArrayList;
import java.util.List;

/** Sentences on gears, the same for every output that is read by people. */
final class GearWords {

    private GearWords() {
    }

    /** What the figures go by. */
    static List<String> basis(GearChoice choice) {
        List<String> out = new ArrayList<>();
        out.add("Rear tyre " + Phrases.number(choice.width() * 1000, 0) + " mm. Cadence: " + Phrases.number(choice.lowest().mid(), 0)
                + " /min at the lowest, " + Phrases.number(choice.highest().mid(), 0) + " at the highest; gears are changed at "
                + Phrases.number(choice.usual(), 0) + ", half-way between.");
        return out;
    }

    /** The gear with ratio and development. */
    static String gear(courseworthy.worth.Gear gear, double circumference) {
        return gear.teeth() + " (" + Phrases.number(gear.ratio(), 3) + ", " + Phrases.number(gear.development(circumference), 2) + " m a turn)";
    }

    /** {@code 69 /min (50 to 95)}; where it would be more than anyone turns, that a harder gear serves. */
    static String turned(ClimbInGear climbed, GearChoice choice) {
        boolean spun = climbed.cadence().mid() > choice.highest().mid();
        return Figures.cadence(climbed.cadence()) + (climbed.walked() ? "; walked" : spun ? "; a harder gear serves" : "");
    }

    static List<String> atSpeed(DrivetrainResult geared) {
        List<String> out = new ArrayList<>();
        out.add("Spun out from " + Figures.speed(geared.topSpeed()) + ".");
        out.add("Alone: " + spinning(geared.alone()) + ".");
        out.add("In a group: " + spinning(geared.group()) + ".");
        if (geared.sprint() != null) {
            out.add("In the sprint: " + sprint(geared.sprint()) + ".");
        }
        return out;
    }

    private static String spinning(SpunOut spinning) {
        if (spinning.none()) {
            return "never spun out";
        }
        return distance(spinning.metres()) + " spun out, which costs " + Figures.time(spinning.cost());
    }

    private static String distance(Range metres) {
        return metres.high() < 1000 ? Figures.range(metres, 0, "m") : Figures.range(metres.times(0.001), 1, "km");
    }

    private static String sprint(Sprint sprint) {
        String gives = Figures.watts(sprint.power()) + " would hold " + Figures.speed(sprint.speed());
        return sprint.cost().high() < 0.05 ? gives + ", and the gear lets it"
                : gives + "; the gear costs " + Figures.range(sprint.cost(), 1, "s") + " over 200 m";
    }

    /** What is not pedalled in any gear, and what is pedalled too slowly. */
    static String besides(DrivetrainResult geared, GearChoice choice) {
        return "Coasting and braking " + Figures.time(geared.coasting()) + "; on foot " + Figures.time(geared.walking())
                + "; in the easiest gear below " + Phrases.number(choice.lowest().mid(), 0) + " /min " + Figures.time(geared.grinding()) + ".";
    }

    static String step(DrivetrainResult geared) {
        return Figures.percent(geared.drivetrain().largestStep());
    }

    static final String SPUN_OUT_MEANS = "Spun out: more power would be pedalled than the hardest gear takes at the highest cadence. The cost is"
            + " against a gear hard enough, on the same power.";
    static final String TORQUE_MEANS = "Speed and cadence are for the power that is pedalled there on the last lap, as tired as the hour finds"
            + " the rider; crank torque is the mean over a turn.";
}
