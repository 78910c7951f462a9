package courseworthy.course.matching;

import courseworthy.course.Track;
import courseworthy.course.extract.MapExtract;
import java.util.ArrayList;
import java.util.List;

/**
 * Lays a track on the ways of a map by a hidden Markov model: Newson P and Krumm J, Hidden Markov map matching through noise and sparseness,
 * ACM SIGSPATIAL 2009. The steps:
 * <ol>
 * <li>the ways become a graph of links between junctions ({@link RoadNetwork}), and positions along them the states
 * ({@link NetworkPositions}, found by {@link CandidateIndex});
 * <li>samples of the track are the observations ({@link TrackSamples}); how likely one is follows from its error, of which neighbours share
 * most ({@link EmissionModel});
 * <li>how likely the rider goes from state to state follows from distances along the network ({@link TransitionDistances},
 * {@link TransitionModel}, {@link WayPreference});
 * <li>a first, tolerant match shows how accurate the track is ({@link NoiseEstimator}); the second uses that;
 * <li>the likeliest path ({@link ViterbiDecoder}) gives the ways ({@link WaySequence}), the probability of all paths together
 * ({@link PosteriorDecoder}) and the distance from the way ({@link ResidualTest}) say how sure they are.
 * </ol>
 */
public final class MapMatcher {

    /** Metres between samples, and between those of the first match (measured: 10 and 20 m do alike, 40 m worse). */
    private static final double STEP = 20;
    private static final double FIRST_STEP = 30;
    /** Standard deviation per axis that the first match allows, m: most tracks have less (Tomaštík et al. 2017: 2 to 12 m). */
    private static final double FIRST_SIGMA = 15;
    /** By how much more than the estimated error is allowed (measured: 1.1 to 1.35 do alike, 1 is worse). */
    private static final double TOLERANCE = 1.15;
    /** Least standard deviation that is allowed, m: less than the 4.07 m of a receiver (Newson and Krumm 2009), since courses are drawn on maps. */
    private static final double LEAST_SIGMA = 3;

    private final Track track;
    private final MapExtract extract;
    private final RoadNetwork network;
    private final double[][] rates;

    private MapMatcher(Track track, MapExtract extract) {
        this.track = track;
        this.extract = extract;
        network = RoadNetwork.of(extract.ways());
        rates = WayPreference.rates(network);
    }

    /** Matches a track with the ways of a map. */
    public static MatchedTrack match(Track track, MapExtract extract) {
        return new MapMatcher(track, extract).match();
    }

    private MatchedTrack match() {
        double first = firstNoise();
        double sigma = Double.isNaN(first) ? FIRST_SIGMA : Math.max(LEAST_SIGMA, TOLERANCE * first);
        List<TrackSamples> samples = samples(STEP);
        MatchSpace space = MatchSpace.of(network, rates, sigma, samples);
        int[] groups = GroundTags.groups(network);
        NoiseEstimator noise = new NoiseEstimator();
        List<PieceMatcher> matchers = new ArrayList<>();
        for (int i = 0; i < samples.size(); i++) {
            PieceMatcher matcher = new PieceMatcher(space, groups, track.pieces().get(i), samples.get(i));
            matcher.match(noise);
            matchers.add(matcher);
        }
        Confidence confidence = new Confidence(noise, sigma);
        List<MatchedPiece> pieces = new ArrayList<>();
        for (PieceMatcher matcher : matchers) {
            pieces.addAll(matcher.pieces(confidence));
        }
        return new MatchedTrack(pieces, noise.noise(), outside(samples));
    }

    private double firstNoise() {
        List<TrackSamples> samples = samples(FIRST_STEP);
        MatchSpace space = MatchSpace.of(network, rates, FIRST_SIGMA, samples);
        NoiseEstimator noise = new NoiseEstimator();
        for (int i = 0; i < samples.size(); i++) {
            new PieceMatcher(space, null, track.pieces().get(i), samples.get(i)).match(noise);
        }
        return noise.noise();
    }

    private List<TrackSamples> samples(double step) {
        List<TrackSamples> samples = new ArrayList<>();
        for (Track.TrackPiece piece : track.pieces()) {
            samples.add(TrackSamples.of(piece, step));
        }
        return samples;
    }

    private double outside(List<TrackSamples> pieces) {
        double metres = 0;
        for (TrackSamples samples : pieces) {
            boolean before = extract.covers(samples.lat(0), samples.lon(0));
            for (int i = 1; i < samples.size(); i++) {
                boolean now = extract.covers(samples.lat(i), samples.lon(i));
                metres += (samples.at(i) - samples.at(i - 1)) * ((before ? 0 : 0.5) + (now ? 0 : 0.5));
                before = now;
            }
        }
        return metres;
    }
}
