package courseworthy.demand;

import courseworthy.course.ElevationLine;
import java.util.ArrayList;
import java.util.List;

/**
 * The climbs of one lap: pieces of line that gain at least 30 m at 3 % or more on average. A climb ends where the line has lost more than
 * 10 m, or 15 % of what the climb has gained if that is more, against a slope of 1.5 %; so short dips and flats belong to it, while
 * a long false flat before or after does not. The definition is practice, no source.
 */
final class Climbs {

    /** As the definition above has it: m gained, and the mean gradient (practice, no source). */
    private static final double LEAST_RISE = 30;
    static final double LEAST_GRADIENT = 0.03;
    /** Flatter than this does not count as going on climbing. */
    private static final double FLAT = 0.015;
    private static final double DIP = 10;
    private static final double DIP_SHARE = 0.15;

    /**
     * One climb.
     *
     * @param from   m from the start of the lap
     * @param length m
     * @param rise   from foot to top, m
     */
    record Climb(double from, double length, double rise) {
        double gradient() {
            return rise / length;
        }

        double to() {
            return from + length;
        }
    }

    private final double[] distance;
    private final double[] elevation;
    private final List<Climb> found = new ArrayList<>();
    private int foot;
    private int top;

    private Climbs(ElevationLine line) {
        distance = line.distance();
        elevation = line.elevation();
    }

    /** The climbs in order; none where no elevation is known. */
    static List<Climb> of(ElevationLine line) {
        return line == null ? List.of() : new Climbs(line).search();
    }

    private List<Climb> search() {
        for (int i = 1; i < distance.length; i++) {
            boolean broken = distance[i] == distance[i - 1];
            if (broken || above(top) - above(i) > tolerated()) {
                close();
                foot = i;
                top = i;
            } else if (above(i) > above(top)) {
                top = i;
            } else if (above(i) <= above(foot)) {
                foot = i;
                top = i;
            }
        }
        close();
        return found;
    }

    /** Height above a line that rises at the slope of a flat. */
    private double above(int i) {
        return elevation[i] - FLAT * distance[i];
    }

    private double tolerated() {
        return Math.max(DIP, DIP_SHARE * (above(top) - above(foot)));
    }

    private void close() {
        double length = distance[top] - distance[foot];
        double rise = elevation[top] - elevation[foot];
        if (rise >= LEAST_RISE && rise >= LEAST_GRADIENT * length) {
            found.add(new Climb(distance[foot], length, rise));
        }
    }

    /** The longest, or null. */
    static Climb longest(List<Climb> climbs) {
        Climb best = null;
        for (Climb climb : climbs) {
            best = best == null || climb.length() > best.length() ? climb : best;
        }
        return best;
    }

    /** The last that gains at least half of what the biggest gains, or null. */
    static Climb lastLong(List<Climb> climbs) {
        double biggest = 0;
        for (Climb climb : climbs) {
            biggest = Math.max(biggest, climb.rise());
        }
        Climb last = null;
        for (Climb climb : climbs) {
            last = climb.rise() >= biggest / 2 ? climb : last;
        }
        return last;
    }
}
