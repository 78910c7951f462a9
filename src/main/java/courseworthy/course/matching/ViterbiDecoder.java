package courseworthy.course.matching;

import java.util.Arrays;

/** Finds the likeliest sequence of states (Viterbi's algorithm, as Newson and Krumm 2009 use it). */
final class ViterbiDecoder {

    /** States so many natural logarithms behind the best are given up. */
    private static final double BEAM = 40;

    private ViterbiDecoder() {
    }

    /** The state of each sample. */
    static int[] path(Trellis trellis) {
        double[] score = new double[trellis.states()];
        int[] before = new int[trellis.states()];
        Arrays.fill(score, Double.NEGATIVE_INFINITY);
        for (int i = trellis.first(0); i <= trellis.off(0); i++) {
            score[i] = trellis.start(i);
        }
        for (int sample = 0; sample + 1 < trellis.samples(); sample++) {
            step(trellis, sample, score, before);
        }
        trellis.close();
        int[] path = new int[trellis.samples()];
        int last = trellis.samples() - 1;
        path[last] = best(score, trellis.first(last), trellis.off(last));
        for (int sample = last; sample > 0; sample--) {
            path[sample - 1] = before[path[sample]];
        }
        return path;
    }

    private static void step(Trellis trellis, int sample, double[] score, int[] before) {
        double least = score[best(score, trellis.first(sample), trellis.off(sample))] - BEAM;
        trellis.open(sample);
        for (int state = trellis.first(sample); state <= trellis.off(sample); state++) {
            double at = score[state];
            if (at < least) {
                continue;
            }
            int size = trellis.expand(sample, state);
            for (int i = 0; i < size; i++) {
                double reached = at + trellis.weight(i);
                int target = trellis.target(i);
                if (reached > score[target]) {
                    score[target] = reached;
                    before[target] = state;
                }
            }
        }
    }

    private static int best(double[] score, int first, int last) {
        int best = last;
        for (int i = first; i < last; i++) {
            if (score[i] > score[best]) {
                best = i;
            }
        }
        return best;
    }
}
