package courseworthy.course.matching;

import java.util.Arrays;

/**
 * The states of the hidden Markov model: at each sample of the track the positions near it, in either direction of travel, and one state
 * for being off the network. Numbers of states run through all samples.
 */
final class Trellis {

    /** Radius of the search, in standard deviations: beyond lie 0.2 % of the errors. */
    private static final double RADIUS = 3.5;
    /** Radius that is searched at least, m. */
    private static final double LEAST_RADIUS = 20;
    /** Most positions near a sample: the nearest (a dense town has some 150 within 100 m). */
    private static final int MOST_CANDIDATES = 256;

    final RoadNetwork network;
    final NetworkPositions positions;
    final TransitionDistances distances;
    final EmissionModel emission;
    final double[][] rates;
    final TrackSamples samples;
    private final int[] firstCandidate;
    private int[] candidates = new int[1024];
    private float[] east = new float[1024];
    private float[] north = new float[1024];
    private final int[] slots;
    private int slotted = -1;

    private int[] targets = new int[64];
    private double[] weights = new double[64];
    private int size;

    private double kept;
    private double innovation;
    private double reach;
    private double step;
    private double fromEast;
    private double fromNorth;

    Trellis(MatchSpace space, TrackSamples samples) {
        this.network = space.network();
        this.positions = space.positions();
        this.distances = space.distances();
        this.emission = space.emission();
        this.rates = space.rates();
        this.slots = space.slots();
        this.samples = samples;
        firstCandidate = new int[samples.size() + 1];
        for (int i = 0; i < samples.size(); i++) {
            collect(i, space.index());
        }
    }

    /** Radius of the search around a sample, m. */
    static double radius(EmissionModel emission, double chord) {
        return Math.max(LEAST_RADIUS, RADIUS * Math.sqrt(emission.variance(chord)));
    }

    private void collect(int sample, CandidateIndex index) {
        double radius = radius(emission, samples.chord(sample));
        int found = index.search(samples.lat(sample), samples.lon(sample), radius, MOST_CANDIDATES);
        int n = firstCandidate[sample];
        if (n + found > candidates.length) {
            int more = Math.max(n + found, 2 * candidates.length);
            candidates = Arrays.copyOf(candidates, more);
            east = Arrays.copyOf(east, more);
            north = Arrays.copyOf(north, more);
        }
        double eastScale = LocalPlane.eastScale(samples.lat(sample));
        double northScale = LocalPlane.northScale(samples.lat(sample));
        for (int i = 0; i < found; i++) {
            int position = index.found(i);
            candidates[n] = position;
            east[n] = (float) (LocalPlane.east(positions.lon(position), samples.lon(sample)) * eastScale);
            north[n++] = (float) ((samples.lat(sample) - positions.lat(position)) * northScale);
        }
        firstCandidate[sample + 1] = n;
    }

    int samples() {
        return samples.size();
    }

    /** First state of a sample. */
    int first(int sample) {
        return 2 * firstCandidate[sample] + sample;
    }

    /** The state off the network, the last of a sample. */
    int off(int sample) {
        return first(sample + 1) - 1;
    }

    int states() {
        return first(samples());
    }

    /** Position of a state on the network. */
    int position(int sample, int state) {
        return candidates[candidate(sample, state)];
    }

    /** Direction of the link of a state on the network. */
    int directed(int sample, int state) {
        return 2 * positions.link(position(sample, state)) + (state - first(sample) & 1);
    }

    /** Metres from a state on the network to the end of its link. */
    double remaining(int sample, int state) {
        int position = position(sample, state);
        int link = positions.link(position);
        int number = position - positions.first(link);
        int left = (state - first(sample) & 1) == 0 ? positions.count(link) - 1 - number : number;
        return (left + 0.5) * positions.cell(link);
    }

    /** Metres by which a sample lies farther along its link, in the direction in which it was drawn, than the position of its state. */
    double along(int sample, int state) {
        double[] unit = positions.direction(position(sample, state));
        return unit[0] * east(sample, state) + unit[1] * north(sample, state);
    }

    /** Metres by which a sample lies to the right of its way, in the direction of travel. */
    double across(int sample, int state) {
        double[] unit = positions.direction(position(sample, state));
        double right = unit[1] * east(sample, state) - unit[0] * north(sample, state);
        return (state - first(sample) & 1) == 0 ? right : -right;
    }

    private int candidate(int sample, int state) {
        return firstCandidate[sample] + (state - first(sample) >> 1);
    }

    /** Metres by which the track lies east of a state. */
    double east(int sample, int state) {
        return east[candidate(sample, state)];
    }

    /** Metres by which the track lies north of a state. */
    double north(int sample, int state) {
        return north[candidate(sample, state)];
    }

    /** Logarithm of the weight with which the first sample has a state. */
    double start(int state) {
        return state == off(0) ? -TransitionModel.SWITCH : entry(0, state);
    }

    /** The error of a sample alone, where the one before tells nothing. */
    private double entry(int sample, int state) {
        double x = east(sample, state);
        double y = north(sample, state);
        return -0.5 * (x * x + y * y) / emission.variance(samples.chord(sample));
    }

    private void prepare(int sample) {
        step = samples.at(sample + 1) - samples.at(sample);
        kept = emission.persistence(step);
        innovation = emission.innovation(step, Math.max(samples.chord(sample), samples.chord(sample + 1)));
        reach = TransitionModel.reach(step, Math.sqrt(innovation));
    }

    /** Makes ready for the transitions from a sample to the next. */
    void open(int sample) {
        close();
        slotted = sample + 1;
        for (int i = firstCandidate[slotted]; i < firstCandidate[slotted + 1]; i++) {
            slots[candidates[i]] = i - firstCandidate[slotted];
        }
        prepare(sample);
    }

    private void clear(int sample) {
        for (int i = firstCandidate[sample]; i < firstCandidate[sample + 1]; i++) {
            slots[candidates[i]] = -1;
        }
    }

    /** Leaves the space as it was found, for the next trellis. */
    void close() {
        if (slotted >= 0) {
            clear(slotted);
        }
        slotted = -1;
    }

    /** Finds the transitions from a state of the sample that was opened; {@link #target} and {@link #weight} have them. */
    int expand(int sample, int state) {
        size = 0;
        double off = TransitionModel.offNetwork(step);
        if (state == off(sample)) {
            add(off(sample + 1), -off);
            for (int i = first(sample + 1); i < off(sample + 1); i++) {
                add(i, entry(sample + 1, i) - TransitionModel.SWITCH);
            }
            return size;
        }
        add(off(sample + 1), -off - TransitionModel.SWITCH);
        fromEast = kept * east(sample, state);
        fromNorth = kept * north(sample, state);
        alongLink(sample, state);
        return size;
    }

    private void alongLink(int sample, int state) {
        int position = position(sample, state);
        int link = positions.link(position);
        int backward = state - first(sample) & 1;
        int number = position - positions.first(link);
        int left = backward == 0 ? positions.count(link) - 1 - number : number;
        double cell = positions.cell(link);
        int stride = backward == 0 ? 1 : -1;
        for (int i = 0; i <= left && i * cell <= reach; i++) {
            move(sample, position + stride * i, backward, i * cell, i * cell * rates[backward][link]);
        }
        move(sample, position, 1 - backward, 0, TransitionModel.U_TURN);
        double remaining = (left + 0.5) * cell;
        if (remaining < reach) {
            beyond(sample, 2 * link + backward, remaining);
        }
    }

    private void beyond(int sample, int directed, double remaining) {
        double paid = remaining * rates[directed & 1][directed >> 1];
        TransitionDistances.Reach found = distances.from(directed);
        for (int i = 0; i < found.link().length; i++) {
            double at = remaining + found.distance()[i];
            if (at > reach) {
                return;
            }
            int link = found.link()[i] >> 1;
            int backward = found.link()[i] & 1;
            double cell = positions.cell(link);
            int count = positions.count(link);
            int position = backward == 0 ? positions.first(link) : positions.first(link) + count - 1;
            double cost = paid + found.cost()[i];
            for (int j = 0; j < count && at + (j + 0.5) * cell <= reach; j++) {
                double on = (j + 0.5) * cell;
                move(sample, backward == 0 ? position + j : position - j, backward, at + on, cost + on * rates[backward][link]);
            }
        }
    }

    private void move(int sample, int position, int backward, double distance, double cost) {
        int slot = slots[position];
        if (slot < 0) {
            return;
        }
        int candidate = firstCandidate[sample + 1] + slot;
        double x = east[candidate] - fromEast;
        double y = north[candidate] - fromNorth;
        double weight = -0.5 * (x * x + y * y) / innovation - cost - TransitionModel.detour(distance, step);
        add(first(sample + 1) + 2 * slot + backward, weight);
    }

    private void add(int state, double weight) {
        if (size == targets.length) {
            targets = Arrays.copyOf(targets, size * 2);
            weights = Arrays.copyOf(weights, size * 2);
        }
        targets[size] = state;
        weights[size++] = weight;
    }

    int target(int i) {
        return targets[i];
    }

    double weight(int i) {
        return weights[i];
    }
}
