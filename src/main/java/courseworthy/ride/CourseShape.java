package courseworthy.ride;

import courseworthy.course.Track;

/** How the steps of a way lie on its track: where each heads, and how tight a bend it lies in. */
final class CourseShape {

    /** A bend's radius is told from how the way heads over this much before it and after it, m: shorter is the receiver's noise (judgement). */
    private static final double ARM = 20;
    /** Mean radius of the earth, m (IUGG, from memory). */
    private static final double EARTH = 6_371_008.8;

    private final Track track;
    private final int size;
    private final double[] length;
    private final double scale;
    private final double northPerDegree;
    private final double eastPerDegree;
    private final double[] east;
    private final double[] north;
    private int piece;
    private int point = 1;
    private int before;
    private int after;
    private double arm;
    private double ahead;

    /**
     * A shape.
     *
     * @param track  where the way runs
     * @param size   number of steps
     * @param length of each step, m; they fill the track in proportion
     */
    CourseShape(Track track, int size, double[] length) {
        this.track = track;
        this.size = size;
        this.length = length;
        double sum = 0;
        for (int i = 0; i < size; i++) {
            sum += length[i];
        }
        scale = track.length() / sum;
        northPerDegree = Math.toRadians(1) * EARTH;
        eastPerDegree = northPerDegree * Math.cos(Math.toRadians(track.pieces().get(0).lat()[0]));
        east = new double[size + 1];
        north = new double[size + 1];
        double at = 0;
        for (int i = 0; i <= size; i++) {
            place(i, at);
            at += i < size ? length[i] * scale : 0;
        }
    }

    /** Where a step begins, on a plane: over the steps of a bend or of a heading the error is far below a degree. */
    private void place(int i, double at) {
        Track.TrackPiece on = track.pieces().get(piece);
        while (piece < track.pieces().size() - 1 && at > on.distance()[on.size() - 1]) {
            piece++;
            point = 1;
            on = track.pieces().get(piece);
        }
        double[] distance = on.distance();
        while (point < distance.length - 1 && distance[point] < at) {
            point++;
        }
        double from = distance[point - 1];
        double whole = distance[point] - from;
        double part = whole > 0 ? Math.max(0, Math.min(1, (at - from) / whole)) : 0;
        double lon = on.lon()[point] - on.lon()[point - 1];
        double wrapped = lon > 180 ? lon - 360 : lon < -180 ? lon + 360 : lon;
        north[i] = (on.lat()[point - 1] + part * (on.lat()[point] - on.lat()[point - 1])) * northPerDegree;
        east[i] = (on.lon()[point - 1] + part * wrapped) * eastPerDegree;
    }

    /**
     * Fills in what is known of each step.
     *
     * @param bearing heading, radians clockwise from north
     * @param radius  of the bend it lies in, m, straight ones infinite; may be empty where not asked for
     */
    void fill(double[] bearing, double[] radius) {
        for (int i = 0; i < size; i++) {
            bearing[i] = Math.atan2(east[i + 1] - east[i], north[i + 1] - north[i]);
        }
        for (int i = 0; i < radius.length; i++) {
            radius[i] = radius(i);
        }
    }

    /** How much the way heads otherwise after a step than before it, radians, to the right above 0; 0 at the ends. */
    static double[] turned(double[] bearing) {
        double[] turned = new double[bearing.length];
        for (int i = 1; i < turned.length - 1; i++) {
            turned[i] = Math.IEEEremainder(bearing[i + 1] - bearing[i - 1], 2 * Math.PI);
        }
        return turned;
    }

    /** How much the way turns about the start of each step, radians for each m, by chords of so many steps before it and after it. */
    double[] turning(int steps) {
        double[] turning = new double[size];
        for (int i = steps; i <= size - steps && i < size; i++) {
            double e1 = east[i] - east[i - steps];
            double n1 = north[i] - north[i - steps];
            double e2 = east[i + steps] - east[i];
            double n2 = north[i + steps] - north[i];
            double apart = 0.5 * (Math.hypot(e1, n1) + Math.hypot(e2, n2));
            turning[i] = apart > 0 ? Math.abs(Math.atan2(e1 * n2 - n1 * e2, e1 * e2 + n1 * n2)) / apart : 0;
        }
        return turning;
    }

    /** Steps must be asked for in order. */
    private double radius(int i) {
        while (arm - length[before] >= ARM) {
            arm -= length[before++];
        }
        ahead -= i > 0 ? length[i] : 0;
        while (after < size - 1 && ahead < ARM) {
            ahead += length[++after];
        }
        double found = i == before || after <= i ? Double.POSITIVE_INFINITY
                : radius(east[i] - east[before], north[i] - north[before], east[after + 1] - east[i + 1], north[after + 1] - north[i + 1],
                        length[i] + 0.5 * (arm + ahead));
        arm += length[i];
        return found;
    }

    /** Of two chords whose middles are so far apart, m; infinite where they turn by less than a bend of the widest radius would. */
    private static double radius(double e1, double n1, double e2, double n2, double apart) {
        double along = e1 * e2 + n1 * n2;
        double across = Math.abs(e1 * n2 - n1 * e2);
        if (along > 0 && across < apart / DiscretisedCourse.STRAIGHT_RADIUS * along) {
            return Double.POSITIVE_INFINITY;
        }
        return apart / Math.max(1e-3, Math.atan2(across, along));
    }
}
