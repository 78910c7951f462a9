package courseworthy.course.matching;

import courseworthy.course.Track;
import courseworthy.course.extract.MapWay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

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
    /** Links of the grounds that are possible at each sample. */
    private final int[][] possible;

    /** @param groups number of the ground's tags of each link; null where no probabilities are wanted */
    PieceMatcher(MatchSpace space, int[] groups, Track.TrackPiece piece, TrackSamples samples) {
        this.space = space;
        this.groups = groups;
        this.samples = samples;
        ways = new WaySequence(piece);
        at = new double[samples.size()];
        probability = new double[samples.size()];
        across = new double[samples.size()];
        possible = new int[samples.size()][];
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
            PosteriorDecoder.Posterior posterior = PosteriorDecoder.posterior(trellis, path, groups);
            System.arraycopy(posterior.confidence(), from - first, probability, from, to - from);
            System.arraycopy(posterior.possible(), from - first, possible, from, to - from);
            ways.add(trellis, path, from - first, to - first);
        }
    }

    /** The ways with how sure each is; a way is cut where that changes. */
    List<MatchedPiece> pieces(Confidence confidence) {
        boolean[] fits = confidence.fitting(at, across);
        List<MatchedPiece> pieces = new ArrayList<>();
        int sample = 0;
        for (int i = 0; i < ways.size(); i++) {
            double from = ways.start(i);
            while (from < ways.end(i)) {
                while (end(sample) <= from) {
                    sample++;
                }
                int last = sample;
                while (end(last) < ways.end(i) && isSure(fits, last + 1) == isSure(fits, sample)) {
                    last++;
                }
                double to = Math.min(ways.end(i), end(last));
                double least = Arrays.stream(probability, sample, last + 1).min().orElseThrow();
                boolean sure = isSure(fits, sample) && ways.way(i) != null;
                pieces.add(new MatchedPiece(from, to, ways.way(i), least, sure, sure ? List.of() : possible(fits, sample, last)));
                from = to;
            }
        }
        return pieces;
    }

    private boolean isSure(boolean[] fits, int sample) {
        return fits[sample] && Confidence.isSure(probability[sample]);
    }

    /** A way of each ground that is possible at some of the samples; empty where one of them fits none, or may be on no mapped way. */
    private List<MapWay> possible(boolean[] fits, int first, int last) {
        Map<Integer, MapWay> out = new TreeMap<>();
        for (int sample = first; sample <= last; sample++) {
            if (!fits[sample] || possible[sample].length == 0) {
                return List.of();
            }
            for (int link : possible[sample]) {
                out.putIfAbsent(groups[link], space.network().way(link));
            }
        }
        return List.copyOf(out.values());
    }

    /** Where the part of the track that a sample stands for ends, m. */
    private double end(int sample) {
        return sample + 1 < samples.size() ? (at[sample] + at[sample + 1]) / 2 : Double.POSITIVE_INFINITY;
    }
}
