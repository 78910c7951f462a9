package courseworthy.ride;

import courseworthy.course.Stretch;
import java.util.List;

/**
 * Where a trail of one written grade is likely harder and where easier than it: narrow, difficult trails wind more than easy ones and than ways
 * made for wheels. Measured on mapped ways with an {@code mtb:scale} in a mountain country (Liechtenstein 2022, 100 ways of 150 m and more,
 * 58 km, (c) OpenStreetMap contributors, ODbL 1.0), with 20 m chords: each doubling of how much a way turns goes with 0.83 of a grade (0.59 to
 * 1.05 in 90 of 100 resamples), and leaves 1.2 grades (standard deviation) unexplained. Ways that meet, 620 m apart from middle to middle, are
 * alike in what is left (correlation 0.73): it dies away over 2 km. {@code WindingTest} works these figures out anew.
 *
 * <p>The written grade is taken for the mean of the stretch and stays so. Only stretches that are graded as trails, that lie on a track and that
 * are too long to be of one kind are told apart so.
 */
final class Sinuosity {

    /** Grades for each doubling of the turning. */
    static final double GRADES_PER_DOUBLING = 0.8;
    /** What of the grade it leaves open, standard deviation. */
    static final double UNTOLD = 1.2;
    /** Over this much of a way what is left open falls to 1/e, m. */
    static final double ALIKE_OVER = 2000;
    /**
     * A way that turns less is as easy as one that turns so much, radians for each m: about what ways made for wheels do there (tracktype grade1
     * to grade4: 220 to 450 degrees for each km in the mean, 15 m chords).
     */
    static final double LEAST_TURNING = Math.toRadians(250) / 1000;
    /** Turning is told from chords of so many steps. */
    static final int CHORD = 2;
    /** Turning is told over this much of the way: about the length of the mapped ways. */
    private static final double OVER = 600;
    /** Shorter stretches are of one kind, m. */
    private static final double LONG = 2 * OVER;
    /** Grades away from the written one at most (judgement, no source). */
    private static final double MOST = 2;
    private static final double THIRDS = 3;

    private final double[] turning;
    private final double[] length;

    private Sinuosity(double[] turning, double[] length) {
        this.turning = turning;
        this.length = length;
    }

    /**
     * How much harder each step likely is than what is written of its stretch, in thirds of a grade.
     *
     * @param shape     of the way on its track
     * @param stretch   by step
     * @param length    by step, m
     * @param stretches of the course
     */
    static int[] harder(CourseShape shape, int[] stretch, double[] length, List<Stretch> stretches) {
        int[] thirds = new int[length.length];
        Sinuosity winding = null;
        for (int first = 0; first < thirds.length;) {
            int end = first;
            double sum = 0;
            while (end < thirds.length && stretch[end] == stretch[first]) {
                sum += length[end++];
            }
            if (sum >= LONG && TrailCorner.on(stretches.get(stretch[first]).ground().mtbScale(), 0)) {
                winding = winding == null ? new Sinuosity(shape.turning(CHORD), length) : winding;
                winding.gradeSection(first, end, sum, thirds);
            }
            first = end;
        }
        return thirds;
    }

    private void gradeSection(int first, int end, double whole, int[] thirds) {
        double[] doublings = new double[end - first];
        double mean = 0;
        for (int i = 0; i < doublings.length; i++) {
            doublings[i] = doublings(first + i, first, end);
            mean += doublings[i] * length[first + i] / whole;
        }
        for (int i = 0; i < doublings.length; i++) {
            double grades = Math.max(-MOST, Math.min(MOST, GRADES_PER_DOUBLING * (doublings[i] - mean)));
            thirds[first + i] = (int) Math.round(THIRDS * grades);
        }
    }

    /** How many times the least turning is doubled about a step. */
    private double doublings(int step, int first, int end) {
        double turned = turning[step] * length[step];
        double over = length[step];
        for (int i = step - 1; i >= first && over < OVER / 2; i--) {
            turned += turning[i] * length[i];
            over += length[i];
        }
        double ahead = 0;
        for (int i = step + 1; i < end && ahead < OVER / 2; i++) {
            turned += turning[i] * length[i];
            ahead += length[i];
        }
        return Math.log(Math.max(LEAST_TURNING, turned / (over + ahead)) / LEAST_TURNING) / Math.log(2);
    }

    /**
     * Standard deviation of the mean, over a length of way, of what is not told of the grade, where it is alike from place to place as
     * exp(-distance / {@value #ALIKE_OVER} m).
     *
     * @param metres above 0
     */
    static double untoldOver(double metres) {
        double x = metres / ALIKE_OVER;
        return UNTOLD * Math.sqrt(2 / x * (1 + Math.expm1(-x) / x));
    }
}
