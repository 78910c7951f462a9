package courseworthy.course.matching;

import java.util.Arrays;

/**
 * Finds how probable each state is, given the whole piece of track (forward-backward algorithm; Rabiner 1989), summed over the states
 * whose ways have the same tags of the ground.
 */
final class PosteriorDecoder {

    /** States with less than this share of the probability so far are given up. */
    private static final double LEAST = 1e-9;

    /** Logarithm of the smallest weight that is followed. */
    private static final double LEAST_WEIGHT = -40;

    private final Trellis trellis;
    private final double[] forward;

    private PosteriorDecoder(Trellis trellis) {
        this.trellis = trellis;
        forward = new double[trellis.states()];
    }

    /**
     * The probability, at each sample, of all states with the ground of the path's state.
     *
     * @param path   state of each sample
     * @param groups number of the ground's tags of each link
     */
    static double[] confidence(Trellis trellis, int[] path, int[] groups) {
        PosteriorDecoder decoder = new PosteriorDecoder(trellis);
        decoder.passForward();
        double[] confidence = decoder.passBackward(path, groups);
        trellis.close();
        return confidence;
    }

    private void passForward() {
        double start = Double.NEGATIVE_INFINITY;
        for (int i = trellis.first(0); i <= trellis.off(0); i++) {
            start = Math.max(start, trellis.start(i));
        }
        for (int i = trellis.first(0); i <= trellis.off(0); i++) {
            forward[i] = Math.exp(trellis.start(i) - start);
        }
        for (int sample = 0; sample + 1 < trellis.samples(); sample++) {
            scale(forward, trellis.first(sample), trellis.off(sample));
            trellis.open(sample);
            for (int state = trellis.first(sample); state <= trellis.off(sample); state++) {
                if (forward[state] >= LEAST) {
                    spread(sample, state);
                }
            }
        }
    }

    private void spread(int sample, int state) {
        double at = forward[state];
        int size = trellis.expand(sample, state);
        for (int i = 0; i < size; i++) {
            double weight = trellis.weight(i);
            if (weight > LEAST_WEIGHT) {
                forward[trellis.target(i)] += at * Math.exp(weight);
            }
        }
    }

    private static void scale(double[] values, int first, int last) {
        double sum = 0;
        for (int i = first; i <= last; i++) {
            sum += values[i];
        }
        for (int i = first; i <= last; i++) {
            values[i] /= sum;
        }
    }

    private double[] passBackward(int[] path, int[] groups) {
        int last = trellis.samples() - 1;
        double[] confidence = new double[last + 1];
        double[] after = new double[trellis.off(last) - trellis.first(last) + 1];
        Arrays.fill(after, 1);
        confidence[last] = share(last, path[last], groups, after);
        for (int sample = last - 1; sample >= 0; sample--) {
            after = before(sample, after);
            confidence[sample] = share(sample, path[sample], groups, after);
        }
        return confidence;
    }

    private double[] before(int sample, double[] after) {
        int first = trellis.first(sample);
        int next = trellis.first(sample + 1);
        double[] before = new double[trellis.off(sample) - first + 1];
        trellis.open(sample);
        for (int state = first; state <= trellis.off(sample); state++) {
            if (forward[state] < LEAST) {
                continue;
            }
            int size = trellis.expand(sample, state);
            double sum = 0;
            for (int i = 0; i < size; i++) {
                double weight = trellis.weight(i);
                if (weight > LEAST_WEIGHT) {
                    sum += after[trellis.target(i) - next] * Math.exp(weight);
                }
            }
            before[state - first] = sum;
        }
        scale(before, 0, before.length - 1);
        return before;
    }

    private double share(int sample, int chosen, int[] groups, double[] after) {
        int first = trellis.first(sample);
        int off = trellis.off(sample);
        int group = chosen == off ? -1 : groups[trellis.directed(sample, chosen) >> 1];
        double same = 0;
        double all = 0;
        for (int state = first; state <= off; state++) {
            double probability = forward[state] * after[state - first];
            if (probability == 0) {
                continue;
            }
            all += probability;
            if (group == (state == off ? -1 : groups[trellis.directed(sample, state) >> 1])) {
                same += probability;
            }
        }
        return all > 0 ? same / all : 0;
    }
}
