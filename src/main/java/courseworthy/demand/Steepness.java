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
    private static final double[] WINDOWS = {100, 500, 1000};
    /**
     * A ramp written as steepest is short, 20 m or so. Over 100 m, 500 m and 1 km the gradient lies this part of the way from the
     * stretch's mean to it (practice, rounded from ten climbs of recorded and drawn tracks).
     */
    private static final Range[] TOWARDS_STEEPEST = {new Range(0.35, 0.65, 0.95), new Range(0.1, 0.35, 0.65), new Range(0, 0.15, 0.4)};
    /**
     * Where a climbing stretch does not say its steepest: times its mean on one that climbs throughout, and on one that drops as much as it
     * climbs; between them in proportion (practice, from the same tracks, cautiously).
     */
    private static final Range[] OVER_MEAN = {new Range(1.1, 1.6, 2.4), new Range(1, 1.3, 1.8), new Range(1, 1.12, 1.5)};
    private static final Range[] OVER_MEAN_ROLLING = {new Range(1.4, 3, 5), new Range(1.1, 2, 3), new Range(1, 1.5, 2.2)};
    /** No longer piece of way is taken to be steeper than this where it was not measured. */
    private static final double STEEPEST_DRAWN = 0.45;
    /** A stretch that drops more than this many times its rise is a descent (practice). */
    private static final double DESCENT = 1.5;
    private static final double NOT_FOUND = Double.NEGATIVE_INFINITY;

    private final Line line;
    private final List<Stretch> stretches;

    Steepness(Course course) {
        line = course.line();
        stretches = course.stretches();
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
        double steepest = 0;
        for (Stretch stretch : stretches) {
            steepest = Math.max(steepest, climbs(stretch) && stretch.steepest() != null ? stretch.steepest() : 0);
        }
        return steepest > 0 ? Range.exact(steepest) : null;
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
        if (line.measured()) {
            return new Steepest(measured(best[0], window), best[1]);
        }
        Steepest drawn = drawn(window);
        return drawn != null ? drawn : new Steepest(Range.exact(best[0]), best[1]);
    }

    private static Range measured(double gradient, double window) {
        double off = HEIGHT_ERROR / window;
        return new Range(Math.max(0, gradient - off), gradient, gradient + off);
    }

    /** Whether a stretch climbs or rolls: on a descent, what is said of its steepest is said of a way down. */
    private static boolean climbs(Stretch stretch) {
        double rise = stretch.rise() == null ? 0 : stretch.rise();
        double drop = stretch.drop() == null ? 0 : stretch.drop();
        return rise > 0 && drop <= DESCENT * rise;
    }

    /** The steepest of the climbing stretches that are long enough, or null. */
    private Steepest drawn(double window) {
        Steepest best = null;
        double from = 0;
        for (Stretch stretch : stretches) {
            if (climbs(stretch) && stretch.length() >= window) {
                Range gradient = likely(stretch, window);
                boolean steeper = best == null || gradient.mid() > best.gradient.mid();
                best = steeper ? new Steepest(gradient, from + stretch.length() / 2) : best;
            }
            from += stretch.length();
        }
        return best;
    }

    private static Range likely(Stretch stretch, double window) {
        int which = 0;
        while (which < WINDOWS.length - 1 && WINDOWS[which] < window) {
            which++;
        }
        double drop = stretch.drop() == null ? 0 : stretch.drop();
        double mean = Math.min(STEEPEST_DRAWN, (stretch.rise() + drop) / stretch.length());
        if (stretch.steepest() != null) {
            return TOWARDS_STEEPEST[which].times(Math.max(0, stretch.steepest() - mean)).plus(mean);
        }
        double rolling = 2 * Math.min(stretch.rise(), drop) / (stretch.rise() + drop);
        Range likely = between(OVER_MEAN[which], OVER_MEAN_ROLLING[which], rolling).times(mean);
        return new Range(Math.min(STEEPEST_DRAWN, likely.low()), Math.min(STEEPEST_DRAWN, likely.mid()),
                Math.min(STEEPEST_DRAWN, likely.high()));
    }

    private static Range between(Range a, Range b, double part) {
        return new Range(a.low() + (b.low() - a.low()) * part, a.mid() + (b.mid() - a.mid()) * part,
                a.high() + (b.high() - a.high()) * part);
    }

    /** Steepest rise over a window, 0 where it never climbs, and its middle; straight between nodes; null where the line is too short. */
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
