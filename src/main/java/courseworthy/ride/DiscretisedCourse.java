package courseworthy.ride;

import courseworthy.course.Course;
import courseworthy.course.ElevationLine;
import courseworthy.course.Stretch;
import courseworthy.course.Track;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * One lap as steps to be ridden one after the other, each of one gradient on one stretch: the steps of the elevation line where it was
 * measured, otherwise the stretches drawn as hills. Breaks between pieces of a track are not ridden.
 */
public final class DiscretisedCourse {

    /** Steeper is taken for a fault of the elevation and ridden at this gradient (roads and trails end about there). */
    private static final double STEEPEST = 0.60;
    /** Drawn steps are no longer than this, m, so that tiring and weather move on along them. */
    private static final double LONGEST_DRAWN = 1000;
    /** What is shorter is left over from rounding, m: a step of it takes no time that can be told. */
    private static final double SHORTEST_DRAWN = 0.001;
    /** Rise of one drawn hill at most, m (common practice, no source; steady power balance does not depend on it). */
    private static final double HILL = 60;
    /**
     * Where a stretch both climbs and drops: how much steeper than ascent and descent over length, the rest being flat (practice: recorded rides cut
     * into stretches of 1 to 10 km and drawn so take 1 to 3 % less to 1 % more time than as measured).
     */
    private static final double ROLLING_STEEPER_BY = 0.5;
    /** Where nothing is known of ascent and descent: m climbed and m dropped for each m, for the time alone. */
    public static final double ASSUMED_CLIMBING = 0.010;

    /** A bend wider than this slows nobody, m. */
    public static final double STRAIGHT_RADIUS = 60;
    /** A bend as tight as the turns that profiles count, m. */
    private static final double TIGHT = 20;

    /** What still counts as straight: a turn of so much, radians, over so many m either way (judgement). */
    private static final double STRAIGHT = Math.toRadians(20);
    private static final double LOOK_ALONG = 50;

    private final int size;
    private final double[] length;
    private final double[] gradient;
    private final double[] height;
    private final double[] bearing;
    private final int[] ground;
    private final GroundClasses grounds;
    private final double[] along;
    private final boolean measured;
    /** By step, m; empty where no bend is known. */
    private final double[] radius;
    /** By step, radians, 0 where there is none; empty where no sharp turn is known. */
    private final double[] corner;

    private DiscretisedCourse(int size, double[] length, double[] gradient, double[] height, double[] bearing, int[] ground, GroundClasses grounds,
            boolean measured, double[] radius, double[] corner) {
        this.radius = radius;
        this.corner = corner;
        this.size = size;
        this.length = length;
        this.gradient = gradient;
        this.height = height;
        this.bearing = bearing;
        this.ground = ground;
        this.grounds = grounds;
        this.measured = measured;
        this.along = new double[size];
        double sum = 0;
        for (int i = 0; i < size; i++) {
            sum += length[i];
            along[i] = sum;
        }
    }

    /**
     * The way of a course.
     *
     * @param course      one lap
     * @param startHeight height of the start above sea level, m, used where the course knows only heights above the start
     */
    public static DiscretisedCourse of(Course course, double startHeight) {
        ElevationLine line = course.line();
        DiscretisedCourse way = line != null && line.measured() ? measured(course, line, startHeight) : drawn(course, startHeight);
        return way.size > 0 ? way : drawn(course, startHeight);
    }

    private static DiscretisedCourse measured(Course course, ElevationLine line, double startHeight) {
        int most = line.size();
        Steps steps = new Steps(most);
        double base = line.absolute() ? 0 : startHeight;
        double[] ends = ends(course.stretches());
        double scale = ends[ends.length - 1] / line.distance()[most - 1];
        int at = 0;
        for (int i = 1; i < most; i++) {
            double from = line.distance()[i - 1];
            double length = line.distance()[i] - from;
            if (length <= 0) {
                continue;
            }
            double middle = (from + 0.5 * length) * scale;
            while (at < ends.length - 1 && middle > ends[at]) {
                at++;
            }
            double rise = line.elevation()[i] - line.elevation()[i - 1];
            steps.add(length, clipped(rise / length), base + 0.5 * (line.elevation()[i] + line.elevation()[i - 1]), at);
        }
        return steps.way(true, course.track(), course.stretches());
    }

    private static double[] ends(List<Stretch> stretches) {
        double[] ends = new double[stretches.size()];
        double sum = 0;
        for (int i = 0; i < ends.length; i++) {
            sum += stretches.get(i).length();
            ends[i] = sum;
        }
        return ends;
    }

    private static double clipped(double gradient) {
        return Math.max(-STEEPEST, Math.min(STEEPEST, gradient));
    }

    private static DiscretisedCourse drawn(Course course, double startHeight) {
        double base = startHeight + (course.line() != null && course.line().absolute() ? course.line().elevation()[0] - startHeight : 0);
        Steps steps = new Steps(64);
        double height = base;
        List<Stretch> stretches = course.stretches();
        for (int first = 0; first < stretches.size();) {
            int end = first + 1;
            while (end < stretches.size() && goesOn(stretches.get(first), stretches.get(end))) {
                end++;
            }
            height = draw(stretches, first, end, height, steps);
            first = end;
        }
        return steps.way(false, course.track(), course.stretches());
    }

    /** Whether a stretch is like another in all but length, so that a stretch written in several parts is drawn as one. */
    private static boolean goesOn(Stretch a, Stretch b) {
        return a.ground().equals(b.ground()) && a.alternatives().equals(b.alternatives()) && Objects.equals(a.steepest(), b.steepest()) && alike(a.ascent(), a.length(), b.ascent(), b.length())
                && alike(a.descent(), a.length(), b.descent(), b.length());
    }

    private static boolean alike(Double a, double aOver, Double b, double bOver) {
        return a == null || b == null ? a == b : Math.abs(a / aOver - b / bOver) < 1e-9;
    }

    /** Draws stretches that are alike as up, down and flat in turn, and returns the height of their end. */
    private static double draw(List<Stretch> stretches, int first, int end, double from, Steps steps) {
        double length = 0;
        for (int i = first; i < end; i++) {
            length += stretches.get(i).length();
        }
        Stretch like = stretches.get(first);
        double silent = saysClimbing(like) ? 0 : ASSUMED_CLIMBING * length;
        double rise = like.ascent() == null ? silent : like.ascent() * length / like.length();
        double drop = like.descent() == null ? silent : like.descent() * length / like.length();
        double slope = slope(rise, drop, length, like.steepest());
        double up = slope == 0 ? 0 : rise / slope;
        double down = slope == 0 ? 0 : drop / slope;
        double flat = Math.max(0, length - up - down);
        int hills = (int) Math.max(1, Math.ceil(Math.min(rise, drop) / HILL));
        double height = from;
        int begun = steps.size;
        for (int i = 0; i < hills; i++) {
            height = steps.piece(up / hills, clipped(slope), height, first);
            height = steps.piece(down / hills, clipped(-slope), height, first);
            height = steps.piece(flat / hills, 0, height, first);
        }
        name(steps, begun, stretches, first, end);
        return height;
    }

    /** Gives each step the stretch its middle lies on. */
    private static void name(Steps steps, int begun, List<Stretch> stretches, int first, int end) {
        int on = first;
        double ends = stretches.get(first).length();
        double before = 0;
        for (int i = begun; i < steps.size; i++) {
            while (on < end - 1 && before + 0.5 * steps.length[i] > ends) {
                ends += stretches.get(++on).length();
            }
            steps.stretch[i] = on;
            before += steps.length[i];
        }
    }

    /** Whether ascent or descent is known of every stretch. */
    public static boolean saysClimbing(List<Stretch> stretches) {
        for (Stretch stretch : stretches) {
            if (!saysClimbing(stretch)) {
                return false;
            }
        }
        return true;
    }

    /** Whether ascent or descent is known; where one is, the other is none if it is not written. */
    public static boolean saysClimbing(Stretch stretch) {
        return stretch.ascent() != null || stretch.descent() != null;
    }

    private static double slope(double rise, double drop, double length, Double steepest) {
        double both = rise + drop;
        if (both <= 0) {
            return 0;
        }
        double least = both / length;
        double mixed = 2 * Math.min(rise, drop) / both;
        double rolling = least * (1 + ROLLING_STEEPER_BY * mixed);
        return steepest == null ? rolling : Math.max(least, Math.min(rolling, steepest));
    }

    /** Collects steps. */
    private static final class Steps {
        private int size;
        private double[] length;
        private double[] gradient;
        private double[] height;
        private int[] stretch;

        Steps(int room) {
            length = new double[room];
            gradient = new double[room];
            height = new double[room];
            stretch = new int[room];
        }

        void add(double stepLength, double stepGradient, double stepHeight, int stepStretch) {
            if (size == length.length) {
                length = Arrays.copyOf(length, 2 * size);
                gradient = Arrays.copyOf(gradient, 2 * size);
                height = Arrays.copyOf(height, 2 * size);
                stretch = Arrays.copyOf(stretch, 2 * size);
            }
            length[size] = stepLength;
            gradient[size] = stepGradient;
            height[size] = stepHeight;
            stretch[size] = stepStretch;
            size++;
        }

        /** A piece of one gradient cut into steps; returns the height of its end. */
        double piece(double pieceLength, double pieceGradient, double from, int index) {
            if (pieceLength < SHORTEST_DRAWN) {
                return from;
            }
            int steps = (int) Math.max(1, Math.ceil(pieceLength / LONGEST_DRAWN));
            double step = pieceLength / steps;
            for (int i = 0; i < steps; i++) {
                add(step, pieceGradient, from + pieceGradient * step * (i + 0.5), index);
            }
            return from + pieceGradient * pieceLength;
        }

        DiscretisedCourse way(boolean measured, Track track, List<Stretch> stretches) {
            double[] bearing = new double[size];
            double[] radius = new double[measured && track != null ? size : 0];
            double[] corner = new double[radius.length];
            int[] ground = Arrays.copyOf(stretch, size);
            GroundClasses grounds = new GroundClasses(stretches.size());
            if (track == null) {
                Arrays.fill(bearing, Double.NaN);
            } else {
                CourseShape shape = new CourseShape(track, size, length);
                shape.fill(bearing, radius);
                if (measured) {
                    harder(shape, stretches, ground, grounds);
                    corners(bearing, stretches, ground, grounds, corner);
                }
            }
            return new DiscretisedCourse(size, Arrays.copyOf(length, size), Arrays.copyOf(gradient, size), Arrays.copyOf(height, size), bearing, ground,
                    grounds, measured, radius, corner);
        }

        private void harder(CourseShape shape, List<Stretch> stretches, int[] ground, GroundClasses grounds) {
            int[] thirds = Sinuosity.harder(shape, ground, Arrays.copyOf(length, size), stretches);
            for (int i = 0; i < size; i++) {
                ground[i] = grounds.of(stretch[i], thirds[i]);
            }
        }

        private void corners(double[] bearing, List<Stretch> stretches, int[] ground, GroundClasses grounds, double[] corner) {
            double[] turned = CourseShape.turned(bearing);
            for (int i = 0; i < size; i++) {
                Double grade = stretches.get(stretch[i]).ground().mtbScale();
                boolean sharp = TrailCorner.on(grade, grounds.harder(ground[i])) && TrailCorner.at(turned, i);
                corner[i] = sharp ? Math.abs(turned[i]) : 0;
            }
        }
    }

    /**
     * The same lap with neighbouring steps made one, for runs that need only how its time changes: steps join while they lie on one
     * ground, are all in bends or none is, none but the first turns sharply, they head the same way within 45 degrees, and their gradient
     * stays within 2.5 % of the joined step's; a joined step is at most 1 km long.
     */
    public DiscretisedCourse thinned() {
        Steps steps = new Steps(Math.max(16, size / 4));
        double[] headings = new double[size];
        double[] tightest = new double[radius.length];
        double[] sharp = new double[corner.length];
        int i = 0;
        while (i < size) {
            int first = i;
            double sum = length[i];
            double rise = gradient[i] * length[i];
            double heights = height[i] * length[i];
            i++;
            while (i < size && joins(first, i, rise / sum, sum)) {
                sum += length[i];
                rise += gradient[i] * length[i];
                heights += height[i] * length[i];
                i++;
            }
            headings[steps.size] = bearing[(first + i - 1) / 2];
            if (sharp.length > 0) {
                sharp[steps.size] = corner[first];
            }
            for (int j = first; j < i && radius.length > 0; j++) {
                tightest[steps.size] = Math.min(j == first ? Double.POSITIVE_INFINITY : tightest[steps.size], radius[j]);
            }
            steps.add(sum, rise / sum, heights / sum, ground[first]);
        }
        return new DiscretisedCourse(steps.size, Arrays.copyOf(steps.length, steps.size), Arrays.copyOf(steps.gradient, steps.size),
                Arrays.copyOf(steps.height, steps.size), Arrays.copyOf(headings, steps.size), Arrays.copyOf(steps.stretch, steps.size), grounds,
                measured, Arrays.copyOf(tightest, Math.min(tightest.length, steps.size)), Arrays.copyOf(sharp, Math.min(sharp.length, steps.size)));
    }

    /** Steps joined differ by no more than this in gradient and heading (computing; tests hold the time against the steps as they are). */
    private static final double JOINS_WITHIN = 0.025;
    private static final double JOINS_HEADING = Math.toRadians(45);

    private boolean joins(int first, int next, double meanGradient, double joined) {
        double turned = Math.abs(turn(bearing[first], bearing[next]));
        if (radius.length > 0 && (radius[first] < STRAIGHT_RADIUS) != (radius[next] < STRAIGHT_RADIUS) || corner(next) > 0) {
            return false;
        }
        return ground[next] == ground[first] && joined + length[next] <= LONGEST_DRAWN
                && Math.abs(gradient[next] - meanGradient) <= JOINS_WITHIN && !(turned > JOINS_HEADING);
    }

    /** How far one heading is from another, radians, -pi to pi; NaN where either is unknown. */
    private static double turn(double from, double to) {
        double turned = to - from;
        return turned > Math.PI ? turned - 2 * Math.PI : turned < -Math.PI ? turned + 2 * Math.PI : turned;
    }

    /** Whether the way turns by no more than 20 degrees from 50 m before a step to 50 m after it, as far as its track tells. */
    public boolean straight(int step) {
        int before = step;
        for (double gone = 0; before > 0 && gone < LOOK_ALONG; before--) {
            gone += length[before];
        }
        int after = step;
        for (double gone = 0; after < size - 1 && gone < LOOK_ALONG; after++) {
            gone += length[after];
        }
        return !(Math.abs(turn(bearing[before], bearing[after])) > STRAIGHT);
    }

    /** Number of steps. */
    public int size() {
        return size;
    }

    /** Length of a step, m. */
    public double length(int step) {
        return length[step];
    }

    /** Gradient of a step, rise over length. */
    public double gradient(int step) {
        return gradient[step];
    }

    /** Height of the middle of a step above sea level (or above the assumed start), m. */
    public double height(int step) {
        return height[step];
    }

    /** Heading of a step, radians clockwise from north; NaN where unknown. */
    public double bearing(int step) {
        return bearing[step];
    }

    /** The radius of the bend a step lies in, m; infinite where it is straight or not known. */
    public double radius(int step) {
        return radius.length == 0 ? Double.POSITIVE_INFINITY : radius[step];
    }

    /** How much the way turns where a step turns sharply at one place, radians; 0 where it does not, or nothing is known of it. */
    public double corner(int step) {
        return corner.length == 0 ? 0 : corner[step];
    }

    /** Turns of a stretch that the track shows, tight or sharp, for each m of it; 0 where none is known. */
    double turnsShown(int onStretch) {
        double shown = 0;
        double whole = 0;
        for (int i = 0; i < size && radius.length > 0; i++) {
            boolean here = stretch(i) == onStretch;
            whole += here ? length[i] : 0;
            boolean begins = radius[i] < TIGHT && !(i > 0 && stretch(i - 1) == onStretch && radius[i - 1] < TIGHT);
            shown += here && (begins || corner[i] > 0 && radius[i] >= TIGHT) ? 1 : 0;
        }
        return whole > 0 ? shown / whole : 0;
    }

    /** The stretch a step lies on. */
    public int stretch(int step) {
        return grounds.stretch(ground[step]);
    }

    /** The ground a step lies on: the number of its stretch where it is as written of it, else a higher one. */
    public int ground(int step) {
        return ground[step];
    }

    /** Number of grounds. */
    int grounds() {
        return grounds.size();
    }

    /** The stretch that a ground is of. */
    int stretchOf(int ofGround) {
        return grounds.stretch(ofGround);
    }

    /** How many technical grades harder a ground likely is than is written of its stretch. */
    public double harder(int ofGround) {
        return grounds.harder(ofGround);
    }

    /** Distance from the start of the lap to the end of a step, m. */
    public double along(int step) {
        return along[step];
    }

    /** Length of the lap, m. */
    public double length() {
        return size == 0 ? 0 : along[size - 1];
    }

    /** Whether the gradients come from a measured line. */
    public boolean isMeasured() {
        return measured;
    }

    /** Whether bends and sharp turns are known. */
    public boolean hasBends() {
        return radius.length > 0;
    }

    /** Whether headings are known. */
    public boolean hasHeadings() {
        return size > 0 && !Double.isNaN(bearing[0]);
    }

    /** The step that ends at or beyond a distance from the start of a lap, m; the last step beyond the end. */
    int stepAt(double distance) {
        int low = 0;
        int high = size() - 1;
        while (low < high) {
            int between = (low + high) >>> 1;
            if (along(between) < distance) {
                low = between + 1;
            } else {
                high = between;
            }
        }
        return low;
    }
}
