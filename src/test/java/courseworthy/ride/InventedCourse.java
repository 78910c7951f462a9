package courseworthy.ride;

import courseworthy.course.Climbing;
import courseworthy.course.Course;
import courseworthy.course.ElevationLine;
import courseworthy.course.Ground;
import courseworthy.course.Smoothness;
import courseworthy.course.Stretch;
import courseworthy.course.Surface;
import courseworthy.course.Track;
import java.util.ArrayList;
import java.util.List;

/** Invented ground and courses for tests. */
public final class InventedCourse {

    private InventedCourse() {
    }

    public static Ground ground(Surface surface, Smoothness smoothness, Integer trackGrade, Double mtbScale) {
        return Ground.builder().surface(surface).smoothness(smoothness).trackGrade(trackGrade).mtbScale(mtbScale).build();
    }

    public static Ground ground(Surface surface) {
        return ground(surface, null, null, null);
    }

    public static Ground turning(Ground g, double turnsPerKm) {
        return Ground.builder().turnsPerKm(turnsPerKm).build().orElse(g);
    }

    public static Stretch stretch(double kilometres, double rise, double drop, Ground ground) {
        return new Stretch(kilometres * 1000, rise, drop, null, ground, 1);
    }

    /** A profile without a track; its line is drawn as the tool draws it only in so far as it has its ends. */
    public static Course course(Stretch... stretches) {
        return course(null, null, List.of(stretches));
    }

    public static Course course(ElevationLine line, Track track, List<Stretch> stretches) {
        double up = 0;
        double down = 0;
        for (Stretch stretch : stretches) {
            up += stretch.ascent() == null ? 0 : stretch.ascent();
            down += stretch.descent() == null ? 0 : stretch.descent();
        }
        return Course.builder("invented", stretches).track(track).line(line).climbing(Climbing.written(up, down)).build();
    }

    /** A measured line of even steps whose height is given by a function of the distance, m. */
    public static ElevationLine line(double length, double step, java.util.function.DoubleUnaryOperator height) {
        int size = (int) Math.round(length / step) + 1;
        double[] distance = new double[size];
        double[] elevation = new double[size];
        for (int i = 0; i < size; i++) {
            distance[i] = i * length / (size - 1);
            elevation[i] = height.applyAsDouble(distance[i]);
        }
        return new ElevationLine(distance, elevation, true, true);
    }

    /** A level track of points so far apart, m, each reached on a heading, radians from east to north. */
    static Track walked(double step, double... headings) {
        double[] lat = new double[headings.length + 1];
        double[] lon = new double[lat.length];
        double[] distance = new double[lat.length];
        lat[0] = 47;
        lon[0] = 8;
        for (int i = 1; i < lat.length; i++) {
            lat[i] = lat[i - 1] + step * Math.sin(headings[i - 1]) / 111_195;
            lon[i] = lon[i - 1] + step * Math.cos(headings[i - 1]) / 111_195 / Math.cos(Math.toRadians(47));
            distance[i] = i * step;
        }
        return new Track(List.of(new Track.TrackPiece(lat, lon, distance, new double[lat.length])), Track.Elevation.KNOWN);
    }

    /** A measured course on one ground. */
    public static Course measured(ElevationLine line, Ground ground) {
        double length = line.distance()[line.size() - 1];
        double up = 0;
        double down = 0;
        for (int i = 1; i < line.size(); i++) {
            double rise = line.elevation()[i] - line.elevation()[i - 1];
            up += Math.max(0, rise);
            down += Math.max(0, -rise);
        }
        return course(line, null, List.of(new Stretch(length, up, down, null, ground, 1)));
    }

    /** A strong amateur of 75 kg in a race, on a kind of bike. */
    public static RideAssumptions strongAmateur(BikeKind kind, int laps) {
        Range mass = kind.mass().plus(75 + 3 + 1.2);
        return new RideAssumptions(kind, mass, DragArea.alone(kind, 75),
                new RideAssumptions.PacingRanges(Range.within(3.7 * 75, 8), new Range(0.94, 0.98, 1), false), 2, 0, laps, -1,
                Range.within(1, 0.05), calm());
    }

    public static RideAssumptions.WeatherAssumptions calm() {
        return new RideAssumptions.WeatherAssumptions(18, 300, true, 0, Double.NaN);
    }

    public static RideEstimate estimate(Course course, RideAssumptions basis) {
        return RideEstimate.of(DiscretisedCourse.of(course, 300), basis, course.stretches());
    }

    /** The same basis with another power and mass. */
    public static RideAssumptions with(RideAssumptions b, Range hourPower, Range mass) {
        return new RideAssumptions(b.kind(), mass, b.dragArea(),
                new RideAssumptions.PacingRanges(hourPower, b.pacing().intensity(), b.pacing().training()), b.skill(), b.wetness(), b.laps(), b.points(),
                b.climbing(), b.weather());
    }

    public static RideAssumptions with(RideAssumptions b, RideAssumptions.WeatherAssumptions weather) {
        return new RideAssumptions(b.kind(), b.mass(), b.dragArea(), b.pacing(), b.skill(), b.wetness(), b.laps(), b.points(), b.climbing(), weather);
    }

    /** Stretches cut in a number of equal parts. */
    public static List<Stretch> cut(Stretch s, int parts) {
        List<Stretch> out = new ArrayList<>();
        for (int i = 0; i < parts; i++) {
            out.add(new Stretch(s.length() / parts, s.ascent() / parts, s.descent() / parts, s.steepest(), s.ground(), s.line()));
        }
        return out;
    }
}
