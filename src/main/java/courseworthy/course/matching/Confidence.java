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
     * Which samples fit the ways, so that the true way seems to be among those on the map.
     *
     * @param at     m along the track
     * @param across m beside the way; NaN off the network
     */
    boolean[] fitting(double[] at, double[] across) {
        ResidualTest residuals = new ResidualTest(at, across, sigma);
        boolean[] fitting = new boolean[at.length];
        for (int i = 0; i < fitting.length; i++) {
            fitting[i] = accurate && !Double.isNaN(across[i]) && residuals.passes(i);
        }
        return fitting;
    }

    /** Whether a sample that fits is sure, by the probability of the ground's tags. */
    static boolean isSure(double probability) {
        return probability >= LEAST_PROBABILITY;
    }
}
