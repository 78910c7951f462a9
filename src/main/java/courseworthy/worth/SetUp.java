package courseworthy.worth;

import courseworthy.demand.EstimatedRide.Kind;
import courseworthy.ride.Range;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.List;

/**
 * One set-up beside the recommended one.
 *
 * @param written   as asked for; for the recommended its name
 * @param changes   what is decided otherwise than recommended, the asked for first
 * @param refused   what was asked for and cannot be, each with why
 * @param effect    what its parts do to the ride
 * @param returned  time it returns over the ride against the recommended, s; 0 for that one. Another bike is ridden anew
 * @param riding    riding time, s, at the likely value of all that is uncertain
 * @param work      work at the crank over the ride, J
 * @param gears     what its gears give
 * @param breakEven against the recommended; null where no stop hangs on the difference
 * @param uncounted topics that differ and that no figure here counts
 */
public record SetUp(String written, List<SetUpDifference> changes, List<RefusedValue> refused, Effect effect, Range returned, double riding,
        double work, Gears gears, BreakEven breakEven, List<String> uncounted) {

    public SetUp {
        changes = List.copyOf(changes);
        refused = List.copyOf(refused);
        uncounted = List.copyOf(uncounted);
    }

    /** Whether all that was asked for is so. */
    public boolean asAsked() {
        return refused.isEmpty();
    }

    /** The kind of bike that was asked for and cannot be; null where none was, or it is the one shown. */
    public RefusedValue refusedBike() {
        return refused.stream().filter(each -> each.topic() == Topics.BIKE).findFirst().orElse(null);
    }

    /**
     * What its gears give; null where not known.
     *
     * @param climbed  on the last long climb in its easiest gear
     * @param steepest on the steepest 100 m in its easiest gear
     * @param topSpeed where its hardest gear is spun out, m/s
     */
    public record Gears(ClimbInGear climbed, ClimbInGear steepest, Range topSpeed) {

        static Gears of(WorthCalculator worths) {
            return new Gears(worths.climbed(Kind.LAST_CLIMB), worths.climbed(Kind.HUNDRED), worths.topSpeed());
        }
    }

    /**
     * A topic decided otherwise.
     *
     * @param asked whether it was asked for; else it follows from what was
     */
    public record SetUpDifference(Topic topic, String recommended, String here, boolean asked) {
    }

    /**
     * A value that was asked for and did not prevail.
     *
     * @param by   ids of the rules that stand against it
     * @param here what is decided instead
     */
    public record RefusedValue(Topic topic, String asked, String here, List<String> by) {
    }
}
