package courseworthy.course.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.RealData;
import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.course.CourseSources;
import courseworthy.course.Stretch;
import courseworthy.problem.Faults;
import courseworthy.problem.ProgressWatch;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import org.junit.jupiter.api.Test;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The ground of real tracks from a real map ((c) OpenStreetMap contributors, ODbL 1.0), against the tags of the ways they were joined from. */
class MapGroundTest {

    private static final String[] KEYS = {"surface", "smoothness", "tracktype", "mtb:scale"};

    /** Of what was matched for sure, within 1 point of the truth for every value of the four tags. */
    @ParameterizedTest
    @ValueSource(strings = {"course_osm_valley", "course_osm_rhine"})
    void sharesOfTheCourseAreThoseOfItsWays(String name) throws IOException {
        Faults faults = new Faults();
        MapGround map = new MapGround(List.of(RealData.at("osm/liechtenstein-2022.osm.pbf")), false);
        Course course = CourseReader.with(RealData.at("tracks/" + name + ".gpx"), name, new CourseSources(null, map, null), faults);
        assertThat(faults.faults()).isEmpty();
        assertThat(sure(course)).isGreaterThan(0.9 * course.length());
        List<String[]> ways = Files.readAllLines(RealData.at("osm/" + name + ".ways.csv")).stream().skip(1).map(line -> line.split(",", -1)).toList();
        for (int i = 0; i < KEYS.length; i++) {
            Map<String, Double> truth = new LinkedHashMap<>();
            double all = ways.stream().mapToDouble(way -> Double.parseDouble(way[4])).sum();
            for (String[] way : ways) {
                truth.merge(way[6 + i], Double.parseDouble(way[4]) / all, Double::sum);
            }
            Map<String, Double> found = shares(course, KEYS[i]);
            for (String value : truth.keySet()) {
                assertThat(found.getOrDefault(value, 0.0)).as(KEYS[i] + " " + value).isCloseTo(truth.get(value), within(0.01));
            }
        }
    }

    private static double sure(Course course) {
        return course.stretches().stream().filter(each -> !each.origin().isUnmatched()).mapToDouble(Stretch::length).sum();
    }

    /** By length, of values that the map has. */
    private static Map<String, Double> shares(Course course, String key) {
        Map<String, Double> out = new LinkedHashMap<>();
        for (Stretch stretch : course.stretches()) {
            if (!stretch.origin().isUnmatched()) {
                out.merge(stretch.origin().mapped().getOrDefault(key, ""), stretch.length() / sure(course), Double::sum);
            }
        }
        return out;
    }

    /** Long reading can be watched, and the watch is closed when it ends. */
    @Test
    void readingIsWatched() {
        List<String> seen = new ArrayList<>();
        ProgressWatch watch = new ProgressWatch() {
            @Override
            public void at(int done, int of) {
                seen.add("at");
                assertThat(done).isBetween(0, of);
            }

            @Override
            public void close() {
                seen.add("closed");
            }
        };
        Faults faults = new Faults();
        MapGround map = new MapGround(List.of(Path.of("docs/examples/maps/sorrel-wood.osm")), false, what -> {
            seen.add(what);
            return watch;
        });
        CourseReader.with(Path.of("docs/examples/maps/sorrel-wood.gpx"), "a", new CourseSources(null, map, null), faults);

        assertThat(faults.faults()).isEmpty();
        assertThat(seen).startsWith("reading the map", "at").endsWith("closed");
    }
}
