package courseworthy.demand;

import courseworthy.course.Course;
import courseworthy.course.Line;
import courseworthy.course.Stretch;
import courseworthy.ride.Range;
import java.util.List;

/**
 * The steepest gradient sustained over a distance. From a measured line it is found by sliding a window over it, never across a break. A
 * drawn line knows only the means of stretches: then what a stretch says is its steepest, or else a factor from practice, widens it.
 */
final class Steepness {

    /** By how much the heights of the two ends may be off against each other, m (barometers and receivers; common practice). */
    private static final double HEIGHT_ERROR = 0.7;
    /** Written as steepest: somewhere between the mean and it, as a part of the way, by 100 m, 500 m, 1 km (practice). */
    private static final double[] WINDOWS = {100, 500, 1000};
    private static final Range[] TOWARDS_STEEPEST = {new Range(0.5, 0.85, 1), new Range(0.2, 0.5, 0.8), new Range(0.1, 0.35, 0.65)};
    /** Where no stretch says its steepest: times the steepest mean of a stretch (practice). */
    private static final Range[] OVER_MEAN = {new Range(1, 1.4, 2.0), new Range(1, 1.15, 1.5), new Range(1, 1.08, 1.35)};

    /** A stretch that drops more than this many times its rise is a descent, and what it says is its steepest is downhill (practice). */
    private static final double DESCENT = 2;

    private static final double NOT_FOUND = Double.NEGATIVE_INFINITY;

    private final Line line;
    private final List<Stretch> stretches;
    private final double written;

    Steepness(Course course) {
        line = course.line();
        stretches = course.stretches();
        double steepest = 0;
        for (Stretch stretch : stretches) {
            steepest = Math.max(steepest, uphill(stretch));
        }
        written = steepest;
    }

    /** What a stretch says is its steepest, or 0 where it says nothing or is a descent. */
    private static double uphill(Stretch stretch) {
        boolean climbs = stretch.rise() != null && stretch.rise() > 0
                && (stretch.drop() == null || stretch.drop() <= DESCENT * stretch.rise());
        return climbs && stretch.steepest() != null ? stretch.steepest() : 0;
    }

    /**
     * A gradient and where it is.
     *
     * @param gradient rise over length
     * @param middle   m from the start of the lap
     */
    record Steepest(Range gradient, double middle) {
    }

    /** Over 20 m, or null where neither measured nor written. */
    Range ramp() {
        if (line != null && line.measured()) {
            Steepest over = over(20);
            return over == null ? null : over.gradient;
        }
        return written > 0 ? Range.exact(written) : null;
    }

    /** Over 100, 500 or 1000 m; null where no elevation is known or the course is shorter. */
    Steepest over(double window) {
        if (line == null) {
            return null;
        }
        double[] best = slide(window);
        if (best == null) {
            return null;
        }
        return line.measured() ? new Steepest(measured(best[0], window), best[1]) : drawn(best, window);
    }

    private static Range measured(double gradient, double window) {
        double off = HEIGHT_ERROR / window;
        return new Range(Math.max(0, gradient - off), gradient, gradient + off);
    }

    /** The steepest of the line as drawn and of what each climbing stretch says. */
    private Steepest drawn(double[] best, double window) {
        int which = 0;
        while (which < WINDOWS.length - 1 && WINDOWS[which] < window) {
            which++;
        }
        Range mean = written > 0 ? Range.exact(best[0]) : OVER_MEAN[which].times(best[0]);
        Steepest steepest = new Steepest(mean, best[1]);
        double from = 0;
        for (Stretch stretch : stretches) {
            double middle = from + stretch.length() / 2;
            from += stretch.length();
            Range said = said(stretch, TOWARDS_STEEPEST[which]);
            if (said != null && said.mid() > steepest.gradient.mid()) {
                steepest = new Steepest(said, middle);
            }
        }
        return steepest;
    }

    /** Between a stretch's mean and what it says is its steepest; null where it says nothing or descends. */
    private static Range said(Stretch stretch, Range towards) {
        double steepest = uphill(stretch);
        if (steepest == 0) {
            return null;
        }
        double mean = Math.max(0, stretch.rise() - (stretch.drop() == null ? 0 : stretch.drop())) / stretch.length();
        return steepest <= mean ? Range.exact(mean) : towards.times(steepest - mean).plus(mean);
    }

    /** Steepest rise over a window and its middle, the height between nodes taken as straight; 0 where it never climbs; null if too short. */
    private double[] slide(double window) {
        double[] d = line.distance();
        double[] e = line.elevation();
        double best = NOT_FOUND;
        double where = 0;
        int start = 0;
        int piece = 0;
        for (int end = 1; end < d.length; end++) {
            if (d[end] == d[end - 1]) {
                piece = end;
                start = end;
                continue;
            }
            double from = d[end] - window;
            if (from < d[piece]) {
                continue;
            }
            while (d[start + 1] <= from) {
                start++;
            }
            double part = (from - d[start]) / (d[start + 1] - d[start]);
            double gradient = (e[end] - e[start] - part * (e[start + 1] - e[start])) / window;
            if (gradient > best) {
                best = gradient;
                where = d[end] - window / 2;
            }
        }
        return best == NOT_FOUND ? null : new double[] {Math.max(0, best), where};
    }
}
