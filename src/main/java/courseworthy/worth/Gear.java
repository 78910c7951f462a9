package courseworthy.worth;

/**
 * A chainring and a sprocket.
 *
 * @param ring     teeth
 * @param sprocket teeth
 */
public record Gear(int ring, int sprocket) {

    /** Turns of the wheel for one of the crank. */
    public double ratio() {
        return (double) ring / sprocket;
    }

    /**
     * Distance travelled in one turn of the crank (the definition of gear development in 16 CFR 1512.5), m.
     *
     * @param circumference of the wheel, m
     */
    public double development(double circumference) {
        return ratio() * circumference;
    }

    /** Speed at a cadence, m/s; cadence in turns of the crank a minute, circumference in m. */
    public double speed(double cadence, double circumference) {
        return development(circumference) * cadence / 60;
    }

    /** Cadence at a speed, turns of the crank a minute; speed in m/s, circumference in m. */
    public double cadence(double speed, double circumference) {
        return speed * 60 / development(circumference);
    }

    /** Mean torque at the crank, N m: power over angular velocity; power in W, cadence in turns a minute. */
    public static double torque(double power, double cadence) {
        return power / (2 * Math.PI * cadence / 60);
    }

    /** As teeth: {@code 34x50}. */
    public String teeth() {
        return ring + "x" + sprocket;
    }
}
