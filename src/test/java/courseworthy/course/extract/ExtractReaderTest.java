package courseworthy.course.extract;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.RealData;
import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.course.Track;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Extracts read along real tracks ((c) OpenStreetMap contributors, ODbL 1.0). */
class ExtractReaderTest {

    private static Track track(String name) {
        Faults faults = new Faults();
        Course course = CourseReader.read(RealData.at("tracks/" + name + ".gpx"), name, null, faults);
        assertThat(faults.faults()).isEmpty();
        return course.track();
    }

    @Test
    void findsTheWaysAlongATrack() {
        Path extract = RealData.at("osm/liechtenstein-2022.osm.pbf");
        Faults faults = new Faults();
        MapExtract read = ExtractReader.read(List.of(extract), Corridor.around(track("course_osm_valley"), 200), faults, Progress.UNSEEN);
        assertThat(faults.faults()).isEmpty();
        assertThat(read.ways()).hasSizeBetween(500, 1500);
    }
}
