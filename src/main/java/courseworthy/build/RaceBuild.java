package courseworthy.build;

import courseworthy.ride.Range;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * One build for several days: its parts are chosen for all of them.
 *
 * @param build with its work, and with what is not met on the day that takes longest
 * @param saves what it saves on each day against the bike as it stands now, s; null where that cannot be computed
 * @param costs what it costs each day against the build that the day alone would have on the same bike, s, never below 0; null likewise
 */
public record RaceBuild(Build build, List<Range> saves, List<Range> costs) {

    public RaceBuild {
        saves = Collections.unmodifiableList(new ArrayList<>(saves));
        costs = Collections.unmodifiableList(new ArrayList<>(costs));
    }

    /** Over all days, s; null where it cannot be computed on one of them. */
    public Range saved() {
        return sum(saves);
    }

    /** Over all days, s; null where it cannot be computed on one of them. */
    public Range cost() {
        return sum(costs);
    }

    private static Range sum(List<Range> of) {
        Range out = of.isEmpty() ? null : Range.exact(0);
        for (Range each : of) {
            out = out == null || each == null ? null : out.plus(each);
        }
        return out;
    }
}
