package courseworthy.ride;

/**
 * Speed carried along a way: how fast a rider comes out of a piece of one slope, wind and power, and how long it takes. The equation is
 * that of {@link PowerBalance}, kinetic energy and turning wheels included, by distance: d(½ M v²)/dx = P/v - air - rolling - slope -
 * bearings.
 *
 * <p>Between the ends of a piece force and 1/v count with weights θ at its end and 1 - θ at its start. θ is such that a speed that
 * settles exponentially is met exactly (exponential fitting: Liniger W, Willoughby RA, 1970, SIAM J. Numer. Anal. 7:47-66, from memory):
 * a half on short pieces, so that the error falls with the square of their length, and 1 on long ones, so that the steady speed is
 * reached and nothing overshoots however long they are. Work at the wheel is power times time in these weights too, so energy is kept
 * exactly.
 */
final class Motion {

    /** Newton's method has converged where a step is this small; the error then is about its square. */
    private static final double CONVERGED = 1e-4;

    /** m/s at the end of the last piece. */
    double speed;
    /** s on the last piece. */
    double seconds;

    Motion(double speed) {
        this.speed = speed;
    }

    /**
     * Rides one piece.
     *
     * @param length     m
     * @param wheelPower W at the wheel
     * @param air        half density times drag area, kg/m
     * @param headwind   m/s
     * @param steady     forces that do not change with speed, N
     * @param inertia    mass, turning wheels included, kg
     */
    void ride(double length, double wheelPower, double air, double headwind, double steady, double inertia) {
        double from = speed;
        double through = from + headwind;
        double size = Math.abs(through);
        double drive = wheelPower / from;
        double force = drive - air * through * size - steady - PowerBalance.BEARING_SLOPE * from;
        double falls = drive / from + 2 * air * size + PowerBalance.BEARING_SLOPE;
        double atEnd = atEnd(0.5 * length * falls / (inertia * from));
        double known = 0.5 * inertia * from * from + length * (1 - atEnd) * force;
        double counted = length * atEnd;
        double v = from;
        for (int i = 0; i < 60; i++) {
            double excess = 0.5 * inertia * v * v - counted * force - known;
            double next = v - excess / (inertia * v + counted * falls);
            if (next < v * (1.0 / 3)) {
                next = v * (1.0 / 3);
            }
            double moved = Math.abs(next - v);
            v = next;
            if (moved <= CONVERGED * v || v < SLOWEST) {
                break;
            }
            through = v + headwind;
            size = Math.abs(through);
            drive = wheelPower / v;
            force = drive - air * through * size - steady - PowerBalance.BEARING_SLOPE * v;
            falls = drive / v + 2 * air * size + PowerBalance.BEARING_SLOPE;
        }
        speed = v;
        seconds = length * (atEnd / v + (1 - atEnd) / from);
    }

    /** As good as standing, m/s. */
    private static final double SLOWEST = 0.05;

    /**
     * Weight of a piece's end. With x half the piece's length over the length in which speed settles it is 1/2 + (coth x - 1/x)/2; the
     * fraction here agrees for small and for large x and is within 0.025 of it between.
     */
    static double atEnd(double x) {
        return 0.5 + 0.5 * x * (x + 2) / (x * (x + 3) + 6);
    }
}
