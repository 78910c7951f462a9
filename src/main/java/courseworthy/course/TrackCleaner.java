package courseworthy.course;

import courseworthy.problem.Faults;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Makes a track of what a GPX file says: points repeated in one place go, segments too short to be a line go, points that lie far
 * off a line and come straight back go; what remains is measured along WGS84 geodesics ({@link GeodesicDistance}). Segments and tracks are never bridged. Elevation is left to {@link ElevationCleaner}. Everything taken
 * away is counted.
 */
final class TrackCleaner {

    /** Longest course, m (judgement: longer ones are ridden in stages; in 256 MB it is worked out in less than 2 s). */
    static final double LONGEST = 3_000_000;
    /** A point off the line lies further away than this, m, and than {@link #OFF_LINE_STEPS} mean steps. */
    private static final double OFF_LINE = 200;
    private static final int OFF_LINE_STEPS = 20;
    private static final int MOST_OFF_LINE = 10;
    /** Points closer than this, m, are one place. */
    private static final double SAME = 0.001;
    /** Points further apart than this on average make a sparse track, m. */
    private static final double SPARSE = 50;

    private final List<TrackRepair> repairs = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private int repeated;
    private int offLine;

    /**
     * A track with all that comes of it.
     *
     * @param line     null where the elevation is not known
     * @param counter  along the line; null where there is none
     * @param climbing what it counted; null where there is no line
     */
    record CleanedTrack(Track track, ElevationLine line, AscentCounter counter, Climbing climbing, List<TrackRepair> repairs, List<String> notes) {
    }

    /** @return null with a fault where the file holds no line */
    static CleanedTrack of(GpxFile gpx, String shown, Faults faults) {
        return new TrackCleaner().clean(gpx, shown, faults);
    }

    private CleanedTrack clean(GpxFile gpx, String shown, Faults faults) {
        List<Track.TrackPiece> raw = new ArrayList<>();
        double from = 0;
        for (GpxFile.Segment segment : gpx.segments()) {
            Track.TrackPiece piece = piece(segment, from);
            if (piece != null) {
                raw.add(piece);
                from = piece.distance()[piece.size() - 1];
            }
        }
        if (raw.isEmpty()) {
            faults.add(shown, 0, "", nothing(gpx), "a track or route with at least two points in different places",
                    "Export the course as a track.");
            return null;
        }
        if (from > LONGEST) {
            faults.add(shown, 0, "", "a track over 3000 km", "at most 3000 km", "Cut it into days.");
            return null;
        }
        count(gpx.route() ? "routes with less than two places dropped" : "segments with less than two places dropped",
                gpx.segments().size() - raw.size());
        count("repeated points removed", repeated);
        count("points far off the line removed", offLine);
        sparse(raw, from);
        ElevationCleaner elevations = new ElevationCleaner(raw, repairs, notes);
        return elevations.cleaned();
    }

    private void count(String what, int count) {
        if (count > 0) {
            repairs.add(new TrackRepair(what, count));
        }
    }

    private static String nothing(GpxFile gpx) {
        int points = gpx.points();
        if (points == 1) {
            return "a single point";
        }
        if (points > 1) {
            return points + " points, none of them in a line of two places";
        }
        String what = gpx.segments().isEmpty() ? "no track and no route" : "a track without points";
        return gpx.wayPoints() == 0 ? what : what + ", only " + gpx.wayPoints() + (gpx.wayPoints() == 1 ? " way point" : " way points") + named(gpx);
    }

    private static String named(GpxFile gpx) {
        return gpx.named().isEmpty() ? "" : " (" + String.join(", ", gpx.named()) + (gpx.named().size() < gpx.wayPoints() ? ", ..." : "") + ")";
    }

    private void sparse(List<Track.TrackPiece> pieces, double length) {
        int steps = 0;
        for (Track.TrackPiece piece : pieces) {
            steps += piece.size() - 1;
        }
        if (length / steps > SPARSE) {
            notes.add("The track's points lie " + Math.round(length / steps) + " m apart on average: shorter ramps are not in it.");
        }
    }

    /** The points of a segment in different places, measured from a distance; null where there are fewer than two. */
    private Track.TrackPiece piece(GpxFile.Segment segment, double from) {
        int n = segment.size();
        double[] lat = new double[n];
        double[] lon = new double[n];
        double[] elevation = new double[n];
        int size = 0;
        for (int i = 0; i < n; i++) {
            if (size > 0 && segment.lat()[i] == lat[size - 1] && segment.lon()[i] == lon[size - 1]) {
                repeated++;
                if (Double.isNaN(elevation[size - 1])) {
                    elevation[size - 1] = segment.elevation()[i];
                }
                continue;
            }
            lat[size] = segment.lat()[i];
            lon[size] = segment.lon()[i];
            elevation[size] = segment.elevation()[i];
            size++;
        }
        return measured(Arrays.copyOf(lat, size), Arrays.copyOf(lon, size), Arrays.copyOf(elevation, size), from);
    }

    private Track.TrackPiece measured(double[] lat, double[] lon, double[] elevation, double from) {
        if (lat.length < 2) {
            return null;
        }
        double[] step = new double[lat.length];
        double sum = 0;
        for (int i = 1; i < lat.length; i++) {
            step[i] = metres(lat, lon, i - 1, i);
            sum += step[i];
        }
        boolean[] off = same(step);
        if (off == null) {
            off = offLine(lat, lon, step, Math.max(OFF_LINE, OFF_LINE_STEPS * sum / (lat.length - 1)));
        }
        if (off != null) {
            return measured(without(lat, off), without(lon, off), without(elevation, off), from);
        }
        double[] distance = new double[lat.length];
        distance[0] = from;
        for (int i = 1; i < lat.length; i++) {
            distance[i] = distance[i - 1] + step[i];
        }
        return new Track.TrackPiece(lat, lon, distance, elevation);
    }

    private static double metres(double[] lat, double[] lon, int a, int b) {
        return GeodesicDistance.metres(lat[a], lon[a], lat[b], lon[b]);
    }

    /** Which points lie where the one before them lies, though written otherwise. Null where none do. */
    private boolean[] same(double[] step) {
        boolean[] off = null;
        for (int i = 1; i < step.length; i++) {
            if (step[i] < SAME) {
                off = off == null ? new boolean[step.length] : off;
                off[i] = true;
                repeated++;
            }
        }
        return off;
    }

    /** Which points lie off the line: reached and left by far steps, with the line going on where it was. Null where none do. */
    private boolean[] offLine(double[] lat, double[] lon, double[] step, double far) {
        boolean[] off = null;
        for (int i = 1; i < step.length - 1; i++) {
            if (step[i] <= far) {
                continue;
            }
            int back = i + 1;
            while (back < step.length && back - i < MOST_OFF_LINE && step[back] <= far) {
                back++;
            }
            if (back < step.length && step[back] > far && metres(lat, lon, i - 1, back) < Math.min(step[i], step[back]) / 5) {
                off = off == null ? new boolean[step.length] : off;
                Arrays.fill(off, i, back, true);
                offLine += back - i;
                i = back;
            }
        }
        return off;
    }

    private static double[] without(double[] values, boolean[] off) {
        double[] out = new double[values.length];
        int size = 0;
        for (int i = 0; i < values.length; i++) {
            if (!off[i]) {
                out[size++] = values[i];
            }
        }
        return Arrays.copyOf(out, size);
    }
}
