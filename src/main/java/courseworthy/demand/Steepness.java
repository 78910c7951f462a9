package courseworthy.demand;

import courseworthy.course.Course;
import courseworthy.course.Line;
import courseworthy.course.Stretch;
import courseworthy.ride.Range;

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

    private static final double NOT_FOUND = Double.NEGATIVE_INFINITY;

    private final Line line;
    private final double written;

    Steepness(Course course) {
        line = course.line();
        double steepest = 0;
        for (Stretch stretch : course.stretches()) {
            steepest = Math.max(steepest, stretch.steepest() == null ? 0 : stretch.steepest());
        }
        written = steepest;
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
        Range gradient = line.measured() ? measured(best[0], window) : drawn(best[0], window);
        return new Steepest(gradient, best[1]);
    }

    private static Range measured(double gradient, double window) {
        double off = HEIGHT_ERROR / window;
        return new Range(Math.max(0, gradient - off), gradient, gradient + off);
    }

    private Range drawn(double mean, double window) {
        int which = 0;
        while (which < WINDOWS.length - 1 && WINDOWS[which] < window) {
            which++;
        }
        if (written <= mean) {
            return written > 0 ? Range.exact(mean) : OVER_MEAN[which].times(mean);
        }
        return TOWARDS_STEEPEST[which].times(written - mean).plus(mean);
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
