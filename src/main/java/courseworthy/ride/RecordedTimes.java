package courseworthy.ride;

import courseworthy.course.GeodesicDistance;
import courseworthy.course.RecordedRide;
import courseworthy.course.Track;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How long each part of a course took in a recorded ride, standing apart. Points of the ride are laid on the track by place, heading and how far
 * the ride has come since the point before, so that a way out and a way back on one road are kept apart. Where the ride left the course, or stood,
 * no time is given.
 */
final class RecordedTimes {

    /** Places of the track that are looked at, one every so many metres (computing). */
    private static final double SPACING = 10;
    /** Farther from the track the ride was elsewhere, m: recorded points are off by up to about 25 m under trees (Tomastik and others 2017). */
    private static final double NEAR = 30;
    /** Side of the cells in which places are looked up, m (computing). */
    private static final double CELL = 50;
    /** Headings that differ by more, as a cosine, are of another direction (judgement: 60 degrees). */
    private static final double SAME_WAY = 0.5;
    /** The heading is taken over so many metres either way (judgement). */
    private static final double HEADING_OVER = 15;
    /** A jump along the track beyond what was ridden by more than so many metres and by half is another pass (judgement). */
    private static final double JUMP = 40;
    /** Who gets on more slowly than this over so many seconds stands, m/s and s: a receiver at rest wanders (judgement). */
    private static final double STANDING = 0.9;
    private static final double WINDOW = 10;
    /** A part is known where so much of it was recorded (judgement). */
    private static final double LEAST_COVERED = 0.8;
    /** Mean radius of the earth, m (exact to its digits, IUGG 1980, from memory). */
    private static final double EARTH = 6_371_009;

    private final double[] seconds;
    private final double[] metres;

    /** Of places on the track. */
    private final List<double[]> places = new ArrayList<>();
    private final Map<Long, List<Integer>> cells = new HashMap<>();
    private final double scale;

    private RecordedTimes(Track track) {
        int size = (int) Math.ceil(track.length() / SPACING) + 1;
        seconds = new double[size];
        metres = new double[size];
        scale = Math.cos(Math.toRadians(track.pieces().get(0).lat()[0]));
        track.pieces().forEach(this::index);
    }

    /** Times of a ride over a track. */
    static RecordedTimes of(Track track, RecordedRide ride) {
        RecordedTimes out = new RecordedTimes(track);
        ride.runs().forEach(out::lay);
        return out;
    }

    /** Riding time over a part of the course, s; the mean where it was ridden more than once, NaN where too little of it was recorded. */
    double between(double from, double to) {
        double time = 0;
        double metresRidden = 0;
        double covered = 0;
        for (int bin = (int) (from / SPACING); bin < Math.min(seconds.length, Math.ceil(to / SPACING)); bin++) {
            double within = (Math.min(to, (bin + 1) * SPACING) - Math.max(from, bin * SPACING)) / SPACING;
            time += seconds[bin] * within;
            metresRidden += metres[bin] * within;
            covered += Math.min(SPACING, metres[bin]) * within;
        }
        return covered < LEAST_COVERED * (to - from) ? Double.NaN : time / metresRidden * (to - from);
    }

    private double east(double lon) {
        return Math.toRadians(lon) * EARTH * scale;
    }

    private static double north(double lat) {
        return Math.toRadians(lat) * EARTH;
    }

    private static long cell(double east, double north) {
        return (long) Math.floor(east / CELL) * 4_000_037L + (long) Math.floor(north / CELL);
    }

    /** Places of a piece: east, north, m along the course, heading east and north. */
    private void index(Track.TrackPiece piece) {
        for (int i = 1; i < piece.size(); i++) {
            double length = piece.distance()[i] - piece.distance()[i - 1];
            int steps = (int) Math.max(1, Math.ceil(length / SPACING));
            double east = east(piece.lon()[i - 1]);
            double north = north(piece.lat()[i - 1]);
            double goesEast = east(piece.lon()[i]) - east;
            double goesNorth = north(piece.lat()[i]) - north;
            double goes = Math.max(1e-9, Math.hypot(goesEast, goesNorth));
            for (int step = 0; step < steps; step++) {
                double share = (step + 0.5) / steps;
                double[] place = {east + share * goesEast, north + share * goesNorth, piece.distance()[i - 1] + share * length, goesEast / goes, goesNorth / goes};
                cells.computeIfAbsent(cell(place[0], place[1]), none -> new ArrayList<>()).add(places.size());
                places.add(place);
            }
        }
    }

    private void lay(RecordedRide.RecordedRun run) {
        double[] gone = new double[run.size()];
        for (int i = 1; i < gone.length; i++) {
            gone[i] = gone[i - 1] + GeodesicDistance.metres(run.lat()[i - 1], run.lon()[i - 1], run.lat()[i], run.lon()[i]);
        }
        double[] moving = moving(run);
        double last = Double.NaN;
        int lastPoint = -1;
        for (int i = 0; i < run.size(); i++) {
            double ridden = lastPoint < 0 ? 0 : gone[i] - gone[lastPoint];
            double at = along(run, gone, i, Double.isNaN(last) ? Double.NaN : last + ridden);
            double on = at - last;
            if (Double.isNaN(at) || on <= 0 && on > -JUMP) {
                continue;
            }
            if (on > 0 && on < 1.5 * ridden + JUMP) {
                add(last, at, moving[i] - moving[lastPoint]);
            }
            last = at;
            lastPoint = i;
        }
    }

    /** Time to each point without that spent standing, s. */
    private static double[] moving(RecordedRide.RecordedRun run) {
        double[] out = new double[run.size()];
        for (int i = 1; i < out.length; i++) {
            out[i] = out[i - 1] + (moves(run, i) ? run.seconds()[i] - run.seconds()[i - 1] : 0);
        }
        return out;
    }

    /** Where on the course a point lies, the place nearest to it and to where it should be; NaN where it is off the course. */
    private double along(RecordedRide.RecordedRun run, double[] gone, int point, double expected) {
        int before = point;
        int after = point;
        while (before > 0 && gone[point] - gone[before] < HEADING_OVER) {
            before--;
        }
        while (after < run.size() - 1 && gone[after] - gone[point] < HEADING_OVER) {
            after++;
        }
        double goesEast = east(run.lon()[after]) - east(run.lon()[before]);
        double goesNorth = north(run.lat()[after]) - north(run.lat()[before]);
        double goes = Math.max(1e-9, Math.hypot(goesEast, goesNorth));
        double east = east(run.lon()[point]);
        double north = north(run.lat()[point]);
        double out = Double.NaN;
        double least = Double.POSITIVE_INFINITY;
        for (int x = -1; x <= 1; x++) {
            for (int y = -1; y <= 1; y++) {
                for (int place : cells.getOrDefault(cell(east + x * CELL, north + y * CELL), List.of())) {
                    double[] at = places.get(place);
                    double off = Math.hypot(at[0] - east, at[1] - north);
                    boolean sameWay = (at[3] * goesEast + at[4] * goesNorth) / goes >= SAME_WAY;
                    double jump = Double.isNaN(expected) ? 0 : Math.min(2 * NEAR, Math.abs(at[2] - expected));
                    if (off <= NEAR && sameWay && off + jump < least) {
                        least = off + jump;
                        out = at[2] + (east - at[0]) * at[3] + (north - at[1]) * at[4];
                    }
                }
            }
        }
        return out;
    }

    private static boolean moves(RecordedRide.RecordedRun run, int point) {
        int before = point - 1;
        while (before > 0 && run.seconds()[point] - run.seconds()[before] < WINDOW) {
            before--;
        }
        double lasted = run.seconds()[point] - run.seconds()[before];
        return lasted > 0 && GeodesicDistance.metres(run.lat()[before], run.lon()[before], run.lat()[point], run.lon()[point]) >= STANDING * lasted;
    }

    /** Shares time out over the course between two places. */
    private void add(double from, double to, double time) {
        for (int bin = (int) (from / SPACING); bin <= (int) (to / SPACING) && bin < seconds.length; bin++) {
            double within = Math.min(to, (bin + 1) * SPACING) - Math.max(from, bin * SPACING);
            seconds[bin] += time * within / (to - from);
            metres[bin] += within;
        }
    }
}
