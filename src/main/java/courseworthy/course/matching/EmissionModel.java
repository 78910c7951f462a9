package courseworthy.course.matching;

/**
 * How far a track lies from the way, as a Gauss-Markov process: errors of receivers drift, so that places some metres apart share most of
 * their error. Newson and Krumm (2009) take errors as independent; here the error of a sample depends on the error of the one before, so
 * that a steady offset costs little and a jump from one parallel way to another costs much.
 */
final class EmissionModel {

    /** Distance over which errors lose all but 1/e of what they share, m (judgement: some 20 to 30 s of riding). */
    static final double CORRELATION = 100;
    /** Error of a single sample that is not shared with its neighbours, m (judgement: rounding of coordinates, drawing of ways). */
    private static final double JITTER = 1.5;

    private final double sigma;
    private final double spacing;

    /**
     * @param sigma   standard deviation of the position error per axis, m
     * @param spacing m between positions on the network
     */
    EmissionModel(double sigma, double spacing) {
        this.sigma = sigma;
        this.spacing = spacing;
    }

    double sigma() {
        return sigma;
    }

    /** Share of the error that is left after so many metres. */
    double persistence(double step) {
        return Math.exp(-step / CORRELATION);
    }

    /** Variance per axis of the error of a sample of which the one before says nothing, m2. */
    double variance(double chord) {
        return sigma * sigma + local(chord);
    }

    /** Variance per axis of the error that is new in a step, m2. */
    double innovation(double step, double chord) {
        double kept = persistence(step);
        return sigma * sigma * (1 - kept * kept) + local(chord);
    }

    private double local(double chord) {
        return JITTER * JITTER + spacing * spacing / 12 + chord * chord;
    }
}
