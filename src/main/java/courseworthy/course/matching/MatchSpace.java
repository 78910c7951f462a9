package courseworthy.course.matching;

import java.util.Arrays;
import java.util.List;

/**
 * All that the match of every piece of a track shares: the network, cut into positions for one accuracy of the track.
 *
 * @param rates cost of a metre of each link, forward and backward
 * @param slots work space: a number for each position, -1 between uses
 */
record MatchSpace(RoadNetwork network, NetworkPositions positions, CandidateIndex index, TransitionDistances distances, EmissionModel emission,
        double[][] rates, int[] slots) {

    /** Metres between positions, in standard deviations of the track's error, and bounds of it, m: finer changes nothing, coarser blurs ways. */
    private static final double SPACING = 0.7;
    private static final double LEAST_SPACING = 4;
    private static final double MOST_SPACING = 10;

    /**
     * @param rates   cost of a metre of each link, forward and backward
     * @param sigma   standard deviation of the position error per axis, m
     * @param samples of all pieces of the track
     */
    static MatchSpace of(RoadNetwork network, double[][] rates, double sigma, List<TrackSamples> samples) {
        double spacing = Math.max(LEAST_SPACING, Math.min(MOST_SPACING, SPACING * sigma));
        NetworkPositions positions = NetworkPositions.of(network, spacing);
        EmissionModel emission = new EmissionModel(sigma, spacing);
        double chord = 0;
        double step = 0;
        for (TrackSamples each : samples) {
            chord = Math.max(chord, each.largestChord());
            step = Math.max(step, each.longestStep());
        }
        double bound = TransitionModel.reach(step, Math.sqrt(emission.innovation(step, chord)));
        int[] slots = new int[positions.size()];
        Arrays.fill(slots, -1);
        CandidateIndex index = new CandidateIndex(positions, Trellis.radius(emission, 0));
        return new MatchSpace(network, positions, index, new TransitionDistances(network, rates, bound), emission, rates, slots);
    }
}
