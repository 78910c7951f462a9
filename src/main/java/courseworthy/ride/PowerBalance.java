package courseworthy.ride;

/**
 * The power balance of cycling: what speed asks at the crank, and what speed a power gives. Martin JC, Milliken DL, Cobb JE,
 * McFadden KL, Coggan AR (1998) "Validation of a mathematical model for road cycling power", J. Applied Biomechanics 14(3):276-291
 * (model against measurement: R² = 0.97, standard error 2.7 W). Constants are the paper's, from memory; its worked example is among
 * the tests. Air pushes where a tailwind is faster than the rider.
 *
 * @param mass       rider, kit, bike and load, kg
 * @param dragArea   CdA, m²
 * @param rolling    rolling resistance coefficient Crr
 * @param wheelDrag  drag area of wheel rotation, m²
 * @param bearings   whether bearing friction counts
 * @param efficiency power at the wheel over power at the crank
 */
public record PowerBalance(double mass, double dragArea, double rolling, double wheelDrag, boolean bearings, double efficiency) {

    /** Standard gravity, m/s² (third General Conference on Weights and Measures, 1901). */
    public static final double GRAVITY = 9.80665;
    /** Drag area of a pair of turning wheels, m² (Martin 1998, from memory). */
    public static final double WHEEL_DRAG = 0.0044;
    /** Drive efficiency (Martin 1998, from memory). */
    public static final double EFFICIENCY = 0.97698;
    /** Bearing friction of a pair of wheels at rest, N (Martin 1998, from memory: 91 mN). */
    public static final double BEARING_FORCE = 0.091;
    /** Bearing friction gained with speed, N per m/s (Martin 1998, from memory: 8.7 mN). */
    public static final double BEARING_SLOPE = 0.0087;
    /** Moment of inertia of a pair of wheels over the square of their radius, kg (Martin 1998, from memory: 0.14 kg m², 0.311 m). */
    public static final double WHEEL_INERTIA_MASS = 0.14 / (0.311 * 0.311);

    /** Above the terminal speed of any slope and load, m/s. */
    private static final double TOO_FAST = 300;
    /** Relative step at which Newton's method has converged: the round trip to power then holds to 1e-6 W on any slope. */
    private static final double CONVERGED = 1e-9;

    /** With wheel rotation, bearings and drive as in the paper. */
    public static PowerBalance of(double mass, double dragArea, double rolling) {
        return new PowerBalance(mass, dragArea, rolling, WHEEL_DRAG, true, EFFICIENCY);
    }

    /**
     * Power at the crank at a steady speed.
     *
     * @param speed    over ground, m/s
     * @param headwind along the way, m/s; negative from behind
     * @param gradient rise over horizontal distance, 0.05 for 5 %
     * @param density  of air, kg/m³
     * @return W; negative where the rider would have to brake
     */
    public double power(double speed, double headwind, double gradient, double density) {
        return speed * force(speed, headwind, gradient, density) / efficiency;
    }

    /** The same with kinetic energy: speed changes from one value to another in a time. */
    public double power(double from, double to, double seconds, double headwind, double gradient, double density) {
        double kinetic = 0.5 * (mass + WHEEL_INERTIA_MASS) * (to * to - from * from) / seconds;
        double speed = 0.5 * (from + to);
        return (speed * force(speed, headwind, gradient, density) + kinetic) / efficiency;
    }

    /** What holds the rider back at a steady speed, N. */
    public double force(double speed, double headwind, double gradient, double density) {
        return airForce(speed, headwind, density) + rollingForce(gradient) + bearingForce(speed) + slopeForce(gradient);
    }

    /** Air, wheel rotation included, N. */
    public double airForce(double speed, double headwind, double density) {
        double through = speed + headwind;
        return 0.5 * density * (dragArea + wheelDrag) * through * Math.abs(through);
    }

    /** Rolling, N. */
    public double rollingForce(double gradient) {
        return mass * GRAVITY * rolling / Math.sqrt(1 + gradient * gradient);
    }

    /** Gravity along the slope, N. */
    public double slopeForce(double gradient) {
        return mass * GRAVITY * gradient / Math.sqrt(1 + gradient * gradient);
    }

    /** Bearings, N. */
    public double bearingForce(double speed) {
        return bearings ? BEARING_FORCE + BEARING_SLOPE * speed : 0;
    }

    /**
     * The steady speed of a power; coasting at 0 W.
     *
     * @param power at the crank, W, 0 or more
     * @return m/s over ground; 0 where nothing moves the rider
     */
    public double speed(double power, double headwind, double gradient, double density) {
        double air = 0.5 * density * (dragArea + wheelDrag);
        double steady = rollingForce(gradient) + slopeForce(gradient) + bearingForce(0);
        return steadySpeed(power * efficiency, air, headwind, steady, bearings ? BEARING_SLOPE : 0, 8);
    }

    /**
     * The gradient on which a power gives a steady speed: the balance solved for the slope, sin a + Crr cos a = what is left of the power's
     * force over the weight. Vertical where that is more than any slope takes.
     *
     * @param power at the crank, W, 0 or more
     * @param speed over ground, m/s, above 0
     * @return rise over horizontal distance; below 0 where the speed takes a slope down
     */
    public double gradient(double power, double speed, double headwind, double density) {
        double left = power * efficiency / speed - airForce(speed, headwind, density) - bearingForce(speed);
        double share = left / (mass * GRAVITY) / Math.sqrt(1 + rolling * rolling);
        return Math.tan(Math.asin(Math.max(-1, Math.min(1, share))) - Math.atan(rolling));
    }

    /** The speed of coasting in still air, m/s: where air and bearings balance what the slope gives; 0 where it gives nothing. */
    public double coasting(double gradient, double density) {
        double given = -(rollingForce(gradient) + slopeForce(gradient) + bearingForce(0));
        if (given <= 0) {
            return 0;
        }
        double air = 0.5 * density * (dragArea + wheelDrag);
        double half = bearings ? BEARING_SLOPE / 2 : 0;
        return (Math.sqrt(half * half + air * given) - half) / air;
    }

    /**
     * Solves v (air (v+w)|v+w| + steady + slope v) = power for v by Newton's method inside a bracket. For v from 0 the left side less
     * power is below 0 up to the one root and above it from there on, so its sign always tells the side.
     *
     * @param wheelPower power at the wheel, W
     * @param air        half density times drag area, kg/m
     * @param headwind   m/s
     * @param steady     forces that do not change with speed, N
     * @param perSpeed   force gained with speed, N per m/s
     * @param guess      first guess, m/s
     */
    static double steadySpeed(double wheelPower, double air, double headwind, double steady, double perSpeed, double guess) {
        double low = 0;
        double high = TOO_FAST;
        double v = guess;
        for (int i = 0; i < 100; i++) {
            double through = v + headwind;
            double size = Math.abs(through);
            double force = air * through * size + steady + perSpeed * v;
            double excess = v * force - wheelPower;
            if (excess > 0) {
                high = v;
            } else {
                low = v;
            }
            double slope = force + v * (2 * air * size + perSpeed);
            double next = v - excess / slope;
            if (!(next >= low && next <= high)) {
                next = 0.5 * (low + high);
            }
            if (Math.abs(next - v) <= CONVERGED * next) {
                return next;
            }
            v = next;
        }
        return v;
    }
}
