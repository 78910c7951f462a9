package courseworthy.ride;

/** The power that a rider can hold for the time that a ride takes with it, found by riding until both agree. */
final class SustainablePower {

    /** After so many rounds the last is taken (computing); a handful is usual. */
    private static final int MOST_ROUNDS = 40;
    /** How fast load outgrows what can be held as power grows, to begin with (computing). */
    private static final double USUAL_SLOPE = 0.95;

    private final RideAssumptions basis;
    private double expected;

    SustainablePower(RideAssumptions basis) {
        this.basis = basis;
    }

    /** Sets the time over which the rider tires, s. */
    void expect(double seconds) {
        expected = seconds;
    }

    /** The time over which the rider tires, s. */
    double expected() {
        return expected;
    }

    /** Finds the power whose fourth-power mean over the ride is what can be held for the time the ride takes with it. */
    RideRun held(RideSimulator ridden, RideParameters in, RideRun guess, double agreed, boolean keep) {
        double most = RideSimulator.MOST_PEDALLED * hour(in);
        double power = Math.min(most, guess.power() * in.powerFactor);
        double before = 0;
        double offBefore = 0;
        double off = 0;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            off = ride(ridden, in, power, keep);
            if (Math.abs(off) < agreed || power >= most && off > 0) {
                break;
            }
            double slope = round == 0 ? USUAL_SLOPE : -(off - offBefore) / Math.log(power / before);
            before = power;
            offBefore = off;
            power = Math.min(most, power * Math.exp(Math.max(-0.7, Math.min(0.7, off / Math.max(0.4, Math.min(3, slope))))));
        }
        return run(ridden, power, power >= most && off > 0 ? 0 : off, keep);
    }

    /** Rides at a power uphill and returns the logarithm of what can be held over what was. */
    double ride(RideSimulator ridden, RideParameters in, double power, boolean keep) {
        ridden.ride(in, basis.laps(), power, hour(in), expected, keep);
        return Math.log(target(in, ridden.seconds) / ridden.load());
    }

    RideRun run(RideSimulator ridden, double power, double off, boolean keep) {
        return new RideRun(ridden.seconds, power, ridden.load(), ridden.mean(), ridden.pedalled(), off,
                keep ? ridden.trace(basis.laps()) : null);
    }

    /** Hour power, W. */
    double hour(RideParameters in) {
        return basis.pacing().hourPower().mid() * in.powerFactor;
    }

    /** What can be held for a time and is meant to be ridden, W. */
    private double target(RideParameters in, double seconds) {
        return hour(in) * Endurance.share(seconds, 0) * basis.pacing().intensity().mid();
    }
}
