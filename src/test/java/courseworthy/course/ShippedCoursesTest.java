package courseworthy.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.debrief.DebriefReader;
import courseworthy.event.Event;
import courseworthy.event.EventReader;
import courseworthy.event.ExampleDay;
import courseworthy.event.ForecastReader;
import courseworthy.event.PitReader;
import courseworthy.event.SeasonReader;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.rider.BikeReader;
import courseworthy.rider.Rider;
import courseworthy.rider.RiderReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The courses, events and riders that are shipped can be read, fit each other, and span the trade. */
class ShippedCoursesTest {

    private static final Path COURSES = Path.of("course-profiles");
    private static final Path EXAMPLES = Path.of("docs", "examples");

    private static List<Path> files(Path folder, String ending) throws IOException {
        try (var list = Files.list(folder)) {
            return list.filter(f -> f.toString().endsWith(ending)).sorted().toList();
        }
    }

    private static Course course(Path file) {
        Faults faults = new Faults();
        Course course = CourseReader.read(file, file.toString(), null, faults);
        assertThat(faults.faults()).extracting(Fault::text).isEmpty();
        assertThat(faults.warnings()).isEmpty();
        return course;
    }

    private static Event event(Path file) {
        Faults faults = new Faults();
        Event event = EventReader.read(file, file.toString(), faults);
        if (event.bike() != null) {
            BikeReader.read(file.toString(), event.bike(), faults);
        }
        assertThat(faults.faults()).extracting(Fault::text).isEmpty();
        return event;
    }

    @Test
    void everyCourseTellsGroundAndClimbingThroughout() throws IOException {
        List<Path> files = files(COURSES, ".yaml");
        assertThat(files.size()).isGreaterThanOrEqualTo(12);
        List<String> names = new ArrayList<>();
        for (Path file : files) {
            Course course = course(file);
            names.add(course.name());
            assertThat(course.summary()).as(course.name()).isNotEmpty();
            assertThat(course.climbing()).as(course.name()).isNotNull();
            assertThat(course.line().absolute()).as(course.name()).isTrue();
            assertThat(course.start()).as(course.name()).isNotNull();
            assertThat(course.stretches()).as(course.name()).allSatisfy(s -> {
                assertThat(s.ground().surface()).isNotNull();
                assertThat(s.ground().smoothness()).isNotNull();
            });
        }
        assertThat(names).doesNotHaveDuplicates();
    }

    @Test
    void theCoursesSpanTheTrade() throws IOException {
        TreeMap<Double, String> byLength = new TreeMap<>();
        double highest = 0;
        double longestSand = 0;
        double hardest = 0;
        double mostPaved = 0;
        for (Path file : files(COURSES, ".yaml")) {
            Course course = course(file);
            byLength.put(course.length(), course.name());
            double sand = 0;
            double paved = 0;
            for (Stretch stretch : course.stretches()) {
                sand += Boolean.TRUE.equals(stretch.ground().sand()) ? stretch.length() : 0;
                paved += stretch.ground().surface().family() == Surface.Family.PAVED ? stretch.length() : 0;
                hardest = Math.max(hardest, stretch.ground().mtbScale() == null ? 0 : stretch.ground().mtbScale());
            }
            longestSand = Math.max(longestSand, sand);
            mostPaved = Math.max(mostPaved, paved / course.length());
            for (double metres : course.line().elevation()) {
                highest = Math.max(highest, metres);
            }
        }
        assertThat(byLength.firstKey()).isLessThan(6_000);
        assertThat(byLength.lastKey()).isGreaterThan(300_000);
        assertThat(highest).isGreaterThan(2_500);
        assertThat(longestSand).isGreaterThan(20_000);
        assertThat(hardest).isGreaterThanOrEqualTo(3);
        assertThat(mostPaved).isGreaterThan(0.8);
    }

    @Test
    void everyCourseHasItsEventAndSupportLiesOnIt() throws IOException {
        for (Path file : files(COURSES, ".yaml")) {
            Course course = course(file);
            Event event = ExampleDay.on(event(EXAMPLES.resolve("events").resolve(file.getFileName())), file);
            int laps = event.laps() == null ? 1 : event.laps();
            assertThat(event.role()).as(course.name()).isNotNull();
            assertThat(event.support()).as(course.name()).allSatisfy(s -> assertThat(s.at()).isLessThan(course.length() * laps));
            if (laps > 1) {
                assertThat(course.climbing().ascent()).as("a lap of " + course.name() + " ends where it starts").isCloseTo(course.climbing().descent(), within(1.0));
            }
        }
    }

    @Test
    void theRidersCanBeRead() throws IOException {
        List<Path> files = files(EXAMPLES.resolve("riders"), ".yaml");
        assertThat(files.size()).isGreaterThanOrEqualTo(3);
        for (Path file : files) {
            Faults faults = new Faults();
            Rider rider = RiderReader.read(file, file.toString(), faults);
            assertThat(faults.faults()).extracting(Fault::text).isEmpty();
            assertThat(rider.mass()).as(rider.name()).isNotNull();
            assertThat(rider.efforts()).as(rider.name()).isNotEmpty();
        }
    }

    @Test
    void theTracksAreWhatTheirMakerMakes() throws IOException {
        List<Path> files = files(COURSES.resolve("tracks"), ".gpx");
        assertThat(files).extracting(f -> f.getFileName().toString())
                .containsExactlyInAnyOrderElementsOf(TrackMaker.PLANS.stream().map(TrackMaker.Plan::file).toList());
        for (TrackMaker.Plan plan : TrackMaker.PLANS) {
            Path file = COURSES.resolve("tracks").resolve(plan.file());
            assertThat(Files.readString(file, StandardCharsets.UTF_8)).as(plan.file() + ": run TrackMaker").isEqualTo(TrackMaker.gpx(plan));
            assertThat(Files.size(file)).isLessThan(400_000);
        }
    }

    /**
     * Boxes of open sea without an island, in degrees: south, north, west, east. Bounds from memory of an atlas, far inside the coasts.
     * Celtic Sea, North Sea, North Atlantic, Gulf of Lion, Ionian Sea.
     */
    private static final double[][] OPEN_SEA = {{49, 51, -9.5, -7}, {54.5, 57, 2, 6}, {42, 48, -40, -20}, {41.5, 42.6, 4.6, 8}, {34.5, 36.3, 17.5, 21}};

    /** No place of a shipped course is a place on land: none can be taken for a race that is held somewhere. */
    @Test
    void theCoursesLieWhereNobodyRides() throws IOException {
        for (Path file : files(COURSES, ".yaml")) {
            Course course = course(file);
            assertThat(atSea(course.start().latitude(), course.start().longitude())).as(course.name()).isTrue();
            if (course.track() != null) {
                for (Track.TrackPiece piece : course.track().pieces()) {
                    for (int i = 0; i < piece.size(); i++) {
                        assertThat(atSea(piece.lat()[i], piece.lon()[i])).as(course.name() + ", point " + i).isTrue();
                    }
                }
            }
        }
    }

    private static boolean atSea(double latitude, double longitude) {
        return Stream.of(OPEN_SEA).anyMatch(box -> latitude > box[0] && latitude < box[1] && longitude > box[2] && longitude < box[3]);
    }

    /** The noise, the stops and the spikes in the tracks are known, so cleaning can be held against the ground they were made from. */
    @Test
    void cleaningFindsTheGroundTheTracksWereMadeFrom() {
        for (TrackMaker.Plan plan : TrackMaker.PLANS) {
            Course course = course(COURSES.resolve(plan.file().replace(".gpx", ".yaml")));
            assertThat(course.track()).as(plan.name()).isNotNull();
            assertThat(course.length()).as(plan.name()).isCloseTo(plan.metres(), within(plan.metres() * 0.005));
            double rise = plan.stretches().stream().mapToDouble(Stretch::ascent).sum();
            assertThat(course.climbing().ascent()).as(plan.name()).isCloseTo(rise, within(rise * 0.05));
            assertThat(course.stretches()).hasSize(plan.rows().length);
            for (int i = 0; i < plan.rows().length; i++) {
                assertThat(course.stretches().get(i).ascent()).as(plan.name() + " " + i).isCloseTo(plan.rows()[i][1], within(20.0));
                assertThat(course.stretches().get(i).descent()).as(plan.name() + " " + i).isCloseTo(plan.rows()[i][2], within(20.0));
            }
            assertThat(course.repairs()).extracting(TrackRepair::what).containsExactlyInAnyOrder("repeated points removed",
                    "points without elevation filled in", "elevation spikes removed");
        }
    }

    @Test
    void everyKeyIsExplained() throws IOException {
        String pages = Files.readString(Path.of("docs", "reference", "files.md"));
        for (List<String> keys : List.of(CourseReader.PROFILE_KEYS, CourseReader.STRETCH_KEYS, GroundReader.KEYS, RiderReader.KEYS,
                RiderReader.EFFORT_KEYS, BikeReader.KEYS, EventReader.KEYS, ForecastReader.KEYS, ForecastReader.HOUR_KEYS, PitReader.KEYS, EventReader.SUPPORT_KEYS,
                EventReader.RULES_KEYS, DebriefReader.KEYS, DebriefReader.WEATHER_KEYS, DebriefReader.PUNCTURE_KEYS, DebriefReader.WALKED_KEYS,
                SeasonReader.KEYS, SeasonReader.RIDER_KEYS, SeasonReader.EVENT_KEYS, SeasonReader.START_KEYS)) {
            assertThat(keys).allSatisfy(key -> assertThat(pages).containsPattern("[`{ ]" + key + "[`:]"));
        }
    }
}
