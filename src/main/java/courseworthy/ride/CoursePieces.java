package courseworthy.ride;

import java.util.Arrays;

/**
 * The pieces into which the steps of a lap are cut for riding them: short where a step begins, since there speed changes most, and growing
 * from there on; each a place in arrays of one size.
 */
final class CoursePieces {

    /** Longest piece against the wind, across it, with it, and across it again, m, where only its strength is known (computing). */
    private static final double WIND_TURNS = 250;

    private final DiscretisedCourse way;
    private final boolean anyWay;

    /** Number of pieces of a lap. */
    int size;
    /** m. */
    double[] length;
    double[] sine;
    double[] cosine;
    double[] head;
    double[] turns;
    double[] radius;
    /** How much there is to be said for walking on a piece. */
    double[] steep;
    /** By how much of the tread's width the line through a sharp turn at the piece's start is wider than its inside; 0 where there is none. */
    double[] sharp;
    int[] ground;
    int[] step;

    /**
     * @param anyWay        whether only the strength of the wind is known
     * @param from          where the wind comes from, in radians; NaN where it has no direction
     * @param turnsPerMetre turns that must be braked for, by ground
     * @param first         length of a first piece, m
     * @param growth        of the pieces after it
     */
    CoursePieces(DiscretisedCourse way, boolean anyWay, double from, double[] turnsPerMetre, double first, double growth) {
        this.way = way;
        this.anyWay = anyWay;
        cut(first, growth, from, turnsPerMetre);
    }

    private void cut(double first, double growth, double from, double[] turnsPerMetre) {
        room(way.size() + way.size() / 8 + 64);
        for (int s = 0; s < way.size(); s++) {
            cut(s, first, growth, from, turnsPerMetre);
        }
        room(size);
    }

    /** One step; a method of its own, so that it is compiled early in a cold run, as are others that a loop below calls. */
    private void cut(int s, double first, double growth, double from, double[] turnsPerMetre) {
        double gradient = way.gradient(s);
        double flat = 1 / Math.sqrt(1 + gradient * gradient);
        double heading = Double.isNaN(from) ? 0 : Math.cos(from - way.bearing(s));
        double left = way.length(s);
        double start = way.along(s) - left;
        double piece = first;
        while (left > 0) {
            double next = anyWay ? untilTheWindTurns(start, left, piece) : left < 1.5 * piece ? left : piece;
            if (size == length.length) {
                room(size + size / 2);
            }
            length[size] = next;
            sine[size] = gradient * flat;
            steep[size] = Walking.favoured(gradient);
            cosine[size] = flat;
            head[size] = anyWay ? ANY_WAY[(int) (((start + 0.5 * next) / WIND_TURNS) % ANY_WAY.length)] : heading;
            ground[size] = way.ground(s);
            turns[size] = turnsPerMetre[ground[size]] * next;
            radius[size] = way.radius(s);
            sharp[size] = piece == first && way.corner(s) > 0 ? TrailCorner.cut(way.corner(s)) : 0;
            step[size] = s;
            size++;
            left -= next;
            start += next;
            piece *= growth;
        }
    }

    private static double untilTheWindTurns(double start, double left, double piece) {
        double next = left < 1.5 * piece ? left : piece;
        double turnsAt = WIND_TURNS * (Math.floor((start + 1e-6) / WIND_TURNS) + 1) - start;
        return turnsAt < next - 1e-6 && turnsAt > 1 && left - turnsAt > 1 ? turnsAt : next;
    }

    /** Against, across, with and across (calculated): the mean is nothing and the mean square a half, as over all directions. */
    private static final double[] ANY_WAY = {1, 0, -1, 0};

    private void room(int most) {
        length = length == null ? new double[most] : Arrays.copyOf(length, most);
        steep = steep == null ? new double[most] : Arrays.copyOf(steep, most);
        sine = sine == null ? new double[most] : Arrays.copyOf(sine, most);
        cosine = cosine == null ? new double[most] : Arrays.copyOf(cosine, most);
        head = head == null ? new double[most] : Arrays.copyOf(head, most);
        turns = turns == null ? new double[most] : Arrays.copyOf(turns, most);
        radius = radius == null ? new double[most] : Arrays.copyOf(radius, most);
        sharp = sharp == null ? new double[most] : Arrays.copyOf(sharp, most);
        ground = ground == null ? new int[most] : Arrays.copyOf(ground, most);
        step = step == null ? new int[most] : Arrays.copyOf(step, most);
    }
}
