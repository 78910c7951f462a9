package courseworthy.ride;

/**
 * What came of one choice of inputs.
 *
 * @param seconds  riding time
 * @param power    uphill, in the middle of the ride, W
 * @param load     fourth-power mean, W
 * @param mean     plain mean, W
 * @param pedalled mean while pedalling, W
 * @param off      logarithm of what can be held for the time over the load
 * @param steps    step by step, where kept
 */
record RideRun(double seconds, double power, double load, double mean, double pedalled, double off, RideTrace steps) {

    /** The time at which what is off between power and time is made good, by how time goes with power. */
    RideRun corrected(double timeByPower) {
        double less = Math.abs(off) > 0.1 ? 0 : off;
        return new RideRun(seconds * Math.exp(timeByPower * less), power, load, mean, pedalled, off, steps);
    }
}
