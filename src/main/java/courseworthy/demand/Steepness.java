package courseworthy.demand;

import courseworthy.course.Course;
import courseworthy.course.ElevationLine;
import courseworthy.course.Stretch;
import courseworthy.ride.Range;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

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
    /** A lap is looked at in so many parts, so that what is steep late is seen beside what is steeper early. */
    private static final int PARTS = 10;
    private static final double NOT_FOUND = Double.NEGATIVE_INFINITY;

    private final ElevationLine line;
    private final List<Stretch> stretches;
    private final Map<Double, List<Steepest>> slid = new HashMap<>();

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
        Steepest place = rampPlace();
        return place == null ? null : place.gradient;
    }

    /** The same with where it is: the middle of the stretch that is written with it. */
    Steepest rampPlace() {
        if (line != null && line.measured()) {
            return over(20);
        }
        double steepest = 0;
        double middle = 0;
        double from = 0;
        for (Stretch stretch : stretches) {
            if (climbs(stretch) && stretch.steepest() != null && stretch.steepest() > steepest) {
                steepest = stretch.steepest();
                middle = from + stretch.length() / 2;
            }
            from += stretch.length();
        }
        return steepest > 0 ? new Steepest(Range.exact(steepest), middle) : null;
    }

    /** The gradient over 100, 500 or 1000 m; null where it is not known. */
    Range gradient(double window) {
        Steepest place = over(window);
        return place == null ? null : place.gradient;
    }

    /** Over 100, 500 or 1000 m; null where no elevation is known or the course is shorter. */
    Steepest over(double window) {
        Steepest best = null;
        for (Steepest each : places(window)) {
            best = best == null || each.gradient.mid() > best.gradient.mid() ? each : best;
        }
        return best;
    }

    /** The steepest place of each stretch and each tenth of the lap, by its middle, as far as they are long enough. */
    List<Steepest> places(double window) {
        if (line == null) {
            return List.of();
        }
        List<Steepest> places = line.measured() ? sustained(window) : drawn(window);
        return places.isEmpty() ? sustained(window) : places;
    }

    /** The steepest place of each stretch and each tenth of the lap by the line alone, drawn or measured. */
    List<Steepest> sustained(double window) {
        if (line == null) {
            return List.of();
        }
        List<Steepest> known = slid.get(window);
        if (known == null) {
            known = slid(window);
            slid.put(window, known);
        }
        return known;
    }

    /** The end of the tenth of the lap that holds a place, m from the start of the lap. */
    double endOfPart(double place) {
        double lap = line.distance()[line.size() - 1];
        return Math.min(lap, Math.ceil(place / lap * PARTS) * lap / PARTS);
    }

    private static Range measured(double gradient, double window) {
        double off = HEIGHT_ERROR / window;
        return new Range(Math.max(0, gradient - off), gradient, gradient + off);
    }

    /** Whether a stretch climbs or rolls: on a descent, what is said of its steepest is said of a way down. */
    private static boolean climbs(Stretch stretch) {
        double rise = stretch.ascent() == null ? 0 : stretch.ascent();
        double drop = stretch.descent() == null ? 0 : stretch.descent();
        return rise > 0 && drop <= DESCENT * rise;
    }

    /** The steepest of the climbing stretches that are long enough. */
    private List<Steepest> drawn(double window) {
        List<Steepest> all = new ArrayList<>();
        double from = 0;
        for (Stretch stretch : stretches) {
            if (climbs(stretch) && stretch.length() >= window) {
                all.add(new Steepest(likely(stretch, window), from + stretch.length() / 2));
            }
            from += stretch.length();
        }
        return all;
    }

    private static Range likely(Stretch stretch, double window) {
        int which = 0;
        while (which < WINDOWS.length - 1 && WINDOWS[which] < window) {
            which++;
        }
        double drop = stretch.descent() == null ? 0 : stretch.descent();
        double mean = Math.min(STEEPEST_DRAWN, (stretch.ascent() + drop) / stretch.length());
        if (stretch.steepest() != null) {
            return TOWARDS_STEEPEST[which].times(Math.max(0, stretch.steepest() - mean)).plus(mean);
        }
        double rolling = 2 * Math.min(stretch.ascent(), drop) / (stretch.ascent() + drop);
        Range likely = between(OVER_MEAN[which], OVER_MEAN_ROLLING[which], rolling).times(mean);
        return new Range(Math.min(STEEPEST_DRAWN, likely.low()), Math.min(STEEPEST_DRAWN, likely.mid()),
                Math.min(STEEPEST_DRAWN, likely.high()));
    }

    private static Range between(Range a, Range b, double part) {
        return new Range(a.low() + (b.low() - a.low()) * part, a.mid() + (b.mid() - a.mid()) * part,
                a.high() + (b.high() - a.high()) * part);
    }

    /** The steepest window of each part by its middle, straight between nodes; none where the line is too short. */
    private List<Steepest> slid(double window) {
        double[] d = line.distance();
        double[] e = line.elevation();
        List<Steepest> all = new ArrayList<>();
        double best = NOT_FOUND;
        double where = 0;
        double[] ends = ends();
        int part = 0;
        int start = 0;
        int piece = 0;
        for (int end = 1; end < d.length; end++) {
            double from = d[end] - window;
            if (d[end] == d[end - 1]) {
                piece = end;
                start = end;
                continue;
            }
            if (from < d[piece]) {
                continue;
            }
            while (d[start + 1] <= from) {
                start++;
            }
            while (part < ends.length - 1 && from + window / 2 > ends[part]) {
                add(all, best, where, window);
                best = NOT_FOUND;
                part++;
            }
            double along = (from - d[start]) / (d[start + 1] - d[start]);
            double gradient = (e[end] - e[start] - along * (e[start + 1] - e[start])) / window;
            if (gradient > best) {
                best = gradient;
                where = from + window / 2;
            }
        }
        add(all, best, where, window);
        return all;
    }

    /** Where the stretches and the tenths of the lap end, m, in order. */
    private double[] ends() {
        double[] ends = new double[stretches.size() + PARTS];
        double lap = line.distance()[line.size() - 1];
        for (int i = 0; i < PARTS; i++) {
            ends[i] = lap * (i + 1) / PARTS;
        }
        double end = 0;
        for (int i = 0; i < stretches.size(); i++) {
            end += stretches.get(i).length();
            ends[PARTS + i] = end;
        }
        Arrays.sort(ends);
        return ends;
    }

    private void add(List<Steepest> all, double gradient, double where, double window) {
        if (gradient != NOT_FOUND) {
            double climbed = Math.max(0, gradient);
            all.add(new Steepest(line.measured() ? measured(climbed, window) : Range.exact(climbed), where));
        }
    }
}
