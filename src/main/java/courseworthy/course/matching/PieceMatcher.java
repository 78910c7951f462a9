package courseworthy.course.matching;

import courseworthy.course.Track;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Matches one piece of a track, window by window, which bounds the memory. */
final class PieceMatcher {

    /** Samples that are matched at a time: 40 km. */
    private static final int WINDOW = 2000;
    /** Samples by which windows overlap on either side: 1 km, after which what was before hardly matters. */
    private static final int MARGIN = 50;

    private final MatchSpace space;
    private final int[] groups;
    private final TrackSamples samples;
    private final WaySequence ways;
    private final double[] at;
    private final double[] probability;
    private final double[] across;

    /** @param groups number of the ground's tags of each link; null where no probabilities are wanted */
    PieceMatcher(MatchSpace space, int[] groups, Track.Piece piece, TrackSamples samples) {
        this.space = space;
        this.groups = groups;
        this.samples = samples;
        ways = new WaySequence(piece);
        at = new double[samples.size()];
        probability = new double[samples.size()];
        across = new double[samples.size()];
    }

    /** @param noise takes how far the samples lie beside their ways */
    void match(NoiseEstimator noise) {
        for (int from = 0; from < samples.size(); from += WINDOW) {
            match(from, Math.min(samples.size(), from + WINDOW));
        }
        noise.add(at, across);
    }

    private void match(int from, int to) {
        int first = Math.max(0, from - MARGIN);
        Trellis trellis = new Trellis(space, samples.part(first, Math.min(samples.size(), to + MARGIN)));
        int[] path = ViterbiDecoder.path(trellis);
        for (int i = from; i < to; i++) {
            at[i] = samples.at(i);
            across[i] = path[i - first] == trellis.off(i - first) ? Double.NaN : trellis.across(i - first, path[i - first]);
        }
        if (groups != null) {
            System.arraycopy(PosteriorDecoder.confidence(trellis, path, groups), from - first, probability, from, to - from);
            ways.add(trellis, path, from - first, to - first);
        }
    }

    /** The ways with how sure each is; a way is cut where that changes. */
    List<MatchedPiece> pieces(Confidence confidence) {
        boolean[] sure = confidence.sure(at, across, probability);
        List<MatchedPiece> pieces = new ArrayList<>();
        int sample = 0;
        for (int i = 0; i < ways.size(); i++) {
            double from = ways.start(i);
            while (from < ways.end(i)) {
                while (end(sample) <= from) {
                    sample++;
                }
                int last = sample;
                while (end(last) < ways.end(i) && sure[last + 1] == sure[sample]) {
                    last++;
                }
                double to = Math.min(ways.end(i), end(last));
                double least = Arrays.stream(probability, sample, last + 1).min().orElseThrow();
                pieces.add(new MatchedPiece(from, to, ways.way(i), least, sure[sample] && ways.way(i) != null));
                from = to;
            }
        }
        return pieces;
    }

    /** Where the part of the track that a sample stands for ends, m. */
    private double end(int sample) {
        return sample + 1 < samples.size() ? (at[sample] + at[sample + 1]) / 2 : Double.POSITIVE_INFINITY;
    }
}
