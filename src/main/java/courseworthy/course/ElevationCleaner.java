package courseworthy.course;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * Judges and cleans the elevation of a track; docs/explanation/elevation.md states the method. In order: elevation that cannot be real is called
 * out and not used; drop-outs (missing, or runs of zero) and spikes are filled in between their neighbours; what lies between jumps
 * is levelled ({@link ElevationOutliers}); the rest is resampled by distance, smoothed, and kept under a gradient
 * nobody rides. A sparse track stays straight between its points. The bounds are judgement from what wheels can do and from what
 * receivers and barometers show (common practice, no source).
 */
final class ElevationCleaner {

    /** Step of the resampled line, m. */
    static final double STEP = 10;
    /** Steepest gradient kept, as a fraction. */
    static final double STEEPEST = 0.5;
    /** A height of the ground below or above this is none, m: the Dead Sea's shore lies near -430 m, the highest roads near 5,900 m. */
    private static final double LOWEST = -500;
    private static final double HIGHEST = 6500;
    /** A constant height is believed over this distance at most, m. */
    private static final double LONGEST_CONSTANT = 500;
    /** A zero is no elevation where the ground beside it lies higher or lower by this, m, beyond {@link #STEEPEST}. */
    private static final double DROP_OUT = 15;
    /** By so many points on each side, those after the next within this distance, m. */
    private static final int NEIGHBOURS = 4;
    private static final double BESIDE = 200;
    /** Share of points that may lack a usable elevation. */
    private static final double MOST_LACKING = 0.5;

    /** How notes begin that say why a track's heights are not used. */
    static final String NO_ELEVATION = "The track has no elevation.";
    static final String NOT_BELIEVABLE = "The track's elevation is not believable and is not used.";
    private static final String FILLED_IN = "points without elevation filled in";
    private static final String DROP_OUTS = "elevation drop-outs filled in";
    private static final String SPIKES = "elevation spikes removed";
    private static final String JUMPS = "elevation jumps levelled";
    private static final String FLATTENED = "steps over 50 % flattened";
    /** What may be repaired of heights. */
    static final Set<String> REPAIRS = Set.of(FILLED_IN, DROP_OUTS, SPIKES, JUMPS, FLATTENED);

    private final List<Track.TrackPiece> raw;
    private final List<TrackRepair> repairs;
    private final List<String> notes;
    private int missing;
    private int dropOuts;
    private int spikes;
    private int jumps;
    private int flattened;

    ElevationCleaner(List<Track.TrackPiece> raw, List<TrackRepair> repairs, List<String> notes) {
        this.raw = raw;
        this.repairs = repairs;
        this.notes = notes;
    }

    TrackCleaner.CleanedTrack cleaned() {
        double[][] usable = new double[raw.size()][];
        for (int i = 0; i < usable.length; i++) {
            usable[i] = raw.get(i).elevation().clone();
        }
        Track.Elevation judged = judge(usable);
        if (judged == Track.Elevation.KNOWN) {
            for (int i = 0; i < usable.length; i++) {
                repair(raw.get(i).distance(), usable[i]);
            }
            if (jumps > Math.max(5, length() / 1000)) {
                judged = bogus("It jumps " + jumps + " times.");
            }
        }
        return judged == Track.Elevation.KNOWN ? known(usable) : unknown(judged);
    }

    private double length() {
        double[] last = raw.get(raw.size() - 1).distance();
        return last[last.length - 1];
    }

    private Track.Elevation bogus(String why) {
        notes.add(NOT_BELIEVABLE + " " + why);
        return Track.Elevation.BOGUS;
    }

    /** Looks at all points together; marks what is no elevation as NaN. */
    private Track.Elevation judge(double[][] pieces) {
        int all = 0;
        int zeros = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        int impossible = 0;
        for (double[] piece : pieces) {
            for (int i = 0; i < piece.length; i++) {
                all++;
                if (Double.isNaN(piece[i])) {
                    missing++;
                } else if (piece[i] < LOWEST || piece[i] > HIGHEST) {
                    piece[i] = Double.NaN;
                    impossible++;
                } else {
                    zeros += piece[i] == 0 ? 1 : 0;
                    least = Math.min(least, piece[i]);
                    most = Math.max(most, piece[i]);
                }
            }
        }
        spikes = impossible;
        if (missing == all) {
            notes.add(NO_ELEVATION);
            return Track.Elevation.MISSING;
        }
        if (missing + impossible > MOST_LACKING * all) {
            return bogus(missing + impossible + " of " + all + " points lack it or are impossible.");
        }
        if (least == most && length() > LONGEST_CONSTANT) {
            return bogus(least == 0 ? "It is zero throughout." : "It is " + LengthPhrases.tenths(least) + " m throughout.");
        }
        if (least != most && zeros > MOST_LACKING * all && most - least > DROP_OUT) {
            return bogus(zeros + " of " + all + " points are at exactly zero.");
        }
        if (least == most) {
            notes.add("The track's elevation is " + LengthPhrases.tenths(least) + " m throughout.");
        }
        return Track.Elevation.KNOWN;
    }

    /** Takes out what is no elevation and fills in between. */
    private void repair(double[] distance, double[] e) {
        zeroRuns(distance, e);
        spikesAndJumps(distance, e);
        fill(distance, e);
    }

    private static boolean impossible(double rise, double run, double spare) {
        return Math.abs(rise) > spare + STEEPEST * run;
    }

    /** Runs of exactly zero that no ground leads to: a device without a height writes zero. */
    private void zeroRuns(double[] distance, double[] e) {
        int n = e.length;
        for (int i = 0; i < n; i++) {
            if (e[i] != 0) {
                continue;
            }
            int to = i;
            while (to + 1 < n && !(Math.abs(e[to + 1]) > 0)) {
                to++;
            }
            int before = apart(distance, e, i, -1);
            int after = apart(distance, e, to, 1);
            if (before >= 0 && after >= 0 && before + after > 0) {
                for (int k = i; k <= to; k++) {
                    dropOuts += e[k] == 0 ? 1 : 0;
                    e[k] = Double.NaN;
                }
            }
            i = to;
        }
    }

    /**
     * From how many of the next points no ground leads to a zero; -1 where it does from one of them, so that one wrong neighbour does not
     * decide.
     */
    private static int apart(double[] distance, double[] e, int zero, int way) {
        int asked = 0;
        for (int k = zero + way; k >= 0 && k < e.length && asked < NEIGHBOURS; k += way) {
            double run = Math.abs(distance[k] - distance[zero]);
            if (asked > 0 && run > BESIDE) {
                break;
            }
            if (!Double.isNaN(e[k])) {
                asked++;
                if (!impossible(e[k], run, DROP_OUT)) {
                    return -1;
                }
            }
        }
        return asked;
    }

    private void spikesAndJumps(double[] distance, double[] e) {
        ElevationOutliers outliers = new ElevationOutliers(distance, e);
        spikes += outliers.remove();
        jumps += outliers.level();
    }

    private static int next(double[] e, int from) {
        int i = from;
        while (i < e.length && Double.isNaN(e[i])) {
            i++;
        }
        return i;
    }

    /** Straight lines over what was taken out; level beyond the first and last usable point. */
    private static void fill(double[] distance, double[] e) {
        int before = -1;
        for (int i = 0; i < e.length; i++) {
            if (!Double.isNaN(e[i])) {
                before = i;
                continue;
            }
            int after = next(e, i);
            if (before < 0 && after == e.length) {
                return;
            }
            if (before < 0) {
                e[i] = e[after];
            } else if (after == e.length) {
                e[i] = e[before];
            } else {
                double part = (distance[i] - distance[before]) / (distance[after] - distance[before]);
                e[i] = e[before] + part * (e[after] - e[before]);
            }
        }
    }

    private TrackCleaner.CleanedTrack unknown(Track.Elevation judged) {
        List<Track.TrackPiece> pieces = new ArrayList<>();
        for (Track.TrackPiece piece : raw) {
            double[] none = new double[piece.size()];
            Arrays.fill(none, Double.NaN);
            pieces.add(new Track.TrackPiece(piece.lat(), piece.lon(), piece.distance(), none));
        }
        return new TrackCleaner.CleanedTrack(new Track(List.copyOf(pieces), judged), null, null, null, repairs, notes);
    }

    private TrackCleaner.CleanedTrack known(double[][] filled) {
        bridgeUnknownPieces(filled);
        double[][] nodes = new double[filled.length][];
        double[][] smooth = new double[filled.length][];
        AscentMethods smoothings = new AscentMethods();
        List<Track.TrackPiece> pieces = new ArrayList<>();
        int size = 0;
        for (int i = 0; i < filled.length; i++) {
            Track.TrackPiece piece = raw.get(i);
            nodes[i] = nodes(piece.distance());
            double[] means = means(piece.distance(), filled[i], nodes[i]);
            smooth[i] = limited(average(means), nodes[i].length > 1 ? nodes[i][1] - nodes[i][0] : STEP);
            smoothings.add(nodes[i], means);
            pieces.add(new Track.TrackPiece(piece.lat(), piece.lon(), piece.distance(), at(piece.distance(), nodes[i], smooth[i])));
            size += nodes[i].length;
        }
        report();
        ElevationLine line = new ElevationLine(join(nodes, size), join(smooth, size), true, true);
        Track track = new Track(List.copyOf(pieces), Track.Elevation.KNOWN);
        AscentCounter counter = AscentCounter.along(line, AscentCounter.THRESHOLD);
        return new TrackCleaner.CleanedTrack(track, line, counter, smoothings.around(counter), repairs, notes);
    }

    /** A piece without any elevation lies level at the height of its neighbour. */
    private void bridgeUnknownPieces(double[][] filled) {
        for (int i = 1; i < filled.length; i++) {
            if (Double.isNaN(filled[i][0]) && !Double.isNaN(filled[i - 1][0])) {
                Arrays.fill(filled[i], filled[i - 1][filled[i - 1].length - 1]);
            }
        }
        for (int i = filled.length - 2; i >= 0; i--) {
            if (Double.isNaN(filled[i][0])) {
                Arrays.fill(filled[i], filled[i + 1][0]);
            }
        }
    }

    private void report() {
        count(FILLED_IN, missing);
        count(DROP_OUTS, dropOuts);
        count(SPIKES, spikes);
        count(JUMPS, jumps);
        count(FLATTENED, flattened);
    }

    private void count(String what, int count) {
        if (count > 0) {
            repairs.add(new TrackRepair(what, count));
        }
    }

    /** Even steps of about {@link #STEP} from the first to the last point. */
    private static double[] nodes(double[] distance) {
        double from = distance[0];
        double to = distance[distance.length - 1];
        int steps = (int) Math.max(1, Math.round((to - from) / STEP));
        double[] out = new double[steps + 1];
        for (int i = 0; i < steps; i++) {
            out[i] = from + (to - from) * i / steps;
        }
        out[steps] = to;
        return out;
    }

    /** The mean of the straight lines between the points over a step around each node, narrower towards the ends. */
    private static double[] means(double[] distance, double[] e, double[] nodes) {
        double[] out = new double[nodes.length];
        double half = (nodes[1] - nodes[0]) / 2;
        int low = 0;
        int high = 0;
        out[0] = e[0];
        for (int k = 1; k < nodes.length - 1; k++) {
            low = step(distance, nodes[k] - half, low);
            high = step(distance, nodes[k] + half, high);
            out[k] = area(distance, e, low, high, nodes[k] - half, nodes[k] + half) / (2 * half);
        }
        out[nodes.length - 1] = e[e.length - 1];
        return out;
    }

    /** The index of the straight line on which a distance lies, searched onward from another. */
    private static int step(double[] distance, double at, int from) {
        int i = from;
        while (i < distance.length - 2 && distance[i + 1] < at) {
            i++;
        }
        return i;
    }

    /** Under the lines from a distance on one to a distance on another; summed there alone, so that nothing elsewhere changes it. */
    private static double area(double[] distance, double[] e, int low, int high, double from, double to) {
        double sum = 0;
        for (int i = low; i <= high; i++) {
            double start = i == low ? from : distance[i];
            double end = i == high ? to : distance[i + 1];
            double slope = (e[i + 1] - e[i]) / (distance[i + 1] - distance[i]);
            sum += (end - start) * (e[i] + slope * (0.5 * (start + end) - distance[i]));
        }
        return sum;
    }

    /** The mean of each node and its neighbours; the ends stay. */
    private static double[] average(double[] values) {
        double[] out = values.clone();
        for (int i = 1; i < values.length - 1; i++) {
            out[i] = (values[i - 1] + values[i] + values[i + 1]) / 3;
        }
        return out;
    }

    /** Half-way between the highest line below and the lowest line above that are nowhere too steep; the same where nothing is. */
    private double[] limited(double[] values, double step) {
        double most = STEEPEST * step;
        double[] above = values.clone();
        double[] below = values.clone();
        for (int i = 1; i < values.length; i++) {
            above[i] = Math.max(above[i], above[i - 1] - most);
            below[i] = Math.min(below[i], below[i - 1] + most);
        }
        for (int i = values.length - 2; i >= 0; i--) {
            above[i] = Math.max(above[i], above[i + 1] - most);
            below[i] = Math.min(below[i], below[i + 1] + most);
        }
        double[] out = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            out[i] = above[i] == below[i] ? values[i] : (above[i] + below[i]) / 2;
            flattened += Math.abs(out[i] - values[i]) > 0.5 ? 1 : 0;
        }
        return out;
    }

    /** The smoothed line at the track's own points. */
    private static double[] at(double[] distance, double[] nodes, double[] smooth) {
        double[] out = new double[distance.length];
        int i = 0;
        for (int k = 0; k < out.length; k++) {
            i = step(nodes, distance[k], i);
            double part = (distance[k] - nodes[i]) / (nodes[i + 1] - nodes[i]);
            out[k] = smooth[i] + part * (smooth[i + 1] - smooth[i]);
        }
        return out;
    }

    private static double[] join(double[][] parts, int size) {
        double[] out = new double[size];
        int at = 0;
        for (double[] part : parts) {
            System.arraycopy(part, 0, out, at, part.length);
            at += part.length;
        }
        return out;
    }
}
