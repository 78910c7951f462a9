package courseworthy.demand;

import courseworthy.course.Climbing;
import courseworthy.course.ElevationLine;
import courseworthy.course.Interval;
import courseworthy.demand.Climbs.Climb;
import courseworthy.ride.Range;
import java.util.List;
import java.util.function.Function;

/** How much the course climbs, and on which climbs. */
final class ClimbingDemands {

    private final SurveyAssumptions on;
    private final Climbing lap;
    private final ElevationLine line;
    private final List<Climb> climbs;

    ClimbingDemands(SurveyAssumptions on) {
        this.on = on;
        lap = on.course.climbing();
        line = on.course.line();
        climbs = Climbs.of(line);
    }

    /** Climbing over so many laps, m; null where not known. */
    Range ascent(double laps) {
        return lap == null ? null : over(laps, lap.ascent(), lap.ascentRange());
    }

    /** Descending over so many laps, m; null where not known. */
    Range descent(double laps) {
        return lap == null ? null : over(laps, lap.descent(), lap.descentRange());
    }

    private static Range over(double laps, double oneLap, Interval measured) {
        Range range = measured == null ? SurveyAssumptions.CLIMBING_OFF.times(oneLap) : new Range(measured.low(), oneLap, measured.high());
        return range.times(laps);
    }

    /** Above sea level, m; null where not known. */
    Double highestPoint() {
        if (!on.heightKnown()) {
            return null;
        }
        double highest = Double.NEGATIVE_INFINITY;
        for (double elevation : line.elevation()) {
            highest = Math.max(highest, elevation);
        }
        return line.absolute() ? highest : on.startHeight() + highest - line.elevation()[0];
    }

    /** The climbs of one lap, in order; none where no elevation is known. */
    List<Climb> climbs() {
        return climbs;
    }

    /** How many climbs there are on so many laps; null where no elevation is known. */
    Integer climbs(int laps) {
        return line == null ? null : Integer.valueOf(climbs.size() * laps);
    }

    /** A figure of the longest climb, 0 where there is no climb; null where no elevation is known. */
    Double longest(Function<Climb, Double> figure) {
        Climb longest = Climbs.longest(climbs);
        return line == null ? null : longest == null ? Double.valueOf(0) : figure.apply(longest);
    }

    /** A figure of the last long climb; null where there is none. */
    Double lastLong(Function<Climb, Double> figure) {
        Climb last = Climbs.lastLong(climbs);
        return last == null ? null : figure.apply(last);
    }

    /** The last long climb; null where there is none. */
    Climb lastLong() {
        return Climbs.lastLong(climbs);
    }
}
