package courseworthy.task;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.course.Course;
import courseworthy.course.GeoPoint;
import courseworthy.course.Ground;
import courseworthy.course.Stretch;
import courseworthy.event.Event;
import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Local times that a course can and cannot have. */
class LongitudeCheckTest {

    private static List<String> said(GeoPoint start, String zone) {
        Course course = Course.builder("", List.of(new Stretch(40_000, null, null, null, Ground.UNKNOWN, 0))).file("c.yaml").start(start).build();
        Event event = Event.builder().file("e.yaml").role("race").date(LocalDate.of(2026, 7, 1)).start(LocalTime.of(8, 0)).zone(ZoneId.of(zone))
                .lines(new Event.Lines(Map.of("zone", 4, "utc offset", 4))).build();
        Faults faults = new Faults();
        LongitudeCheck.of(course, event, faults);
        return faults.faults().stream().map(Fault::text).toList();
    }

    /** Places far from their zone's meridian, summer time counted, and beyond the date line (IANA time zone database). */
    @ParameterizedTest
    @CsvSource({"7, +02:00", "-9, Europe/Madrid", "76, Asia/Shanghai", "-111, -07:00", "-172, Pacific/Apia", "-157.4, Pacific/Kiritimati",
        "179, -12:00", "-179.9, +12:00", "0, +03:00", "-176, Pacific/Chatham"})
    void timesThatAreKept(double longitude, String zone) {
        assertThat(said(new GeoPoint(40, longitude), zone)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"7, -05:00", "7, +04:00", "-111, +07:00", "100, Europe/Zurich", "0, +03:15", "-172, +02:00"})
    void timesThatCannotBe(double longitude, String zone) {
        assertThat(said(new GeoPoint(40, longitude), zone)).hasSize(1).allSatisfy(text -> assertThat(text).startsWith("e.yaml:4: "));
    }

    @Test
    void unknownIsNoFault() {
        assertThat(said(null, "+09:00")).isEmpty();
    }

    /** As a user meets it: file, line, what is right, and what may have slipped. */
    @Test
    void itIsSaidWithItsMend(@TempDir Path folder) throws IOException {
        Path course = Files.writeString(folder.resolve("c.yaml"), "name: West\nlatitude: 37 deg\nlongitude: -111 deg\nstretches:\n"
                + "  - {length: 20 km, surface: gravel}\n");
        Path event = Files.writeString(folder.resolve("e.yaml"), "name: A Day\ndate: 2026-05-09\nutc offset: +07:00\n");
        Assertions.assertThatThrownBy(() -> BriefTask.of(new Workspace(Path.of(""), warning -> { }),
                Request.builder(course.toString()).event(event.toString()).build()))
                .isInstanceOfSatisfying(BadInput.class, bad -> assertThat(bad.faults().get(0).text()).isEqualTo(event
                        + ":3: utc offset: found +07:00, expected a time within 3 h of the sun's at the course, about -07:00 at longitude -111.0\n"
                        + "    Write the zone there by name, such as \"zone: Africa/Nairobi\", or check where the course lies."
                        + " Perhaps the sign is turned: -07:00."));
    }
}
