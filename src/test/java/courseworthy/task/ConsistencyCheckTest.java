package courseworthy.task;

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
class ConsistencyCheckTest {

    @TempDir
    private Path folder;

    private Faults with(String event) throws IOException {
        Faults faults = new Faults();
        Course course = CourseReader.read(Files.writeString(folder.resolve("c.yaml"), "stretches: [{length: 80 km, ascent: 900 m}]\n"), "c.yaml", null, faults);
        Event day = EventReader.read(Files.writeString(folder.resolve("e.yaml"), event + "\n"), "e.yaml", faults);
        ConsistencyCheck.check(course, day, faults);
        return faults;
    }

    private static List<String> said(List<Fault> faults) {
        return faults.stream().map(Fault::text).toList();
    }

    @Test
    void aPointPastTheFinishIsSaidNotToBeUsed() throws IOException {
        Faults faults = with("support:\n  - {at: 40 km, water: yes}\n  - {at: 120 km, food: yes}\n  - {at: 81 km, water: yes}");
        assertThat(faults.faults()).isEmpty();
        assertThat(said(faults.warnings())).containsExactly("e.yaml:3: warning: support: found a point at 120.0 km, expected points up to the finish at 80.0 km\n"
                + "    It is not used. Check its distance, the laps and the course.");
    }

    @Test
    void lapsBeyondAnyEventAreRefused() throws IOException {
        assertThat(said(with("name: many\nlaps: 100").faults())).containsExactly("e.yaml:2: laps: found 100 laps of 80.0 km, expected at most 3000 km over all laps\n"
                + "    Check laps and course.");
        assertThat(with("laps: 37").faults()).isEmpty();
    }

    @Test
    void aCutOffThatNobodyMeetsIsRefused() throws IOException {
        assertThat(said(with("name: short\nlaps: 1\ntime limit: 1:00 h").faults())).containsExactly("e.yaml:3: time limit: found 80.0 km in 60 min, expected a time that can be ridden\n"
                + "    Check time limit, laps and course.");
        assertThat(with("time limit: 3:00 h").faults()).isEmpty();
    }

    /** A profile of stretches tells no height above the sea; a track does. */
    @Test
    void aStartHeightBesideATrackIsSaidNotToBeUsed() throws IOException {
        assertThat(with("start height: 400 m").warnings()).isEmpty();
        Faults faults = new Faults();
        Files.writeString(folder.resolve("t.gpx"), Files.readString(Path.of("course-profiles", "tracks", "home-trails.gpx")));
        Course course = CourseReader.read(folder.resolve("t.gpx"), "t.gpx", null, faults);
        Event day = EventReader.read(Files.writeString(folder.resolve("e.yaml"), "name: high\nstart height: 400 m\n"), "e.yaml", faults);
        ConsistencyCheck.check(course, day, faults);
        assertThat(said(faults.warnings())).contains("e.yaml:2: warning: start height: found a height for a course that has its own, expected none\n"
                + "    It is not used.");
    }

    @Test
    void timesForChangesThatNoOtherDayAsksForAreNamedWithTheirLines() throws IOException {
        Faults faults = new Faults();
        Event day = EventReader.read(Files.writeString(folder.resolve("e.yaml"), "time to change:\n  tyres: 40 min\n  gears: 1:30 h\n"), "e.yaml", faults);
        ConsistencyCheck.changes(day, List.of(), faults);
        assertThat(said(faults.warnings())).containsExactly(
                "e.yaml:2: warning: time to change: found tyres, expected what would change if the day turned out differently\n"
                        + "    It is not used: the forecast has neither \"or\" nor \"good to\".",
                "e.yaml:3: warning: time to change: found gears, expected what would change if the day turned out differently\n"
                        + "    It is not used: the forecast has neither \"or\" nor \"good to\".");
    }
}
