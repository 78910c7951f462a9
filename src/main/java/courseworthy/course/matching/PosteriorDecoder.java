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

    /** Other ground from this probability on is one that the track may be on (judgement: one place in fifty). */
    private static final double POSSIBLE = 0.02;
    /** No mapped way from this probability on, and nothing can be said of the ground (judgement). */
    private static final double POSSIBLY_NONE = 0.05;

    private static final int[] NONE = {};

    private final Trellis trellis;
    private final double[] forward;
    private final int[] groups;
    /** By number of the ground's tags, for one sample at a time. */
    private final double[] sums;
    private final double[] confidence;
    private final int[][] possible;

    private PosteriorDecoder(Trellis trellis, int[] groups) {
        this.trellis = trellis;
        this.groups = groups;
        forward = new double[trellis.states()];
        sums = new double[Arrays.stream(groups).max().orElse(0) + 1];
        confidence = new double[trellis.samples()];
        possible = new int[trellis.samples()][];
    }

    /**
     * How sure the ground is at each sample.
     *
     * @param confidence probability of all states with the ground of the path's state
     * @param possible   a link of each ground that is possible; empty where there may be no mapped way
     */
    record Posterior(double[] confidence, int[][] possible) {
    }

    /**
     * How sure the ground is.
     *
     * @param path   state of each sample
     * @param groups number of the ground's tags of each link
     */
    static Posterior posterior(Trellis trellis, int[] path, int[] groups) {
        PosteriorDecoder decoder = new PosteriorDecoder(trellis, groups);
        decoder.passForward();
        decoder.passBackward(path);
        trellis.close();
        return new Posterior(decoder.confidence, decoder.possible);
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

    private void passBackward(int[] path) {
        int last = trellis.samples() - 1;
        double[] after = new double[trellis.off(last) - trellis.first(last) + 1];
        Arrays.fill(after, 1);
        weigh(last, path[last], after);
        for (int sample = last - 1; sample >= 0; sample--) {
            after = before(sample, after);
            weigh(sample, path[sample], after);
        }
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

    /** Sums the probability of the states of a sample by their ground. */
    private void weigh(int sample, int chosen, double[] after) {
        int first = trellis.first(sample);
        int off = trellis.off(sample);
        Arrays.fill(sums, 0);
        double none = forward[off] * after[off - first];
        double all = none;
        int[] link = new int[off - first];
        double[] best = new double[link.length];
        int found = 0;
        for (int state = first; state < off; state++) {
            double probability = forward[state] * after[state - first];
            if (probability == 0) {
                continue;
            }
            all += probability;
            int on = trellis.directed(sample, state) >> 1;
            int at = 0;
            while (at < found && groups[link[at]] != groups[on]) {
                at++;
            }
            if (at == found) {
                found++;
            }
            if (probability >= best[at]) {
                best[at] = probability;
                link[at] = on;
            }
            sums[groups[on]] += probability;
        }
        double same = chosen == off ? none : sums[groups[trellis.directed(sample, chosen) >> 1]];
        double whole = all;
        confidence[sample] = all > 0 ? same / all : 0;
        possible[sample] = all == 0 || none >= POSSIBLY_NONE * all ? NONE
                : Arrays.stream(link, 0, found).filter(each -> sums[groups[each]] >= POSSIBLE * whole).toArray();
    }
}
