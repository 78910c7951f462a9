package courseworthy.course.matching;

/** When a match counts as sure: the track is accurate enough, the ground's tags are probable enough, and the track fits the way. */
final class Confidence {

    /** Most noise, m per axis (measured: with 30 m, one in ten of the confident places is wrong, since drift agrees with wrong ways). */
    private static final double MOST_NOISE = 20;
    /** Least posterior probability of the ground's tags. */
    private static final double LEAST_PROBABILITY = 0.97;

    private final boolean accurate;
    private final double sigma;

    /** @param sigma standard deviation of the error that the match allowed, m */
    Confidence(NoiseEstimator noise, double sigma) {
        accurate = Math.max(noise.noise(), noise.misfit()) <= MOST_NOISE;
        this.sigma = sigma;
    }

    /**
     * Which samples are sure.
     *
     * @param at          m along the track
     * @param across      m beside the way; NaN off the network
     * @param probability of the ground's tags
     */
    boolean[] sure(double[] at, double[] across, double[] probability) {
        ResidualTest residuals = new ResidualTest(at, across, sigma);
        boolean[] sure = new boolean[at.length];
        for (int i = 0; i < sure.length; i++) {
            sure[i] = accurate && !Double.isNaN(across[i]) && probability[i] >= LEAST_PROBABILITY && residuals.passes(i);
        }
        return sure;
    }
}
