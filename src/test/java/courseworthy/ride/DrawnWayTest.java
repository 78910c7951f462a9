package courseworthy.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.RealData;
import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.course.ElevationLine;
import courseworthy.course.Ground;
import courseworthy.course.Smoothness;
import courseworthy.course.Stretch;
import courseworthy.course.Surface;
import courseworthy.problem.Faults;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A course written as stretches against the track it stands for. */
class DrawnWayTest {

    private static final Ground GROUND = InventedCourse.ground(Surface.FINE_GRAVEL, Smoothness.INTERMEDIATE, null, null);

    /**
     * Recorded and drawn tracks, cut into stretches that keep only ascent and descent: the time differs by less than 3 %, which is what the shape
     * inside a stretch is worth and small beside the range of any estimate (15 % and more).
     */
    @ParameterizedTest
    @CsvSource({"ride_road_hilly_57km, 1000", "ride_road_hilly_57km, 10000", "ride_road_sensors_40km, 1000", "ride_road_sensors_40km, 10000",
        "ride_mtb_34km, 1000", "ride_mtb_34km, 10000", "ride_cadence_18km, 3000", "course_flat_265km, 10000",
        "course_swiss_valley_surface, 3000", "course_two_segments_49km, 3000"})
    void takesNearlyTheSameTime(String track, double piece) {
        Faults faults = new Faults();
        Course read = CourseReader.read(RealData.at("tracks/" + track + ".gpx"), track, null, faults);
        ElevationLine line = read.line();
        double length = line.distance()[line.size() - 1];
        Course measured = InventedCourse.course(line, null, List.of(new Stretch(length, null, null, null, GROUND, 1)));
        Course drawn = InventedCourse.course(null, null, pieces(line, piece));
        RideAssumptions basis = InventedCourse.strongAmateur(BikeKind.GRAVEL, 1);
        double byTrack = InventedCourse.estimate(measured, basis).riding().mid();
        double byStretches = InventedCourse.estimate(drawn, basis).riding().mid();
        assertThat(byStretches / byTrack).isCloseTo(1, within(0.03));
    }

    private static List<Stretch> pieces(ElevationLine line, double piece) {
        List<Stretch> out = new ArrayList<>();
        double from = 0;
        double up = 0;
        double down = 0;
        for (int i = 1; i < line.size(); i++) {
            double rise = line.elevation()[i] - line.elevation()[i - 1];
            boolean ridden = line.distance()[i] > line.distance()[i - 1];
            up += ridden ? Math.max(0, rise) : 0;
            down += ridden ? Math.max(0, -rise) : 0;
            if (line.distance()[i] >= from + piece || i == line.size() - 1 && line.distance()[i] > from) {
                out.add(new Stretch(line.distance()[i] - from, up, down, null, GROUND, 1));
                from = line.distance()[i];
                up = 0;
                down = 0;
            }
        }
        return out;
    }
}
