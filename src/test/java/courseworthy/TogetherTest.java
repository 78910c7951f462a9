package courseworthy;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.event.Event;
import courseworthy.event.EventReader;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Courses and events that are sound by themselves and cannot be together. */
class TogetherTest {

    @TempDir
    private Path folder;

    private Faults with(String event) throws IOException {
        Faults faults = new Faults();
        Course course = CourseReader.read(Files.writeString(folder.resolve("c.yaml"), "stretches: [{length: 80 km, rise: 900 m}]\n"), "c.yaml", null, faults);
        Event day = EventReader.read(Files.writeString(folder.resolve("e.yaml"), event + "\n"), "e.yaml", faults);
        Together.check(course, day, faults);
        return faults;
    }

    private static List<String> said(List<Fault> faults) {
        return faults.stream().map(Fault::text).toList();
    }

    @Test
    void aPointPastTheFinishIsSaidNotToBeUsed() throws IOException {
        Faults faults = with("support: [{at: 40 km, water: yes}, {at: 81 km, water: yes}, {at: 120 km, food: yes}]");
        assertThat(faults.faults()).isEmpty();
        assertThat(said(faults.warnings())).containsExactly("e.yaml: warning: support: found a point at 120.0 km, expected points up to the finish at 80.0 km\n"
                + "    It is not used. Check its distance, the laps and the course.");
    }

    @Test
    void lapsBeyondAnyEventAreRefused() throws IOException {
        assertThat(said(with("laps: 100").faults())).containsExactly("e.yaml: laps: found 100 laps of 80.0 km, expected at most 5000 km over all laps\n"
                + "    Check laps and course.");
        assertThat(with("laps: 60").faults()).isEmpty();
    }

    @Test
    void aCutOffThatNobodyMeetsIsRefused() throws IOException {
        assertThat(said(with("cut-off: 1:00 h").faults())).containsExactly("e.yaml: cut-off: found 80.0 km in 60 min, expected a time that can be ridden\n"
                + "    Check cut-off, laps and course.");
        assertThat(with("cut-off: 3:00 h").faults()).isEmpty();
    }
}
