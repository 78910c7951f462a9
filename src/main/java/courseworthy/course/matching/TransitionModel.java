package courseworthy.course.matching;

/**
 * How likely a rider goes from one position of the network to another, beside what the error of the track says: costs in natural logarithms
 * of odds. Constants without a source were chosen on tracks with Gauss-Markov noise over mapped ways; the results hardly change between half
 * and twice their values.
 */
final class TransitionModel {

    /** Cost of a step of {@link #OFF_STEP} off the network; on the right way the error alone costs 1 in the mean. */
    private static final double OFF_NETWORK = 2.5;
    /** Metres of the track that a step off the network means. */
    private static final double OFF_STEP = 20;
    /** Cost of leaving the network, and of entering it. */
    static final double SWITCH = 6;
    /** Cost of turning back on a way. */
    static final double U_TURN = 6;
    /** Cost of a right angle at a junction: courses go straight on more often than not. */
    private static final double TURN = 3;
    /** Cost of leaving a way that goes on: mappers split a way where something changes, and routes keep to ways. */
    private static final double LEAVE = 1.5;
    /** Metres of detour along the network that cost 1 (beta of Newson and Krumm 2009; 10 to 30 measured alike, 1 far worse). */
    private static final double DETOUR = 30;

    /** Samples farther apart than this, m, are points of a sparse track, between which a hairpin may lie, with so much more way, m. */
    static final double SPARSE = 25;
    private static final double LOOP = 40;

    private TransitionModel() {
    }

    /** Cost of a stretch of the track off the network. */
    static double offNetwork(double step) {
        return OFF_NETWORK * step / OFF_STEP;
    }

    /**
     * Cost of passing a junction.
     *
     * @param straightness cosine of the angle turned
     * @param leaves       whether the way goes on there and is left
     */
    static double junction(double straightness, boolean leaves) {
        return TURN * (1 - straightness) + (leaves ? LEAVE : 0);
    }

    /**
     * Cost of the distance along the network.
     *
     * @param distance m along the network
     * @param step     m along the track
     */
    static double detour(double distance, double step) {
        return distance > step ? (distance - step) / DETOUR : 0;
    }

    /**
     * The farthest that a rider may have come along the network, m: more than the track says, by its error and by the bends that it cuts.
     *
     * @param step       m along the track
     * @param innovation standard deviation of the error that is new in the step, m
     */
    static double reach(double step, double innovation) {
        return 1.5 * step + 2.5 * innovation + 10 + (step > SPARSE ? LOOP : 0);
    }
}
