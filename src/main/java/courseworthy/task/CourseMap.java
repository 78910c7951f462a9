package courseworthy.task;

import courseworthy.course.Course;
import courseworthy.course.Stretch;
import courseworthy.course.Surface;
import courseworthy.course.Track;
import java.util.ArrayList;
import java.util.List;

/**
 * The line of a lap seen from above, north up, with the surface along it: metres east and north of the middle of its bounds, on the plane that
 * touches the ground there. Over the size of a course that plane is good to far less than a line's width.
 *
 * @param legs       pieces of one surface, in order
 * @param kilometres where each kilometre of the lap ends, the first at 0
 * @param tolerance  how far the line drawn may be from the track's points, m
 */
public record CourseMap(List<MapLeg> legs, List<MapPoint> kilometres, double tolerance) {

    /** Metres to a degree of latitude on a sphere of the earth's volume: 6371.0 km times pi over 180 (IUGG mean radius). */
    private static final double METRES_PER_DEGREE = 6_371_000 * Math.PI / 180;
    /** So many parts of the longer side may be off: half a pixel of a map 430 pixels wide (computing). */
    private static final double PARTS = 860;
    /** Nearer to each other than this start and end are one place, m (judgement). */
    private static final double LOOP = 200;
    /** Degrees; exact by definition. */
    private static final double HALF_ROUND = 180;
    private static final double KILOMETRE = 1000;

    public CourseMap {
        legs = List.copyOf(legs);
        kilometres = List.copyOf(kilometres);
    }

    /** A place, m. */
    public record MapPoint(double east, double north) {
    }

    /**
     * A piece of the line.
     *
     * @param surface null where not known
     * @param from    m from the start of the lap
     * @param to      m from the start of the lap
     * @param points  in order
     */
    public record MapLeg(Surface surface, double from, double to, List<MapPoint> points) {

        public MapLeg {
            points = List.copyOf(points);
        }
    }

    /** How far the end is from the start as the crow flies, m. */
    public double apart() {
        MapPoint start = legs.get(0).points().get(0);
        List<MapPoint> last = legs.get(legs.size() - 1).points();
        MapPoint end = last.get(last.size() - 1);
        return Math.hypot(end.east() - start.east(), end.north() - start.north());
    }

    /** Whether it ends where it starts, as near as receivers tell. */
    public boolean isLoop() {
        return apart() < LOOP;
    }

    /** Null where no track is known. */
    static CourseMap of(Course course) {
        return course.track() == null ? null : new Maker(course).map();
    }

    /** Makes one map. */
    private static final class Maker {
        private final Course course;
        private final double middleLat;
        private final double middleLon;
        private final double perDegreeEast;
        private final double tolerance;
        /** Added to longitudes west of Greenwich where the track crosses the meridian of 180 degrees. */
        private final double west;
        private final List<MapLeg> legs = new ArrayList<>();
        private final List<MapPoint> kilometres = new ArrayList<>();
        private final double[] ends;
        private int stretch;
        private List<MapPoint> open = new ArrayList<>();
        private double from;

        Maker(Course course) {
            this.course = course;
            double[] lat = bounds(true, 0);
            double[] written = bounds(false, 0);
            west = written[1] - written[0] > HALF_ROUND ? 2 * HALF_ROUND : 0;
            double[] lon = bounds(false, west);
            middleLat = (lat[0] + lat[1]) / 2;
            middleLon = (lon[0] + lon[1]) / 2;
            perDegreeEast = METRES_PER_DEGREE * Math.cos(Math.toRadians(middleLat));
            tolerance = Math.max((lat[1] - lat[0]) * METRES_PER_DEGREE, (lon[1] - lon[0]) * perDegreeEast) / PARTS;
            ends = ends();
        }

        private double[] bounds(boolean latitude, double toTheWest) {
            double[] out = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
            for (Track.TrackPiece piece : course.track().pieces()) {
                for (double each : latitude ? piece.lat() : piece.lon()) {
                    double at = each < 0 ? each + toTheWest : each;
                    out[0] = Math.min(out[0], at);
                    out[1] = Math.max(out[1], at);
                }
            }
            return out;
        }

        /** Ends of the stretches along the track. */
        private double[] ends() {
            double scale = course.track().length() / course.length();
            double[] out = new double[course.stretches().size()];
            double sum = 0;
            for (int i = 0; i < out.length; i++) {
                sum += course.stretches().get(i).length() * scale;
                out[i] = sum;
            }
            out[out.length - 1] = course.track().length();
            return out;
        }

        CourseMap map() {
            for (Track.TrackPiece piece : course.track().pieces()) {
                for (int i = 0; i < piece.size(); i++) {
                    if (i > 0) {
                        along(piece, i);
                    }
                    open.add(place(piece.lat()[i], piece.lon()[i]));
                    if (kilometres.isEmpty()) {
                        kilometres.add(open.get(0));
                    }
                }
                close(piece.distance()[piece.size() - 1]);
                open = new ArrayList<>();
            }
            return new CourseMap(legs, kilometres, tolerance);
        }

        /** From the point before to a point: kilometres that end between, and stretches. */
        private void along(Track.TrackPiece piece, int i) {
            double before = piece.distance()[i - 1];
            double after = piece.distance()[i];
            while (kilometres.size() * KILOMETRE <= after && kilometres.size() * KILOMETRE > before) {
                kilometres.add(between(piece, i, kilometres.size() * KILOMETRE));
            }
            while (stretch < ends.length - 1 && ends[stretch] < after) {
                MapPoint at = between(piece, i, Math.max(before, ends[stretch]));
                if (surface(stretch) != surface(stretch + 1)) {
                    open.add(at);
                    close(ends[stretch]);
                    open = new ArrayList<>(List.of(at));
                }
                stretch++;
            }
        }

        private Surface surface(int i) {
            Stretch on = course.stretches().get(i);
            return on.ground().surface();
        }

        private void close(double to) {
            if (open.size() > 1) {
                legs.add(new MapLeg(surface(stretch), from, to, PlanLineThinner.thinned(open, tolerance)));
            }
            from = to;
        }

        private MapPoint between(Track.TrackPiece piece, int i, double at) {
            double length = piece.distance()[i] - piece.distance()[i - 1];
            double part = length > 0 ? (at - piece.distance()[i - 1]) / length : 0;
            MapPoint before = place(piece.lat()[i - 1], piece.lon()[i - 1]);
            MapPoint after = place(piece.lat()[i], piece.lon()[i]);
            return new MapPoint(before.east() + part * (after.east() - before.east()), before.north() + part * (after.north() - before.north()));
        }

        private MapPoint place(double lat, double lon) {
            return new MapPoint(((lon < 0 ? lon + west : lon) - middleLon) * perDegreeEast, (lat - middleLat) * METRES_PER_DEGREE);
        }
    }
}
