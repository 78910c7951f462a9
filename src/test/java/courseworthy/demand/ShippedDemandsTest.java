package courseworthy.demand;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.RealData;
import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.event.Event;
import courseworthy.event.EventReader;
import courseworthy.event.ExampleDay;
import courseworthy.problem.Faults;
import courseworthy.rider.Bike;
import courseworthy.rider.BikeReader;
import courseworthy.rider.Rider;
import courseworthy.rider.RiderReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every shipped course with every shipped rider, and the real tracks: all measures plausible. */
class ShippedDemandsTest {

    private static final Path COURSES = Path.of("course-profiles");
    private static final Path EXAMPLES = Path.of("docs", "examples");

    private static List<Path> files(Path folder, String ending) throws IOException {
        try (var list = Files.list(folder)) {
            return list.filter(f -> f.toString().endsWith(ending)).sorted().toList();
        }
    }

    @TestFactory
    List<DynamicTest> everyMeasureIsPlausible() throws IOException {
        List<Path> riders = files(EXAMPLES.resolve("riders"), ".yaml");
        assertThat(riders).isNotEmpty();
        return files(COURSES, ".yaml").stream().map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> {
            plausible(surveyed(file, null));
            for (Path rider : riders) {
                plausible(surveyed(file, rider));
            }
        })).toList();
    }

    private static Demands surveyed(Path file, Path riderFile) {
        Faults faults = new Faults();
        Course course = CourseReader.read(file, file.toString(), null, faults);
        Path eventFile = EXAMPLES.resolve("events").resolve(file.getFileName());
        Event event = Files.exists(eventFile) ? ExampleDay.on(EventReader.read(eventFile, eventFile.toString(), faults), file) : Event.UNKNOWN;
        Rider rider = riderFile == null ? Rider.UNKNOWN : RiderReader.read(riderFile, riderFile.toString(), faults);
        Bike atEvent = event.bike() == null ? Bike.UNKNOWN : BikeReader.read(eventFile.toString(), event.bike(), faults);
        assertThat(faults.faults()).isEmpty();
        return Survey.of(course, rider, event, Survey.bike(rider.bike(), atEvent));
    }

    /** Bounds are wide: what no course, rider or day of the trade exceeds (common practice, no source). */
    private static void plausible(Demands demands) {
        within(demands, Measure.DISTANCE, 5, 400);
        within(demands, Measure.CLIMBING_PER_KM, 0, 80);
        within(demands, Measure.HIGHEST_POINT, -100, 4000);
        within(demands, Measure.CLIMBS, 0, 120);
        within(demands, Measure.LONGEST_CLIMB, 0, 40);
        within(demands, Measure.LAST_LONG_CLIMB_GRADIENT, 3, 25);
        within(demands, Measure.STEEPEST_RAMP, 2, 45);
        within(demands, Measure.STEEPEST_100_M, 1.5, 35);
        for (Measure share : List.of(Measure.PAVED_SHARE, Measure.GRAVEL_SHARE, Measure.TRAIL_SHARE, Measure.SOFT_SHARE, Measure.LOOSE_SHARE,
                Measure.KNOWN_GROUND, Measure.SHARP_STONES, Measure.MUD, Measure.SAND, Measure.AERO_SHARE, Measure.GROUP_SHARE)) {
            within(demands, share, 0, 100);
        }
        within(demands, Measure.ROUGHNESS, 0, 5);
        within(demands, Measure.HARDEST_MTB_SCALE, 0, 5);
        within(demands, Measure.TURNS_PER_KM, 0, 20);
        speed(demands);
        within(demands, Measure.SUPPORT_GAP, 1, 150);
        within(demands, Measure.WATER_OVER_THE_HOTTEST_GAP, 0.5, 12);
        within(demands, Measure.COLDEST_TEMPERATURE, -15, 35);
        within(demands, Measure.HOTTEST_TEMPERATURE, -10, 42);
        within(demands, Measure.START_LINE_MASS, 60, 125);
        within(demands, Measure.POWER_PER_KG, 1.5, 5.5);
        within(demands, Measure.RATIO_NEEDED_WHERE_IT_IS_STEEPEST, 0.45, 3.5);
        within(demands, Measure.RATIO_NEEDED_ON_THE_LAST_CLIMB, 0.45, 3.5);
        within(demands, Measure.RATIO_USEFUL_AT_SPEED, 2, 5.5);
        assertThat(demands.known(Measure.HOURS)).isTrue();
        assertThat(demands.get(Measure.WORST_ROUGHNESS).mid()).isGreaterThanOrEqualTo(demands.get(Measure.ROUGHNESS).mid());
        assertThat(demands.get(Measure.STEEPEST_100_M).mid()).isGreaterThanOrEqualTo(demands.get(Measure.STEEPEST_500_M).mid())
                .isGreaterThanOrEqualTo(demands.get(Measure.STEEPEST_1_KM).mid());
        assertThat(demands.get(Measure.HOTTEST_TEMPERATURE).mid()).isGreaterThanOrEqualTo(demands.get(Measure.COLDEST_TEMPERATURE).mid());
    }

    /** Between 6 and 38 km/h over the whole ride, the slow end 3 to 60 % over the middle. */
    private static void speed(Demands demands) {
        double hours = shown(Measure.HOURS, demands.get(Measure.HOURS).mid()) / 60;
        double distance = shown(Measure.DISTANCE, demands.get(Measure.DISTANCE).mid());
        assertThat(distance / hours).isBetween(6.0, 38.0);
        assertThat(shown(Measure.HOURS, demands.get(Measure.HOURS).high()) / 60 / hours).isBetween(1.03, 1.6);
    }

    private static void within(Demands demands, Measure measure, double least, double most) {
        if (demands.known(measure)) {
            assertThat(shown(measure, demands.get(measure).mid())).as(measure.written()).isBetween(least, most);
        }
    }

    private static double shown(Measure measure, long ticks) {
        return measure.scale().resolution().shown(ticks);
    }

    /** Real tracks: nothing over 60 % sustained over 100 m, and a time for each, with its ground unknown and assumed. */
    @Test
    void realTracksGiveBelievableGradientsAndTimes() throws IOException {
        List<Path> tracks = files(RealData.at("tracks"), ".gpx");
        assertThat(tracks).hasSize(15);
        for (Path track : tracks) {
            for (String ground : new String[] {null, "surface=gravel, smoothness=bad"}) {
                Faults faults = new Faults();
                Course course = CourseReader.read(track, track.toString(), ground, faults);
                assertThat(course).as(track.toString()).isNotNull();
                Demands demands = Survey.of(course, Rider.UNKNOWN, Event.UNKNOWN, Bike.UNKNOWN);
                MeasureValue steepest = demands.get(Measure.STEEPEST_100_M);
                if (steepest != null) {
                    assertThat(shown(Measure.STEEPEST_100_M, steepest.high())).as(track.toString()).isLessThanOrEqualTo(60);
                }
                // In whole minutes: a track of a few hundred metres tells no speed.
                double hours = shown(Measure.HOURS, demands.get(Measure.HOURS).mid()) / 60;
                assertThat(course.length() < 2000 || course.length() / 1000 / hours > 3 && course.length() / 1000 / hours < 40)
                        .as(track.toString()).isTrue();
                assertThat(demands.known(Measure.ROUGHNESS)).isEqualTo(ground != null);
            }
        }
    }
}
