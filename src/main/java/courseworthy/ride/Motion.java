package courseworthy.ride;

/**
 * Speed carried along a way: how fast a rider comes out of a piece of one slope, wind and power, and how long it takes. The equation is
 * that of {@link PowerBalance}, kinetic energy and turning wheels included, by distance: d(½ M v²)/dx = P/v - air - rolling - slope -
 * bearings.
 *
 * <p>Between the ends of a piece force and 1/v count with weights θ at its end and 1 - θ at its start. θ is such that a speed that
 * settles exponentially is met exactly (exponential fitting: Liniger W, Willoughby RA, 1970, SIAM J. Numer. Anal. 7:47-66, from memory):
 * a half on short pieces, so that the error falls with the square of their length, and 1 on long ones, so that they end at the steady
 * speed and stay stable however long they are. Work at the wheel is power times time in these weights too, so energy is kept
 * exactly.
 */
final class Motion {

    /** Newton's method has converged where a step changes kinetic energy by this share; the error then is about its square. */
    private static final double CONVERGED = 1e-3;
    /** On short pieces one step and a correction with the same slope are enough up to this share: what is left is below 1e-4 of it. */
    private static final double AT_ONCE = 0.3;
    /** Where the energy changes by less than this share, root and quotient are taken by their series, to 1e-5. */
    private static final double LITTLE = 0.12;
    /** A piece is short up to this part of the length over which speed settles. */
    private static final double SHORT = 0.1;
    /** As good as standing, m/s. */
    private static final double SLOWEST = 0.05;

    /** s on the last piece. */
    double seconds;
    /** m/s at the end of the last piece, and one over it. */
    private double speed;
    private double inverse;
    private double inertia;
    private double perInertia;

    /** Starts at a speed, m/s, with a mass, turning wheels included, kg. */
    void start(double at, double mass) {
        speed(at);
        inertia = mass;
        perInertia = 1 / mass;
    }

    /** m/s at the end of the last piece. */
    double speed() {
        return speed;
    }

    /** Sets the speed with which the next piece begins, m/s. */
    void speed(double at) {
        speed = at;
        inverse = 1 / at;
    }

    /**
     * Rides one piece.
     *
     * @param length     m
     * @param wheelPower W at the wheel
     * @param air        half density times drag area, kg/m
     * @param headwind   m/s
     * @param steady     forces that do not change with speed, N
     */
    void ride(double length, double wheelPower, double air, double headwind, double steady) {
        double before = inverse;
        double through = speed + headwind;
        double size = through < 0 ? -through : through;
        double drive = wheelPower * before;
        double force = drive - air * through * size - steady - PowerBalance.BEARING_SLOPE * speed;
        double falls = (drive * before + 2 * air * size + PowerBalance.BEARING_SLOPE) * before;
        double half = length * perInertia;
        double x = 0.5 * half * falls;
        // What the exponential makes of the force at the start, (1 - exp(-2x))/2x by its series, is one step of Newton's method; the
        // second term is that of the bend of P/v, which is all but the whole of the force's.
        double square = before * before;
        double first = 2 * half * force * square * (1 - x * (1 - x * (2.0 / 3 - x * (1.0 / 3))));
        double share = first + 0.375 * half * drive * square * first * first;
        if (x < SHORT && share < LITTLE && share > -LITTLE) {
            double atEnd = 0.5 + x * (1.0 / 6);
            speed *= 1 + share * (0.5 - share * (0.125 - share * (0.0625 - share * (5.0 / 128))));
            double near = before * (1 - share * (0.5 - share * (0.375 - share * 0.3125)));
            inverse = near * (2 - speed * near);
            seconds = length * (atEnd * inverse + (1 - atEnd) * before);
        } else {
            rideSlowly(length, wheelPower, air, headwind, steady, force, falls, x);
        }
    }

    private void rideSlowly(double length, double wheelPower, double air, double headwind, double steady, double force, double falls, double x) {
        double before = inverse;
        double atEnd = x < SHORT ? 0.5 + x * (1.0 / 6) : atEnd(x);
        double energy = speed * speed;
        double counted = length * atEnd;
        double known = energy * inertia + 2 * (length - counted) * force;
        double perSlope = 1 / (inertia + counted * falls);
        double more = 2 * length * force * perSlope;
        if (x < SHORT && more < AT_ONCE * energy && more > -AT_ONCE * energy) {
            double reached = energy + more;
            double v = Math.sqrt(reached);
            double per = 1 / v;
            double through = v + headwind;
            double left = wheelPower * per - air * through * Math.abs(through) - steady - PowerBalance.BEARING_SLOPE * v;
            double off = 0.5 * (known + 2 * counted * left - inertia * reached) * perSlope * per * per;
            speed = v * (1 + off);
            inverse = per * (1 - off);
        } else {
            speed(solved(energy + more, counted, known, wheelPower, air, headwind, steady));
        }
        seconds = length * (atEnd * inverse + (1 - atEnd) * before);
    }

    /** Solves M v² - 2 x counted x force(v) = known for v by Newton's method in v²: the left side grows with v throughout. */
    private double solved(double guess, double counted, double known, double wheelPower, double air, double headwind, double steady) {
        double square = guess > SLOWEST * SLOWEST ? guess : speed * speed / 9;
        for (int i = 0; i < 60; i++) {
            double v = Math.sqrt(square);
            double through = v + headwind;
            double size = Math.abs(through);
            double drive = wheelPower / v;
            double force = drive - air * through * size - steady - PowerBalance.BEARING_SLOPE * v;
            double falls = (drive / v + 2 * air * size + PowerBalance.BEARING_SLOPE) / v;
            double more = (known + 2 * counted * force - inertia * square) / (inertia + counted * falls);
            square = more < -8.0 / 9 * square ? square / 9 : square + more;
            if (Math.abs(more) <= CONVERGED * square || square < SLOWEST * SLOWEST) {
                break;
            }
        }
        return Math.max(SLOWEST, Math.sqrt(square));
    }

    /**
     * Weight of a piece's end. With x half the piece's length over the length in which speed settles it is 1/2 + (coth x - 1/x)/2; the
     * fraction here agrees for small and for large x and is within 0.025 of it between.
     */
    static double atEnd(double x) {
        return 0.5 + 0.5 * x * (x + 2) / (x * (x + 3) + 6);
    }
}
