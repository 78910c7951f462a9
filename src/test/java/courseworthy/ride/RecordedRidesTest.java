package courseworthy.ride;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.RealData;
import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.course.Track;
import courseworthy.problem.Faults;
import java.io.IOException;
import java.nio.file.Files;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Rides that were recorded, quarter by quarter of their distance, against the model at the power that makes its total their moving time. The
 * riders' power, mass, bike and wind are not known, so this tests the shape: where the time goes.
 */
class RecordedRidesTest {

    /**
     * Who in {@value #WINDOW} s gets less far than at this speed stands, m/s: moving time is what is left. A receiver at rest wanders, so speed
     * from one point to the next does not tell.
     */
    private static final double STANDING = 0.9;
    private static final double WINDOW = 10;
    private static final Pattern POINT = Pattern.compile("<trkpt[^>]*lat=\"([^\"]+)\"[^>]*lon=\"([^\"]+)\".*?</trkpt>", Pattern.DOTALL);
    private static final Pattern TIME = Pattern.compile("<time>([^<]+)</time>");

    /** What the rides' quarters took and what the model makes of them. */
    private record Told(String text, int inside, double widest, double worst) {
    }

    /**
     * On roads the recorded time over at least three quarters of four lies in the model's range, and that range is no wider than 25 % of the
     * quarter's time.
     */
    @ParameterizedTest
    @CsvSource({"ride_road_hilly_57km", "ride_road_sensors_40km", "ride_cadence_18km"})
    void quartersOnRoadsTakeWhatWasRecorded(String track) throws IOException {
        Told told = told(track, BikeKind.ROAD, "surface=asphalt, smoothness=good", false);
        assertThat(told.inside).as(told.text).isGreaterThanOrEqualTo(3);
        assertThat(told.widest).as(told.text).isLessThanOrEqualTo(0.25);
    }

    /**
     * Off the road the ground is all, and this track does not tell it. At one ground throughout, that of a measured cross-country course (Crr
     * 0.022, Maier and others 2018), told apart by how it winds alone, the recorded time over each quarter lies in the model's range: both in the
     * one that is wide because the ground as a whole may roll better or worse, and in the one for a total that is known. The latter is 26 % of the
     * quarter's time or a little more, not 25 %.
     */
    @Test
    void quartersOffTheRoadTakeWhatWasRecorded() throws IOException {
        String ground = "surface=ground, smoothness=very_bad, mtb:scale=1";
        Told open = told("ride_mtb_34km", BikeKind.HARDTAIL, ground, false);
        assertThat(open.inside).as(open.text).isGreaterThanOrEqualTo(3);
        assertThat(open.worst).as(open.text).isLessThan(0.15);
        assertThat(open.widest).as(open.text).isLessThan(0.39);
        Told known = told("ride_mtb_34km", BikeKind.HARDTAIL, ground, true);
        assertThat(known.inside).as(known.text).isGreaterThanOrEqualTo(3);
        assertThat(known.widest).as(known.text).isLessThan(0.28);
    }

    private static Told told(String track, BikeKind kind, String ground, boolean totalKnown) throws IOException {
        Course course = CourseReader.read(RealData.at("tracks/" + track + ".gpx"), track, ground, new Faults());
        double[] moving = moving(track, course.track());
        RideEstimate estimate = asLongAs(course, kind, moving[3]);
        double quarter = estimate.way().length() / 4;
        int inside = 0;
        double widest = 0;
        double worst = 0;
        StringBuilder text = new StringBuilder(track);
        for (int i = 0; i < 4; i++) {
            double recorded = moving[i] - (i == 0 ? 0 : moving[i - 1]);
            Range model = totalKnown ? estimate.betweenOfAKnownTotal(i * quarter, (i + 1) * quarter)
                    : estimate.between(i * quarter, (i + 1) * quarter);
            inside += recorded >= model.low() && recorded <= model.high() ? 1 : 0;
            widest = Math.max(widest, (model.high() - model.low()) / model.mid());
            worst = Math.max(worst, Math.abs(model.mid() / recorded - 1));
            text.append(String.format(Locale.ROOT, "; %.0f s recorded, %.0f s (%.0f to %.0f), %+.1f %%", recorded, model.mid(), model.low(),
                    model.high(), 100 * (model.mid() / recorded - 1)));
        }
        return new Told(text.toString(), inside, widest, worst);
    }

    private static RideEstimate asLongAs(Course course, BikeKind kind, double seconds) {
        double low = 40;
        double high = 600;
        RideEstimate found = null;
        for (int i = 0; i < 30; i++) {
            double power = Math.sqrt(low * high);
            found = RideEstimate.of(DiscretisedCourse.of(course, 300), unknownRider(kind, power), course.stretches());
            if (found.riding().mid() > seconds) {
                low = power;
            } else {
                high = power;
            }
        }
        return found;
    }

    /** A rider of whom nothing is known but the power that was found, on a day whose wind is not known: as the tool assumes it. */
    private static RideAssumptions unknownRider(BikeKind kind, double power) {
        Range mass = kind.mass().plus(Range.within(75, 10)).plus(Range.within(3, 1)).plus(new Range(0.6, 1.2, 2.5));
        return new RideAssumptions(kind, mass, DragArea.alone(kind, 75),
                new RideAssumptions.PacingRanges(Range.exact(power), Range.exact(1), true), 2, 0, 1, -1, Range.within(1, 0.05),
                new RideAssumptions.WeatherAssumptions(15, 300, false, 0, Double.NaN));
    }

    /** Moving time to the end of each quarter of the distance, s. */
    private static double[] moving(String track, Track read) throws IOException {
        List<double[]> points = points(Files.readString(RealData.at("tracks/" + track + ".gpx")));
        double sum = 0;
        List<double[]> gone = new ArrayList<>();
        double time = 0;
        for (int i = 1; i < points.size(); i++) {
            sum += metres(points.get(i - 1), points.get(i));
            time += moves(points, i) ? points.get(i)[2] - points.get(i - 1)[2] : 0;
            gone.add(new double[] {sum, time});
        }
        double[] out = new double[4];
        for (int quarter = 1; quarter <= 4; quarter++) {
            for (double[] each : gone) {
                if (each[0] <= quarter * sum / 4 + 1e-6) {
                    out[quarter - 1] = each[1];
                }
            }
        }
        assertThat(sum).isBetween(0.93 * read.length(), 1.07 * read.length());
        return out;
    }

    private static boolean moves(List<double[]> points, int i) {
        int before = i - 1;
        while (before > 0 && points.get(i)[2] - points.get(before)[2] < WINDOW) {
            before--;
        }
        double seconds = points.get(i)[2] - points.get(before)[2];
        return seconds > 0 && metres(points.get(before), points.get(i)) >= STANDING * seconds;
    }

    private static double metres(double[] a, double[] b) {
        double north = Math.toRadians(b[0] - a[0]) * 6_371_000;
        double east = Math.toRadians(b[1] - a[1]) * 6_371_000 * Math.cos(Math.toRadians(a[0]));
        return Math.hypot(north, east);
    }

    private static List<double[]> points(String gpx) {
        List<double[]> out = new ArrayList<>();
        Matcher point = POINT.matcher(gpx);
        while (point.find()) {
            Matcher time = TIME.matcher(point.group());
            if (time.find()) {
                double seconds = Instant.parse(time.group(1)).toEpochMilli() / 1000.0;
                out.add(new double[] {Double.parseDouble(point.group(1)), Double.parseDouble(point.group(2)), seconds});
            }
        }
        return out;
    }
}
