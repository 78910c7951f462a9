package courseworthy.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.RealData;
import courseworthy.problem.Faults;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Courses joined from mapped ways, whose tags are the truth for what lies under the wheels ((c) OpenStreetMap contributors, ODbL 1.0). */
class MappedWaysTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"course_osm_valley", "course_osm_rhine"})
    void groundComesThroughProfileAndTrackAsItIsMapped(String name) throws IOException {
        List<String[]> ways = new ArrayList<>();
        for (String line : Files.readAllLines(RealData.at("osm/" + name + ".ways.csv"))) {
            ways.add(line.split(",", -1));
        }
        ways.remove(0);
        Files.copy(RealData.at("tracks/" + name + ".gpx"), folder.resolve("way.gpx"));
        Path profile = Files.writeString(folder.resolve("way.yaml"), profile(ways));
        Faults faults = new Faults();
        Course course = CourseReader.read(profile, "way.yaml", null, faults);
        assertThat(faults.faults()).isEmpty();
        assertThat(course.stretches()).hasSize(ways.size());
        assertThat(course.length()).isCloseTo(course.track().length(), within(1e-6));
        for (int key = 6; key <= 9; key++) {
            assertThat(written(ways, key).keySet()).isEqualTo(read(course, key).keySet());
            for (Map.Entry<String, Double> share : written(ways, key).entrySet()) {
                assertThat(read(course, key).get(share.getKey())).as(share.getKey()).isCloseTo(share.getValue(), within(0.005));
            }
        }
    }

    private static String profile(List<String[]> ways) {
        StringBuilder out = new StringBuilder("name: Mapped ways\ntrack: way.gpx\nstretches:\n");
        String[] keys = {"surface", "smoothness", "tracktype", "mtb:scale"};
        for (String[] way : ways) {
            out.append("  - length: ").append(way[4]).append(" m\n");
            for (int i = 0; i < keys.length; i++) {
                if (!way[6 + i].isEmpty()) {
                    out.append("    ").append(keys[i]).append(": ").append(way[6 + i]).append('\n');
                }
            }
        }
        return out.toString();
    }

    private static Map<String, Double> written(List<String[]> ways, int key) {
        double total = ways.stream().mapToDouble(w -> Double.parseDouble(w[4])).sum();
        Map<String, Double> out = new LinkedHashMap<>();
        for (String[] way : ways) {
            out.merge(way[key], Double.parseDouble(way[4]) / total, Double::sum);
        }
        return out;
    }

    private static Map<String, Double> read(Course course, int key) {
        Map<String, Double> out = new LinkedHashMap<>();
        for (Stretch stretch : course.stretches()) {
            String said = GroundReader.said(stretch.ground())[key - 6];
            out.merge(said == null ? "" : said, stretch.length() / course.length(), Double::sum);
        }
        return out;
    }
}
