package courseworthy.course.matching;

import courseworthy.course.Track;

/** Places at an even spacing along a piece of a track, its ends included: the observations of the match. */
final class TrackSamples {

    /**
     * Standard error of a place between two points of the track, as a share of its distance from the nearer one: the chord leaves out what
     * the way does between them (measured on mapped ways thinned to a point every 50 and every 100 m).
     */
    private static final double CHORD_ERROR = 0.08;

    /** Largest such error, m: where points lie farther apart, the track says little of what is between. */
    private static final double MOST_CHORD_ERROR = 30;

    /** Points farther apart than this have samples between them, m (Newson and Krumm 2009: matches hold to some 30 s between points). */
    private static final double FAR = 100;

    private final double[] at;
    private final double[] lat;
    private final double[] lon;
    private final double[] chord;

    private TrackSamples(int size) {
        at = new double[size];
        lat = new double[size];
        lon = new double[size];
        chord = new double[size];
    }

    /**
     * Samples a piece: evenly where its points lie close together, at the points themselves where they lie farther apart, with more between
     * those that lie very far apart.
     *
     * @param spacing m along the track, at most, where points lie close
     */
    static TrackSamples of(Track.TrackPiece piece, double spacing) {
        double[] distance = piece.distance();
        double[] at = new double[16 + piece.size() + (int) ((distance[piece.size() - 1] - distance[0]) / Math.min(spacing, FAR))];
        int size = 0;
        at[size++] = distance[0];
        for (int from = 0; from < piece.size() - 1; ) {
            int to = from + 1;
            boolean sparse = distance[to] - distance[from] > spacing;
            while (!sparse && to < piece.size() - 1 && distance[to + 1] - distance[to] <= spacing) {
                to++;
            }
            double length = distance[to] - distance[from];
            int steps = (int) Math.ceil(length / (sparse ? FAR : spacing));
            for (int i = 1; i < steps; i++) {
                at[size++] = distance[from] + length * i / steps;
            }
            at[size++] = distance[to];
            from = to;
        }
        return at(piece, at, size);
    }

    private static TrackSamples at(Track.TrackPiece piece, double[] at, int size) {
        TrackSamples out = new TrackSamples(size);
        int point = 0;
        for (int i = 0; i < size; i++) {
            while (point < piece.size() - 2 && piece.distance()[point + 1] < at[i]) {
                point++;
            }
            out.place(i, at[i], piece, point);
        }
        return out;
    }

    private void place(int i, double where, Track.TrackPiece piece, int point) {
        double[] distance = piece.distance();
        double share = Math.min(1, Math.max(0, (where - distance[point]) / (distance[point + 1] - distance[point])));
        at[i] = where;
        lat[i] = piece.lat()[point] + share * (piece.lat()[point + 1] - piece.lat()[point]);
        double east = piece.lon()[point] + share * LocalPlane.east(piece.lon()[point], piece.lon()[point + 1]);
        lon[i] = east > 180 ? east - 360 : east < -180 ? east + 360 : east;
        chord[i] = Math.min(MOST_CHORD_ERROR, CHORD_ERROR * Math.max(0, Math.min(where - distance[point], distance[point + 1] - where)));
    }

    /** Some of the samples. */
    TrackSamples part(int from, int to) {
        TrackSamples out = new TrackSamples(to - from);
        System.arraycopy(at, from, out.at, 0, to - from);
        System.arraycopy(lat, from, out.lat, 0, to - from);
        System.arraycopy(lon, from, out.lon, 0, to - from);
        System.arraycopy(chord, from, out.chord, 0, to - from);
        return out;
    }

    int size() {
        return at.length;
    }

    /** Metres along the track. */
    double at(int i) {
        return at[i];
    }

    double lat(int i) {
        return lat[i];
    }

    double lon(int i) {
        return lon[i];
    }

    /** Longest step between samples, m. */
    double longestStep() {
        double longest = 0;
        for (int i = 1; i < at.length; i++) {
            longest = Math.max(longest, at[i] - at[i - 1]);
        }
        return longest;
    }

    /** Largest standard error from lying between two points of the track, m. */
    double largestChord() {
        double largest = 0;
        for (double each : chord) {
            largest = Math.max(largest, each);
        }
        return largest;
    }

    /** Standard error from lying between two points of the track, m. */
    double chord(int i) {
        return chord[i];
    }
}
