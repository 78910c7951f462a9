package courseworthy.course;

import java.util.Arrays;

/**
 * Finds heights of one piece of a track that do not belong to the ground. Of all ways to leave points out, the one is taken that has the
 * fewest steps nobody rides: a step between two points left in that is too high for its length counts 1, a run of points left out counts
 * {@link #LEFT_OUT}. So a point is left out only where the line comes back to where it was, a single step stays, and what is taken for wrong
 * is judged from both sides: the true ground after a wrong point is never measured against that point. The bounds are judgement from
 * what receivers and barometers show (common practice, no source).
 */
final class ElevationOutliers {

    /** A step is too high where it is more than this, m, beyond {@link #SPIKE_GRADIENT}. */
    private static final double SPIKE = 8;
    private static final double SPIKE_GRADIENT = 0.35;
    /** What is left out is over within this distance, m, or {@link #SPIKE_POINTS} points. */
    private static final double SPIKE_LENGTH = 200;
    private static final int SPIKE_POINTS = 3;
    /** And never more points than this, so that a device that logs ten times a second is looked over as fast as others. */
    private static final int MOST_POINTS = 250;
    /** Of a run of points left out; under the two steps of a spike, above the one step of a jump. */
    private static final double LEFT_OUT = 1.5;
    /** Of the first or the last point left out, which has one step only. */
    private static final double END_LEFT_OUT = 0.9;
    /** Of two ways that are as good the one leaves out fewer points. */
    private static final double FEWER = 1e-4;
    /**
     * A step that stays is a jump where it is higher than this, m, beyond {@link ElevationCleaner#STEEPEST}. Lower steps are a receiver
     * catching up with ground really climbed; they are kept, and spread.
     */
    private static final double JUMP = 50;
    /** Above any number of jumps that a believable track has, so that a hostile one is not looked over for ever. */
    private static final int MOST_JUMPS = 5000;

    private final double[] distance;
    private final double[] e;
    /** Indices of the points that have a height. */
    private int[] points;

    /**
     * The heights of one piece, which are changed in place.
     *
     * @param distance m, rising
     * @param e        m; NaN where there is none
     */
    ElevationOutliers(double[] distance, double[] e) {
        this.distance = distance;
        this.e = e;
        this.points = points();
    }

    private int[] points() {
        int[] out = new int[e.length];
        int size = 0;
        for (int i = 0; i < e.length; i++) {
            if (!Double.isNaN(e[i])) {
                out[size++] = i;
            }
        }
        return Arrays.copyOf(out, size);
    }

    /** Marks what does not belong as NaN and returns how many points that were. */
    int remove() {
        int n = points.length;
        double[] least = new double[n];
        int[] before = new int[n];
        int troubled = Integer.MIN_VALUE / 2;
        for (int i = 0; i < n; i++) {
            before[i] = i - 1;
            boolean high = i > 0 && high(i - 1, i);
            least[i] = i == 0 ? 0 : least[i - 1] + (high ? 1 : 0);
            troubled = high ? i : troubled;
            if (within(troubled - 1, i)) {
                best(i, least, before);
            }
        }
        int last = last(least);
        int left = 0;
        for (int i = n - 1, kept = last; i >= 0; i--) {
            if (i == kept) {
                kept = before[i];
            } else {
                e[points[i]] = Double.NaN;
                left++;
            }
        }
        points = points();
        return left;
    }

    /** The best way to a point that leaves out what lies right before it. */
    private void best(int i, double[] least, int[] before) {
        for (int j = i - 2; j >= 0 && within(j, i); j--) {
            double cost = least[j] + LEFT_OUT + FEWER * (i - j - 1) + (high(j, i) ? 1 : 0);
            if (cost < least[i]) {
                least[i] = cost;
                before[i] = j;
            }
        }
        if (i == 1 && END_LEFT_OUT < least[i]) {
            least[i] = END_LEFT_OUT;
            before[i] = -1;
        }
    }

    /** The last point left in; -1 where there are none. */
    private static int last(double[] least) {
        int last = least.length - 1;
        return last > 0 && least[last - 1] + END_LEFT_OUT < least[last] ? last - 1 : last;
    }

    /** Whether what lies between two points may be left out. */
    private boolean within(int from, int to) {
        return from >= 0 && to - from <= MOST_POINTS
                && (to - from - 1 <= SPIKE_POINTS || distance[points[to]] - distance[points[from]] <= SPIKE_LENGTH);
    }

    private boolean high(int from, int to) {
        return Math.abs(rise(from, to)) > SPIKE + SPIKE_GRADIENT * run(from, to);
    }

    private double rise(int from, int to) {
        return e[points[to]] - e[points[from]];
    }

    private double run(int from, int to) {
        return distance[points[to]] - distance[points[from]];
    }

    /**
     * Levels what lies between jumps: the parts that together are longest at one height stay as they are, every other is moved by the
     * jumps that lie between.
     *
     * @return how many jumps there are
     */
    int level() {
        int[] starts = new int[points.length + 1];
        double[] offset = new double[points.length + 1];
        int parts = 1;
        for (int i = 1; i < points.length; i++) {
            double rise = rise(i - 1, i);
            if (Math.abs(rise) > JUMP + ElevationCleaner.STEEPEST * run(i - 1, i)) {
                starts[parts] = i;
                offset[parts] = offset[parts - 1] + rise;
                parts++;
            }
        }
        if (parts > 1 && parts <= MOST_JUMPS) {
            starts[parts] = points.length;
            double right = longest(starts, offset, parts);
            for (int k = 0; k < parts; k++) {
                move(starts[k], starts[k + 1], Math.abs(offset[k] - right) > JUMP ? right - offset[k] : 0);
            }
        }
        return parts - 1;
    }

    /** The offset at which most of the piece's length lies. */
    private double longest(int[] starts, double[] offset, int parts) {
        double right = 0;
        double most = -1;
        for (int k = 0; k < parts; k++) {
            double length = 0;
            for (int m = 0; m < parts; m++) {
                length += Math.abs(offset[m] - offset[k]) <= JUMP ? run(starts[m], starts[m + 1] - 1) : 0;
            }
            if (length > most) {
                most = length;
                right = offset[k];
            }
        }
        return right;
    }

    private void move(int from, int to, double by) {
        for (int i = from; i < to && by != 0; i++) {
            e[points[i]] += by;
        }
    }
}
